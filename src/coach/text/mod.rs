//! Everything that the coach says of its own: one text for each kind of milestone, of conditions,
//! of finding, of state and of blank; none for a scenario.

mod blanks;
mod ends;
mod findings;
mod guards;
mod milestones;
mod subjects;

pub(super) use blanks::{DIAGNOSIS, blank};
pub(super) use ends::{NOT_RUN, end, state_name};
pub(super) use findings::consequence;
pub(super) use guards::{guard, guard_goal};
pub(super) use milestones::{AGAIN, HAND_BACK, TRACE, VACUUM_BROKEN, goal, milestone};
pub(super) use subjects::subject;

use crate::text::Message;

/// A thought at its first two levels: the aim as a question, the principle with the instrument
/// that tells. The third is put together from the rubric.
#[derive(Debug, Clone, Copy)]
pub(super) enum Said {
    /// By the keys of both texts.
    Keys {
        aim: &'static str,
        way: &'static str,
    },
    /// By the key of a tool's word, whose text has both forms.
    OfTool(&'static str),
}

impl Said {
    const fn new(aim: &'static str, way: &'static str) -> Self {
        Self::Keys { aim, way }
    }

    /// The aim, as a question.
    pub const fn aim(self) -> Message {
        match self {
            Self::Keys { aim, .. } => Message::new(aim),
            Self::OfTool(key) => Message::form_of(key, "aim"),
        }
    }

    /// The principle, and the instrument that tells.
    pub const fn way(self) -> Message {
        match self {
            Self::Keys { way, .. } => Message::new(way),
            Self::OfTool(key) => Message::form_of(key, "way"),
        }
    }
}
