//! The three gases of the network as it counts them: nitrogen, air, water vapour.
//!
//! One reference for water holds throughout: liquid of 0 °C has no energy.

pub use crate::fluid::gas::R_UNIVERSAL;

/// Molar masses of nitrogen, air and water, kg/mol. Source: IUPAC atomic weights, from memory.
pub const MOLAR_MASS: [f64; 3] = [0.028_013, 0.028_965, 0.018_015];

/// Molar heat at constant volume, J/(mol K), from memory: an ideal gas near 300 K.
pub const CV: [f64; 3] = [20.8, 20.8, 25.3];

/// Viscosity near 300 K, Pa s, from memory.
pub const VISCOSITY: [f64; 3] = [1.79e-5, 1.83e-5, 1.0e-5];

/// Energy of formation of the vapour from liquid of 0 °C at 0 K of its straight line, J/mol: so
/// that the latent heat is 2.50 MJ/kg at 0 °C.
pub const OFFSET: [f64; 3] = [0.0, 0.0, 35.9e3];

/// Molar energy of a gas at `t`, K. J/mol.
#[inline]
pub const fn energy(k: usize, t: f64) -> f64 {
    OFFSET[k] + CV[k] * t
}

/// Molar enthalpy of a gas at `t`, K. J/mol.
#[inline]
pub const fn enthalpy(k: usize, t: f64) -> f64 {
    OFFSET[k] + (CV[k] + R_UNIVERSAL) * t
}
