//! What a criterion that is not met yet wants done next.

use super::guard;
use super::stage::{Stage, Subject};
use crate::job::Job;
use crate::marking::{Course, holds, meets};
use crate::plant::Line;
use crate::scenario::{Criterion, EndState, Rule};
use crate::units::Time;
use crate::words::{Bound, Condition, FindingKind, Level, Milestone, SheetField, Status};

/// The next thing that a criterion asks for.
#[derive(Debug, Clone, PartialEq)]
pub enum Want {
    /// A milestone to be reached.
    Reach {
        /// Which.
        what: Milestone,
        /// What must be so then.
        when: Vec<Condition>,
        /// What it must come after, if that is asked.
        after: Option<Milestone>,
        /// What must not come before it.
        before: Option<Milestone>,
    },
    /// Conditions to hold together for a time.
    Hold {
        /// Which.
        all: Vec<Condition>,
        /// For how long.
        lasting: Time,
        /// How far a reading may move meanwhile.
        within: Option<Level>,
        /// For how many ticks they have held up to now.
        so_far: u64,
    },
    /// An event to be kept off.
    Guard {
        /// Which.
        kind: FindingKind,
        /// What is let pass.
        up_to: Option<Level>,
    },
    /// A state of the unit.
    End {
        /// Which.
        state: EndState,
        /// Where it must lie.
        must: Bound,
        /// What stands in the way.
        situation: Situation,
    },
    /// A blank of the job sheet.
    Sheet {
        /// Which.
        field: SheetField,
        /// How far it may be off.
        within: Level,
        /// Something stands in it already.
        is_written: bool,
    },
    /// The diagnosis.
    Diagnose {
        /// The place counts too.
        asks_place: bool,
        /// One stands on the sheet already.
        is_written: bool,
    },
    /// Nothing is left but to hand back.
    HandBack,
}

impl Want {
    /// Whether another want is for the same thing, however far that has come.
    pub fn is_for_the_same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Hold { all: a, .. }, Self::Hold { all: b, .. }) => a == b,
            (Self::Sheet { field: a, .. }, Self::Sheet { field: b, .. }) => a == b,
            (Self::Diagnose { .. }, Self::Diagnose { .. }) => true,
            (a, b) => a == b,
        }
    }
}

/// What keeps a state of the unit from being as asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Situation {
    /// It shows only when the unit has run for long enough.
    NotRun,
    /// It is off.
    Off,
}

/// How a criterion stands.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Standing {
    /// Met, or nothing can be thought of it now.
    Quiet,
    /// It can no longer be met.
    Passed,
    /// It wants this, at this stage of the work.
    Wants(Stage, Want),
}

/// How a criterion stands in a job.
pub(super) fn standing(
    criterion: &Criterion,
    course: &Course,
    rubric: &[Criterion],
    job: &Job,
) -> Standing {
    match &criterion.rule {
        Rule::Never { finding, up_to } => match guard::stage(*finding, job) {
            Some(stage) if guard::looms(*finding, *up_to, course, rubric, job) => {
                let (kind, up_to) = (*finding, *up_to);
                Standing::Wants(stage, Want::Guard { kind, up_to })
            }
            _ => Standing::Quiet,
        },
        Rule::InTime(_) | Rule::Judgement { .. } => Standing::Quiet,
        rule if meets(course, rule) => Standing::Quiet,
        Rule::Order { first, then } => order(course, *first, *then),
        Rule::Done {
            what,
            when,
            after,
            before,
        } => done(course, *what, when, *after, *before),
        Rule::Hold {
            all,
            lasting,
            within,
            after,
            before,
        } => hold(course, all, (*lasting, *within), *after, *before),
        Rule::End { state, must } => end(course, job, *state, *must),
        Rule::Sheet { field, within } => {
            let want = Want::Sheet {
                field: *field,
                within: *within,
                is_written: course.entries.contains_key(field),
            };
            Standing::Wants(Stage::of_blank(*field), want)
        }
        Rule::Diagnosis { at, .. } => {
            let want = Want::Diagnose {
                asks_place: at.is_some(),
                is_written: course.diagnosis.is_some(),
            };
            Standing::Wants(Stage::Diagnose, want)
        }
    }
}

