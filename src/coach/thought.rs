//! A thought, at the depth that was asked for.

use super::stage::Subject;
use super::text::{self, Said};
use super::{Situation, Want, signs};
use crate::job::TICKS_PER_SECOND;
use crate::kit::{nitrogen, refrigerant_cylinder, vacuum_pump};
use crate::marking::evidence::{gauge_place, span, status};
use crate::marking::{Course, Seen, holds};
use crate::plant::Target;
use crate::text::Message;
use crate::units::Time;
use crate::words::{Bound, Condition, Level, Milestone, Reading, Shown};

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
    pub level: &'a dyn Fn(Level) -> Message,
}

impl std::fmt::Debug for Teller<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Teller").finish_non_exhaustive()
    }
}

impl Teller<'_> {
    /// Tells a thought.
    pub fn tell(&self, want: &Want, depth: Depth) -> Message {
        let said = said(want);
        match depth {
            Depth::Aim => said.aim(),
            Depth::Way => said.way(),
            Depth::Goal => Message::new("coach-asked").with("goal", self.goal(want)),
        }
    }

    fn goal(&self, want: &Want) -> Message {
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
                    Some(level) => Message::new("coach-let-pass")
                        .with("goal", goal)
                        .with("limit", self.level(*level)),
                    None => goal,
                }
            }
            Want::End {
                state,
                must,
                situation,
            } => {
                let asked = vec![text::state_name(*state), self.bound(*must)];
                let asked = Message::list(asked, " ");
                match situation {
                    Situation::NotRun => Message::new("coach-run-then").with("goal", asked),
                    Situation::Off => asked,
                }
            }
            Want::Sheet {
                field,
                within,
                is_written,
            } => {
                let field = field.label();
                let within = self.level(*within);
                if *is_written {
                    Message::new("coach-on-sheet-off")
                        .with("field", field)
                        .with("within", within)
                } else {
                    Message::new("coach-on-sheet")
                        .with("field", field)
                        .with("within", within)
                }
            }
            Want::Diagnose {
                asks_place,
                is_written,
            } => self.goal_of_diagnosis(*asks_place, *is_written),
            Want::HandBack => Message::new("coach-goal-hand-back"),
        }
    }

    fn goal_of_reach(
        &self,
        what: Milestone,
        when: &[Condition],
        after: Option<Milestone>,
        before: Option<Milestone>,
    ) -> Message {
        let name = |milestone| text::goal(milestone, &|place| self.place(place));
        let mut told = name(what);
        if after == Some(what) {
            told = Message::new("coach-twice").with("goal", told);
        } else if let Some(after) = after {
            told = Message::new("coach-then")
                .with("first", name(after))
                .with("goal", told);
        }
        if let Some(before) = before {
            told = Message::new("coach-only-then")
                .with("goal", told)
                .with("after", name(before));
        }
        if !when.is_empty() {
            told = Message::new("coach-with")
                .with("goal", told)
                .with("conditions", self.all_asked(when));
        }
        told
    }

    fn goal_of_hold(
        &self,
        all: &[Condition],
        lasting: Time,
        within: Option<Level>,
        so_far: u64,
    ) -> Message {
        let now = self.now();
        let missing: Vec<Message> = all
            .iter()
            .filter(|condition| !holds(condition, &now))
            .map(|condition| self.found(condition, &now))
            .collect();
        let stands = if missing.is_empty() {
            Message::new("coach-so-for").with("span", span(so_far))
        } else {
            Message::new("coach-not-so").with("found", Message::list(missing, ", "))
        };
        let ticks = (lasting.seconds() * TICKS_PER_SECOND as f64).max(0.0) as u64;
        match within {
            Some(within) => Message::new("coach-hold-steady")
                .with("conditions", self.all_asked(all))
                .with("within", self.level(within))
                .with("lasting", span(ticks))
                .with("stands", stands),
            None => Message::new("coach-hold")
                .with("conditions", self.all_asked(all))
                .with("lasting", span(ticks))
                .with("stands", stands),
        }
    }

    fn goal_of_diagnosis(&self, asks_place: bool, is_written: bool) -> Message {
        let signs = signs::told(self.course, self.target).unwrap_or("coach-signs-missing");
        let signs = Message::new(signs);
        match (is_written, asks_place) {
            (false, false) => Message::new("coach-one-fault").with("signs", signs),
            (false, true) => Message::new("coach-one-fault-placed").with("signs", signs),
            (true, false) => Message::new("coach-other-fault").with("signs", signs),
            (true, true) => Message::new("coach-other-fault-placed").with("signs", signs),
        }
    }

    /// What a joint or spot may be called: while there is no diagnosis its name would give one.
    fn place(&self, label: Message) -> Message {
        if self.course.diagnosis.is_some() {
            label.the()
        } else {
            Message::new("coach-a-joint")
        }
    }

    /// What can be seen now.
    fn now(&self) -> Seen {
        let last = self.course.moments.last();
        last.map_or(Seen::nothing(), |moment| moment.seen)
    }

    fn all_asked(&self, conditions: &[Condition]) -> Message {
        Message::list(conditions.iter().map(|c| self.asked(c)).collect(), ", ")
    }

    fn asked(&self, condition: &Condition) -> Message {
        match *condition {
            Condition::Shows(reading, bound) => {
                Message::list(vec![self.reading(reading), self.bound(bound)], " ")
            }
            Condition::Is(s) => status(s, true),
            Condition::IsNot(s) => status(s, false),
            Condition::GaugeAt(place) => gauge_place(place),
        }
    }

    fn found(&self, condition: &Condition, now: &Seen) -> Message {
        match *condition {
            Condition::Shows(reading, _) => {
                let shown = match now.shown(reading) {
                    Shown::Value(quantity) => self.level(quantity.inch_pound()),
                    other => other.words(|_| Message::verbatim("")),
                };
                Message::list(vec![self.reading(reading), shown], " ")
            }
            Condition::Is(s) | Condition::IsNot(s) => status(s, now.is(s)),
            Condition::GaugeAt(_) => gauge_place(now.gauge()),
        }
    }

    fn reading(&self, reading: Reading) -> Message {
        match reading {
            Reading::Bubbles(spot) => {
                Message::new("coach-bubbles").with("place", self.place(spot.label()))
            }
            other => other.label(),
        }
    }

    fn bound(&self, bound: Bound) -> Message {
        match bound {
            Bound::Below(l) => Message::new("coach-below").with("level", self.level(l)),
            Bound::Above(l) => Message::new("coach-above").with("level", self.level(l)),
            Bound::Between(low, high) => Message::new("coach-between")
                .with("low", self.level(low))
                .with("high", self.level(high)),
        }
    }

    fn level(&self, level: Level) -> Message {
        (self.level)(level)
    }
}

fn said(want: &Want) -> Said {
    let nitrogen = Milestone::of(nitrogen::Milestone::Opened);
    let cylinder = Milestone::of(refrigerant_cylinder::Milestone::Opened);
    let pump = Milestone::of(vacuum_pump::Milestone::Started);
    match *want {
        Want::Reach {
            what,
            after,
            before,
            ..
        } => {
            if after == Some(what) {
                text::AGAIN
            } else if (what, after) == (nitrogen, Some(pump)) {
                text::VACUUM_BROKEN
            } else if (what, before) == (cylinder, Some(nitrogen)) {
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
