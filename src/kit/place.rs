//! Where kit goes: hoses and what they can be put on, the micron gauge, thermometers.

use crate::plant::Line;
use crate::text::Message;
use serde::{Deserialize, Serialize};
use strum::VariantArray;

/// A hose of the manifold. By trade custom the low hose is blue, the high red, the centre yellow.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, VariantArray,
)]
pub enum Hose {
    /// From the low side of the manifold.
    Low,
    /// From the high side of the manifold.
    High,
    /// From the centre of the manifold, for service.
    Centre,
}

impl Hose {
    /// All three.
    pub const ALL: [Self; Self::VARIANTS.len()] =
        *Self::VARIANTS.first_chunk().expect("as long as itself");

    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::Low => Message::new("name-hose-low"),
            Self::High => Message::new("name-hose-high"),
            Self::Centre => Message::new("name-hose-centre"),
        }
    }

    /// What a technician calls the hand valve of its side; the centre has none.
    pub const fn valve_label(self) -> Message {
        match self {
            Self::Low => Message::new("name-hand-valve-low"),
            Self::High => Message::new("name-hand-valve-high"),
            Self::Centre => Message::new("name-manifold-centre"),
        }
    }
}

/// What the far end of a hose is on.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, VariantArray,
)]
pub enum HoseEnd {
    /// The suction valve's access port.
    SuctionPort,
    /// The liquid valve's access port.
    LiquidPort,
    /// The inlet of the vacuum pump.
    VacuumPump,
    /// The outlet of the nitrogen cylinder, through its regulator when one is fitted.
    Nitrogen,
    /// The valve of the refrigerant cylinder.
    RefrigerantCylinder,
    /// Nothing: the end is held open to the air.
    OpenAir,
}

impl HoseEnd {
    /// Every place a hose can go.
    pub const ALL: [Self; Self::VARIANTS.len()] =
        *Self::VARIANTS.first_chunk().expect("as long as itself");

    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::SuctionPort => Line::Suction.port_label(),
            Self::LiquidPort => Line::Liquid.port_label(),
            Self::VacuumPump => Message::new("name-vacuum-pump"),
            Self::Nitrogen => Message::new("name-nitrogen"),
            Self::RefrigerantCylinder => Message::new("name-cylinder"),
            Self::OpenAir => Message::new("name-open-air"),
        }
    }

    /// The access port that this is, if it is one.
    pub const fn port(self) -> Option<Line> {
        match self {
            Self::SuctionPort => Some(Line::Suction),
            Self::LiquidPort => Some(Line::Liquid),
            Self::VacuumPump | Self::Nitrogen | Self::RefrigerantCylinder | Self::OpenAir => None,
        }
    }

    /// The end that is the access port of a line.
    pub const fn of_port(line: Line) -> Self {
        match line {
            Line::Suction => Self::SuctionPort,
            Line::Liquid => Self::LiquidPort,
        }
    }
}

/// Where the micron gauge is screwed on.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, VariantArray,
)]
pub enum GaugePlace {
    /// On the cart, reading the air.
    Cart,
    /// On the tee at the pump's inlet.
    Pump,
    /// On the manifold's centre.
    Manifold,
    /// On the side port of the core tool at the suction port.
    SuctionPort,
    /// On the side port of the core tool at the liquid port.
    LiquidPort,
}

impl GaugePlace {
    /// Every place.
    pub const ALL: [Self; Self::VARIANTS.len()] =
        *Self::VARIANTS.first_chunk().expect("as long as itself");

    /// The place, as one says where the gauge is.
    pub const fn label(self) -> Message {
        Message::new(match self {
            Self::Cart => "reading-gauge-on-cart",
            Self::Pump => "reading-gauge-at-pump",
            Self::Manifold => "reading-gauge-at-manifold",
            Self::SuctionPort => "reading-gauge-at-suction-port",
            Self::LiquidPort => "reading-gauge-at-liquid-port",
        })
    }
}

/// Where a thermometer can be clamped or hung.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, VariantArray,
)]
pub enum ThermometerPlace {
    /// The suction line at the outdoor unit.
    SuctionLine,
    /// The liquid line at the outdoor unit, before the drier.
    LiquidLine,
    /// The liquid line after the drier.
    AfterDrier,
    /// The discharge line of the compressor.
    DischargeLine,
    /// The air that enters the outdoor coil.
    OutdoorAir,
    /// The air that returns to the indoor unit, dry bulb.
    ReturnAir,
    /// The same air, wet bulb.
    ReturnWetBulb,
    /// The air that the indoor unit supplies.
    SupplyAir,
}

impl ThermometerPlace {
    /// Every place.
    pub const ALL: [Self; Self::VARIANTS.len()] =
        *Self::VARIANTS.first_chunk().expect("as long as itself");
}

impl ThermometerPlace {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::SuctionLine => Message::new("name-suction-line"),
            Self::LiquidLine => Message::new("name-liquid-line"),
            Self::AfterDrier => Message::new("name-after-drier"),
            Self::DischargeLine => Message::new("name-discharge-line"),
            Self::OutdoorAir => Message::new("name-outdoor-air"),
            Self::ReturnAir => Message::new("name-return-air"),
            Self::ReturnWetBulb => Message::new("name-return-wet-bulb"),
            Self::SupplyAir => Message::new("name-supply-air"),
        }
    }

    /// Whether it is clamped on a pipe, with its error of contact.
    pub const fn is_on_a_pipe(self) -> bool {
        matches!(
            self,
            Self::SuctionLine | Self::LiquidLine | Self::AfterDrier | Self::DischargeLine
        )
    }
}
