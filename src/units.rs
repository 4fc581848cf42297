//! Quantity newtypes: SI inside, the trade's units at the edges.
//!
//! Where people err there are separate types: absolute, gauge and difference of pressure;
//! temperature and difference of temperature. A file writes the unit, `charge: Pounds(6.5)`;
//! a bare number is an error. A formula unwraps to `f64` in SI and wraps its result again.

pub mod quantity;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::ops::{Add, Neg, Sub};

/// The standard atmosphere, Pa: what a gauge reads as zero. Source: ISO 2533.
pub const ATMOSPHERE: f64 = 101_325.0;

/// One pound-force per square inch, Pa. Source: NIST SP 811, Appendix B.
pub const PSI: f64 = 6_894.757_293_168;

/// One micron of mercury, Pa: a thousandth of a torr. Source: NIST SP 811, Appendix B.
pub const MICRON: f64 = ATMOSPHERE / 760_000.0;

/// One international-table British thermal unit, J. Source: NIST SP 811, Appendix B.
pub const BTU: f64 = 1_055.055_852_62;

/// Declares a quantity. Each line is a unit: its name in files, constructor, getter, then
/// `si = value * scale + offset`. The first line is what a file is written in.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident {
        $($unit:ident $from:ident $to:ident $scale:expr, $offset:expr;)+
    }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            $(
                #[doc = concat!("From a value in ", stringify!($to), ".")]
                #[inline]
                pub const fn $from(value: f64) -> Self { Self(value * $scale + $offset) }

                #[doc = concat!("The value in ", stringify!($to), ".")]
                #[inline]
                pub const fn $to(self) -> f64 { (self.0 - $offset) / $scale }
            )+

            /// The names of the units that a file may write, for hints.
            pub const UNITS: &'static [&'static str] = &[$(stringify!($unit)),+];
        }

        const _: () = {
            #[derive(Serialize, Deserialize)]
            enum Written { $($unit(f64)),+ }

            impl<'de> Deserialize<'de> for $name {
                fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                    let (value, quantity) = match Written::deserialize(deserializer)? {
                        $(Written::$unit(v) => (v, Self::$from(v)),)+
                    };
                    if value.is_finite() {
                        Ok(quantity)
                    } else {
                        Err(de::Error::custom("a quantity must be a finite number"))
                    }
                }
            }

            impl Serialize for $name {
                fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                    // The first unit is the one a file is written in.
                    let written = [$(Written::$unit(self.$to())),+].into_iter().next();
                    written.expect("every quantity has a unit").serialize(serializer)
                }
            }
        };
    };
}

quantity! {
    /// An absolute pressure.
    Pressure {
        Pascals from_pascals pascals 1.0, 0.0;
        Psia from_psia psia PSI, 0.0;
        Microns from_microns microns MICRON, 0.0;
    }
}

quantity! {
    /// A pressure above the standard atmosphere, as a gauge shows it; negative in a vacuum.
    GaugePressure {
        Psig from_psig psig PSI, 0.0;
        GaugePascals from_pascals pascals 1.0, 0.0;
        KilopascalsGauge from_kilopascals kilopascals 1e3, 0.0;
    }
}

quantity! {
    /// A difference of two pressures.
    PressureDifference {
        PascalsApart from_pascals pascals 1.0, 0.0;
        Psi from_psi psi PSI, 0.0;
    }
}

quantity! {
    /// A thermodynamic temperature.
    Temperature {
        Kelvin from_kelvin kelvin 1.0, 0.0;
        Celsius from_celsius celsius 1.0, 273.15;
        Fahrenheit from_fahrenheit fahrenheit 1.0 / 1.8, 459.67 / 1.8;
    }
}

quantity! {
    /// A difference of two temperatures: superheat, subcooling, a split.
    TemperatureDifference {
        Kelvins from_kelvins kelvins 1.0, 0.0;
        FahrenheitDegrees from_fahrenheit fahrenheit 1.0 / 1.8, 0.0;
    }
}

quantity! {
    /// A mass.
    Mass {
        Kilograms from_kilograms kilograms 1.0, 0.0;
        Grams from_grams grams 1e-3, 0.0;
        Pounds from_pounds pounds 0.453_592_37, 0.0;
        Ounces from_ounces ounces 0.028_349_523_125, 0.0;
    }
}

quantity! {
    /// A volume.
    Volume {
        CubicMetres from_cubic_metres cubic_metres 1.0, 0.0;
        Litres from_litres litres 1e-3, 0.0;
        Millilitres from_millilitres millilitres 1e-6, 0.0;
    }
}

quantity! {
    /// A length.
    Length {
        Metres from_metres metres 1.0, 0.0;
        Millimetres from_millimetres millimetres 1e-3, 0.0;
        Inches from_inches inches 0.0254, 0.0;
        Feet from_feet feet 0.3048, 0.0;
    }
}

quantity! {
    /// An area of flow.
    Area {
        SquareMetres from_square_metres square_metres 1.0, 0.0;
        SquareMillimetres from_square_millimetres square_millimetres 1e-6, 0.0;
    }
}

