//! A value with its unit, as files, readings and the job sheet carry it.

use super::{Dimension, Quantity};
use crate::text::Message;
use crate::units::{
    Current, GaugePressure, Mass, Pressure, PressureDifference, Temperature, TemperatureDifference,
    Time,
};
use serde::{Deserialize, Serialize};
use std::fmt;

/// A quantity as a file writes it: `Psig(0.5)`, `Microns(500)`, `Fahrenheit(55)`.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Level {
    /// Gauge pressure, pounds per square inch.
    Psig(f64),
    /// Gauge pressure, kilopascals.
    KilopascalsGauge(f64),
    /// Absolute pressure in a vacuum, microns of mercury.
    Microns(f64),
    /// Difference of pressure, pounds per square inch.
    Psi(f64),
    /// Temperature, degrees Fahrenheit.
    Fahrenheit(f64),
    /// Temperature, degrees Celsius.
    Celsius(f64),
    /// Difference of temperature, Fahrenheit degrees.
    FahrenheitDegrees(f64),
    /// Difference of temperature, kelvins.
    Kelvins(f64),
    /// Electric current.
    Amps(f64),
    /// Mass, grams.
    Grams(f64),
    /// Mass, kilograms.
    Kilograms(f64),
    /// Mass, pounds.
    Pounds(f64),
    /// Mass, ounces.
    Ounces(f64),
    /// Time, seconds.
    Seconds(f64),
    /// Time, minutes.
    Minutes(f64),
    /// A signal or share without unit.
    Plain(f64),
}

impl Level {
    /// The number, in the unit that the level has.
    pub const fn number(self) -> f64 {
        match self {
            Self::Psig(v)
            | Self::KilopascalsGauge(v)
            | Self::Microns(v)
            | Self::Psi(v)
            | Self::Fahrenheit(v)
            | Self::Celsius(v)
            | Self::FahrenheitDegrees(v)
            | Self::Kelvins(v)
            | Self::Amps(v)
            | Self::Grams(v)
            | Self::Kilograms(v)
            | Self::Pounds(v)
            | Self::Ounces(v)
            | Self::Seconds(v)
            | Self::Minutes(v)
            | Self::Plain(v) => v,
        }
    }

    /// The same in SI.
    pub fn quantity(self) -> Quantity {
        use Dimension as D;
        let (dimension, si) = match self {
            Self::Psig(v) => (D::GaugePressure, GaugePressure::from_psig(v).pascals()),
            Self::KilopascalsGauge(v) => (
                D::GaugePressure,
                GaugePressure::from_kilopascals(v).pascals(),
            ),
            Self::Microns(v) => (D::Vacuum, Pressure::from_microns(v).pascals()),
            Self::Psi(v) => (
                D::PressureDifference,
                PressureDifference::from_psi(v).pascals(),
            ),
            Self::Fahrenheit(v) => (D::Temperature, Temperature::from_fahrenheit(v).kelvin()),
            Self::Celsius(v) => (D::Temperature, Temperature::from_celsius(v).kelvin()),
            Self::FahrenheitDegrees(v) => (
                D::TemperatureDifference,
                TemperatureDifference::from_fahrenheit(v).kelvins(),
            ),
            Self::Kelvins(v) => (D::TemperatureDifference, v),
            Self::Amps(v) => (D::Current, Current::from_amps(v).amps()),
            Self::Grams(v) => (D::Mass, Mass::from_grams(v).kilograms()),
            Self::Kilograms(v) => (D::Mass, v),
            Self::Pounds(v) => (D::Mass, Mass::from_pounds(v).kilograms()),
            Self::Ounces(v) => (D::Mass, Mass::from_ounces(v).kilograms()),
            Self::Seconds(v) => (D::Time, v),
            Self::Minutes(v) => (D::Time, Time::from_minutes(v).seconds()),
            Self::Plain(v) => (D::Plain, v),
        };
        Quantity { si, dimension }
    }
}

