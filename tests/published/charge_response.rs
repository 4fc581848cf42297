//! What a unit with an expansion valve loses with its charge.
//!
//! Source: NIST Technical Note 1848 and two fits of NREL/Purdue, `data/charge_response.csv`.

use crate::held::holds;

#[test]
fn capacity_falls_with_the_charge_as_published() {
    holds("charge_response", &[]);
}
