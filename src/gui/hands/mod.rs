//! At hand: what can be done to the thing that is chosen. Each control gives exactly one action.

mod cart;
mod circuit;
mod electric;
mod hoses;
mod valves;

use super::cautions;
use super::part::Part;
use super::view::View;
use super::widgets::{first_takes_focus, take_focus};
use crate::words::Action;
use eframe::egui::{RichText, ScrollArea, Ui};

/// What is half entered and not yet done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drafts {
    /// The torque to make a joint up to, ft·lb.
    pub torque: f64,
}

impl Default for Drafts {
    fn default() -> Self {
        Self { torque: 10.0 }
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
        ui.label("Point at a thing on the site, or step to it with the Tab key.");
        ui.label("What you can do to it appears here.");
        return;
    };
    let mut heading = part.label().to_owned();
    if let Some(first) = heading.get_mut(0..1) {
        first.make_ascii_uppercase();
    }
    ui.heading(heading);
    ui.label(RichText::new(part.state(view)).weak());
    if let Some(caution) = cautions::at(part) {
        cautions::caution_ui(ui, caution);
    }
    if view.refrigerant_burns()
        && let Some(caution) = cautions::at_what_burns(part)
    {
        cautions::caution_ui(ui, caution);
    }
    ui.separator();
    ScrollArea::vertical().id_salt("hands").show(ui, |ui| {
        ui.push_id(part.label(), |ui| {
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
        Part::Filter => circuit::filter(ui, actions),
        Part::Valve(line) => valves::valve(ui, view, line, actions),
        Part::Port(line) => valves::port(ui, view, line, actions),
        Part::Joint(joint) => circuit::joint(ui, view, joint, drafts, actions),
        Part::Drier => circuit::drier(ui, view, actions),
        Part::Place(place) => circuit::place(ui, view, place, actions),
        Part::Hose(hose) => hoses::hose(ui, view, hose, actions),
        Part::HandValve(hose) => hoses::hand_valve(ui, view, hose, actions),
        Part::Pump => cart::pump(ui, view, actions),
        Part::MicronGauge => cart::micron_gauge(ui, view, actions),
        Part::Nitrogen => cart::nitrogen(ui, view, actions),
        Part::Cylinder => cart::cylinder(ui, view, actions),
        Part::Detector => cart::detector(ui, view, actions),
    }
}

/// A button that does one action.
fn act(ui: &mut Ui, text: &str, action: Action, actions: &mut Vec<Action>) {
    let button = ui.button(text);
    take_focus(&button);
    if button.clicked() {
        actions.push(action);
    }
}

/// A button that does the one of two actions that changes how things stand.
fn toggle(
    ui: &mut Ui,
    on: bool,
    (switch_on, switch_off): (&str, &str),
    action: impl Fn(bool) -> Action,
    actions: &mut Vec<Action>,
) {
    let text = if on { switch_off } else { switch_on };
    act(ui, text, action(!on), actions);
}
