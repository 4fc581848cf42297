//! Where refrigerant can get out.

use super::{Joint, Line};
use serde::{Deserialize, Serialize};

/// A place where refrigerant can get out, and where one can sniff or wet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Spot {
    /// A flare joint.
    Joint(Joint),
    /// An access port with its core.
    Port(Line),
    /// The stem packing of a service valve.
    Stem(Line),
    /// The indoor coil.
    IndoorCoil,
    /// The outdoor coil.
    OutdoorCoil,
}

impl Spot {
    /// Every spot, in the order of the circuit.
    pub const ALL: [Self; 12] = [
        Self::OutdoorCoil,
        Self::Stem(Line::Liquid),
        Self::Port(Line::Liquid),
        Self::Joint(Joint::LiquidValve),
        Self::Joint(Joint::DrierInlet),
        Self::Joint(Joint::DrierOutlet),
        Self::Joint(Joint::IndoorLiquid),
        Self::IndoorCoil,
        Self::Joint(Joint::IndoorSuction),
        Self::Joint(Joint::SuctionValve),
        Self::Port(Line::Suction),
        Self::Stem(Line::Suction),
    ];

    /// Its place in [`Spot::ALL`].
    ///
    /// # Panics
    ///
    /// Never: every spot is in the list.
    pub fn index(self) -> usize {
        Self::ALL
            .iter()
            .position(|&s| s == self)
            .expect("every spot is in the list")
    }

    /// Whether it is at the indoor unit; all others are at the outdoor unit.
    pub const fn is_indoors(self) -> bool {
        matches!(
            self,
            Self::IndoorCoil | Self::Joint(Joint::IndoorLiquid | Joint::IndoorSuction)
        )
    }
}
