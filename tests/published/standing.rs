//! A circuit at rest.
//!
//! Source: thermodynamics: saturation at the temperature of the air, and Dalton.

use crate::held::holds;

/// A shut expansion valve lets little through: after 2 h in the heat it is not yet even.
#[test]
fn a_rested_circuit_stands_at_saturation() {
    holds("standing", &[("R-410A at rest at 95 °F, 2 h", 0.704)]);
}
