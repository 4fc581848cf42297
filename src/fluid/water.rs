//! Water as vapour, liquid and ice, and dissolved in liquid refrigerant.
//!
//! Energies count from liquid water at 0 °C. The vapour's are in [`crate::fluid::gas`].

use super::constants::ZERO_CELSIUS;
use super::gas::Gas;
use super::within;

/// Temperature at which ice, liquid and vapour meet, K. Source: IAPWS.
pub const TRIPLE_TEMPERATURE: f64 = 273.16;

/// Pressure at which ice, liquid and vapour meet, Pa: 4,588 micron. Source: IAPWS.
pub const TRIPLE_PRESSURE: f64 = 611.657;

/// Heat of fusion at 0 °C, J/kg. Source: IAPWS 2006 for ice, from memory.
pub const FUSION: f64 = 333.4e3;

/// Specific heat of the liquid, J/(kg K), taken as constant: 4,217 at 0 °C, 4,182 at 20 °C.
/// Source: IAPWS-IF97, from memory.
pub const SPECIFIC_HEAT_LIQUID: f64 = 4_190.0;

/// Specific heat of ice, J/(kg K), taken as constant: 2,097 at 0 °C, 1,939 at −20 °C.
/// Source: IAPWS 2006, from memory.
pub const SPECIFIC_HEAT_ICE: f64 = 2_050.0;

/// Coefficients n1 to n10 of the saturation equation. Source: IAPWS-IF97, table 34.
const N: [f64; 10] = [
    0.116_705_214_527_67e4,
    -0.724_213_167_032_06e6,
    -0.170_738_469_400_92e2,
    0.120_208_247_024_70e5,
    -0.323_255_503_223_33e7,
    0.149_151_086_135_30e2,
    -0.482_326_573_615_91e4,
    0.405_113_405_420_57e6,
    -0.238_555_575_678_49,
    0.650_175_348_447_98e3,
];

/// Pairs a, b of the sublimation equation. Source: IAPWS R14-08 (2011), table 2.
const SUBLIMATION: [(f64, f64); 3] = [
    (-0.212_144_006e2, 0.333_333_333e-2),
    (0.273_203_819e2, 0.120_666_667e1),
    (-0.610_598_130e1, 0.170_333_333e1),
];

/// Vapour pressure over what is there at `t`, K: ice below the triple point, liquid above. Pa.
#[inline]
pub fn vapour_pressure(t: f64) -> f64 {
    if t < TRIPLE_TEMPERATURE {
        vapour_pressure_ice(t)
    } else {
        vapour_pressure_liquid(t)
    }
}

/// Vapour pressure over liquid at `t`, K. Pa.
///
/// Below 0 °C it is the supercooled liquid's, extrapolated. Source: IAPWS-IF97, equation 30.
#[inline]
pub fn vapour_pressure_liquid(t: f64) -> f64 {
    let beta = quarter_power(theta(liquid_range(t)));
    beta * beta * beta * beta * 1e6
}

/// Slope of the vapour pressure over liquid at `t`, K. Pa/K.
#[inline]
pub fn vapour_pressure_slope_liquid(t: f64) -> f64 {
    let t = liquid_range(t);
    let theta = theta(t);
    let beta = quarter_power(theta);
    // Equation 29 of IAPWS-IF97, f(beta, theta) = 0, differentiated.
    let by_theta =
        2.0 * theta * (beta * beta + N[2] * beta + N[5]) + N[0] * beta * beta + N[3] * beta + N[6];
    let by_beta = 2.0 * beta * (theta * theta + N[0] * theta + N[1])
        + N[2] * theta * theta
        + N[3] * theta
        + N[4];
    let away = t - N[9];
    let theta_slope = 1.0 - N[8] / (away * away);
    4e6 * beta * beta * beta * (-by_theta / by_beta) * theta_slope
}

/// The range in which the saturation equation keeps its shape, K.
#[inline]
fn liquid_range(t: f64) -> f64 {
    within(t, 230.0, 640.0)
}

/// The transformed temperature of the saturation equation.
#[inline]
fn theta(t: f64) -> f64 {
    t + N[8] / (t - N[9])
}

/// The fourth root of the vapour pressure in `MPa`, from the transformed temperature.
#[inline]
fn quarter_power(theta: f64) -> f64 {
    let a = theta * theta + N[0] * theta + N[1];
    let b = N[2] * theta * theta + N[3] * theta + N[4];
    let c = N[5] * theta * theta + N[6] * theta + N[7];
    2.0 * c / (-b + (b * b - 4.0 * a * c).sqrt())
}

/// Vapour pressure over ice at `t`, K, from 50 K to the triple point. Pa.
///
/// Source: IAPWS R14-08 (2011), equation 6.
pub fn vapour_pressure_ice(t: f64) -> f64 {
    ice(t).0
}

/// Vapour pressure over ice, Pa, and its slope, Pa/K.
fn ice(t: f64) -> (f64, f64) {
    let theta = within(t, 50.0, TRIPLE_TEMPERATURE) / TRIPLE_TEMPERATURE;
    let log_theta = libm::log(theta);
    let (mut log_p, mut slope) = (0.0, 0.0);
    for (a, b) in SUBLIMATION {
        let term = a * libm::exp((b - 1.0) * log_theta);
        log_p += term;
        slope += (b - 1.0) * term / theta;
    }
    let p = TRIPLE_PRESSURE * libm::exp(log_p);
    (p, p * slope / TRIPLE_TEMPERATURE)
}

