//! The gas constant and the units against the stand test of nitrogen.

use coldbench::fluid::gas::R_UNIVERSAL;
use coldbench::units::{GaugePressure, Pressure, Temperature};

use crate::table;

/// Source: `data/nitrogen.csv`; the ideal law to a hundredth of a psi, the real gas within 0.5.
#[test]
fn ideal_nitrogen_follows_the_temperature() {
    for line in table::read("nitrogen.csv") {
        let kelvin = |column| Temperature::from_fahrenheit(line.number(column)).kelvin();
        let start = GaugePressure::from_psig(line.number("start_psig"))
            .absolute()
            .pascals();
        let volume = 0.01;
        let amount = start * volume / (R_UNIVERSAL * kelvin("start_f"));
        let end = Pressure::from_pascals(amount * R_UNIVERSAL * kelvin("end_f") / volume);
        let found = end.gauge().psig();
        assert!((found - line.number("ideal_psig")).abs() < 0.01, "{found}");
        assert!((found - line.number("real_psig")).abs() < 0.5, "{found}");
    }
}
