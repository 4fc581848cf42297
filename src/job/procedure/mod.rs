//! Written procedures: a job done step by step without hands on it, as a file tells it.

mod course;
mod load;
mod perform;
mod round;
mod wait;

pub use course::CourseLine;
pub use perform::{Performance, Stopped};
pub use wait::{Awaited, Look, Wait};

use crate::units::{Fraction, Mass, TemperatureDifference, Time};
use crate::words::{Action, Bound, Reading, SheetField};
use serde::{Deserialize, Serialize};

/// A way to do a scenario, from arriving to handing back.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Procedure {
    /// The version of this format: 1.
    pub version: u32,
    /// What it does, in a line.
    pub title: String,
    /// The name of the scenario that it is written for.
    pub scenario: String,
    /// The steps, in order.
    pub steps: Vec<Step>,
}

/// One step.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Step {
    /// A remark for the reader.
    Say(String),
    /// Do something.
    Do(Action),
    /// Let time pass.
    Wait(Time),
    /// Wait until an instrument shows something.
    Until {
        /// The instrument.
        reading: Reading,
        /// What it must show.
        is: Bound,
        /// Give up after this long.
        within: Time,
        /// For how long it must show it without a break; without it, a moment is enough.
        #[serde(default)]
        hold: Option<Time>,
    },
    /// Write on the job sheet what the instruments give for a blank, rounded as a person would.
    Note(SheetField),
    /// Let refrigerant out of the cylinder until the scale has gone down by this much, then shut.
    WeighIn {
        /// How much.
        mass: Mass,
        /// How far the cylinder's valve is opened.
        opening: Fraction,
        /// Give up after this long.
        within: Time,
    },
    /// Do these steps over and over until something is so; not once if it is so beforehand.
    Repeat {
        /// What must come true.
        until: Goal,
        /// Give up after so many rounds.
        at_most: u32,
        /// The steps of a round.
        steps: Vec<Step>,
    },
}

/// What a repetition works toward.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Goal {
    /// An instrument shows a value in a bound.
    Shows(Reading, Bound),
    /// What the instruments give for a blank of the job sheet lies in a bound.
    Gives(SheetField, Bound),
    /// What they give for one blank is no further than this from what they give for another.
    Near(SheetField, SheetField, TemperatureDifference),
}
