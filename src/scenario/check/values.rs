//! Every value of a rubric or a procedure must be one that an instrument or a job can have.

use super::super::document::ERRORS_MAX;
use super::super::{Diagnostic, Located};
use crate::units::{Time, Torque};
use crate::words::{Dimension, Level, Quantity};

/// The most that a job or a wait lasts, h. Chosen: a week.
const HOURS_MAX: f64 = 168.0;

/// The most torque that a flare nut gets, N m. Chosen: twice what the largest nut stands.
const TORQUE_MAX: Torque = Torque::from_newton_metres(250.0);

/// The least and the most of each dimension. Chosen: beyond every instrument of ours.
const fn plausible(dimension: Dimension) -> (Level, Level) {
    match dimension {
        Dimension::GaugePressure => (Level::Psig(-15.0), Level::Psig(5000.0)),
        Dimension::Vacuum => (Level::Microns(0.0), Level::Microns(1e6)),
        Dimension::PressureDifference => (Level::Psi(-5000.0), Level::Psi(5000.0)),
        Dimension::Temperature => (Level::Fahrenheit(-200.0), Level::Fahrenheit(700.0)),
        Dimension::TemperatureDifference => (
            Level::FahrenheitDegrees(-500.0),
            Level::FahrenheitDegrees(500.0),
        ),
        Dimension::Current => (Level::Amps(0.0), Level::Amps(2000.0)),
        Dimension::Mass => (Level::Pounds(-500.0), Level::Pounds(500.0)),
        Dimension::Time => (Level::Minutes(0.0), Level::Minutes(60.0 * HOURS_MAX)),
        Dimension::Plain => (Level::Plain(-1e6), Level::Plain(1e6)),
    }
}

/// Checks every value inside a place, however deep. A place that has an error already is passed
/// over.
pub(crate) fn check_values(inside: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    for place in inside.every_value() {
        if wrong.len() >= ERRORS_MAX {
            return;
        }
        if let Some((message, hint)) = out_of_range(place) {
            let error = place.error_with_hint(message, hint);
            let is_told =
                |told: &Diagnostic| (told.line, told.column) == (error.line, error.column);
            if !wrong.iter().any(is_told) {
                wrong.push(error);
            }
        }
    }
}

/// What is wrong with a value, and what would be right.
fn out_of_range(place: Located<'_>) -> Option<(String, String)> {
    if let Some(level) = place.read::<Level>() {
        let Quantity { si, dimension } = level.quantity();
        let (least, most) = plausible(dimension);
        let is_in = (least.quantity().si..=most.quantity().si).contains(&si);
        return (!is_in).then(|| {
            (
                format!("no job has such a value: {level}"),
                format!("it must lie from {least} to {most}"),
            )
        });
    }
    if let Some(time) = place.read::<Time>() {
        let is_in = (0.0..=HOURS_MAX).contains(&time.hours());
        return (!is_in).then(|| {
            (
                "no job lasts so long".to_owned(),
                format!("it must lie from 0 to {HOURS_MAX} h"),
            )
        });
    }
    let torque = place.read::<Torque>()?;
    let is_in = (0.0..=TORQUE_MAX.newton_metres()).contains(&torque.newton_metres());
    (!is_in).then(|| {
        let most = TORQUE_MAX.foot_pounds();
        (
            format!("no wrench gives {:.0} ft·lb", torque.foot_pounds()),
            format!("it must lie from 0 to {most:.0} ft·lb"),
        )
    })
}
