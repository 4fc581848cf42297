//! What an instrument can show.

use super::{Dimension, Level, Quantity, Shown, Spot, ThermometerPlace};
use crate::kit::plain::plain;
use crate::kit::{refrigerant_cylinder, tools};
use crate::text::Message;
use crate::units::PSI;
use serde::{Deserialize, Serialize};
use std::fmt;
use strum::{EnumIter, IntoEnumIterator, VariantNames};

/// An instrument's face that can be read.
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
pub enum Reading {
    /// The low gauge of the manifold.
    LowGauge,
    /// The high gauge of the manifold.
    HighGauge,
    /// The micron gauge.
    Microns,
    /// The clamp meter on the compressor's lead.
    CompressorAmps,
    /// A thermometer.
    #[strum(disabled)]
    Thermometer(ThermometerPlace),
    /// The electronic leak detector: 0 silent, 1 full alarm.
    Detector,
    /// The bubble solution at a spot: 0 still, 1 blown away.
    #[strum(disabled)]
    Bubbles(Spot),
    /// On a tool. A file leaves this word out: `Nitrogen(Outlet)`.
    #[serde(skip)]
    #[strum(disabled)]
    Tool(tools::Reading),
}

plain!(Reading, tools::Reading, earlier: [
    "NitrogenOutlet" => Nitrogen "Outlet",
    "NitrogenCylinder" => Nitrogen "Cylinder",
    "Scale" => RefrigerantCylinder "Scale",
]);

impl Reading {
    /// What is fixed of it.
    ///
    /// Steady, chosen: a little more than one step of the instrument, and of a micron gauge, whose
    /// last digit dances, two percent (common practice, no source).
    fn row(self) -> Row {
        let row = |dimension, steady_within, key| Row {
            dimension,
            steady_within,
            steady_share: 0.0,
            key,
        };
        match self {
            Self::LowGauge => row(Dimension::GaugePressure, 0.6 * PSI, "low_gauge_psig"),
            Self::HighGauge => row(Dimension::GaugePressure, 1.1 * PSI, "high_gauge_psig"),
            Self::Microns => Row {
                steady_share: 0.02,
                ..row(Dimension::Vacuum, 0.0, "microns")
            },
            Self::CompressorAmps => row(Dimension::Current, 0.15, "compressor_amps"),
            Self::Detector => row(Dimension::Plain, 0.05, "detector"),
            Self::Bubbles(_) => row(Dimension::Plain, 0.05, "bubbles"),
            Self::Thermometer(place) => row(Dimension::Temperature, 0.25 / 1.8, place.into()),
            Self::Tool(reading) => {
                let face = reading.face();
                row(face.dimension, face.steady_within, reading.key())
            }
        }
    }

    /// What its number means.
    pub fn dimension(self) -> Dimension {
        self.row().dimension
    }

    /// By how much it may move and is still called steady, SI, where it shows `value`.
    pub fn steady_within(self, value: f64) -> f64 {
        let row = self.row();
        row.steady_within + row.steady_share * value
    }

    /// Its name for other programs, with its unit: `low_gauge_psig`.
    pub fn key(self) -> String {
        let key = self.row().key;
        match self {
            Self::Tool(reading) => tool_key(reading),
            Self::Thermometer(_) => format!("{key}_f"),
            Self::LowGauge
            | Self::HighGauge
            | Self::Microns
            | Self::CompressorAmps
            | Self::Detector
            | Self::Bubbles(_) => key.to_owned(),
        }
    }

    /// What a tool shows.
    pub fn of(reading: impl Into<tools::Reading>) -> Self {
        Self::Tool(reading.into())
    }

    /// How many readings there are.
    pub const COUNT: usize =
        OWN + ThermometerPlace::ALL.len() + tools::Reading::COUNT + Spot::ALL.len();

    /// The readings that have one face each; bubbles are seen at a spot.
    pub fn faces() -> impl Iterator<Item = Self> {
        let thermometers = ThermometerPlace::ALL.into_iter().map(Self::Thermometer);
        let of_tools = tools::Reading::all().map(Self::Tool);
        Self::iter().chain(thermometers).chain(of_tools)
    }

    /// Every reading: the faces, then the bubbles at each spot.
    pub fn all() -> impl Iterator<Item = Self> {
        Self::faces().chain(Spot::ALL.into_iter().map(Self::Bubbles))
    }

    /// Its place in [`Reading::all`].
    pub fn index(self) -> usize {
        let thermometers = OWN;
        let of_tools = thermometers + ThermometerPlace::ALL.len();
        let bubbles = of_tools + tools::Reading::COUNT;
        match self {
            Self::LowGauge => 0,
            Self::HighGauge => 1,
            Self::Microns => 2,
            Self::CompressorAmps => 3,
            Self::Detector => 4,
            Self::Thermometer(place) => thermometers + place as usize,
            Self::Tool(reading) => of_tools + reading.index(),
            Self::Bubbles(spot) => bubbles + spot.index(),
        }
    }
}

/// What is fixed of a reading.
struct Row {
    dimension: Dimension,
    steady_within: f64,
    steady_share: f64,
    /// Its name for other programs; of a thermometer or a tool without the unit.
    key: &'static str,
}

/// The name of a tool's reading for other programs: `nitrogen_outlet_psig`.
fn tool_key(reading: tools::Reading) -> String {
    // The scale has had its name alone since before there was another one.
    if reading == tools::Reading::from(refrigerant_cylinder::Reading::Scale) {
        return "scale_oz".to_owned();
    }
    let unit = match reading.face().dimension {
        Dimension::GaugePressure => "_psig",
        Dimension::Vacuum => "_microns",
        Dimension::PressureDifference => "_psi",
        Dimension::Temperature | Dimension::TemperatureDifference => "_f",
        Dimension::Current => "_amps",
        Dimension::Mass => "_oz",
        Dimension::Time => "_min",
        Dimension::Plain => "",
    };
    reading.key().replace("-shows-", "_").replace('-', "_") + unit
}

/// How many readings have a name of their own and one face.
const OWN: usize = 5;

impl Shown {
    /// The number in inch-pound units, if one is shown.
    pub fn level(self) -> Option<Level> {
        self.quantity().map(Quantity::inch_pound)
    }

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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reading_has_a_place_of_its_own() {
        let places: Vec<usize> = Reading::all().map(Reading::index).collect();
        assert_eq!(places, (0..Reading::COUNT).collect::<Vec<_>>());
    }
}
