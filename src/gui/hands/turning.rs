//! What turns, by buttons: a quarter turn in or out, and how far it stands.

use super::take_focus;
use crate::gui::part::Part;
use crate::gui::turn::{Turn, quarters_text};
use crate::gui::view::View;
use crate::words::Action;
use eframe::egui::Ui;

/// Tells how far a part is turned, and turns it by a quarter.
pub fn quarter_turns(ui: &mut Ui, view: &View, part: Part, actions: &mut Vec<Action>) {
    let Some(turn) = Turn::of(part, view) else {
        return;
    };
    let now = quarters_text(turn.now);
    ui.label(format!("{now} of {:.0} quarter turns open", turn.most))
        .on_hover_text("On the site: drag round it, turn the wheel over it, or arrow keys.");
    ui.horizontal_wrapped(|ui| {
        for (word, by) in [("Quarter turn in", -1.0), ("Quarter turn out", 1.0)] {
            let button = ui.button(word);
            take_focus(&button);
            if button.clicked() {
                actions.extend(turn.to(turn.now + by));
            }
        }
    });
}
