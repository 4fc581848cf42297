//! Water that freezes at the metering device.
//!
//! Source: ASHRAE Handbook - Refrigeration, control of moisture; common practice, no source.

use crate::held::holds;

#[test]
fn moisture_comes_and_goes_at_the_throat() {
    holds("freeze_up", &[]);
}
