//! What a tenth of the step would change.
//!
//! Source: the program itself in steps of 0.01 s.

use crate::held::holds;

/// The worst second of a start: the steady state does not hang on the step.
#[test]
fn a_finer_step_shows_the_same() {
    holds(
        "step_length",
        &[
            ("R-22 orifice: start, suction", 1.108),
            ("R-22 orifice: start, temperatures", 0.029),
            ("R-410A valve: start, suction", 1.288),
        ],
    );
}
