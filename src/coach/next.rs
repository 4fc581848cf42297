//! The next thought: of all that is wanted, the earliest in the order of the work.

use super::stage::Stage;
use super::want::{Standing, standing};
use super::{Situation, Want};
use crate::job::Job;
use crate::marking::Course;
use crate::scenario::Criterion;
use crate::words::Milestone;

/// What is to be thought of next. Within a stage what guards comes first, then a run that is still
/// owed, then the rubric's order.
///
/// What looks at the circuit as it was found is put off to the end once the circuit was opened:
/// a search is then over, and a blank can still be filled in before the hand-back.
pub fn next(course: &Course, rubric: &[Criterion], job: &Job) -> Want {
    let was_opened = course.reached(Milestone::BrokeAnyJoint).next().is_some();
    let wants = rubric
        .iter()
        .filter_map(|criterion| match standing(criterion, course, rubric, job) {
            Standing::Wants(stage, want) => Some((stage, want)),
            Standing::Quiet | Standing::Passed => None,
        })
        .filter(|(stage, _)| !(was_opened && *stage == Stage::Search))
        .map(|(stage, want)| {
            let is_late = was_opened && stage.is_as_found();
            (if is_late { Stage::Record } else { stage }, want)
        });
    let urgency = |want: &Want| match want {
        Want::Guard { .. } => 0,
        Want::End {
            situation: Situation::NotRun,
            ..
        } => 1,
        _ => 2,
    };
    wants
        .min_by_key(|(stage, want)| (*stage, urgency(want)))
        .map_or(Want::HandBack, |(_, want)| want)
}

/// A criterion that can no longer be met.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Passed {
    /// Its place in the rubric.
    pub criterion: usize,
    /// The points that it would have given.
    pub points: u32,
}

/// The criteria that can no longer be met.
pub fn passed(course: &Course, rubric: &[Criterion], job: &Job) -> Vec<Passed> {
    let stands = |criterion| standing(criterion, course, rubric, job);
    rubric
        .iter()
        .enumerate()
        .filter(|(_, criterion)| stands(criterion) == Standing::Passed)
        .map(|(place, criterion)| Passed {
            criterion: place,
            points: criterion.points,
        })
        .collect()
}
