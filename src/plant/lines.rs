//! The line set: liquid and suction line with their service valves.

use crate::units::{Area, Conductance, HeatCapacity, Volume};
use serde::{Deserialize, Serialize};
use std::f64::consts::{FRAC_PI_4, PI};

/// One line as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LineData {
    /// Inner volume.
    pub volume: Volume,
    /// Heat capacity of its wall.
    pub wall: HeatCapacity,
    /// Conductance to the air around, through its insulation.
    pub to_air: Conductance,
    /// Area of its service valve, wide open.
    pub valve: Area,
}

impl LineData {
    /// The line with so many metres more of tube of this bore, m.
    #[must_use]
    pub(super) fn longer_by(mut self, metres: f64, bore: f64) -> Self {
        let volume = FRAC_PI_4 * bore * bore * metres;
        // A copper wall of 0.8 mm: 8,940 kg/m³ at 385 J/(kg K) (from memory).
        let wall = PI * (bore + 0.8e-3) * 0.8e-3 * 8940.0 * 385.0 * metres;
        self.volume = Volume::from_cubic_metres(self.volume.cubic_metres() + volume);
        self.wall = HeatCapacity::from_joules_per_kelvin(self.wall.joules_per_kelvin() + wall);
        self
    }
}
