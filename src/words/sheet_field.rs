//! What goes on the job sheet.

use super::{Dimension, Spot};
use crate::plant::FaultKind;
use serde::{Deserialize, Serialize};
use strum::VariantArray;

/// A blank of the job sheet.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, VariantArray,
)]
pub enum SheetField {
    /// Standing pressure before anything runs.
    StandingPressure,
    /// Suction pressure, running.
    SuctionPressure,
    /// Liquid pressure, running.
    LiquidPressure,
    /// Suction line temperature.
    SuctionLine,
    /// Liquid line temperature.
    LiquidLine,
    /// Temperature after the drier.
    AfterDrier,
    /// Outdoor air.
    OutdoorAir,
    /// Return air, dry bulb.
    ReturnAir,
    /// Return air, wet bulb.
    ReturnWetBulb,
    /// Supply air.
    SupplyAir,
    /// Compressor current.
    Amps,
    /// Superheat, own calculation.
    Superheat,
    /// Subcooling, own calculation.
    Subcooling,
    /// Target superheat from the chart, for the weather of the day.
    TargetSuperheat,
    /// The vacuum reached.
    Vacuum,
    /// Refrigerant put in.
    RefrigerantIn,
    /// Refrigerant taken out.
    RefrigerantOut,
}

impl SheetField {
    /// Every blank, in the order of the sheet.
    pub const ALL: [Self; Self::VARIANTS.len()] =
        *Self::VARIANTS.first_chunk().expect("as long as itself");

    /// What a value in this blank must be.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::StandingPressure | Self::SuctionPressure | Self::LiquidPressure => {
                Dimension::GaugePressure
            }
            Self::SuctionLine
            | Self::LiquidLine
            | Self::AfterDrier
            | Self::OutdoorAir
            | Self::ReturnAir
            | Self::ReturnWetBulb
            | Self::SupplyAir => Dimension::Temperature,
            Self::Amps => Dimension::Current,
            Self::Superheat | Self::Subcooling | Self::TargetSuperheat => {
                Dimension::TemperatureDifference
            }
            Self::Vacuum => Dimension::Vacuum,
            Self::RefrigerantIn | Self::RefrigerantOut => Dimension::Mass,
        }
    }
}

/// What the apprentice says is wrong, and where.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Diagnosis {
    /// The fault; `None` says that nothing is wrong.
    pub fault: Option<FaultKind>,
    /// Where, for a fault that can be in several places.
    #[serde(default)]
    pub at: Option<Spot>,
}
