//! The order of the work: where in a repair a milestone, a blank or a condition belongs.
//!
//! Common practice, no source: the repair from arriving to leaving, as the trade does it.

pub use crate::kit::Stage;
use crate::kit::nitrogen;
use crate::scenario::{Criterion, Rule};
use crate::text::Message;
use crate::words::{Bound, Condition, Hose, Milestone, Reading, SheetField, Status};
use std::collections::BTreeSet;

impl Stage {
    /// Where a milestone belongs.
    pub fn of(milestone: Milestone) -> Self {
        match milestone {
            Milestone::Purged(Hose::Low | Hose::High) => Self::HookUp,
            Milestone::CoolingCalled => Self::Run,
            Milestone::Sniffed(_) | Milestone::Wetted(_) => Self::Search,
            Milestone::Diagnosed => Self::Diagnose,
            Milestone::FrontSeated(_) => Self::PumpDown,
            Milestone::LockedOut | Milestone::VerifiedDead | Milestone::Ventilated => Self::LockOut,
            Milestone::Broke(_) | Milestone::BrokeAnyJoint => Self::Open,
            Milestone::DrierOut
            | Milestone::DrierIn
            | Milestone::RenewedFlare(_)
            | Milestone::ChangedFilter => Self::Part,
            Milestone::MadeUp(_) => Self::Close,
            Milestone::Purged(Hose::Centre) => Self::Test,
            Milestone::Opened(_) => Self::LetBack,
            Milestone::Tool(milestone) => milestone.stage(),
            Milestone::HandedBack => Self::Leave,
        }
    }

    /// Where a blank of the job sheet is filled in.
    pub const fn of_blank(field: SheetField) -> Self {
        match field {
            SheetField::StandingPressure => Self::Standing,
            SheetField::Vacuum => Self::LetBack,
            SheetField::RefrigerantIn | SheetField::RefrigerantOut => Self::Record,
            _ => Self::Measure,
        }
    }

    /// Where what a rule asks for belongs; `None` for what holds all along.
    fn of_rule(rule: &Rule) -> Option<Self> {
        Some(match rule {
            Rule::Order { then, .. } => Self::of(*then),
            Rule::Done {
                what,
                after,
                before,
                ..
            } => Self::of(*what).between(*after, *before),
            Rule::Hold {
                all, after, before, ..
            } => Subject::of(all).stage().between(*after, *before),
            Rule::End { .. } => Self::Prove,
            Rule::Sheet { field, .. } => Self::of_blank(*field),
            Rule::Diagnosis { .. } => Self::Diagnose,
            Rule::Never { .. } | Rule::InTime(_) | Rule::Judgement { .. } => return None,
        })
    }

    /// What is practised in it, for stages that are an exercise in themselves. Those that a fault
    /// would be guessed from, the search of a leak and the part replaced, are not told.
    const fn exercise(self) -> Option<Message> {
        Some(match self {
            Self::Measure => Message::new("coach-exercise-measure"),
            Self::Diagnose => Message::new("coach-exercise-diagnose"),
            Self::PumpDown => Message::new("coach-exercise-pump-down"),
            Self::Test => Message::new("coach-exercise-test"),
            Self::Evacuate => Message::new("coach-exercise-evacuate"),
            Self::Prove => Message::new("coach-exercise-prove"),
            _ => return None,
        })
    }

    /// The same, later than what it must follow and no later than what it must come before.
    #[must_use]
    pub fn between(self, after: Option<Milestone>, before: Option<Milestone>) -> Self {
        let late = after.map_or(self, |after| self.max(Self::of(after)));
        before.map_or(late, |before| late.min(Self::of(before)))
    }

    /// Whether it looks at the circuit as it was found: once that is opened, it is past.
    pub(super) fn is_as_found(self) -> bool {
        (Self::Standing..=Self::Diagnose).contains(&self)
    }
}

/// What a job with this rubric gives practice in, in the order of the work, told to who has not
/// begun it yet.
pub fn exercises(rubric: &[Criterion]) -> Vec<Message> {
    let stages: BTreeSet<Stage> = rubric
        .iter()
        .filter_map(|criterion| Stage::of_rule(&criterion.rule))
        .collect();
    stages.into_iter().filter_map(Stage::exercise).collect()
}

/// What conditions that must hold together are about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Subject {
    /// The unit runs until it is steady.
    SteadyRun,
    /// The unit runs and something shows.
    WatchedRun,
    /// The detector sounds.
    Sniff,
    /// Bubbles grow.
    BubblesGrow,
    /// Bubbles stay still.
    BubblesStill,
    /// The pressure of a test stays.
    PressureTest,
    /// The vacuum stays.
    Decay,
    /// Something else.
    Other,
}

impl Subject {
    /// What these conditions are about.
    pub fn of(all: &[Condition]) -> Self {
        let shows = |what: fn(Reading) -> bool| {
            all.iter()
                .any(|c| matches!(*c, Condition::Shows(reading, _) if what(reading)))
        };
        let still = all.iter().find_map(|condition| match *condition {
            Condition::Shows(Reading::Bubbles(_), bound) => Some(matches!(bound, Bound::Below(_))),
            _ => None,
        });
        let is = |status: Status| all.contains(&Condition::Is(status));
        match still {
            Some(true) => return Self::BubblesStill,
            Some(false) => return Self::BubblesGrow,
            None => {}
        }
        if shows(|reading| reading == Reading::Microns) {
            Self::Decay
        } else if shows(|reading| reading == Reading::Detector) {
            Self::Sniff
        } else if is(Status::CompressorRuns) && all.len() == 1 {
            Self::SteadyRun
        } else if is(Status::CompressorRuns) {
            Self::WatchedRun
        } else if is(Status::of(nitrogen::Status::ShutOff)) {
            Self::PressureTest
        } else {
            Self::Other
        }
    }

    /// Where it belongs.
    pub const fn stage(self) -> Stage {
        match self {
            Self::SteadyRun | Self::WatchedRun => Stage::Run,
            Self::Sniff | Self::BubblesGrow | Self::Other => Stage::Search,
            Self::BubblesStill | Self::PressureTest => Stage::Test,
            Self::Decay => Stage::Evacuate,
        }
    }
}
