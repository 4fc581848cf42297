//! The three gases of the network as it counts them: nitrogen, air, water vapour.
//!
//! One reference for water holds throughout: liquid of 0 °C has no energy.

pub use crate::fluid::gas::{CV, ENERGY_ORIGIN, MOLAR_MASS, R_UNIVERSAL};

/// Viscosity near 300 K, Pa s: the composition counts for more than the temperature does.
/// Source: Sutherland's formula of [`crate::fluid::gas`] at 300 K.
pub const VISCOSITY: [f64; 3] = [1.79e-5, 1.85e-5, 1.0e-5];

/// Molar energy of a gas at `t`, K. J/mol.
#[inline]
pub const fn energy(k: usize, t: f64) -> f64 {
    ENERGY_ORIGIN[k] + CV[k] * t
}

/// Molar enthalpy of a gas at `t`, K. J/mol.
#[inline]
pub const fn enthalpy(k: usize, t: f64) -> f64 {
    ENERGY_ORIGIN[k] + (CV[k] + R_UNIVERSAL) * t
}
