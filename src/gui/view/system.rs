//! The units of measure that the person chose, and how a value is written in them.

use crate::text::Message;
use crate::units::{GaugePressure, PSI, Temperature, Torque};
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
            (Self::InchPound, _)
            | (
                Self::Metric,
                Dimension::Vacuum
                | Dimension::PressureDifference
                | Dimension::Current
                | Dimension::Time
                | Dimension::Plain,
            ) => quantity.inch_pound(),
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
    pub fn unit(self, dimension: Dimension) -> Message {
        Message::verbatim(match (self, dimension) {
            (Self::InchPound, Dimension::GaugePressure) => "psig",
            (Self::Metric, Dimension::GaugePressure) => {
                return Message::new("face-gauge-kilopascals");
            }
            (_, Dimension::Vacuum) => return Message::new("face-microns"),
            (_, Dimension::PressureDifference) => "psi",
            (Self::InchPound, Dimension::Temperature | Dimension::TemperatureDifference) => "°F",
            (Self::Metric, Dimension::Temperature) => "°C",
            (Self::Metric, Dimension::TemperatureDifference) => "K",
            (_, Dimension::Current) => "A",
            (Self::InchPound, Dimension::Mass) => "oz",
            (Self::Metric, Dimension::Mass) => "g",
            (_, Dimension::Time) => "min",
            (_, Dimension::Plain) => "",
        })
    }

    /// A gauge pressure with its unit.
    pub fn gauge(self, pressure: GaugePressure) -> Message {
        match self {
            Self::InchPound => Message::verbatim(format!("{:.0} psig", pressure.psig())),
            Self::Metric => Level::KilopascalsGauge(pressure.kilopascals()).words(),
        }
    }

    /// The unit of pressure in which a gauge counts, Pa, and its name.
    pub fn gauge_unit(self) -> (f64, Message) {
        match self {
            Self::InchPound => (PSI, Message::verbatim("psig")),
            Self::Metric => (1e3, Message::new("face-gauge-kilopascals")),
        }
    }

    /// The unit of torque in which a wrench counts, N m, and its name.
    pub const fn torque_unit(self) -> (f64, &'static str) {
        match self {
            Self::InchPound => (Torque::from_foot_pounds(1.0).newton_metres(), "ft·lb"),
            Self::Metric => (1.0, "N·m"),
        }
    }

    /// A torque with its unit.
    pub fn torque(self, torque: Torque) -> String {
        let (unit, name) = self.torque_unit();
        format!("{:.0} {name}", torque.newton_metres() / unit)
    }

    /// A level that was written in either system, as it reads in this one.
    pub fn converted(self, level: Level) -> Level {
        self.level(level.quantity())
    }

    /// What a face shows, with its unit.
    pub fn shown(self, shown: Shown) -> Message {
        shown.words(|quantity| self.level(quantity).words())
    }
}
