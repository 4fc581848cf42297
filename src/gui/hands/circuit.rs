//! Joints, drier, coils, filter and the places for thermometers.

use super::valves::leak_search;
use super::{Drafts, act, toggle};
use crate::gui::view::View;
use crate::job::Glass;
use crate::kit::ThermometerPlace;
use crate::plant::{Arrow, FlareSize, Joint, Made, Spot};
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
        ui.weak(format!("Last pulled to {}.", view.system().torque(torque)));
    }
    match made {
        Made::Up(_) => act(ui, "Loosen the nut a turn", Action::Loosen(joint), actions),
        Made::Cracked => act(
            ui,
            "Take the joint apart",
            Action::TakeApart(joint),
            actions,
        ),
        Made::Apart => {
            act(ui, "Plug both ends", Action::Plug(joint), actions);
            act(
                ui,
                "Cut and renew the flare",
                Action::RenewFlare(joint),
                actions,
            );
        }
        Made::Plugged => {
            act(
                ui,
                "Cut and renew the flare",
                Action::RenewFlare(joint),
                actions,
            );
        }
    }
    ui.separator();
    ui.label(format!("Flare of {} tube.", size_label(view.flare(joint))));
    wrench(ui, view, drafts);
    let torque = drafts.torque;
    act(
        ui,
        "Make up to this torque",
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
        let label = ui.label("torque wrench");
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

const fn size_label(size: FlareSize) -> &'static str {
    match size {
        FlareSize::Quarter => "1/4 in",
        FlareSize::ThreeEighths => "3/8 in",
        FlareSize::Half => "1/2 in",
        FlareSize::FiveEighths => "5/8 in",
        FlareSize::ThreeQuarters => "3/4 in",
    }
}

/// The filter drier.
pub fn drier(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    if view.drier().is_some() {
        act(ui, "Take the drier out", Action::TakeOutDrier, actions);
    } else {
        ui.label("A new drier is on the cart, its caps still on.");
        for (text, arrow) in [
            (
                "Fit new, arrow toward the metering device",
                Arrow::TowardMetering,
            ),
            (
                "Fit new, arrow toward the outdoor unit",
                Arrow::TowardOutdoor,
            ),
        ] {
            act(ui, text, Action::FitDrier(arrow), actions);
        }
    }
}

/// The sight glass: what shows in it, and what that can mean.
pub fn sight_glass(ui: &mut Ui, view: &View) {
    let glass = view.sight_glass();
    ui.label(match glass {
        Glass::Clear => "Nothing moves: full of liquid, or empty. The eye cannot tell which.",
        Glass::Flashes(_) => "Vapour comes with the liquid.",
        Glass::Level(_) => "Nothing flows.",
    });
}

/// The nameplate, to read.
pub fn nameplate(ui: &mut Ui, view: &View) {
    for (what, says) in view.scene.nameplate(view.system()) {
        ui.label(format!("{what}: {says}"));
    }
}

/// The outdoor coil.
pub fn outdoor_coil(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    act(
        ui,
        "Clean the outdoor coil",
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
pub fn filter(ui: &mut Ui, actions: &mut Vec<Action>) {
    act(ui, "Change the air filter", Action::ChangeFilter, actions);
}

/// A place for a thermometer.
pub fn place(ui: &mut Ui, view: &View, place: ThermometerPlace, actions: &mut Vec<Action>) {
    let words = if place.is_on_a_pipe() {
        ("Clamp a thermometer here", "Take the thermometer off")
    } else {
        ("Hang a thermometer here", "Take the thermometer away")
    };
    let on = view.thermometer_at(place);
    let action = |on| {
        if on {
            Action::Clamp(place)
        } else {
            Action::Unclamp(place)
        }
    };
    toggle(ui, on, words, action, actions);
    if on {
        ui.label(format!(
            "It shows {}.",
            view.text(Reading::Thermometer(place))
        ));
    }
    ui.weak(format!("{} left in the case.", view.thermometers_free()));
}