impl Quantity {
    /// The same in the inch-pound unit of the trade.
    pub fn inch_pound(self) -> Level {
        match self.dimension {
            Dimension::GaugePressure => Level::Psig(GaugePressure::from_pascals(self.si).psig()),
            Dimension::Vacuum => Level::Microns(Pressure::from_pascals(self.si).microns()),
            Dimension::PressureDifference => {
                Level::Psi(PressureDifference::from_pascals(self.si).psi())
            }
            Dimension::Temperature => {
                Level::Fahrenheit(Temperature::from_kelvin(self.si).fahrenheit())
            }
            Dimension::TemperatureDifference => {
                Level::FahrenheitDegrees(TemperatureDifference::from_kelvins(self.si).fahrenheit())
            }
            Dimension::Current => Level::Amps(self.si),
            Dimension::Mass => Level::Ounces(Mass::from_kilograms(self.si).ounces()),
            Dimension::Time => Level::Minutes(Time::from_seconds(self.si).minutes()),
            Dimension::Plain => Level::Plain(self.si),
        }
    }
}

impl Level {
    /// The number with its unit.
    pub fn words(self) -> Message {
        Message::verbatim(match self {
            Self::KilopascalsGauge(v) => {
                return Message::new("reading-gauge-kilopascals").with("value", format!("{v:.0}"));
            }
            Self::Microns(v) => {
                return Message::new("reading-microns").with("value", format!("{v:.0}"));
            }
            Self::Psig(v) => format!("{v:.1} psig"),
            Self::Psi(v) => format!("{v:.1} psi"),
            Self::Fahrenheit(v) | Self::FahrenheitDegrees(v) => format!("{v:.1} °F"),
            Self::Celsius(v) => format!("{v:.1} °C"),
            Self::Kelvins(v) => format!("{v:.1} K"),
            Self::Amps(v) => format!("{v:.1} A"),
            Self::Grams(v) => format!("{v:.1} g"),
            Self::Kilograms(v) => format!("{v:.3} kg"),
            Self::Pounds(v) => format!("{v:.2} lb"),
            Self::Ounces(v) => format!("{v:.1} oz"),
            Self::Seconds(v) => format!("{v:.0} s"),
            Self::Minutes(v) => format!("{v:.1} min"),
            Self::Plain(v) => format!("{v:.2}"),
        })
    }
}

impl fmt::Display for Level {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.words().fmt(f)
    }
}

/// A side of a level.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Bound {
    /// Strictly below the level.
    Below(Level),
    /// Strictly above the level.
    Above(Level),
    /// Between two levels, both included.
    Between(Level, Level),
}

impl Bound {
    /// Whether a value in SI lies there. A level of another dimension never does; the checks of
    /// scenario and procedure refuse such a bound beforehand.
    pub fn holds(self, value: Quantity) -> bool {
        let same = |level: Level| {
            let level = level.quantity();
            (level.dimension == value.dimension).then_some(level.si)
        };
        match self {
            Self::Below(level) => same(level).is_some_and(|l| value.si < l),
            Self::Above(level) => same(level).is_some_and(|l| value.si > l),
            Self::Between(low, high) => {
                same(low).is_some_and(|l| value.si >= l)
                    && same(high).is_some_and(|h| value.si <= h)
            }
        }
    }

    /// The bound in words, with each level as `told` tells it.
    pub fn words(self, told: impl Fn(Level) -> Message) -> Message {
        match self {
            Self::Below(level) => Message::new("reading-below").with("level", told(level)),
            Self::Above(level) => Message::new("reading-above").with("level", told(level)),
            Self::Between(low, high) => Message::new("reading-between")
                .with("low", told(low))
                .with("high", told(high)),
        }
    }

    /// The levels that it names, for checking their dimension.
    pub fn levels(self) -> [Level; 2] {
        match self {
            Self::Below(level) | Self::Above(level) => [level, level],
            Self::Between(low, high) => [low, high],
        }
    }
}

impl fmt::Display for Bound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.words(Level::words).fmt(f)
    }
}
