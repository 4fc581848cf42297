//! Water dissolved in liquid refrigerant.
//!
//! Source: ASHRAE Handbook - Refrigeration, control of moisture: the solubility rises with
//! temperature.

use coldbench::fluid::refrigerant::Refrigerant;

/// Between the lines and beyond them the solubility goes on rising, and stays finite.
#[test]
fn solubility_rises_with_temperature() {
    for name in ["R-22", "R-134a", "R-410A", "R-407C"] {
        let mut last = 0.0;
        for t in (210..360).map(f64::from) {
            let found = Refrigerant::named(name).expect(name).dissolves_water(t);
            assert!(found > last && found < 20_000.0, "{name} {t} K: {found}");
            last = found;
        }
    }
    let r22 = Refrigerant::named("R-22").expect("R-22");
    assert!(r22.dissolves_water(f64::NAN).is_finite());
}
