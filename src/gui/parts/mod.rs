//! At hand: what can be done to the thing that is chosen. Each control gives exactly one action.

mod circuit;
mod drafts;
mod electric;
mod leak_search;
mod valves;

pub use drafts::Drafts;

use crate::gui::cautions;
use crate::gui::part::Part;
use crate::gui::tools::{
    self, cylinder, detector, hoses, micron_gauge, nitrogen, pump, thermometers,
};
use crate::gui::view::View;
use crate::gui::widgets::{first_takes_focus, keys};
use crate::words::Action;
use eframe::egui::{RichText, ScrollArea, Ui};

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
            keys::begin_slots(ui.ctx());
            first_takes_focus(ui, |ui| offers(ui, view, part, drafts, actions));
            keys::end_slots(ui.ctx());
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
        Part::Pump => pump::hands(ui, view, actions),
        Part::MicronGauge => micron_gauge::hands(ui, view, actions),
        Part::Nitrogen => nitrogen::hands(ui, view, actions),
        Part::Regulator => nitrogen::regulator(ui, view, actions),
        Part::Cylinder => cylinder::hands(ui, view, actions),
        Part::Thermometers => thermometers::hands(ui, view, actions),
        Part::Detector => detector::hands(ui, view, actions),
        Part::Tool(name) => {
            if let Some(place) = tools::own_place(name) {
                (place.hands)(ui, view, actions);
            }
        }
    }
}

/// A name as a heading: it begins with a capital letter.
fn capitalised(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    first.chain(letters).collect()
}