fn first_reached(course: &Course, milestone: Milestone) -> Option<usize> {
    course.reached(milestone).next().map(|(i, _)| i)
}

fn reach(stage: Stage, what: Milestone, before: Option<Milestone>) -> Standing {
    let want = Want::Reach {
        what,
        when: Vec::new(),
        after: None,
        before,
    };
    Standing::Wants(stage, want)
}

fn order(course: &Course, first: Milestone, then: Milestone) -> Standing {
    match (first_reached(course, first), first_reached(course, then)) {
        // Not met: by itself, or in the wrong order.
        (_, Some(_)) => Standing::Passed,
        (None, None) => reach(
            Stage::of(first).between(None, Some(then)),
            first,
            Some(then),
        ),
        (Some(_), None) => reach(Stage::of(then), then, None),
    }
}

fn done(
    course: &Course,
    what: Milestone,
    when: &[Condition],
    after: Option<Milestone>,
    before: Option<Milestone>,
) -> Standing {
    let start = match after.map(|after| (after, first_reached(course, after))) {
        Some((after, None)) => {
            return reach(Stage::of(after).between(None, before), after, None);
        }
        Some((_, Some(i))) => i + 1,
        None => 0,
    };
    if is_past(course, before, start) {
        return Standing::Passed;
    }
    let want = Want::Reach {
        what,
        when: when.to_vec(),
        after,
        before,
    };
    Standing::Wants(Stage::of(what).between(after, before), want)
}

fn hold(
    course: &Course,
    all: &[Condition],
    (lasting, within): (Time, Option<Level>),
    after: Option<Milestone>,
    before: Option<Milestone>,
) -> Standing {
    let start = match after.map(|after| (after, course.reached(after).last())) {
        Some((after, None)) => return reach(Stage::of(after), after, None),
        Some((_, Some((i, _)))) => i,
        None => 0,
    };
    if is_past(course, before, start + 1) {
        return Standing::Passed;
    }
    let want = Want::Hold {
        all: all.to_vec(),
        lasting,
        within,
        so_far: held_for(course, all, start),
    };
    let stage = Subject::of(all).stage().between(after, before);
    Standing::Wants(stage, want)
}

/// Whether what must come later has been reached at or after a place in the course.
fn is_past(course: &Course, before: Option<Milestone>, start: usize) -> bool {
    before.is_some_and(|before| course.reached(before).any(|(i, _)| i >= start))
}

/// For how many ticks conditions have held up to the end of a course, since a place in it.
fn held_for(course: &Course, all: &[Condition], start: usize) -> u64 {
    let since = course.moments.get(start..).unwrap_or_default();
    let held = since
        .iter()
        .rev()
        .take_while(|moment| all.iter().all(|condition| holds(condition, &moment.seen)));
    held.last()
        .map_or(0, |first| course.end.saturating_sub(first.tick))
}

fn end(course: &Course, job: &Job, state: EndState, must: Bound) -> Standing {
    let want = |situation| Want::End {
        state,
        must,
        situation,
    };
    match state {
        // What is gone does not come back.
        EndState::RefrigerantLost => Standing::Passed,
        EndState::SuperheatOffTarget | EndState::Subcooling | EndState::DropAcrossDrier
            if course.proof.is_none() =>
        {
            if job.status(Status::ChargeIsolated) {
                reach(Stage::LetBack, Milestone::Opened(Line::Liquid), None)
            } else {
                Standing::Wants(Stage::Prove, want(Situation::NotRun))
            }
        }
        _ => Standing::Wants(Stage::Prove, want(Situation::Off)),
    }
}
