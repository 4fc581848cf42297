//! A moment of a job: an action with its time.

use crate::gui::time::tick_text;
use crate::text::{Language, Message};
use crate::words::Action;

/// An action with its time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// The tick at which it was done.
    pub tick: u64,
    /// What was done.
    pub action: Action,
    /// The job refused it.
    pub refused: bool,
}

/// A moment, as it is listed and pointed at.
pub fn moment_text(language: Language, moment: &Moment) -> String {
    let mut action = moment.action.words();
    if moment.refused {
        action = Message::new("attempt-refused").with("action", action);
    }
    let at = tick_text(moment.tick);
    format!("{at}  {}", action.in_language(language))
}
