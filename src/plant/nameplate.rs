//! The nameplate: what the maker says of the whole unit.

use crate::units::{
    GaugePressure, Length, Mass, MassFlow, Power, Temperature, TemperatureDifference,
};
use serde::{Deserialize, Serialize};

/// What the right charge shows when the unit runs at rest.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Target {
    /// The superheat that the charging chart gives for the weather: a fixed orifice.
    SuperheatByChart,
    /// This subcooling at the liquid valve: an expansion valve.
    Subcooling(TemperatureDifference),
    /// This superheat at the suction valve: an expansion valve behind a receiver. Its charge shows
    /// neither as superheat nor as subcooling and is weighed in.
    Superheat(TemperatureDifference),
}

/// The air of the room in which a unit is rated.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RatedRoom {
    /// Dry bulb.
    pub dry_bulb: Temperature,
    /// Wet bulb.
    pub wet_bulb: Temperature,
}

impl Default for RatedRoom {
    /// 80 °F dry, 67 °F wet: comfort cooling. Source: AHRI 210/240.
    fn default() -> Self {
        Self {
            dry_bulb: Temperature::from_fahrenheit(80.0),
            wet_bulb: Temperature::from_fahrenheit(67.0),
        }
    }
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
    /// The room in which it is rated; that of comfort cooling where the file does not say.
    #[serde(default)]
    pub room: RatedRoom,
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
