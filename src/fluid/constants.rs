//! What water and the gases count their energies from.

/// The ice point, K.
pub const ZERO_CELSIUS: f64 = 273.15;

/// Heat of vaporisation of water at 0 °C, J/kg. Source: IAPWS-95, from memory.
pub const VAPORISATION_AT_ZERO: f64 = 2_500.9e3;
