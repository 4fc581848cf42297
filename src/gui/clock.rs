//! The clock of the job: how long it has run, and how fast it runs.

use super::pace::{Pace, Rate};
use super::view::View;
use crate::job::TICKS_PER_SECOND;
use crate::text::Message;
use eframe::egui::{RichText, Ui};

/// Shows the time since the start and the rates to choose from.
pub fn clock_ui(ui: &mut Ui, view: &View, pace: &mut Pace) {
    let time = time_text(view.seconds());
    ui.label(RichText::new(time).monospace().size(20.0))
        .on_hover_text(view.say("room-time-on-job"));
    for rate in Rate::ALL {
        let (text, hint) = match rate {
            Rate::Paused => (view.say("room-pause"), view.say("room-stop-clock")),
            Rate::Times(times) => {
                let hint = Message::new("room-times-as-fast").with("times", times);
                (format!("{times}×"), view.tell(&hint))
            }
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
