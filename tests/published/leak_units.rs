//! Leaks in grams a year, standard cubic centimetres a second, and Pa m³/s.
//!
//! Source: the molar masses, `data/leak_units.csv`.

use crate::held::holds;

#[test]
fn leaks_convert_as_the_molar_mass_says() {
    holds("leak_units", &[]);
}
