//! Buttons that give one action each.

use crate::gui::view::View;
use crate::gui::widgets::focus::take_focus;
use crate::words::Action;
use eframe::egui::Ui;

/// A button that does one action; its text is that of a key.
pub fn act(ui: &mut Ui, view: &View, key: &str, action: Action, actions: &mut Vec<Action>) {
    offer(ui, view.say(key), action, actions);
}

/// The same, with a text that is ready.
pub fn offer(ui: &mut Ui, text: String, action: Action, actions: &mut Vec<Action>) {
    let button = ui.button(text);
    take_focus(&button);
    if button.clicked() {
        actions.push(action);
    }
}

/// A button that does the one of two actions that changes how things stand.
pub fn toggle(
    ui: &mut Ui,
    view: &View,
    on: bool,
    (switch_on, switch_off): (&str, &str),
    action: impl Fn(bool) -> Action,
    actions: &mut Vec<Action>,
) {
    let text = if on { switch_off } else { switch_on };
    act(ui, view, text, action(!on), actions);
}