/// Slope of [`vapour_pressure`] at `t`, K. Pa/K.
#[inline]
pub fn vapour_pressure_slope(t: f64) -> f64 {
    if t < TRIPLE_TEMPERATURE {
        ice(t).1
    } else {
        vapour_pressure_slope_liquid(t)
    }
}

/// Temperature at which water boils, or below 611.657 Pa ice goes over to vapour, at `p`, Pa. K.
///
/// The inverse of [`vapour_pressure`]. Source: IAPWS-IF97, equation 31; the ice by Newton.
pub fn boiling_temperature(p: f64) -> f64 {
    if p < TRIPLE_PRESSURE {
        return frost_temperature(p);
    }
    let beta = (within(p, TRIPLE_PRESSURE, 2e7) * 1e-6).sqrt().sqrt();
    let e = beta * beta + N[2] * beta + N[5];
    let f = N[0] * beta * beta + N[3] * beta + N[6];
    let g = N[1] * beta * beta + N[4] * beta + N[7];
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    let sum = N[9] + d;
    (sum - (sum * sum - 4.0 * (N[8] + N[9] * d)).sqrt()) / 2.0
}

/// Temperature of ice whose vapour pressure is `p`, Pa. K, not below 100 K.
pub fn frost_temperature(p: f64) -> f64 {
    const COLDEST: f64 = 100.0;
    // Half a femtopascal: the vapour pressure at 100 K is above it.
    let log_p = libm::log(within(p, 5e-16, TRIPLE_PRESSURE));
    // Along 1/T the logarithm is almost a straight line, so Newton needs few rounds.
    let mut inverse = 1.0 / TRIPLE_TEMPERATURE;
    for _ in 0..12 {
        let t = 1.0 / inverse;
        let (here, slope) = ice(t);
        let step = (libm::log(here) - log_p) * here / (slope * t * t);
        inverse = within(inverse + step, 1.0 / TRIPLE_TEMPERATURE, 1.0 / COLDEST);
        if step.abs() < 1e-12 * inverse {
            break;
        }
    }
    1.0 / inverse
}

/// Heat that a kilogram of liquid at `t`, K, takes to become vapour, J/kg.
///
/// It follows from constant specific heats: within 1 % of IAPWS-95 from 0 to 100 °C.
#[inline]
pub fn vaporisation(t: f64) -> f64 {
    Gas::Water.enthalpy(t) / Gas::Water.molar_mass() - liquid_energy(t)
}

/// Heat that a kilogram of ice at `t`, K, takes to become vapour, J/kg.
#[inline]
pub fn sublimation(t: f64) -> f64 {
    Gas::Water.enthalpy(t) / Gas::Water.molar_mass() - ice_energy(t)
}

/// Internal energy of the liquid at `t`, K. J/kg; zero at 0 °C.
#[inline]
pub fn liquid_energy(t: f64) -> f64 {
    SPECIFIC_HEAT_LIQUID * (t - ZERO_CELSIUS)
}

/// Internal energy of ice at `t`, K. J/kg; −333.4 kJ/kg at 0 °C.
#[inline]
pub fn ice_energy(t: f64) -> f64 {
    SPECIFIC_HEAT_ICE * (t - ZERO_CELSIUS) - FUSION
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(found: f64, published: f64, share: f64) {
        assert!(
            (found / published - 1.0).abs() < share,
            "{found}, published {published}"
        );
    }

    #[test]
    fn the_saturation_equation_gives_its_own_check_values() {
        // Source: IAPWS-IF97, tables 35 and 36.
        close(vapour_pressure_liquid(300.0), 0.353_658_941e-2 * 1e6, 1e-8);
        close(vapour_pressure_liquid(500.0), 0.263_889_776e1 * 1e6, 1e-8);
        close(boiling_temperature(0.1e6), 0.372_755_919e3, 1e-8);
        close(boiling_temperature(1e6), 0.453_035_632e3, 1e-8);
    }

    #[test]
    fn the_sublimation_equation_gives_its_own_check_value() {
        // Source: IAPWS R14-08 (2011), table 3: 8.94735 Pa at 230 K.
        close(vapour_pressure_ice(230.0), 8.947_35, 1e-6);
    }

    #[test]
    fn boiling_temperature_inverts_vapour_pressure() {
        for t in (110..500).map(f64::from) {
            let back = boiling_temperature(vapour_pressure(t));
            assert!((back - t).abs() < 1e-4, "{t} came back as {back}");
        }
    }

    #[test]
    fn slopes_are_those_of_the_curves() {
        for t in [200.0, 250.0, 273.0, 274.0, 300.0, 370.0] {
            let rise = (vapour_pressure(t + 1e-3) - vapour_pressure(t - 1e-3)) / 2e-3;
            close(vapour_pressure_slope(t), rise, 1e-6);
        }
    }

    #[test]
    fn nonsense_gives_finite_values() {
        for x in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -1.0, 1e300] {
            assert!(vapour_pressure(x).is_finite(), "{x}");
            assert!(vapour_pressure_slope(x).is_finite(), "{x}");
            assert!(boiling_temperature(x).is_finite(), "{x}");
        }
    }
}
