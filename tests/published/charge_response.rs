//! What a unit with an expansion valve loses with its charge.
//!
//! Source: NIST Technical Note 1848 and two fits of NREL/Purdue, `data/charge_response.csv`.

use crate::held::holds;

/// Published for a room of 80/67 °F: with less load the valve's reserve lasts longer, with more of
/// it less long.
#[test]
fn capacity_falls_with_the_charge_as_published() {
    holds(
        "charge_response",
        &[
            (
                "95 °F outdoors, 75/63 °F, -20 % of charge: capacity",
                0.0089,
            ),
            (
                "95 °F outdoors, 75/63 °F, -10 % of charge: capacity",
                3.45e-4,
            ),
            (
                "95 °F outdoors, 80/72 °F, -30 % of charge: capacity",
                0.0178,
            ),
        ],
    );
}
