//! The refrigerant cylinder on its scale.

use crate::gui::canvas::Canvas;
use crate::gui::view::View;
use crate::gui::view::looks::opening_label;
use crate::gui::view::turn::{FINE, Thread, Turn};
use crate::gui::widgets::{Halves, Setting, act, quarter_turns, setting, switch};
use crate::kit::refrigerant_cylinder::{Action as Act, Reading as Face};
use crate::text::Message;
use crate::units::Fraction;
use crate::words::{Action, Reading};
use eframe::egui::{Align2, Rect, Ui, pos2};

/// Where a hose goes on.
pub const SOCKET: (f32, f32) = (772.0, 478.0);

/// The wheel of its valve: below when it stands on its head.
pub const fn wheel(inverted: bool) -> (f32, f32) {
    if inverted {
        (746.0, 582.0)
    } else {
        (800.0, 486.0)
    }
}

/// The refrigerant cylinder on its scale.
pub fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (valve, inverted) = view.cylinder();
    let turn_to = |percent: f64| Action::of(Act::Valve(Fraction::clamped(percent / 100.0)));
    ui.horizontal_wrapped(|ui| {
        act(ui, view, "hand-cylinder-shut", turn_to(0.0), actions);
        act(ui, view, "hand-cylinder-crack", turn_to(5.0), actions);
        act(ui, view, "hand-cylinder-open", turn_to(100.0), actions);
    });
    quarter_turns(ui, view, Thread::Cylinder, actions);
    let what = Setting {
        label: &view.say("hand-cylinder-valve"),
        value: valve * 100.0,
        range: 0.0..=100.0,
        step: FINE,
        unit: " %",
    };
    if let Some(percent) = setting(ui, what) {
        actions.push(turn_to(percent));
    }
    let words = (
        "hand-cylinder-stands",
        Halves {
            yes: ("hand-upside-down", "hand-cylinder-invert"),
            no: ("hand-upright", "hand-cylinder-upright"),
        },
    );
    switch(
        ui,
        view,
        words,
        inverted,
        |over| Action::of(Act::Inverted(over)),
        actions,
    );
    ui.separator();
    let scale = view.shown(Reading::of(Face::Scale));
    ui.label(view.tell(&Message::new("hand-scale-shows").with("shown", scale)));
    act(ui, view, "hand-tare", Action::of(Act::Tare), actions);
}

/// Draws it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (_, inverted) = view.cylinder();
    // On its head it stands on its guard, so that its valve has room below.
    let (top, bottom) = if inverted {
        (480.0, 572.0)
    } else {
        (500.0, 592.0)
    };
    canvas.rect(
        Rect::from_min_max(pos2(716.0, 592.0), pos2(870.0, 604.0)),
        2.0,
        palette.ink,
        canvas.ink(1.0),
    );
    canvas.rect(
        Rect::from_min_max(pos2(742.0, top), pos2(802.0, bottom)),
        14.0,
        palette.metal,
        canvas.ink(2.0),
    );
    let refrigerant = view.scene.refrigerant;
    canvas.text(
        772.0,
        0.5 * (top + bottom),
        Align2::CENTER_CENTER,
        14.0,
        refrigerant,
        palette.ink,
    );
    let (foot, tip) = if inverted {
        (572.0, 586.0)
    } else {
        (500.0, 482.0)
    };
    canvas.line(
        &[(772.0, foot), (772.0, tip)],
        canvas.stroke(6.0, palette.copper),
    );
    if inverted {
        // It stands on its head: its valve is below, a dip of hose reaches up to the connection.
        canvas.line(
            &[(772.0, 582.0), (806.0, 582.0), (806.0, 474.0)],
            canvas.stroke(3.0, palette.copper),
        );
        canvas.line(
            &[(806.0, 474.0), (772.0, 474.0)],
            canvas.stroke(3.0, palette.copper),
        );
    }
    let (x, y) = wheel(inverted);
    canvas.line(&[(772.0, y), (x, y)], canvas.stroke(4.0, palette.copper));
    canvas.circle(x, y, 11.0, palette.raised, canvas.ink(2.0));
    let turn = Turn::of(Thread::Cylinder, view).map_or(0.0, Turn::angle);
    let tip = (x + 9.0 * turn.sin(), y - 9.0 * turn.cos());
    canvas.line(&[(x, y), tip], canvas.ink(3.0));
    let scale = Rect::from_min_max(pos2(808.0, 562.0), pos2(890.0, 588.0));
    canvas.rect(scale, 3.0, palette.raised, canvas.ink(1.5));
    let weight = view.text(Reading::of(Face::Scale));
    canvas.text(
        849.0,
        575.0,
        Align2::CENTER_CENTER,
        12.0,
        &weight,
        palette.ink,
    );
    canvas.caption(790.0, 618.0, "caption-cylinder");
}

/// How it looks, in words.
pub fn looks(view: &View) -> Message {
    let (valve, inverted) = view.cylinder();
    let way = Message::new(if inverted {
        "part-cylinder-inverted"
    } else {
        "part-cylinder-upright"
    });
    let valve = Message::new("part-valve-at").with("opening", opening_label(valve));
    Message::list(vec![way, valve], ", ")
}