quantity! {
    /// A volume swept in a time: a compressor, a vacuum pump.
    Displacement {
        CubicMetresPerSecond from_cubic_metres_per_second cubic_metres_per_second 1.0, 0.0;
        LitresPerSecond from_litres_per_second litres_per_second 1e-3, 0.0;
        CubicFeetPerMinute from_cubic_feet_per_minute cubic_feet_per_minute 4.719_474_432e-4, 0.0;
    }
}

quantity! {
    /// A mass flow.
    MassFlow {
        KilogramsPerSecond from_kilograms_per_second kilograms_per_second 1.0, 0.0;
        KilogramsPerHour from_kilograms_per_hour kilograms_per_hour 1.0 / 3600.0, 0.0;
        GramsPerHour from_grams_per_hour grams_per_hour 1e-3 / 3600.0, 0.0;
        GramsPerYear from_grams_per_year grams_per_year 1e-3 / 31_557_600.0, 0.0;
    }
}

quantity! {
    /// A power or a heat flow.
    Power {
        Watts from_watts watts 1.0, 0.0;
        Kilowatts from_kilowatts kilowatts 1e3, 0.0;
        BtuPerHour from_btu_per_hour btu_per_hour BTU / 3600.0, 0.0;
    }
}

quantity! {
    /// Heat flow per degree: the UA of a coil or a wall.
    Conductance {
        WattsPerKelvin from_watts_per_kelvin watts_per_kelvin 1.0, 0.0;
    }
}

quantity! {
    /// Heat per degree: the wall of a part.
    HeatCapacity {
        JoulesPerKelvin from_joules_per_kelvin joules_per_kelvin 1.0, 0.0;
        KilojoulesPerKelvin from_kilojoules_per_kelvin kilojoules_per_kelvin 1e3, 0.0;
    }
}

quantity! {
    /// The power of the sun on a surface.
    Irradiance {
        WattsPerSquareMetre from_watts_per_square_metre watts_per_square_metre 1.0, 0.0;
    }
}

quantity! {
    /// A span of time.
    Time {
        Seconds from_seconds seconds 1.0, 0.0;
        Minutes from_minutes minutes 60.0, 0.0;
        Hours from_hours hours 3600.0, 0.0;
    }
}

quantity! {
    /// A tightening torque.
    Torque {
        NewtonMetres from_newton_metres newton_metres 1.0, 0.0;
        FootPounds from_foot_pounds foot_pounds 1.355_817_948_331_4, 0.0;
    }
}

quantity! {
    /// An electric current.
    Current {
        Amps from_amps amps 1.0, 0.0;
    }
}

quantity! {
    /// An electric tension.
    Voltage {
        Volts from_volts volts 1.0, 0.0;
    }
}

quantity! {
    /// Turns of a stem or a regulator's screw.
    Turns {
        QuarterTurns from_quarters quarters 0.25, 0.0;
        FullTurns from_full full 1.0, 0.0;
    }
}

impl Pressure {
    /// What a true gauge shows at this pressure.
    #[inline]
    pub const fn gauge(self) -> GaugePressure {
        GaugePressure(self.0 - ATMOSPHERE)
    }
}

impl GaugePressure {
    /// The absolute pressure.
    #[inline]
    pub const fn absolute(self) -> Pressure {
        Pressure(self.0 + ATMOSPHERE)
    }

    /// Inches of mercury of vacuum, as the low gauge's scale counts them; 0 at the atmosphere.
    pub const fn inches_vacuum(self) -> f64 {
        -self.0 / 3_386.389
    }
}

impl Sub for Pressure {
    type Output = PressureDifference;
    fn sub(self, other: Self) -> PressureDifference {
        PressureDifference(self.0 - other.0)
    }
}

impl Add<PressureDifference> for Pressure {
    type Output = Self;
    fn add(self, by: PressureDifference) -> Self {
        Self(self.0 + by.0)
    }
}

impl Sub for GaugePressure {
    type Output = PressureDifference;
    fn sub(self, other: Self) -> PressureDifference {
        PressureDifference(self.0 - other.0)
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference(self.0 - other.0)
    }
}

impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, by: TemperatureDifference) -> Self {
        Self(self.0 + by.0)
    }
}

impl Neg for TemperatureDifference {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Add for Mass {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Mass {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Add for Time {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

/// A share of a whole, 0 to 1: an opening, a relative humidity, a share of clogging.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub struct Fraction(f64);

impl Fraction {
    /// Nothing.
    pub const ZERO: Self = Self(0.0);
    /// All of it.
    pub const ONE: Self = Self(1.0);

    /// The nearest share to `value` in 0..=1; not a number gives nothing.
    pub const fn clamped(value: f64) -> Self {
        Self(if value > 0.0 { value.min(1.0) } else { 0.0 })
    }

    /// The share as a number from 0 to 1.
    #[inline]
    pub const fn get(self) -> f64 {
        self.0
    }
}

impl TryFrom<f64> for Fraction {
    type Error = String;
    fn try_from(value: f64) -> Result<Self, String> {
        if (0.0..=1.0).contains(&value) {
            Ok(Self(value))
        } else {
            Err(format!("must lie in 0..=1, found {value}"))
        }
    }
}

impl From<Fraction> for f64 {
    fn from(share: Fraction) -> Self {
        share.0
    }
}
