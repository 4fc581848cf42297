//! The clock of the job: how long it has run, whether it runs, and how fast.

use crate::gui::pace::{Pace, Rate, SPEEDS};
use crate::gui::theme::{semibold, size};
use crate::gui::time::time_text;
use crate::gui::view::View;
use crate::gui::widgets::{Look, key_button, keys};
use crate::text::Message;
use eframe::egui::{Key, RichText, Ui};

/// Shows the time since the start, the button that starts and stops the clock, and the speeds.
pub fn clock_ui(ui: &mut Ui, view: &View, pace: &mut Pace) {
    let time = time_text(view.seconds());
    ui.label(RichText::new(time).font(semibold(size::TITLE)))
        .on_hover_text(view.say("room-time-on-job"));
    let (word, look) = match pace.rate {
        Rate::Paused => ("room-start", Look::Filled),
        Rate::Times(_) => ("room-stop", Look::Plain),
    };
    let space = view.say("keys-space");
    let button = key_button(ui, &view.say(word), Some((&space, Key::Space)), look);
    let by_key = keys::is_free(ui.ctx()) && keys::pressed(ui.ctx(), Key::Space);
    if button.clicked() || by_key {
        pace.start_or_stop();
    }
    for times in SPEEDS {
        let hint = Message::new("room-times-as-fast").with("times", times);
        let look = if pace.rate == Rate::Times(times) {
            Look::Chosen
        } else {
            Look::Plain
        };
        let button = key_button(ui, &format!("{times}×"), None, look);
        if button.on_hover_text(view.tell(&hint)).clicked() {
            pace.run_at(times);
        }
    }
}
