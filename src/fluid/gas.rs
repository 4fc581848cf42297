//! The gases beside the refrigerant: nitrogen, air and water vapour, each an ideal gas.
//!
//! Ideal is near enough: at 300 psig a bottle of nitrogen that cools by 10 °F shows 0.3 psi less
//! by the ideal law than by the real gas.

use super::constants::{VAPORISATION_AT_ZERO, ZERO_CELSIUS};
use super::within;

/// The molar gas constant, J/(mol K). Source: CODATA 2018 (exact in the SI of 2019).
pub const R_UNIVERSAL: f64 = 8.314_462_618_153_24;

/// A gas that may share a part with the refrigerant. `gas as usize` indexes the arrays below.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gas {
    /// Dry nitrogen out of the cylinder.
    Nitrogen,
    /// Dry air.
    Air,
    /// Water vapour.
    Water,
}

/// How many gases there are.
pub const GASES: usize = 3;

/// Molar mass, kg/mol. Source: NIST Chemistry `WebBook`; air: ISO 2533.
pub const MOLAR_MASS: [f64; GASES] = [0.028_013_4, 0.028_964_4, 0.018_015_3];

/// Molar heat capacity at constant volume near 300 K, J/(mol K), taken as constant.
///
/// Source: cp of 29.12, 29.13 and 33.59 at 298 K less R; NIST Chemistry `WebBook`, from memory.
pub const CV: [f64; GASES] = [20.81, 20.82, 25.28];

/// Internal energy that the straight line `ENERGY_ORIGIN + CV t` meets at 0 K, J/mol.
///
/// Nitrogen and air count from there. Water counts from liquid at 0 °C, so its vapour carries
/// the heat of vaporisation: see [`crate::fluid::water`].
pub const ENERGY_ORIGIN: [f64; GASES] = [0.0, 0.0, WATER_ORIGIN];

/// Puts the enthalpy of water vapour at 0 °C at the heat of vaporisation there.
const WATER_ORIGIN: f64 = VAPORISATION_AT_ZERO * MOLAR_MASS[Gas::Water as usize]
    - (CV[Gas::Water as usize] + R_UNIVERSAL) * ZERO_CELSIUS;

/// Sutherland's `mu0`, Pa s, `t0`, K, and `s`, K, of each gas.
const SUTHERLAND: [(f64, f64, f64); GASES] = [
    (1.663e-5, 273.0, 107.0),
    (1.716e-5, 273.0, 111.0),
    (9.87e-6, 298.15, 300.0),
];

impl Gas {
    /// All gases, in the order of the arrays.
    pub const ALL: [Self; GASES] = [Self::Nitrogen, Self::Air, Self::Water];

    /// Molar mass, kg/mol.
    #[inline]
    pub const fn molar_mass(self) -> f64 {
        MOLAR_MASS[self as usize]
    }

    /// Molar heat capacity at constant volume, J/(mol K).
    #[inline]
    pub const fn cv(self) -> f64 {
        CV[self as usize]
    }

    /// Molar heat capacity at constant pressure, J/(mol K).
    #[inline]
    pub const fn cp(self) -> f64 {
        CV[self as usize] + R_UNIVERSAL
    }

    /// Internal energy at `t`, K. J/mol.
    #[inline]
    pub const fn energy(self, t: f64) -> f64 {
        ENERGY_ORIGIN[self as usize] + self.cv() * t
    }

    /// Enthalpy at `t`, K. J/mol.
    #[inline]
    pub const fn enthalpy(self, t: f64) -> f64 {
        ENERGY_ORIGIN[self as usize] + self.cp() * t
    }

    /// Viscosity at `t`, K, whatever the pressure. Pa s.
    ///
    /// ```text
    /// mu = mu0 (t/t0)^1.5 (t0 + s)/(t + s)
    /// ```
    ///
    /// Source: Sutherland's formula with the constants of F. M. White, *Viscous Fluid Flow*,
    /// table 1-2, from memory, within 4 %; water vapour fitted to 9.87 and 12.3 µPa s at 25 and
    /// 100 °C, IAPWS 2008, from memory.
    #[inline]
    pub fn viscosity(self, t: f64) -> f64 {
        let (mu0, t0, s) = SUTHERLAND[self as usize];
        let t = within(t, 1.0, 2e3);
        let ratio = t / t0;
        mu0 * ratio * ratio.sqrt() * (t0 + s) / (t + s)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn viscosities_at_room_temperature() {
        // Source: NIST REFPROP and the CRC Handbook at 300 K, from memory: 17.9, 18.5, 10.0 uPa s.
        for (gas, micro) in [(Gas::Nitrogen, 17.9), (Gas::Air, 18.5), (Gas::Water, 10.0)] {
            let found = gas.viscosity(300.0) * 1e6;
            assert!((found / micro - 1.0).abs() < 0.04, "{gas:?}: {found}");
        }
    }

    #[test]
    fn the_gas_constant_of_air() {
        // Source: ISO 2533, 287.053 J/(kg K).
        assert!((R_UNIVERSAL / Gas::Air.molar_mass() - 287.053).abs() < 0.01);
    }

    #[test]
    fn water_vapour_carries_its_heat_of_vaporisation() {
        // Source: IAPWS-95, 2500.9 kJ/kg at 0 C; 2537.4 kJ/kg of saturated vapour at 20 C.
        let at = |c: f64| Gas::Water.enthalpy(c + 273.15) / Gas::Water.molar_mass() / 1e3;
        assert!((at(0.0) - 2500.9).abs() < 0.1, "{}", at(0.0));
        assert!((at(20.0) - 2537.4).abs() < 1.5, "{}", at(20.0));
    }
}
