//! Joints, drier, coils, filter and the places for thermometers.

use crate::gui::parts::Drafts;
use crate::gui::parts::leak_search::leak_search;
use crate::gui::view::View;
use crate::gui::view::looks::size_label;
use crate::gui::widgets::{Halves, act, switch};
use crate::job::Glass;
use crate::kit::ThermometerPlace;
use crate::plant::{Arrow, Joint, Made, Spot};
use crate::text::Message;
use crate::units::Torque;
use crate::words::{Action, Reading};
use eframe::egui::{DragValue, Ui};

/// A flare joint: what can be done to it goes with how far it is made.
pub fn joint(
    ui: &mut Ui,
    view: &View,
    joint: Joint,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let made = view.made(joint);
    if let Made::Up(torque) = made {
        let torque = view.system().torque(torque);
        ui.weak(view.tell(&Message::new("hand-last-pulled").with("torque", torque)));
    }
    // Each has its place for ever; one that is not possible now says why when it is pressed.
    for (key, action) in [
        ("hand-loosen", Action::Loosen(joint)),
        ("hand-take-apart", Action::TakeApart(joint)),
        ("hand-plug", Action::Plug(joint)),
        ("hand-renew-flare", Action::RenewFlare(joint)),
    ] {
        act(ui, view, key, action, actions);
    }
    ui.separator();
    let size = size_label(view.flare(joint)).to_owned();
    ui.label(view.tell(&Message::new("hand-flare-of").with("size", size)));
    wrench(ui, view, drafts);
    let torque = drafts.torque;
    act(
        ui,
        view,
        "hand-make-up",
        Action::MakeUp { joint, torque },
        actions,
    );
    ui.separator();
    leak_search(ui, view, Spot::Joint(joint), actions);
}

/// The torque wrench, set in the units of the person.
fn wrench(ui: &mut Ui, view: &View, drafts: &mut Drafts) {
    let (unit, name) = view.system().torque_unit();
    let mut shown = drafts.torque.newton_metres() / unit;
    ui.horizontal(|ui| {
        let label = ui.label(view.say("hand-wrench"));
        let value = DragValue::new(&mut shown)
            .range(0.0..=WRENCH_MOST.newton_metres() / unit)
            .speed(0.5)
            .max_decimals(1)
            .suffix(format!(" {name}"));
        if ui.add(value).labelled_by(label.id).changed() {
            drafts.torque = Torque::from_newton_metres(shown * unit);
        }
    });
}

/// The end of the wrench's scale.
const WRENCH_MOST: Torque = Torque::from_newton_metres(300.0);

/// The filter drier.
pub fn drier(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    act(
        ui,
        view,
        "hand-drier-take-out",
        Action::TakeOutDrier,
        actions,
    );
    ui.label(view.say("hand-drier-new"));
    for (text, arrow) in [
        ("hand-drier-toward-metering", Arrow::TowardMetering),
        ("hand-drier-toward-outdoor", Arrow::TowardOutdoor),
    ] {
        act(ui, view, text, Action::FitDrier(arrow), actions);
    }
}

/// The sight glass: what shows in it, and what that can mean.
pub fn sight_glass(ui: &mut Ui, view: &View) {
    let glass = view.sight_glass();
    ui.label(view.say(match glass {
        Glass::Clear => "hand-glass-still",
        Glass::Flashes(_) => "hand-glass-vapour",
        Glass::Level(_) => "hand-glass-no-flow",
    }));
}

/// The nameplate, to read.
pub fn nameplate(ui: &mut Ui, view: &View) {
    for (what, says) in view.scene.nameplate(view.system()) {
        let line = Message::new("plate-line")
            .with("what", what)
            .with("says", says);
        ui.label(view.tell(&line));
    }
}

/// The outdoor coil.
pub fn outdoor_coil(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    act(
        ui,
        view,
        "hand-clean-coil",
        Action::CleanOutdoorCoil,
        actions,
    );
    ui.separator();
    leak_search(ui, view, Spot::OutdoorCoil, actions);
}

/// The indoor coil.
pub fn indoor_coil(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    leak_search(ui, view, Spot::IndoorCoil, actions);
}

/// The indoor air filter.
pub fn filter(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    act(
        ui,
        view,
        "hand-change-filter",
        Action::ChangeFilter,
        actions,
    );
}

/// A place for a thermometer.
pub fn place(ui: &mut Ui, view: &View, place: ThermometerPlace, actions: &mut Vec<Action>) {
    let words = if place.is_on_a_pipe() {
        (
            "hand-thermometer",
            Halves {
                yes: ("hand-on", "hand-clamp-here"),
                no: ("hand-off", "hand-unclamp"),
            },
        )
    } else {
        (
            "hand-thermometer",
            Halves {
                yes: ("hand-on", "hand-hang-here"),
                no: ("hand-off", "hand-unhang"),
            },
        )
    };
    let on = view.thermometer_at(place);
    let action = |on| {
        if on {
            Action::Clamp(place)
        } else {
            Action::Unclamp(place)
        }
    };
    switch(ui, view, words, on, action, actions);
    if on {
        let shown = view.shown(Reading::Thermometer(place));
        ui.label(view.tell(&Message::new("hand-it-shows").with("shown", shown)));
    }
    let left = Message::new("hand-left-in-case").with("count", view.thermometers_free());
    ui.weak(view.tell(&left));
}
