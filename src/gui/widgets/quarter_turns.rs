//! What turns, by buttons: a quarter turn in or out, and how far it stands.

use crate::gui::view::View;
use crate::gui::view::turn::{Thread, Turn, quarters_text};
use crate::gui::widgets::buttons::press;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::Ui;

/// Tells how far a thing is turned, and turns it by a quarter.
pub fn quarter_turns(ui: &mut Ui, view: &View, thread: Thread, actions: &mut Vec<Action>) {
    let Some(turn) = Turn::of(thread, view) else {
        return;
    };
    let stands = Message::new("hand-turns-open")
        .with("now", quarters_text(turn.now))
        .with("most", format!("{:.0}", turn.most));
    ui.label(view.tell(&stands))
        .on_hover_text(view.say("hand-turns-hint"));
    ui.horizontal_wrapped(|ui| {
        for (word, by) in [("hand-turn-in", -1.0), ("hand-turn-out", 1.0)] {
            if press(ui, &view.say(word)) {
                actions.extend(turn.to(turn.now + by));
            }
        }
    });
}
