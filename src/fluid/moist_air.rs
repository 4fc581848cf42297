//! Moist air at the standard atmosphere: what a sling psychrometer and a cooling coil need.
//!
//! Temperatures are K, humidity ratios kg of water per kg of dry air, enthalpies J per kg of dry
//! air, counted from dry air and liquid water at 0 °C. All pressures are one standard atmosphere.
//!
//! Source: ASHRAE Handbook - Fundamentals, psychrometrics chapter, from memory; equations by
//! name.

use super::constants::ZERO_CELSIUS;
use super::water::{self, TRIPLE_TEMPERATURE};
use super::within;
use crate::units::ATMOSPHERE;

/// Molar mass of water over that of dry air. Source: ASHRAE Handbook - Fundamentals.
const MASS_RATIO: f64 = 0.621_945;

/// Gas constant of dry air, J/(kg K). Source: ASHRAE Handbook - Fundamentals.
const R_DRY_AIR: f64 = 287.042;

/// Humidity ratio of air whose water vapour has the partial pressure `p_water`, Pa.
#[inline]
pub fn humidity_ratio(p_water: f64) -> f64 {
    // Near boiling all of it would be vapour: the bound keeps the ratio finite.
    let p_water = within(p_water, 0.0, 0.9 * ATMOSPHERE);
    MASS_RATIO * p_water / (ATMOSPHERE - p_water)
}

/// Partial pressure of water vapour in air of humidity ratio `w`. Pa.
#[inline]
pub fn vapour_pressure(w: f64) -> f64 {
    let w = w.max(0.0);
    ATMOSPHERE * w / (MASS_RATIO + w)
}

/// Humidity ratio of saturated air at `t`, K, over ice below 0 °C.
#[inline]
pub fn saturated_humidity_ratio(t: f64) -> f64 {
    humidity_ratio(water::vapour_pressure(t))
}

/// Humidity ratio from the dry and the wet bulb, K; not below zero.
pub fn humidity_ratio_from_wet_bulb(dry: f64, wet: f64) -> f64 {
    let saturated = saturated_humidity_ratio(wet);
    let (t, t_wet) = (dry - ZERO_CELSIUS, wet - ZERO_CELSIUS);
    let w = if wet >= TRIPLE_TEMPERATURE {
        ((2501.0 - 2.326 * t_wet) * saturated - 1.006 * (t - t_wet))
            / (2501.0 + 1.86 * t - 4.186 * t_wet)
    } else {
        ((2830.0 - 0.24 * t_wet) * saturated - 1.006 * (t - t_wet))
            / (2830.0 + 1.86 * t - 2.1 * t_wet)
    };
    w.max(0.0)
}

/// Humidity ratio at `dry`, K, and a relative humidity from 0 to 1.
pub fn humidity_ratio_from_relative(dry: f64, relative: f64) -> f64 {
    humidity_ratio(relative * water::vapour_pressure(dry))
}

/// Relative humidity, 0 to 1, of air at `dry`, K, with the humidity ratio `w`.
pub fn relative_humidity(dry: f64, w: f64) -> f64 {
    (vapour_pressure(w) / water::vapour_pressure(dry)).min(1.0)
}

/// Wet bulb of air at `dry`, K, with the humidity ratio `w`. K; the dry bulb if saturated.
pub fn wet_bulb(dry: f64, w: f64) -> f64 {
    // The ratio rises with the wet bulb, so halving always finds it, across 0 °C too.
    let (mut low, mut high) = (dry - 80.0, dry);
    for _ in 0..48 {
        let middle = f64::midpoint(low, high);
        if humidity_ratio_from_wet_bulb(dry, middle) < w {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}

/// Temperature at which air of humidity ratio `w` begins to give off dew or frost. K.
pub fn dew_point(w: f64) -> f64 {
    water::boiling_temperature(vapour_pressure(w))
}

/// Enthalpy of air at `dry`, K, with the humidity ratio `w`. J per kg of dry air.
#[inline]
pub fn enthalpy(dry: f64, w: f64) -> f64 {
    let t = dry - ZERO_CELSIUS;
    1006.0 * t + w * (2501e3 + 1860.0 * t)
}

/// Temperature of air that has the enthalpy `h`, J per kg of dry air, at the humidity ratio `w`.
#[inline]
pub fn temperature_from_enthalpy(h: f64, w: f64) -> f64 {
    ZERO_CELSIUS + (h - w * 2501e3) / (1006.0 + w * 1860.0)
}

/// Volume of a kilogram of dry air with its water at `dry`, K, and the humidity ratio `w`. m³.
#[inline]
pub fn specific_volume(dry: f64, w: f64) -> f64 {
    R_DRY_AIR * dry * (1.0 + w / MASS_RATIO) / ATMOSPHERE
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Temperature;

    fn fahrenheit(value: f64) -> f64 {
        Temperature::from_fahrenheit(value).kelvin()
    }

    #[test]
    fn return_air_of_the_rating_points() {
        // Source: ASHRAE psychrometric chart 1 at 80 °F dry, 67 °F wet bulb, from memory:
        // 0.0112 lb/lb, 51 %, dew point 60.3 °F; 31.5 Btu/lb above air at 0 °F, 7.69 less above
        // air at 0 °C; 13.84 ft³/lb.
        let (dry, wet) = (fahrenheit(80.0), fahrenheit(67.0));
        let w = humidity_ratio_from_wet_bulb(dry, wet);
        assert!((w - 0.0112).abs() < 1e-4, "{w}");
        assert!((relative_humidity(dry, w) - 0.51).abs() < 0.01);
        let dew = Temperature::from_kelvin(dew_point(w)).fahrenheit();
        assert!((dew - 60.3).abs() < 0.3, "{dew}");
        let h = enthalpy(dry, w) / 2326.0;
        assert!((h - (31.5 - 7.69)).abs() < 0.1, "{h}");
        let v = specific_volume(dry, w) / 0.062_428;
        assert!((v - 13.84).abs() < 0.03, "{v}");
    }

    #[test]
    fn wet_bulb_inverts_the_psychrometer() {
        for dry in [-10.0, 20.0, 50.0, 80.0, 115.0] {
            for apart in [0.0, 2.0, 5.0, 10.0] {
                let (dry, wet) = (fahrenheit(dry), fahrenheit(dry - apart));
                let w = humidity_ratio_from_wet_bulb(dry, wet);
                if w > 0.0 {
                    assert!((wet_bulb(dry, w) - wet).abs() < 1e-6, "{dry} {wet}");
                }
            }
        }
    }

    #[test]
    fn temperature_inverts_enthalpy() {
        let h = enthalpy(300.0, 0.01);
        assert!((temperature_from_enthalpy(h, 0.01) - 300.0).abs() < 1e-9);
    }
}
