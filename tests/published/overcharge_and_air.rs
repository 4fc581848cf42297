//! Too much refrigerant, and air inside.
//!
//! Source: published fits agree on the direction only; common practice, no source.

use crate::held::holds;

#[test]
fn overcharge_and_air_raise_head_and_power() {
    holds("overcharge_and_air", &[]);
}
