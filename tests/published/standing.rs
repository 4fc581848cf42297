//! A circuit at rest.
//!
//! Source: thermodynamics: saturation at the temperature of the air, and Dalton.

use crate::held::holds;

#[test]
fn a_rested_circuit_stands_at_saturation() {
    holds("standing", &[]);
}
