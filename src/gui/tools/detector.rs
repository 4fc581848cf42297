//! The leak detector.

use crate::gui::canvas::{Canvas, around};
use crate::gui::tools::rating::rating;
use crate::gui::view::View;
use crate::gui::widgets::{act, choice};
use crate::plant::Spot;
use crate::text::Message;
use crate::words::{Action, Reading};
use eframe::egui::Ui;

/// Where it is put away.
pub const PUT_AWAY: (f32, f32) = (924.0, 486.0);

/// Where the middle of its body is when its tip is held somewhere.
pub const fn body((x, y): (f32, f32)) -> (f32, f32) {
    (x + 36.0, y + 66.0)
}

/// What can be done with it.
pub fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let at = view.detector_at();
    if let Some(spot) = choice(ui, &view.say("hand-detector-at"), at, Spot::ALL, |spot| {
        view.tell(&spot.label())
    }) {
        actions.push(Action::Sniff(spot));
    }
    if at.is_some() {
        act(
            ui,
            view,
            "hand-detector-away",
            Action::StopSniffing,
            actions,
        );
    }
    ui.weak(view.say("hand-detector-hint"));
    rating(ui, view, view.tools_rated().0);
}

/// Draws it put away, or with its tip held somewhere. Its bars count its signal.
pub fn draw(canvas: &Canvas, view: &View, tip: Option<(f32, f32)>) {
    let palette = canvas.palette;
    let (x, y) = tip.map_or(PUT_AWAY, body);
    if let Some((x, y)) = tip {
        let probe = [
            (x + 4.0, y + 14.0),
            (x + 14.0, y + 30.0),
            (x + 26.0, y + 24.0),
            (x + 32.0, y + 40.0),
        ];
        canvas.curve(probe, canvas.ink(3.0));
    }
    canvas.rect(
        around(x, y, 28.0, 56.0),
        6.0,
        palette.raised,
        canvas.ink(1.8),
    );
    let signal = view
        .reading(Reading::Detector)
        .quantity()
        .map_or(0.0, |q| q.si);
    for bar in 0..5 {
        let lit = signal * 5.0 > f64::from(bar);
        let fill = if lit { palette.warn } else { palette.paper };
        let top = y + 18.0 - 9.0 * bar as f32;
        canvas.rect(around(x, top, 16.0, 6.0), 1.0, fill, canvas.ink(0.8));
    }
}

/// How it looks, in words.
pub fn looks(view: &View) -> Message {
    match view.detector_at() {
        None => Message::new("part-detector-away"),
        Some(spot) => Message::new("part-detector-at").with("spot", spot.label().the()),
    }
}
