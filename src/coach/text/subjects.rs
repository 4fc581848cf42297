//! Of conditions that must hold together.

use super::Said;
use crate::coach::stage::Subject;

/// What conditions are about.
pub(in crate::coach) const fn subject(subject: Subject) -> Said {
    match subject {
        Subject::SteadyRun => Said::new("thought-steady-run-aim", "thought-steady-run-way"),
        Subject::WatchedRun => Said::new("thought-watched-run-aim", "thought-watched-run-way"),
        Subject::Sniff => Said::new("thought-sniff-aim", "thought-sniff-way"),
        Subject::BubblesGrow => Said::new("thought-wet-aim", "thought-wet-way"),
        Subject::BubblesStill => {
            Said::new("thought-bubbles-still-aim", "thought-bubbles-still-way")
        }
        Subject::PressureTest => {
            Said::new("thought-pressure-test-aim", "thought-pressure-test-way")
        }
        Subject::Decay => Said::new("thought-decay-aim", "thought-decay-way"),
        Subject::Other => Said::new("thought-stay-aim", "thought-stay-way"),
    }
}
