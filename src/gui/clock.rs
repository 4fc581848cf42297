//! The clock of the job: how long it has run, and how fast it runs.

use super::pace::{Pace, Rate};
use super::view::View;
use crate::job::TICKS_PER_SECOND;
use eframe::egui::{RichText, Ui};

/// Shows the time since the start and the rates to choose from.
pub fn clock_ui(ui: &mut Ui, view: &View, pace: &mut Pace) {
    let time = time_text(view.seconds());
    ui.label(RichText::new(time).monospace().size(20.0))
        .on_hover_text("time on the job");
    for rate in Rate::ALL {
        let (text, hint) = match rate {
            Rate::Paused => ("Pause".to_owned(), "stop the clock".to_owned()),
            Rate::Times(times) => (format!("{times}×"), format!("run {times} times as fast")),
        };
        let chosen = pace.rate == rate;
        if ui
            .selectable_label(chosen, text)
            .on_hover_text(hint)
            .clicked()
        {
            pace.rate = rate;
        }
    }
}

/// The time of a tick.
pub fn tick_text(tick: u64) -> String {
    time_text(tick as f64 / TICKS_PER_SECOND as f64)
}

/// Hours, minutes, seconds.
pub fn time_text(seconds: f64) -> String {
    let whole = seconds as u64;
    format!("{}:{:02}:{:02}", whole / 3600, whole / 60 % 60, whole % 60)
}
