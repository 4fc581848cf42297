//! A number with what it measures, as an instrument shows it.

/// What kind of quantity a number is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Dimension {
    /// Pascals above the atmosphere.
    GaugePressure,
    /// Pascals, absolute.
    Vacuum,
    /// Pascals of difference.
    PressureDifference,
    /// Kelvin.
    Temperature,
    /// Kelvin of difference.
    TemperatureDifference,
    /// Amps.
    Current,
    /// Kilograms.
    Mass,
    /// Seconds.
    Time,
    /// A signal or share without unit.
    Plain,
}

/// A number in SI with its dimension.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// The value in the SI unit of the dimension.
    pub si: f64,
    /// What it is.
    pub dimension: Dimension,
}

/// What a face shows.
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
}
