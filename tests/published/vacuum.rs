//! The speed of a pump through hoses.
//!
//! Source: conductance of tubes by the vacuum technology handbooks, `data/vacuum.csv`.

use crate::held::holds;

#[test]
fn speeds_and_times_are_those_of_vacuum_technology() {
    holds("vacuum", &[]);
}
