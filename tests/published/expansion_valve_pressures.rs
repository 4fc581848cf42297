//! Gauge pressures of a unit with an expansion valve by the weather.
//!
//! Source: published service data, `data/expansion_valve_pressures.csv`.

use crate::held::holds;

#[test]
fn a_valve_unit_shows_the_usual_pressures() {
    holds("expansion_valve_pressures", &[]);
}
