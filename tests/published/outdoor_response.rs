//! Capacity and power by the weather.
//!
//! Source: NREL/TP-5500-56354, `data/outdoor_response.csv`.

use crate::held::holds;

/// A fixed orifice starves its coil on a mild day.
#[test]
fn capacity_and_power_follow_the_weather() {
    holds(
        "outdoor_response",
        &[("R-22 orifice at 75 °F: capacity", 0.0099)],
    );
}
