//! The units of measure that the person chose, and how a value is written in them.

use crate::units::{GaugePressure, Temperature};
use crate::words::{Dimension, Level, Quantity, Shown};
use serde::{Deserialize, Serialize};

/// A system of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum System {
    /// psig, °F, ounces, microns.
    #[default]
    InchPound,
    /// kPa, °C, grams, microns.
    Metric,
}

impl System {
    /// A quantity as a level in this system.
    pub fn level(self, quantity: Quantity) -> Level {
        match (self, quantity.dimension) {
            (Self::Metric, Dimension::GaugePressure) => {
                Level::KilopascalsGauge(GaugePressure::from_pascals(quantity.si).kilopascals())
            }
            (Self::Metric, Dimension::Temperature) => {
                Level::Celsius(Temperature::from_kelvin(quantity.si).celsius())
            }
            (Self::Metric, Dimension::TemperatureDifference) => Level::Kelvins(quantity.si),
            (Self::Metric, Dimension::Mass) => Level::Grams(quantity.si * 1e3),
            _ => quantity.inch_pound(),
        }
    }

    /// A level from a number that the person wrote in this system.
    pub fn level_of(self, number: f64, dimension: Dimension) -> Level {
        match (self, dimension) {
            (Self::InchPound, Dimension::GaugePressure) => Level::Psig(number),
            (Self::Metric, Dimension::GaugePressure) => Level::KilopascalsGauge(number),
            (_, Dimension::Vacuum) => Level::Microns(number),
            (_, Dimension::PressureDifference) => Level::Psi(number),
            (Self::InchPound, Dimension::Temperature) => Level::Fahrenheit(number),
            (Self::Metric, Dimension::Temperature) => Level::Celsius(number),
            (Self::InchPound, Dimension::TemperatureDifference) => Level::FahrenheitDegrees(number),
            (Self::Metric, Dimension::TemperatureDifference) => Level::Kelvins(number),
            (_, Dimension::Current) => Level::Amps(number),
            (Self::InchPound, Dimension::Mass) => Level::Ounces(number),
            (Self::Metric, Dimension::Mass) => Level::Grams(number),
            (_, Dimension::Time) => Level::Minutes(number),
            (_, Dimension::Plain) => Level::Plain(number),
        }
    }

    /// The unit in which a dimension is written.
    pub const fn unit(self, dimension: Dimension) -> &'static str {
        match (self, dimension) {
            (Self::InchPound, Dimension::GaugePressure) => "psig",
            (Self::Metric, Dimension::GaugePressure) => "kPa gauge",
            (_, Dimension::Vacuum) => "microns",
            (_, Dimension::PressureDifference) => "psi",
            (Self::InchPound, Dimension::Temperature | Dimension::TemperatureDifference) => "°F",
            (Self::Metric, Dimension::Temperature) => "°C",
            (Self::Metric, Dimension::TemperatureDifference) => "K",
            (_, Dimension::Current) => "A",
            (Self::InchPound, Dimension::Mass) => "oz",
            (Self::Metric, Dimension::Mass) => "g",
            (_, Dimension::Time) => "min",
            (_, Dimension::Plain) => "",
        }
    }

    /// What a face shows, with its unit.
    pub fn shown(self, shown: Shown) -> String {
        match shown {
            Shown::Value(quantity) => self.level(quantity).to_string(),
            Shown::OverRange => "over range".into(),
            Shown::Nothing => "no reading".into(),
        }
    }
}
