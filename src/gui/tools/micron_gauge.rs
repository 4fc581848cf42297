//! The micron gauge.

use crate::gui::canvas::{Canvas, around};
use crate::gui::view::View;
use crate::gui::widgets::{Halves, choice, switch};
use crate::text::Message;
use crate::units::MICRON;
use crate::words::{Action, GaugePlace, Reading, Shown};
use eframe::egui::{Align2, Ui};

/// What can be done with it.
pub fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (place, valve_open, ruined) = view.micron_gauge();
    if ruined {
        ui.label(view.say("hand-gauge-ruined"));
    }
    let name = |place: GaugePlace| view.tell(&place.label());
    if let Some(to) = choice(
        ui,
        &view.say("hand-gauge-at"),
        Some(place),
        GaugePlace::ALL,
        name,
    ) {
        actions.push(Action::MicronGauge(to));
    }
    let words = (
        "hand-gauge-valve",
        Halves {
            yes: ("hand-open", "hand-gauge-open"),
            no: ("hand-shut", "hand-gauge-shut"),
        },
    );
    switch(
        ui,
        view,
        words,
        valve_open,
        Action::MicronGaugeValve,
        actions,
    );
}

/// Draws it at a place, and the tube by which it is on something.
pub fn draw(canvas: &Canvas, view: &View, (x, y): (f32, f32), on: Option<(f32, f32)>) {
    let palette = canvas.palette;
    let (_, valve_open, ruined) = view.micron_gauge();
    if let Some(on) = on {
        canvas.line(&[(x, y), on], canvas.stroke(4.0, palette.copper));
    }
    canvas.rect(
        around(x, y, 62.0, 40.0),
        5.0,
        palette.raised,
        canvas.stroke(2.0, palette.accent),
    );
    let text = match (ruined, view.reading(Reading::Microns)) {
        (true, _) => canvas.say("caption-ruined"),
        (false, Shown::OverRange) => canvas.say("caption-over"),
        (false, Shown::Nothing) => canvas.say("caption-off"),
        (false, Shown::Value(quantity)) => {
            format!("{:.0}", quantity.si / MICRON)
        }
    };
    canvas.text(x, y - 6.0, Align2::CENTER_CENTER, 14.0, &text, palette.ink);
    let word = canvas.say(if valve_open {
        "caption-micron"
    } else {
        "caption-valve-shut"
    });
    canvas.text(
        x,
        y + 11.0,
        Align2::CENTER_CENTER,
        10.0,
        &word,
        palette.faint,
    );
}

/// How it looks, in words.
pub fn looks(view: &View) -> Message {
    let place = view.micron_gauge().0.label();
    Message::list(vec![place, view.shown(Reading::Microns)], ", ")
}
