//! Where kit goes: hoses and what they can be put on, the micron gauge, thermometers.

use super::plain::plain;
use super::tools::Name;
use crate::plant::Line;
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoEnumIterator, IntoStaticStr, VariantArray, VariantNames};

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
}

/// What the far end of a hose is on. A file names a tool alone: `Nitrogen`, not `Tool(Nitrogen)`.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Serialize,
    Deserialize,
    EnumIter,
    VariantNames,
)]
#[serde(remote = "Self")]
pub enum HoseEnd {
    /// The suction valve's access port.
    SuctionPort,
    /// The liquid valve's access port.
    LiquidPort,
    /// Nothing: the end is held open to the air.
    OpenAir,
    /// A tool: its valve, its inlet or its outlet.
    #[serde(skip)]
    #[strum(disabled)]
    Tool(Name),
}

plain!(HoseEnd, Name, earlier: []);

impl HoseEnd {
    /// Every place a hose can go, if all tools were brought.
    pub fn all() -> impl Iterator<Item = Self> {
        let tools = <Name as VariantArray>::VARIANTS
            .iter()
            .copied()
            .map(Self::Tool);
        Self::iter().chain(tools)
    }

    /// The access port that this is, if it is one.
    pub const fn port(self) -> Option<Line> {
        match self {
            Self::SuctionPort => Some(Line::Suction),
            Self::LiquidPort => Some(Line::Liquid),
            Self::OpenAir | Self::Tool(_) => None,
        }
    }

    /// The tool that this is, if it is one.
    pub const fn tool(self) -> Option<Name> {
        match self {
            Self::Tool(name) => Some(name),
            Self::SuctionPort | Self::LiquidPort | Self::OpenAir => None,
        }
    }

    /// The end that is the access port of a line.
    pub const fn of_port(line: Line) -> Self {
        match line {
            Line::Suction => Self::SuctionPort,
            Line::Liquid => Self::LiquidPort,
        }
    }

    /// Its number in digests.
    pub(super) const fn number(self) -> u8 {
        match self {
            Self::SuctionPort => 0,
            Self::LiquidPort => 1,
            // The first three tools keep the numbers that earlier digests gave them.
            Self::Tool(name) => [2, 3, 4, 6, 7, 8, 9][name as usize],
            Self::OpenAir => 5,
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
}

/// Where a thermometer can be clamped or hung.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Serialize,
    Deserialize,
    VariantArray,
    IntoStaticStr,
)]
#[strum(serialize_all = "snake_case")]
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
    /// Whether it is clamped on a pipe, with its error of contact.
    pub const fn is_on_a_pipe(self) -> bool {
        matches!(
            self,
            Self::SuctionLine | Self::LiquidLine | Self::AfterDrier | Self::DischargeLine
        )
    }
}
