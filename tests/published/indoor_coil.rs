//! What the indoor coil does to the air.
//!
//! Source: common practice, no source; AHRI 210/240, tests C and D, for the dry coil.

use crate::held::holds;

#[test]
fn the_coil_dries_and_cools_as_usual() {
    holds("indoor_coil", &[]);
}
