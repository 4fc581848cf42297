//! At hand: what can be done to the thing that is chosen. Each control gives exactly one action.

mod cart;
mod circuit;
mod electric;
mod hoses;
mod turning;
mod valves;

use super::cautions;
use super::part::Part;
use super::view::View;
use super::widgets::{first_takes_focus, take_focus};
use crate::units::Torque;
use crate::words::Action;
use eframe::egui::{RichText, ScrollArea, Ui};

/// What is half entered and not yet done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drafts {
    /// The torque to make a joint up to.
    pub torque: Torque,
}

impl Default for Drafts {
    fn default() -> Self {
        Self {
            torque: Torque::from_foot_pounds(10.0),
        }
    }
}

/// Shows what the chosen part offers.
pub fn hands_ui(
    ui: &mut Ui,
    view: &View,
    chosen: Option<Part>,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let Some(part) = chosen else {
        ui.label(view.say("hand-point"));
        ui.label(view.say("hand-appears-here"));
        return;
    };
    ui.heading(capitalised(&view.tell(&part.label())));
    ui.label(RichText::new(part.state(view)).weak());
    if let Some(caution) = cautions::at(part) {
        cautions::caution_ui(ui, view.reads.language, caution);
    }
    if view.refrigerant_burns()
        && let Some(caution) = cautions::at_what_burns(part)
    {
        cautions::caution_ui(ui, view.reads.language, caution);
    }
    ui.separator();
    ScrollArea::vertical().id_salt("hands").show(ui, |ui| {
        ui.push_id(format!("{part:?}"), |ui| {
            first_takes_focus(ui, |ui| offers(ui, view, part, drafts, actions));
        });
    });
}

fn offers(ui: &mut Ui, view: &View, part: Part, drafts: &mut Drafts, actions: &mut Vec<Action>) {
    match part {
        Part::Protection => electric::protection(ui, view, actions),
        Part::Thermostat => electric::thermostat(ui, view, actions),
        Part::Disconnect => electric::disconnect(ui, view, actions),
        Part::Nameplate => circuit::nameplate(ui, view),
        Part::Compressor => electric::compressor(ui, view, actions),
        Part::OutdoorCoil => circuit::outdoor_coil(ui, view, actions),
        Part::IndoorCoil => circuit::indoor_coil(ui, view, actions),
        Part::Filter => circuit::filter(ui, view, actions),
        Part::Valve(line) => valves::valve(ui, view, line, actions),
        Part::Port(line) => valves::port(ui, view, line, actions),
        Part::Joint(joint) => circuit::joint(ui, view, joint, drafts, actions),
        Part::Drier => circuit::drier(ui, view, actions),
        Part::SightGlass => circuit::sight_glass(ui, view),
        Part::Place(place) => circuit::place(ui, view, place, actions),
        Part::Hose(hose) => hoses::hose(ui, view, hose, actions),
        Part::HandValve(hose) => hoses::hand_valve(ui, view, hose, actions),
        Part::Pump => cart::pump(ui, view, actions),
        Part::MicronGauge => cart::micron_gauge(ui, view, actions),
        Part::Nitrogen => cart::nitrogen(ui, view, actions),
        Part::Regulator => cart::regulator(ui, view, actions),
        Part::Cylinder => cart::cylinder(ui, view, actions),
        Part::Thermometers => cart::thermometers(ui, view, actions),
        Part::Detector => cart::detector(ui, view, actions),
    }
}

/// A name as a heading: it begins with a capital letter.
fn capitalised(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    first.chain(letters).collect()
}

/// A button that does one action; its text is that of a key.
fn act(ui: &mut Ui, view: &View, key: &str, action: Action, actions: &mut Vec<Action>) {
    offer(ui, view.say(key), action, actions);
}

/// The same, with a text that is ready.
fn offer(ui: &mut Ui, text: String, action: Action, actions: &mut Vec<Action>) {
    let button = ui.button(text);
    take_focus(&button);
    if button.clicked() {
        actions.push(action);
    }
}

/// A button that does the one of two actions that changes how things stand.
fn toggle(
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
