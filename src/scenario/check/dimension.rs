//! A level must be of the kind that its reading, finding or blank is of.

use super::super::{Diagnostic, Located};
use crate::words::{Bound, Dimension, Level};

/// What a dimension is called, and the units that a file may write it in.
pub(super) const fn name_and_units(dimension: Dimension) -> (&'static str, &'static str) {
    match dimension {
        Dimension::GaugePressure => ("a gauge pressure", "Psig or KilopascalsGauge"),
        Dimension::Vacuum => ("an absolute pressure in a vacuum", "Microns"),
        Dimension::PressureDifference => ("a difference of pressure", "Psi"),
        Dimension::Temperature => ("a temperature", "Fahrenheit or Celsius"),
        Dimension::TemperatureDifference => (
            "a difference of temperature",
            "FahrenheitDegrees or Kelvins",
        ),
        Dimension::Current => ("a current", "Amps"),
        Dimension::Mass => ("a mass", "Grams, Kilograms, Pounds or Ounces"),
        Dimension::Time => ("a time", "Seconds or Minutes"),
        Dimension::Plain => ("a plain number", "Plain"),
    }
}

/// What a difference of two values of a dimension is measured in.
pub(super) const fn difference_of(dimension: Dimension) -> Dimension {
    match dimension {
        Dimension::GaugePressure => Dimension::PressureDifference,
        Dimension::Temperature => Dimension::TemperatureDifference,
        same => same,
    }
}

/// Checks that a level is of a dimension; `what` is what it is compared with.
pub(crate) fn check_level(
    level: Located<'_>,
    what: &str,
    dimension: Dimension,
    wrong: &mut Vec<Diagnostic>,
) {
    let Some(found) = level.read::<Level>() else {
        return;
    };
    let found = found.quantity().dimension;
    if found != dimension {
        let (is, units) = name_and_units(dimension);
        let (written, _) = name_and_units(found);
        let message = format!("{what} is {is}, and this is {written}");
        wrong.push(level.error_with_hint(message, format!("write it in {units}")));
    }
}

/// Checks that a bound is of a dimension and has an inside; `what` is what it bounds.
pub(crate) fn check_bound(
    bound: Located<'_>,
    what: &str,
    dimension: Dimension,
    wrong: &mut Vec<Diagnostic>,
) {
    let before = wrong.len();
    for level in bound.items() {
        check_level(level, what, dimension, wrong);
    }
    if wrong.len() == before
        && let Some(Bound::Between(low, high)) = bound.read()
        && low.quantity().si > high.quantity().si
    {
        let message = format!("nothing lies between {low} and {high}");
        wrong.push(bound.error_with_hint(message, "write the lower level first"));
    }
}
