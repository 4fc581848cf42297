//! What a tenth of the step would change.
//!
//! Source: the program itself in steps of 0.01 s.

use crate::held::holds;

#[test]
fn a_finer_step_shows_the_same() {
    holds("step_length", &[]);
}
