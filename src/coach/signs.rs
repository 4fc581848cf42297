//! What superheat and subcooling on the job sheet say together.

use crate::job::Entry;
use crate::marking::Course;
use crate::plant::Target;
use crate::units::TemperatureDifference;
use crate::words::SheetField;

/// How far from usual a sign must be to count, K. Chosen: 5 °F, as a rubric allows.
const COUNTS: f64 = 5.0 / 1.8;

/// The usual subcooling where the nameplate names none, K: 6 to 17 °F about its middle.
/// Common practice, no source.
const USUAL_SUBCOOLING: f64 = 11.5 / 1.8;

/// The signs as they stand on the sheet, as a key of a text without a name for the fault; `None`
/// while one of them is not written.
pub(super) fn told(course: &Course, target: Target) -> Option<&'static str> {
    let written = |field| {
        course
            .entries
            .get(&field)
            .map(|e: &Entry| e.value.quantity().si)
    };
    let superheat = written(SheetField::Superheat)?;
    let subcooling = written(SheetField::Subcooling)?;
    let (usual_superheat, usual_subcooling) = match target {
        Target::SuperheatByChart => (written(SheetField::TargetSuperheat)?, USUAL_SUBCOOLING),
        Target::Superheat(at) => (at.kelvins(), USUAL_SUBCOOLING),
        // Chosen: 10 °F, the middle of what expansion valves are set to (common practice).
        Target::Subcooling(at) => (
            TemperatureDifference::from_fahrenheit(10.0).kelvins(),
            at.kelvins(),
        ),
    };
    let high = |value: f64, usual: f64| {
        if value > usual + COUNTS {
            1
        } else if value < usual - COUNTS {
            -1
        } else {
            0
        }
    };
    // Common practice, no source.
    Some(
        match (
            high(superheat, usual_superheat),
            high(subcooling, usual_subcooling),
        ) {
            (1, 1) => "coach-signs-starved-held",
            (1, 0) => "coach-signs-starved",
            (1, _) => "coach-signs-starved-missing",
            (-1, 1) => "coach-signs-overfull",
            (-1, _) => "coach-signs-flooded",
            (_, 0) => "coach-signs-usual",
            _ => "coach-signs-condenser",
        },
    )
}
