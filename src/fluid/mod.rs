//! Refrigerants, gases, water and moist air: sourced property curves.
pub mod gas;
