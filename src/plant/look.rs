//! Looking inside a circuit: pressures, temperatures and what is in the unit without the kit.

use super::{Plant, Section, receiver};
use crate::fluid::gas::MOLAR_MASS;
use crate::fluid::refrigerant::Refrigerant;

/// What is in the unit itself, kg.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Contents {
    /// Refrigerant with what the oil holds.
    pub refrigerant: f64,
    /// Nitrogen.
    pub nitrogen: f64,
    /// Air.
    pub air: f64,
    /// Water, but for what the desiccant holds.
    pub water: f64,
}

impl Plant {
    /// The places of this unit, with the flow; a receiver last.
    pub fn places(&self) -> impl Iterator<Item = Section> {
        let receiver = self.has_receiver().then_some(Section::Receiver);
        Section::ALL.into_iter().chain(receiver)
    }

    /// Whether there is a receiver.
    pub fn has_receiver(&self) -> bool {
        self.node(Section::Receiver) != self.node(Section::Condenser)
    }

    /// The share of the receiver that liquid fills, if there is one.
    pub fn receiver_level(&self) -> Option<f64> {
        let node = self.network().node(self.node(Section::Receiver));
        self.has_receiver().then(|| receiver::level(node))
    }

    /// The absolute pressure at a place, Pa.
    pub fn pressure(&self, place: Section) -> f64 {
        self.network().node(self.node(place)).pressure
    }

    /// The temperature at a place, K.
    pub fn temperature(&self, place: Section) -> f64 {
        self.network().node(self.node(place)).temperature
    }

    /// The refrigerant that the unit is made for.
    pub const fn refrigerant(&self) -> &'static Refrigerant {
        self.network().refrigerant()
    }

    /// What is in the unit, without hoses and cylinders.
    pub fn inside(&self) -> Contents {
        let mut all = Contents::default();
        for place in self.places() {
            let node = self.network().node(self.node(place));
            all.refrigerant += node.refrigerant + node.dissolved;
            all.nitrogen += node.gas[0] * MOLAR_MASS[0];
            all.air += node.gas[1] * MOLAR_MASS[1];
            all.water += node.gas[2] * MOLAR_MASS[2] + node.free_water;
        }
        all
    }
}
