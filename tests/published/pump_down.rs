//! A pump-down and its rebound.
//!
//! Source: common practice, no source.

use crate::held::holds;

#[test]
fn the_low_side_empties_and_comes_back_less_each_time() {
    holds("pump_down", &[]);
}
