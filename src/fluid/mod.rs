//! Refrigerants, gases, water and moist air: sourced property curves.
//!
//! This layer sits in the innermost loop of the plant. It takes and gives plain `f64` in SI:
//! pressure Pa absolute, temperature K, density kg/m³, energy J/kg. The few functions that
//! people ask, such as [`refrigerant::Refrigerant::saturation`], take the quantity newtypes.

mod constants;
mod facts;
pub mod gas;
pub mod moist_air;
pub mod refrigerant;
pub mod water;

pub use facts::{InOil, SafetyClass, Viscosity, Zones};

/// `x` held between two bounds; not a number gives the lower one, where `clamp` would keep it.
#[inline]
const fn within(x: f64, low: f64, high: f64) -> f64 {
    if x > low { x.min(high) } else { low }
}
