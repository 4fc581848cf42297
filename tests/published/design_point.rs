//! What the gauges show at the rating point.
//!
//! Source: AHRI 210/240 test A for the weather; usual figures, common practice, no source.

use crate::held::holds;

#[test]
fn units_meet_their_design_point() {
    holds("design_point", &[]);
}
