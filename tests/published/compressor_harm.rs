//! Oil that does not come back, and liquid that does.
//!
//! Source: common practice, no source.

use crate::held::holds;

#[test]
fn oil_and_liquid_are_noted_when_they_matter() {
    holds("compressor_harm", &[]);
}
