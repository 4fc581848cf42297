//! What an instrument can show.

use super::{Dimension, Level, Quantity, Spot, ThermometerPlace};
use crate::text::Message;
use serde::{Deserialize, Serialize};
use std::fmt;

/// An instrument's face that can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Reading {
    /// The low gauge of the manifold.
    LowGauge,
    /// The high gauge of the manifold.
    HighGauge,
    /// The micron gauge.
    Microns,
    /// The outlet gauge of the nitrogen regulator.
    NitrogenOutlet,
    /// The cylinder gauge of the nitrogen regulator.
    NitrogenCylinder,
    /// The scale under the refrigerant cylinder, less its tare.
    Scale,
    /// The clamp meter on the compressor's lead.
    CompressorAmps,
    /// A thermometer.
    Thermometer(ThermometerPlace),
    /// The electronic leak detector: 0 silent, 1 full alarm.
    Detector,
    /// The bubble solution at a spot: 0 still, 1 blown away.
    Bubbles(Spot),
}

impl Reading {
    /// What its number means.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::LowGauge | Self::HighGauge | Self::NitrogenOutlet | Self::NitrogenCylinder => {
                Dimension::GaugePressure
            }
            Self::Microns => Dimension::Vacuum,
            Self::Scale => Dimension::Mass,
            Self::CompressorAmps => Dimension::Current,
            Self::Thermometer(_) => Dimension::Temperature,
            Self::Detector | Self::Bubbles(_) => Dimension::Plain,
        }
    }

    /// The readings that have one face each; bubbles are seen at a spot.
    pub const FACES: [Self; 16] = [
        Self::LowGauge,
        Self::HighGauge,
        Self::Microns,
        Self::NitrogenOutlet,
        Self::NitrogenCylinder,
        Self::Scale,
        Self::CompressorAmps,
        Self::Detector,
        Self::Thermometer(ThermometerPlace::SuctionLine),
        Self::Thermometer(ThermometerPlace::LiquidLine),
        Self::Thermometer(ThermometerPlace::AfterDrier),
        Self::Thermometer(ThermometerPlace::DischargeLine),
        Self::Thermometer(ThermometerPlace::OutdoorAir),
        Self::Thermometer(ThermometerPlace::ReturnAir),
        Self::Thermometer(ThermometerPlace::ReturnWetBulb),
        Self::Thermometer(ThermometerPlace::SupplyAir),
    ];
}

/// What the face shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shown {
    /// A number.
    Value(Quantity),
    /// The value is above what the instrument can show.
    OverRange,
    /// The instrument is off, not placed, or ruined.
    Nothing,
}

impl Shown {
    /// The number, if one is shown.
    pub const fn quantity(self) -> Option<Quantity> {
        match self {
            Self::Value(quantity) => Some(quantity),
            Self::OverRange | Self::Nothing => None,
        }
    }

    /// The number in inch-pound units, if one is shown.
    pub fn level(self) -> Option<Level> {
        self.quantity().map(Quantity::inch_pound)
    }
}

impl Shown {
    /// What is shown in words, with a number as `told` tells it.
    pub fn words(self, told: impl FnOnce(Quantity) -> Message) -> Message {
        match self {
            Self::Value(quantity) => told(quantity),
            Self::OverRange => Message::new("reading-over-range"),
            Self::Nothing => Message::new("reading-nothing"),
        }
    }
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.words(|quantity| quantity.inch_pound().words()).fmt(f)
    }
}
