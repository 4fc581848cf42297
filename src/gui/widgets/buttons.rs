//! Buttons that give one action each.

use crate::gui::view::View;
use crate::gui::widgets::focus::take_focus;
use crate::gui::widgets::key_button::{Look, key_button};
use crate::gui::widgets::keys;
use crate::words::Action;
use eframe::egui::Ui;

/// A button that does one action; its text is that of a key.
pub fn act(ui: &mut Ui, view: &View, key: &str, action: Action, actions: &mut Vec<Action>) {
    offer(ui, &view.say(key), action, actions);
}

/// The same, with a text that is ready.
pub fn offer(ui: &mut Ui, text: &str, action: Action, actions: &mut Vec<Action>) {
    if press(ui, text) {
        actions.push(action);
    }
}

/// A button in the next slot at hand; gives whether it was pressed.
pub fn press(ui: &mut Ui, text: &str) -> bool {
    let slot = keys::next_slot(ui.ctx());
    let button = key_button(ui, text, slot, Look::Plain);
    take_focus(&button);
    button.clicked() || slot.is_some_and(|(_, key)| keys::pressed(ui.ctx(), key))
}
