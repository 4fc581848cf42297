//! Capacity and power by the weather.
//!
//! Source: NREL/TP-5500-56354, `data/outdoor_response.csv`.

use crate::held::holds;

#[test]
fn capacity_and_power_follow_the_weather() {
    holds(
        "outdoor_response",
        &[
            ("R-22 orifice at 75 °F: capacity", 0.0131),
            ("R-22 orifice at 115 °F: power per capacity", 6.4e-4),
            ("R-410A valve at 105 °F: power per capacity", 0.0081),
            ("R-410A valve at 115 °F: power per capacity", 0.0623),
        ],
    );
}
