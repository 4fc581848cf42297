//! The recovery machine, its cylinder below it on the recovery scale.

use crate::gui::canvas::{Canvas, around};
use crate::gui::tools::own_place::OwnPlace;
use crate::gui::tools::rating::rating;
use crate::gui::view::View;
use crate::gui::widgets::{Halves, act, switch};
use crate::kit::RecoveryMachine;
use crate::kit::recovery::{Action as Act, Reading as Face};
use crate::text::Message;
use crate::words::{Action, Reading};
use eframe::egui::{Align2, Rect, Ui, pos2};

/// Where a hose goes on.
pub const SOCKET: (f32, f32) = (1032.0, 470.0);

/// It stands beside the cart.
pub static PLACE: OwnPlace = OwnPlace {
    area: Rect {
        min: pos2(1024.0, 462.0),
        max: pos2(1072.0, 622.0),
    },
    looks,
    hands,
    draw,
    caution: "recovery-caution",
};

fn machine<'a>(view: &View<'a>) -> Option<&'a RecoveryMachine> {
    view.tools().recovery.as_ref()
}

/// What can be done with it.
fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let Some(machine) = machine(view) else {
        return;
    };
    let words = (
        "recovery-machine",
        Halves {
            yes: ("hand-runs", "recovery-start"),
            no: ("hand-stands", "recovery-stop"),
        },
    );
    let run = |on| Action::of(Act::Run(on));
    switch(ui, view, words, machine.running, run, actions);
    let words = (
        "recovery-inlet",
        Halves {
            yes: ("recovery-liquid", "recovery-to-liquid"),
            no: ("recovery-vapour", "recovery-to-vapour"),
        },
    );
    let set = |liquid| Action::of(Act::Liquid(liquid));
    switch(ui, view, words, machine.liquid, set, actions);
    let words = (
        "recovery-cylinder",
        Halves {
            yes: ("hand-open", "recovery-open"),
            no: ("hand-shut", "recovery-shut"),
        },
    );
    let valve = |open| Action::of(Act::Valve(open));
    switch(ui, view, words, machine.valve_open, valve, actions);
    ui.separator();
    for face in [Face::Scale, Face::Outlet] {
        let shows = Message::new("recovery-reads")
            .with("what", Reading::of(face).label())
            .with("shown", view.shown(Reading::of(face)));
        ui.label(view.tell(&shows));
    }
    act(ui, view, "recovery-tare", Action::of(Act::Tare), actions);
    rating(ui, view, machine.is_rated());
}

/// Draws it.
fn draw(canvas: &Canvas, view: &View) {
    let Some(machine) = machine(view) else {
        return;
    };
    let palette = canvas.palette;
    let (x, ink) = (1048.0, canvas.ink(2.0));
    // The inlet, the machine, its outlet down to the cylinder.
    canvas.line(
        &[SOCKET, (SOCKET.0, 482.0)],
        canvas.stroke(5.0, palette.copper),
    );
    canvas.rect(around(x, 502.0, 44.0, 40.0), 6.0, palette.metal, ink);
    let light = if machine.running {
        palette.accent
    } else if machine.stopped {
        palette.warn
    } else {
        palette.raised
    };
    canvas.circle(1038.0, 494.0, 4.0, light, canvas.ink(1.0));
    // The knob of the inlet points at what it is set to.
    let tip = if machine.liquid { 1052.0 } else { 1064.0 };
    canvas.circle(1058.0, 508.0, 7.0, palette.raised, canvas.ink(1.2));
    canvas.line(&[(1058.0, 508.0), (tip, 503.0)], ink);
    canvas.line(
        &[(x, 522.0), (x, 540.0)],
        canvas.stroke(4.0, palette.copper),
    );
    let lever = if machine.valve_open {
        [(x, 528.0), (x, 540.0)]
    } else {
        [(1040.0, 534.0), (1056.0, 534.0)]
    };
    canvas.line(&lever, canvas.ink(4.0));
    canvas.rect(around(x, 566.0, 36.0, 50.0), 12.0, palette.metal, ink);
    canvas.rect(
        around(x, 602.0, 48.0, 20.0),
        3.0,
        palette.raised,
        canvas.ink(1.5),
    );
    let weight = view.text(Reading::of(Face::Scale));
    canvas.text(x, 602.0, Align2::CENTER_CENTER, 10.0, &weight, palette.ink);
    canvas.caption(x, 622.0, "recovery-caption");
}

/// How it looks, in words.
fn looks(view: &View) -> Message {
    let Some(machine) = machine(view) else {
        return Message::new("recovery-stands");
    };
    let runs = Message::new(if machine.running {
        "recovery-runs"
    } else if machine.stopped {
        "recovery-tripped"
    } else {
        "recovery-stands"
    });
    let inlet = Message::new(if machine.liquid {
        "recovery-at-liquid"
    } else {
        "recovery-at-vapour"
    });
    let cylinder = Message::new(if machine.valve_open {
        "recovery-cylinder-open"
    } else {
        "recovery-cylinder-shut"
    });
    Message::list(vec![runs, inlet, cylinder], ", ")
}
