//! The next thought: of all that is wanted, the earliest in the order of the work.

use super::stage::Stage;
use super::want::{Standing, standing};
use super::{Situation, Want};
use crate::job::Job;
use crate::marking::Course;
use crate::scenario::Criterion;
use crate::words::Milestone;

/// What the coach sees in a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Outlook {
    /// What is to be thought of next.
    pub next: Want,
    /// The places in the rubric of the criteria that can no longer be met.
    pub passed: Vec<usize>,
}

/// Looks at a job.
pub fn outlook(course: &Course, rubric: &[Criterion], job: &Job) -> Outlook {
    let mut wants = Vec::new();
    let mut passed = Vec::new();
    for (place, criterion) in rubric.iter().enumerate() {
        match standing(criterion, course, rubric, job) {
            Standing::Wants(stage, want) => wants.push((stage, want)),
            Standing::Passed => passed.push(place),
            Standing::Quiet => {}
        }
    }
    let next = earliest(course, wants);
    Outlook { next, passed }
}

/// The earliest of what is wanted. Within a stage what guards comes first, then a run that is still
/// owed, then the rubric's order.
///
/// What looks at the circuit as it was found is put off to the end once the circuit was opened:
/// a search is then over, and a blank can still be filled in before the hand-back.
fn earliest(course: &Course, wants: Vec<(Stage, Want)>) -> Want {
    let was_opened = course.reached(Milestone::BrokeAnyJoint).next().is_some();
    let urgency = |want: &Want| match want {
        Want::Guard { .. } => 0,
        Want::End {
            situation: Situation::NotRun,
            ..
        } => 1,
        _ => 2,
    };
    wants
        .into_iter()
        .filter(|(stage, _)| !(was_opened && *stage == Stage::Search))
        .map(|(stage, want)| {
            let is_late = was_opened && stage.is_as_found();
            (if is_late { Stage::Record } else { stage }, want)
        })
        .min_by_key(|(stage, want)| (*stage, urgency(want)))
        .map_or(Want::HandBack, |(_, want)| want)
}
