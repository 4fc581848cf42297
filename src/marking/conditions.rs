//! Whether a condition held at a moment, how near it came, and how far a value may move.

use super::course::Seen;
use super::evidence;
use crate::text::Message;
use crate::words::{Bound, Condition, Dimension, Level, Quantity, Shown};

/// Whether a condition held.
pub fn holds(condition: &Condition, seen: &Seen) -> bool {
    match *condition {
        Condition::Shows(reading, bound) => bound_holds(bound, seen.shown(reading)),
        Condition::Is(status) => seen.is(status),
        Condition::IsNot(status) => !seen.is(status),
        Condition::GaugeAt(place) => seen.gauge() == place,
    }
}

/// Whether all of them held.
pub(super) fn all_hold(conditions: &[Condition], seen: &Seen) -> bool {
    conditions.iter().all(|condition| holds(condition, seen))
}

/// Whether what is shown lies in a bound. An instrument that shows nothing is in none; one that
/// is over its range is above every level.
pub(super) fn bound_holds(bound: Bound, shown: Shown) -> bool {
    match shown {
        Shown::Value(quantity) => bound.holds(quantity),
        Shown::OverRange => matches!(bound, Bound::Above(_)),
        Shown::Nothing => false,
    }
}

/// How far off a moment was: the number of conditions that did not hold, then how far the first
/// reading of those was from its bound. The smaller, the nearer.
pub(super) fn miss(conditions: &[Condition], seen: &Seen) -> (usize, f64) {
    let missed = || conditions.iter().filter(|c| !holds(c, seen));
    let distance = missed()
        .find_map(|condition| match *condition {
            Condition::Shows(reading, bound) => Some(distance(bound, seen.shown(reading))),
            _ => None,
        })
        .unwrap_or(0.0);
    (missed().count(), distance)
}

/// What did not hold, in the technician's words; `None` where all did.
pub(super) fn what_failed(conditions: &[Condition], seen: &Seen) -> Option<Message> {
    let failed: Vec<Message> = conditions
        .iter()
        .filter(|condition| !holds(condition, seen))
        .map(|condition| evidence::failed(condition, seen))
        .collect();
    (!failed.is_empty()).then(|| Message::list(failed, "; "))
}

/// What was seen of each condition, in the technician's words.
pub(super) fn what_was_seen(conditions: &[Condition], seen: &Seen) -> Message {
    let said = conditions
        .iter()
        .map(|condition| evidence::seen(condition, seen))
        .collect();
    Message::list(said, ", ")
}

/// How far a value may be off, in SI, where `level` says so for values of this dimension: a
/// temperature by a difference of temperature, a gauge pressure by a difference of pressure.
/// `None` where it says something else.
pub(super) fn tolerance(level: Level, of: Dimension) -> Option<f64> {
    let Quantity { si, dimension } = level.quantity();
    let fits = match of {
        Dimension::Temperature => dimension == Dimension::TemperatureDifference,
        Dimension::GaugePressure => {
            matches!(
                dimension,
                Dimension::PressureDifference | Dimension::GaugePressure
            )
        }
        other => dimension == other,
    };
    // A millionth more, so that a value on the boundary is not lost to rounding.
    fits.then_some(si * (1.0 + 1e-6))
}

/// How far what is shown lies from a bound, in SI; infinite where no number is shown.
fn distance(bound: Bound, shown: Shown) -> f64 {
    let Some(value) = shown.quantity() else {
        return f64::INFINITY;
    };
    let far = |level: Level| {
        let level = level.quantity();
        if level.dimension == value.dimension {
            (level.si - value.si).abs()
        } else {
            f64::INFINITY
        }
    };
    let [low, high] = bound.levels();
    far(low).min(far(high))
}
