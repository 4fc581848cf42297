//! Where something was found.

use crate::kit::{Hose, OutletPlace, tools};
use crate::plant::{Joint, Line, Spot};

/// A place of the unit or the kit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Where {
    /// A joint, port, stem or coil.
    Spot(Spot),
    /// A service valve.
    Valve(Line),
    /// A core tool.
    CoreTool(Line),
    /// A hose.
    Hose(Hose),
    /// The centre of the manifold.
    ManifoldCentre,
    /// A part of the unit.
    Part(Part),
    /// A tool.
    Tool(tools::Name),
    /// The switch of a tool.
    Switch(tools::Name),
    /// The micron gauge.
    MicronGauge,
    /// The leak detector.
    Detector,
}

/// A part of the unit that is no spot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The compressor.
    Compressor,
    /// The contactor while it is in.
    LiveContactor,
    /// The filter drier.
    Drier,
    /// The receiver.
    Receiver,
    /// Indoor coil and suction line.
    LowSide,
    /// The liquid line.
    LiquidLine,
    /// The outdoor unit.
    OutdoorUnit,
    /// The indoor unit.
    IndoorUnit,
}

impl From<Spot> for Where {
    fn from(spot: Spot) -> Self {
        Self::Spot(spot)
    }
}

impl From<Joint> for Where {
    fn from(joint: Joint) -> Self {
        Self::Spot(Spot::Joint(joint))
    }
}

impl From<Part> for Where {
    fn from(part: Part) -> Self {
        Self::Part(part)
    }
}

impl From<OutletPlace> for Where {
    fn from(place: OutletPlace) -> Self {
        match place {
            OutletPlace::Hose(hose) => Self::Hose(hose),
            OutletPlace::ManifoldCentre => Self::ManifoldCentre,
        }
    }
}
