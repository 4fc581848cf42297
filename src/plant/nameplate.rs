//! The nameplate: what the maker says of the whole unit.

use crate::units::{GaugePressure, Length, Mass, MassFlow, Power, TemperatureDifference};
use serde::{Deserialize, Serialize};

/// What the right charge shows when the unit runs at rest.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Target {
    /// The superheat that the charging chart gives for the weather: a fixed orifice.
    SuperheatByChart,
    /// This subcooling at the liquid valve: an expansion valve.
    Subcooling(TemperatureDifference),
}

/// What the nameplate says.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Nameplate {
    /// The charge with the line set that it covers.
    pub charge: Mass,
    /// The length of line set that this charge covers.
    pub covers: Length,
    /// What each further metre of line set takes.
    pub per_metre: Mass,
    /// Design test pressure of the low side.
    pub low_side_test: GaugePressure,
    /// Design test pressure of the high side.
    pub high_side_test: GaugePressure,
    /// Nominal cooling.
    pub capacity: Power,
    /// Refrigerant through the compressor at the rating point.
    pub rated_flow: MassFlow,
    /// What the right charge shows.
    pub target: Target,
}

impl Nameplate {
    /// What belongs in a unit with this length of line set.
    pub fn charge_for(&self, line_set: Length) -> Mass {
        let further = line_set.metres() - self.covers.metres();
        Mass::from_kilograms(
            self.charge.kilograms() + further.max(0.0) * self.per_metre.kilograms(),
        )
    }
}
