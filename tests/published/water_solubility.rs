//! Water dissolved in liquid refrigerant against the published table.

use coldbench::fluid::water;
use coldbench::units::Temperature;

use crate::table;

/// Source: `data/water_solubility.csv`, ASHRAE Handbook - Refrigeration.
#[test]
fn solubility_in_r22_and_r134a() {
    for line in table::read("water_solubility.csv") {
        let t = Temperature::from_fahrenheit(line.number("fahrenheit")).kelvin();
        for (name, column) in [("R-22", "r22"), ("R-134a", "r134a")] {
            let found = water::solubility(name, t);
            let published = line.number(column);
            assert!(
                (found / published - 1.0).abs() < 1e-9,
                "{name} {t} K: {found}, {published}"
            );
        }
    }
}

/// Between the lines and beyond them the solubility goes on rising, and stays finite.
#[test]
fn solubility_rises_with_temperature() {
    for name in ["R-22", "R-134a", "R-410A", "R-407C"] {
        let mut last = 0.0;
        for t in (210..360).map(f64::from) {
            let found = water::solubility(name, t);
            assert!(found > last && found < 20_000.0, "{name} {t} K: {found}");
            last = found;
        }
    }
    assert!(water::solubility("R-22", f64::NAN).is_finite());
}
