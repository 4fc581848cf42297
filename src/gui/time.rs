//! The time of a job, as text.

use crate::job::TICKS_PER_SECOND;

/// The time of a tick.
pub fn tick_text(tick: u64) -> String {
    time_text(tick as f64 / TICKS_PER_SECOND as f64)
}

/// Hours, minutes, seconds.
pub fn time_text(seconds: f64) -> String {
    let whole = seconds as u64;
    format!("{}:{:02}:{:02}", whole / 3600, whole / 60 % 60, whole % 60)
}
