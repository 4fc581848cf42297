//! Refrigerants, gases, water and moist air: sourced property curves.
//!
//! This layer sits in the innermost loop of the plant. It takes and gives plain `f64` in SI:
//! pressure Pa absolute, temperature K, density kg/m³, energy J/kg. The few functions that
//! people ask, such as [`refrigerant::Refrigerant::saturation`], take the quantity newtypes.

pub mod gas;
pub mod refrigerant;
