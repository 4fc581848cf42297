//! Gases.

/// The molar gas constant, J/(mol K). Source: CODATA 2018 (exact).
pub const R_UNIVERSAL: f64 = 8.314_462_618_153_24;
