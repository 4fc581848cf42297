//! What a tenth of the step would change.
//!
//! Source: the program itself in steps of 0.01 s.

use crate::held::holds;

/// The first seconds after the start, in which the pressures part by some 50 psi a second.
#[test]
fn a_finer_step_shows_the_same() {
    holds(
        "step_length",
        &[
            ("R-22 orifice: start, suction", 1.141),
            ("R-22 orifice: start, temperatures", 0.0479),
            ("R-410A valve: start, suction", 1.288),
        ],
    );
}
