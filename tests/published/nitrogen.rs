//! The stand test of dry nitrogen.
//!
//! Source: p2 = p1 T2/T1, absolute; the real gas by `CoolProp` 8, `data/nitrogen.csv`.

use crate::held::holds;

#[test]
fn nitrogen_follows_the_temperature() {
    holds("nitrogen", &[]);
}
