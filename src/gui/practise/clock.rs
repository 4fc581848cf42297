//! The clock of the job: how long it has run, and how fast it runs.

use crate::gui::pace::{Pace, Rate};
use crate::gui::time::time_text;
use crate::gui::view::View;
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
