//! The line set: liquid and suction line with their service valves.

use crate::units::{Area, Conductance, HeatCapacity, Volume};
use serde::{Deserialize, Serialize};

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
