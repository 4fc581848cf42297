//! A coil that freezes up.
//!
//! Source: common practice, no source.

use crate::held::holds;

#[test]
fn a_starved_coil_ices_and_the_fan_thaws_it() {
    holds("frost", &[]);
}
