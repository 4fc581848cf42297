//! A number must lie in its range.

use super::super::{Diagnostic, Located};
use crate::units::{
    Area, Conductance, Current, Displacement, GaugePressure, HeatCapacity, Irradiance, Length,
    Mass, MassFlow, Power, Temperature, TemperatureDifference, Time, Voltage, Volume,
};

/// How a number is read from its place, and the unit of its range.
pub(super) type Measure = (fn(Located<'_>) -> Option<f64>, &'static str);

pub(super) const PLAIN: Measure = (|at| at.read(), "");
pub(super) const AN_HOUR: Measure = (|at| at.read(), " an hour");
pub(super) const KILOGRAMS: Measure = (|at| at.read().map(Mass::kilograms), " kg");
pub(super) const GRAMS: Measure = (|at| at.read().map(Mass::grams), " g");
pub(super) const METRES: Measure = (|at| at.read().map(Length::metres), " m");
pub(super) const FEET: Measure = (|at| at.read().map(Length::feet), " ft");
pub(super) const MILLIMETRES: Measure = (|at| at.read().map(Length::millimetres), " mm");
pub(super) const SQUARE_MILLIMETRES: Measure =
    (|at| at.read().map(Area::square_millimetres), " mm²");
pub(super) const CUBIC_METRES: Measure = (|at| at.read().map(Volume::cubic_metres), " m³");
pub(super) const LITRES: Measure = (|at| at.read().map(Volume::litres), " L");
pub(super) const LITRES_PER_SECOND: Measure =
    (|at| at.read().map(Displacement::litres_per_second), " L/s");
pub(super) const PSIG: Measure = (|at| at.read().map(GaugePressure::psig), " psig");
pub(super) const FAHRENHEIT: Measure = (|at| at.read().map(Temperature::fahrenheit), " °F");
pub(super) const KELVINS: Measure = (|at| at.read().map(TemperatureDifference::kelvins), " K");
pub(super) const WATTS: Measure = (|at| at.read().map(Power::watts), " W");
pub(super) const KILOGRAMS_PER_SECOND: Measure =
    (|at| at.read().map(MassFlow::kilograms_per_second), " kg/s");
pub(super) const WATTS_PER_KELVIN: Measure =
    (|at| at.read().map(Conductance::watts_per_kelvin), " W/K");
pub(super) const JOULES_PER_KELVIN: Measure =
    (|at| at.read().map(HeatCapacity::joules_per_kelvin), " J/K");
pub(super) const HOURS: Measure = (|at| at.read().map(Time::hours), " h");
pub(super) const FAHRENHEIT_DEGREES: Measure =
    (|at| at.read().map(TemperatureDifference::fahrenheit), " °F");
pub(super) const KILOJOULES_PER_KELVIN: Measure = (
    |at| at.read().map(HeatCapacity::kilojoules_per_kelvin),
    " kJ/K",
);
pub(super) const KILOGRAMS_PER_HOUR: Measure =
    (|at| at.read().map(MassFlow::kilograms_per_hour), " kg/h");
pub(super) const WATTS_PER_SQUARE_METRE: Measure = (
    |at| at.read().map(Irradiance::watts_per_square_metre),
    " W/m²",
);
pub(super) const SECONDS: Measure = (|at| at.read().map(Time::seconds), " s");
pub(super) const VOLTS: Measure = (|at| at.read().map(Voltage::volts), " V");
pub(super) const AMPS: Measure = (|at| at.read().map(Current::amps), " A");

/// A unit turned into SI and back moves the last digits of a number by such a share.
const ROUNDING: f64 = 1e-12;

/// Checks that the number at a place, if there is one, lies from `least` to `most`. What cannot be
/// read has its error already.
pub(super) fn check_range(
    place: Located<'_>,
    name: &str,
    (measure, unit): Measure,
    (least, most): (f64, f64),
    wrong: &mut Vec<Diagnostic>,
) {
    if let Some(found) = measure(place)
        && !(least - ROUNDING * least.abs()..=most + ROUNDING * most.abs()).contains(&found)
    {
        let found = number(found);
        let message = format!("{name} is out of range: {found}{unit}");
        let hint = format!("it must lie from {least} to {most}{unit}");
        wrong.push(place.error_with_hint(message, hint));
    }
}

/// A number for a message: four digits behind the point at most, very large and small ones with an
/// exponent.
fn number(value: f64) -> String {
    if value != 0.0 && !(1e-3..1e9).contains(&value.abs()) {
        return format!("{value:.3e}");
    }
    let text = format!("{value:.4}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

#[cfg(test)]
mod tests {
    use super::number;

    #[test]
    fn a_number_is_told_without_idle_digits() {
        assert_eq!(number(0.0), "0");
        assert_eq!(number(-5.0), "-5");
        assert_eq!(number(0.1 + 0.2), "0.3");
        assert_eq!(number(120.0), "120");
        assert_eq!(number(1e9), "1.000e9");
        assert_eq!(number(2.5e-6), "2.500e-6");
    }
}
