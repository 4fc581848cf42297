//! The charging chart that the program shows and marks by.
//!
//! Source: the published field chart, `data/target_superheat.csv`; Title 24, table RA3.2-2.

use crate::held::holds;

#[test]
fn the_chart_is_the_published_one() {
    holds("charging_chart", &[]);
}
