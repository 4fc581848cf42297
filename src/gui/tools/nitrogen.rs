//! Nitrogen: the cylinder and its regulator.

use crate::gui::canvas::{Canvas, around};
use crate::gui::view::turn::{SCREW_MOST, Thread, Turn};
use crate::gui::view::{Needle, System, View};
use crate::gui::widgets::{Halves, Setting, act, setting, switch};
use crate::kit::nitrogen::{Action as Act, Reading as Face};
use crate::text::Message;
use crate::units::GaugePressure;
use crate::words::{Action, Reading};
use eframe::egui::{Align2, Color32, Rect, Ui, pos2};

/// Where a hose goes on.
pub const SOCKET: (f32, f32) = (640.0, 500.0);

/// The screw of the regulator.
pub const SCREW: (f32, f32) = (622.0, 472.0);

/// The nitrogen cylinder and its regulator.
pub fn hands(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (open, ..) = view.nitrogen();
    let words = (
        "hand-nitrogen",
        Halves {
            yes: ("hand-open", "hand-nitrogen-open"),
            no: ("hand-shut", "hand-nitrogen-shut"),
        },
    );
    switch(
        ui,
        view,
        words,
        open,
        |open| Action::of(Act::Valve(open)),
        actions,
    );
    regulator(ui, view, actions);
}

/// The regulator alone.
pub fn regulator(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (_, fitted, _) = view.nitrogen();
    let words = (
        "hand-regulator-there",
        Halves {
            yes: ("hand-on", "hand-regulator-fit"),
            no: ("hand-off", "hand-regulator-off"),
        },
    );
    switch(
        ui,
        view,
        words,
        fitted,
        |on| Action::of(Act::Regulator(on)),
        actions,
    );
    if fitted {
        let screw = |pascals| Action::of(Act::SetRegulator(GaugePressure::from_pascals(pascals)));
        act(ui, view, "hand-regulator-back-off", screw(0.0), actions);
        let (unit, name) = view.system().gauge_unit();
        let most = GaugePressure::from_psig(SCREW_MOST).pascals();
        let what = Setting {
            label: &view.say("hand-regulator"),
            value: view.regulator().pascals() / unit,
            range: 0.0..=(most / unit).round(),
            step: match view.system() {
                System::InchPound => 2.5,
                System::Metric => 5.0,
            },
            unit: &format!(" {}", view.tell(&name)),
        };
        if let Some(set) = setting(ui, what) {
            actions.push(screw(set * unit));
        }
        let outlet = view.shown(Reading::of(Face::Outlet));
        ui.label(view.tell(&Message::new("hand-outlet-shows").with("shown", outlet)));
        let cylinder = view.shown(Reading::of(Face::Cylinder));
        ui.label(view.tell(&Message::new("hand-cylinder-shows").with("shown", cylinder)));
    }
}

/// Draws it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (open, fitted, _) = view.nitrogen();
    canvas.rect(
        Rect::from_min_max(pos2(566.0, 478.0), pos2(610.0, 606.0)),
        16.0,
        palette.metal,
        canvas.ink(2.0),
    );
    canvas.text(588.0, 550.0, Align2::CENTER_CENTER, 18.0, "N₂", palette.ink);
    canvas.rect(
        around(588.0, 470.0, 14.0, 16.0),
        1.0,
        palette.copper,
        canvas.ink(1.2),
    );
    // The hand wheel stands higher when it is open.
    let wheel = if open { 448.0 } else { 456.0 };
    canvas.line(&[(574.0, wheel), (602.0, wheel)], canvas.ink(5.0));
    canvas.line(&[(588.0, wheel), (588.0, 464.0)], canvas.ink(2.0));
    canvas.line(
        &[(595.0, 472.0), (640.0, 472.0), (640.0, 494.0)],
        canvas.stroke(4.0, palette.copper),
    );
    if !fitted {
        // Where it goes.
        let outline = canvas.stroke(1.0, palette.faint);
        canvas.circle(622.0, 472.0, 12.0, Color32::TRANSPARENT, outline);
    }
    if fitted {
        canvas.circle(622.0, 472.0, 12.0, palette.metal, canvas.ink(1.5));
        let turn = Turn::of(Thread::Regulator, view).map_or(0.0, Turn::angle);
        let (dx, dy) = (9.0 * turn.sin(), -9.0 * turn.cos());
        canvas.line(&[(622.0, 472.0), (622.0 + dx, 472.0 + dy)], canvas.ink(3.0));
        for (x, face) in [
            (612.0, Needle::NitrogenCylinder),
            (648.0, Needle::NitrogenOutlet),
        ] {
            canvas.circle(x, 448.0, 13.0, palette.raised, canvas.ink(1.5));
            let (share, ..) = view.needle(face);
            let angle = (150.0 + 240.0 * share as f32).to_radians();
            canvas.line(
                &[
                    (x, 448.0),
                    (x + 9.0 * angle.cos(), 448.0 + 9.0 * angle.sin()),
                ],
                canvas.ink(1.5),
            );
        }
    }
    canvas.caption(588.0, 618.0, "caption-nitrogen");
}

/// How it looks, in words.
pub fn looks(view: &View) -> Message {
    let (open, fitted, _) = view.nitrogen();
    let valve = Message::new(if open {
        "part-valve-open"
    } else {
        "part-valve-shut"
    });
    let regulator = Message::new(if fitted {
        "part-regulator-on"
    } else {
        "part-no-regulator"
    });
    Message::list(vec![valve, regulator], ", ")
}

/// How the regulator looks, in words.
pub fn regulator_looks(view: &View) -> Message {
    match view.nitrogen() {
        (_, false, _) => Message::new("part-regulator-off"),
        (_, true, 0.0) => Message::new("part-regulator-backed-off"),
        (_, true, _) => Message::new("part-regulator-set")
            .with("pressure", view.system().gauge(view.regulator())),
    }
}
