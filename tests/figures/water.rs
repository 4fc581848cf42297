//! Water as vapour, liquid and ice.
//!
//! Source: IAPWS-IF97 for the liquid, IAPWS 2011 for ice.

use coldbench::fluid::water;
use coldbench::units::{Pressure, Temperature};

/// A temperature comes back from its pressure, over ice and over liquid.
#[test]
fn boiling_goes_both_ways() {
    for celsius in (-30..=40).map(f64::from) {
        let t = Temperature::from_celsius(celsius).kelvin();
        let back = water::boiling_temperature(water::vapour_pressure(t));
        assert!((back - t).abs() < 1e-4, "{t} K came back as {back} K");
    }
}

/// Source: IAPWS, from memory: 500 micron is ice at −24.5 °C; the triple point is at 4,588.
#[test]
fn five_hundred_micron_is_ice() {
    let at = |microns: f64| water::boiling_temperature(Pressure::from_microns(microns).pascals());
    assert!((Temperature::from_kelvin(at(500.0)).celsius() + 24.5).abs() < 0.1);
    assert!(at(4_580.0) < water::TRIPLE_TEMPERATURE);
    assert!(at(4_590.0) > water::TRIPLE_TEMPERATURE);
}

/// Source: IAPWS-IF97 and IAPWS 2006, from memory: heat to evaporate at 0, 20, 50, 100 °C is
/// 2500.9, 2453.5, 2381.9, 2256.4 kJ/kg; of ice at 0 and −20 °C 2834.3 and 2838.
#[test]
fn heat_of_vaporisation_and_of_sublimation() {
    for (c, published) in [
        (0.0, 2500.9),
        (20.0, 2453.5),
        (50.0, 2381.9),
        (100.0, 2256.4),
    ] {
        let found = water::vaporisation(c + 273.15) / 1e3;
        assert!(
            (found / published - 1.0).abs() < 0.01,
            "{c} C: {found}, published {published}"
        );
    }
    for (c, published) in [(0.0, 2834.3), (-20.0, 2838.0)] {
        let found = water::sublimation(c + 273.15) / 1e3;
        assert!(
            (found / published - 1.0).abs() < 0.005,
            "{c} C: {found}, published {published}"
        );
    }
}
