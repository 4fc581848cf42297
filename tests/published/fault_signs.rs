//! Which way each fault moves each temperature.
//!
//! Source: Rossi & Braun 1997, HVAC&R Research 3(1), `data/fault_signs.csv`.

use crate::held::holds;

#[test]
fn faults_change_the_temperatures_as_published() {
    holds("fault_signs", &[]);
}
