//! A thought, at the depth that was asked for.

use super::stage::Subject;
use super::text::{self, Said};
use super::{Situation, Want, signs};
use crate::marking::phrases::{gauge_place, span, status};
use crate::marking::{Course, Seen, holds};
use crate::plant::Target;
use crate::units::Time;
use crate::words::{Bound, Condition, Level, Milestone, Reading, SheetField, Shown};

/// How much is said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Depth {
    /// The aim, as a question.
    Aim,
    /// The principle, and the instrument that tells.
    Way,
    /// What is to be reached, with the value of the rubric.
    Goal,
}

impl Depth {
    /// The next depth; `None` at the last.
    pub const fn more(self) -> Option<Self> {
        match self {
            Self::Aim => Some(Self::Way),
            Self::Way => Some(Self::Goal),
            Self::Goal => None,
        }
    }
}

/// Who tells thoughts.
pub struct Teller<'a> {
    /// What happened up to now.
    pub course: &'a Course,
    /// What the nameplate says that the right charge shows.
    pub target: Target,
    /// How a level is told: as it is, or in the units that the person reads.
    pub level: &'a dyn Fn(Level) -> String,
}

impl std::fmt::Debug for Teller<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Teller").finish_non_exhaustive()
    }
}

impl Teller<'_> {
    /// Tells a thought.
    pub fn tell(&self, want: &Want, depth: Depth) -> String {
        let said = self.said(want);
        match depth {
            Depth::Aim => said.aim.to_owned(),
            Depth::Way => said.way.to_owned(),
            Depth::Goal => sentence(&self.goal(want)),
        }
    }

    fn said(&self, want: &Want) -> Said {
        match *want {
            Want::Reach {
                what,
                after,
                before,
                ..
            } => {
                if after == Some(what) {
                    text::AGAIN
                } else if (what, after) == (Milestone::NitrogenOpened, Some(Milestone::PumpStarted))
                {
                    text::VACUUM_BROKEN
                } else if (what, before)
                    == (Milestone::CylinderOpened, Some(Milestone::NitrogenOpened))
                {
                    text::TRACE
                } else {
                    text::milestone(what)
                }
            }
            Want::Hold { ref all, .. } => text::subject(Subject::of(all)),
            Want::Guard { kind, .. } => text::guard(kind),
            Want::End {
                situation: Situation::NotRun,
                ..
            } => text::NOT_RUN,
            Want::End { state, .. } => text::end(state),
            Want::Sheet { field, .. } => text::blank(field),
            Want::Diagnose { .. } => text::DIAGNOSIS,
            Want::HandBack => text::HAND_BACK,
        }
    }

    fn goal(&self, want: &Want) -> String {
        match want {
            Want::Reach {
                what,
                when,
                after,
                before,
            } => self.goal_of_reach(*what, when, *after, *before),
            Want::Hold {
                all,
                lasting,
                within,
                so_far,
            } => self.goal_of_hold(all, *lasting, *within, *so_far),
            Want::Guard { kind, up_to } => {
                let goal = text::guard_goal(*kind);
                match up_to {
                    Some(level) => {
                        format!("{goal}; let pass: {}", self.level(*level))
                    }
                    None => goal.to_owned(),
                }
            }
            Want::End {
                state,
                must,
                situation,
            } => {
                let asked = format!("{} {}", text::state_name(*state), self.bound(*must));
                match situation {
                    Situation::NotRun => {
                        format!("ten minutes of running without a stop, then {asked}")
                    }
                    Situation::Off => asked,
                }
            }
            Want::Sheet {
                field,
                within,
                is_written,
            } => {
                let again = if *is_written {
                    "; what stands there is further off"
                } else {
                    ""
                };
                let within = self.level(*within);
                format!(
                    "{} on the sheet, within {within} of what the instruments give then{again}",
                    field.label()
                )
            }
            Want::Diagnose {
                asks_place,
                is_written,
            } => self.goal_of_diagnosis(*asks_place, *is_written),
            Want::HandBack => {
                "nothing that is asked for is left: hand over what is done".to_owned()
            }
        }
    }

    fn goal_of_reach(
        &self,
        what: Milestone,
        when: &[Condition],
        after: Option<Milestone>,
        before: Option<Milestone>,
    ) -> String {
        let name = |milestone| text::goal(milestone, &|place| self.place(place));
        let mut told = name(what);
        if after == Some(what) {
            told.push_str(", a second time");
        } else if let Some(after) = after {
            told = format!("{}, then {told}", name(after));
        }
        if let Some(before) = before {
            told = format!("{told}, and only then {}", name(before));
        }
        if !when.is_empty() {
            let asked: Vec<String> = when.iter().map(|c| self.asked(c)).collect();
            told = format!("{told}; with {}", asked.join(", "));
        }
        told
    }

    fn goal_of_hold(
        &self,
        all: &[Condition],
        lasting: Time,
        within: Option<Level>,
        so_far: u64,
    ) -> String {
        let asked: Vec<String> = all.iter().map(|c| self.asked(c)).collect();
        let ticks =
            |time: Time| (time.seconds() * crate::job::TICKS_PER_SECOND as f64).max(0.0) as u64;
        let steady = within.map_or(String::new(), |level| {
            format!(", moving by no more than {}", self.level(level))
        });
        let now = self.now();
        let missing: Vec<String> = all
            .iter()
            .filter(|condition| !holds(condition, &now))
            .map(|condition| self.found(condition, &now))
            .collect();
        let stands = if missing.is_empty() {
            format!("so for {} now", span(so_far))
        } else {
            format!("now: {}", missing.join(", "))
        };
        format!(
            "{}{steady}, for {}; {stands}",
            asked.join(", "),
            span(ticks(lasting))
        )
    }

    fn goal_of_diagnosis(&self, asks_place: bool, is_written: bool) -> String {
        let asked = match (is_written, asks_place) {
            (false, false) => "the one fault that explains all signs",
            (false, true) => "the one fault that explains all signs, and where it sits",
            (true, false) => "what stands on the sheet does not explain all signs",
            (true, true) => "what stands on the sheet does not explain all signs, or not where",
        };
        match signs::told(self.course, self.target) {
            Some(signs) => format!("{asked}; you have {signs}"),
            None => format!(
                "{asked}; {}, {} and {} belong to the signs",
                SheetField::Superheat.label(),
                SheetField::TargetSuperheat.label(),
                SheetField::Subcooling.label()
            ),
        }
    }

    /// What a joint or spot may be called: while there is no diagnosis its name would give one.
    fn place(&self, label: &str) -> String {
        if self.course.diagnosis.is_some() {
            format!("the {label}")
        } else {
            "a joint".to_owned()
        }
    }

    /// What can be seen now.
    fn now(&self) -> Seen {
        let last = self.course.moments.last();
        last.map_or(Seen::nothing(), |moment| moment.seen)
    }

    fn asked(&self, condition: &Condition) -> String {
        match *condition {
            Condition::Shows(reading, bound) => {
                format!("{} {}", self.reading(reading), self.bound(bound))
            }
            Condition::Is(s) => status(s, true).to_owned(),
            Condition::IsNot(s) => status(s, false).to_owned(),
            Condition::GaugeAt(place) => gauge_place(place).to_owned(),
        }
    }

    fn found(&self, condition: &Condition, now: &Seen) -> String {
        match *condition {
            Condition::Shows(reading, _) => {
                let shown = match now.shown(reading) {
                    Shown::Value(quantity) => self.level(quantity.inch_pound()),
                    other => other.to_string(),
                };
                format!("{} {shown}", self.reading(reading))
            }
            Condition::Is(s) | Condition::IsNot(s) => status(s, now.is(s)).to_owned(),
            Condition::GaugeAt(_) => gauge_place(now.gauge()).to_owned(),
        }
    }

    fn reading(&self, reading: Reading) -> String {
        match reading {
            Reading::Bubbles(spot) => format!("bubbles at {}", self.place(spot.label())),
            other => other.to_string(),
        }
    }

    fn bound(&self, bound: Bound) -> String {
        let level = |level| self.level(level);
        match bound {
            Bound::Below(l) => format!("below {}", level(l)),
            Bound::Above(l) => format!("above {}", level(l)),
            Bound::Between(low, high) => format!("between {} and {}", level(low), level(high)),
        }
    }

    fn level(&self, level: Level) -> String {
        (self.level)(level)
    }
}

/// A goal as a sentence.
fn sentence(goal: &str) -> String {
    format!("Asked for here: {goal}.")
}
