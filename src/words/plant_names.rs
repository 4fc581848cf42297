//! What a technician calls the places and parts of the unit. The plant itself knows no language.

use crate::plant::{FaultKind, Joint, Line, Safety, Spot};
use crate::text::Message;

impl Joint {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::LiquidValve => Message::new("name-flare-liquid-valve"),
            Self::DrierInlet => Message::new("name-flare-drier-inlet"),
            Self::DrierOutlet => Message::new("name-flare-drier-outlet"),
            Self::IndoorLiquid => Message::new("name-flare-indoor-liquid"),
            Self::IndoorSuction => Message::new("name-flare-indoor-suction"),
            Self::SuctionValve => Message::new("name-flare-suction-valve"),
        }
    }
}

impl Spot {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::Joint(joint) => joint.label(),
            Self::Port(Line::Liquid) => Message::new("name-port-liquid"),
            Self::Port(Line::Suction) => Message::new("name-port-suction"),
            Self::Stem(Line::Liquid) => Message::new("name-stem-liquid"),
            Self::Stem(Line::Suction) => Message::new("name-stem-suction"),
            Self::IndoorCoil => Message::new("name-indoor-coil"),
            Self::OutdoorCoil => Message::new("name-outdoor-coil"),
        }
    }
}

impl Line {
    /// What a technician calls its service valve, in short.
    pub const fn valve_label(self) -> Message {
        match self {
            Self::Liquid => Message::new("name-valve-liquid-short"),
            Self::Suction => Message::new("name-valve-suction-short"),
        }
    }

    /// What a technician calls its access port, in short.
    pub const fn port_label(self) -> Message {
        match self {
            Self::Liquid => Message::new("name-port-liquid-short"),
            Self::Suction => Message::new("name-port-suction-short"),
        }
    }
}

impl FaultKind {
    /// What a technician calls it.
    pub fn label(self) -> Message {
        Message::new(self.sheet().key)
    }
}

impl Safety {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::HighPressureSwitch => Message::new("name-high-pressure-switch"),
            Self::LowPressureSwitch => Message::new("name-low-pressure-switch"),
            Self::Overload => Message::new("name-overload"),
        }
    }
}
