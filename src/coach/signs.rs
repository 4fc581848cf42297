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

/// The signs as they stand on the sheet, without a name for the fault; `None` while one of them is
/// not written.
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
            (1, 1) => {
                "much superheat with much subcooling: the coil starves, the liquid is held back"
            }
            (1, 0) => {
                "much superheat with usual subcooling: the coil starves although liquid is there"
            }
            (1, _) => "much superheat with little subcooling: the coil starves, liquid is missing",
            (-1, 1) => "little superheat with much subcooling: more is in than belongs in",
            (-1, _) => {
                "little superheat without more subcooling: too much comes through, or too \
                        little air takes it up"
            }
            (0, 1) => "usual superheat with much subcooling: look at the condenser's side",
            (_, -1) => "usual superheat with little subcooling: look at the condenser's side",
            _ => "both signs are usual: look at what comes and goes, or at the air",
        },
    )
}
