//! The vacuum pump.

use crate::gui::canvas::Canvas;
use crate::gui::tools::rating::rating;
use crate::gui::view::View;
use crate::gui::widgets::{Halves, act, switch};
use crate::kit::vacuum_pump::Action as Act;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::{Align2, Color32, Rect, Ui, pos2};

/// Where a hose goes on.
pub const SOCKET: (f32, f32) = (176.0, 506.0);

/// What can be done with it.
pub fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let look = view.pump();
    switch(
        ui,
        view,
        (
            "hand-pump",
            Halves {
                yes: ("hand-runs", "hand-pump-start"),
                no: ("hand-stands", "hand-pump-stop"),
            },
        ),
        look.running,
        |on| Action::of(Act::Run(on)),
        actions,
    );
    let words = (
        "hand-inlet",
        Halves {
            yes: ("hand-open", "hand-inlet-open"),
            no: ("hand-shut", "hand-inlet-shut"),
        },
    );
    switch(
        ui,
        view,
        words,
        look.inlet_open,
        |open| Action::of(Act::Inlet(open)),
        actions,
    );
    let words = (
        "hand-ballast",
        Halves {
            yes: ("hand-open", "hand-ballast-open"),
            no: ("hand-shut", "hand-ballast-shut"),
        },
    );
    switch(
        ui,
        view,
        words,
        look.ballast_open,
        |open| Action::of(Act::Ballast(open)),
        actions,
    );
    ui.separator();
    ui.label(view.say(if look.oil_is_milky {
        "hand-oil-milky"
    } else {
        "hand-oil-clear"
    }));
    rating(ui, view, view.tools_rated().1);
    act(
        ui,
        view,
        "hand-change-oil",
        Action::of(Act::ChangeOil),
        actions,
    );
}

/// Draws it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let look = view.pump();
    canvas.rect(
        Rect::from_min_max(pos2(56.0, 530.0), pos2(166.0, 592.0)),
        8.0,
        palette.metal,
        canvas.ink(2.0),
    );
    canvas.rect(
        Rect::from_min_max(pos2(48.0, 592.0), pos2(174.0, 600.0)),
        1.0,
        palette.ink,
        canvas.ink(1.0),
    );
    // The inlet with its valve: a lever along the pipe is open, across it shut.
    canvas.line(
        &[(150.0, 530.0), (150.0, 506.0), (176.0, 506.0)],
        canvas.stroke(6.0, palette.copper),
    );
    let lever = if look.inlet_open {
        [(150.0, 508.0), (150.0, 530.0)]
    } else {
        [(138.0, 518.0), (162.0, 518.0)]
    };
    canvas.line(&lever, canvas.ink(4.0));
    // The oil's sight glass.
    let oil = if look.oil_is_milky {
        palette.raised
    } else {
        palette.centre
    };
    canvas.circle(78.0, 566.0, 12.0, oil, canvas.ink(1.5));
    let word = canvas.say(if look.oil_is_milky {
        "caption-oil-milky"
    } else {
        "caption-oil"
    });
    canvas.text_within((78.0, 566.0), 22.0, 10.0, &word, Color32::BLACK);
    // The gas ballast on top.
    let up = if look.ballast_open { 514.0 } else { 522.0 };
    canvas.rect(
        Rect::from_min_max(pos2(70.0, up), pos2(90.0, 530.0)),
        2.0,
        palette.raised,
        canvas.ink(1.2),
    );
    let word = canvas.say(if look.running {
        "caption-pump-runs"
    } else {
        "caption-pump-stands"
    });
    canvas.text(
        130.0,
        566.0,
        Align2::CENTER_CENTER,
        13.0,
        &word,
        palette.ink,
    );
    canvas.caption(110.0, 614.0, "caption-vacuum-pump");
}

/// How it looks, in words.
pub fn looks(view: &View) -> Message {
    let pump = view.pump();
    let runs = Message::new(if pump.running {
        "part-pump-runs"
    } else {
        "part-pump-stands"
    });
    let inlet = Message::new(if pump.inlet_open {
        "part-inlet-open"
    } else {
        "part-inlet-shut"
    });
    Message::list(vec![runs, inlet], ", ")
}
