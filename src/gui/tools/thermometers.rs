//! The thermometers and their case.

use crate::gui::canvas::{Canvas, around};
use crate::gui::view::View;
use crate::gui::widgets::{choice, offer};
use crate::kit::ThermometerPlace;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::{Rect, Ui, pos2};

/// The case.
pub const CASE: Rect = Rect {
    min: pos2(828.0, 462.0),
    max: pos2(868.0, 522.0),
};

/// The case of thermometers: where one goes that is still in it.
pub fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let free = ThermometerPlace::ALL
        .into_iter()
        .filter(|&place| !view.thermometer_at(place));
    if let Some(place) = choice(ui, &view.say("hand-put-one-at"), None, free, |place| {
        view.tell(&place.label())
    }) {
        actions.push(Action::Clamp(place));
    }
    for place in ThermometerPlace::ALL {
        if view.thermometer_at(place) {
            let text = Message::new("hand-take-back").with("place", place.label());
            offer(ui, &view.tell(&text), Action::Unclamp(place), actions);
        }
    }
}

/// Draws the case with as many probes as are left in it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.rect(CASE, 4.0, palette.raised, canvas.ink(1.5));
    let left = view.thermometers_free();
    for i in 0..left.min(8) {
        let (column, row) = ((i % 4) as f32, (i / 4) as f32);
        let at = (836.0 + 8.0 * column, 468.0 + 27.0 * row);
        canvas.line(&[at, (at.0, at.1 + 20.0)], canvas.ink(1.5));
        let head = around(at.0, at.1 + 4.0, 6.0, 8.0);
        canvas.rect(head, 1.0, palette.accent, canvas.ink(0.8));
    }
    canvas.caption(850.0, 450.0, "caption-thermometers");
}

/// How it looks, in words.
pub fn looks(view: &View) -> Message {
    Message::new("part-thermometers-left").with("count", view.thermometers_free())
}
