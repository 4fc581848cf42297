//! What pressure a subcooled liquid line of R-22 has.
//!
//! Source: published charging chart by subcooling, `data/liquid_line.csv`.

use crate::held::holds;

#[test]
fn a_subcooled_line_has_the_pressure_of_the_chart() {
    holds("liquid_line", &[]);
}
