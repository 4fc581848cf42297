//! The liquid receiver: a vessel behind the outdoor coil whose outlet dips to the bottom.

use super::network::Node;
use crate::units::{Area, Conductance, HeatCapacity, Volume};
use serde::{Deserialize, Serialize};

/// A receiver as a unit's file gives it.
///
/// What drains out of the coil comes in at the top, what the liquid valve takes comes from the
/// bottom: liquid while there is a level, vapour when there is none. Over a level the liquid is
/// saturated, so a coil in front of it keeps none to subcool.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReceiverData {
    /// Inner volume.
    pub volume: Volume,
    /// Heat capacity of the shell.
    pub wall: HeatCapacity,
    /// Conductance to the air around.
    pub to_air: Conductance,
    /// Area of the pipe from the outdoor coil.
    pub inlet: Area,
}

impl ReceiverData {
    /// Volume, wall and conductance to the air, in SI.
    pub(super) const fn shape(&self) -> [f64; 3] {
        [
            self.volume.cubic_metres(),
            self.wall.joules_per_kelvin(),
            self.to_air.watts_per_kelvin(),
        ]
    }
}

/// The share of a vessel that liquid fills.
pub(super) fn level(node: &Node) -> f64 {
    (node.liquid / (node.liquid_density * node.volume)).clamp(0.0, 1.0)
}
