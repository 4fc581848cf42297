//! Cautions where work can hurt: once at the start, and at the thing itself.

use crate::gui::part::Part;
use crate::gui::theme::Palette;
use crate::gui::tools;
use crate::text::{Language, Message};
use eframe::egui::{Frame, Margin, RichText, Stroke, Ui};

/// What the whole program is, and is not.
pub const PRACTICE_ONLY: Message = Message::new("caution-practice-only");

/// What can hurt in this work, said once before it starts.
pub const AT_THE_START: [Message; 7] = [
    Message::new("caution-pressure"),
    Message::new("caution-electricity"),
    Message::new("caution-cold"),
    Message::new("caution-oxygen"),
    Message::new("caution-regulator"),
    Message::new("caution-heat"),
    Message::new("caution-fire"),
];

/// The caution where the refrigerant burns.
const BURNS: Message = Message::new("caution-burns");

/// The caution that belongs to a thing of a circuit whose refrigerant burns.
pub const fn at_what_burns(part: Part) -> Option<Message> {
    match part {
        Part::Nameplate
        | Part::Joint(_)
        | Part::Drier
        | Part::Port(_)
        | Part::Hose(_)
        | Part::Cylinder
        | Part::Pump
        | Part::Detector
        | Part::Tool(_) => Some(BURNS),
        Part::Protection
        | Part::Thermostat
        | Part::Compressor
        | Part::Disconnect
        | Part::OutdoorCoil
        | Part::IndoorCoil
        | Part::Filter
        | Part::Valve(_)
        | Part::SightGlass
        | Part::Place(_)
        | Part::HandValve(_)
        | Part::MicronGauge
        | Part::Nitrogen
        | Part::Regulator
        | Part::Thermometers => None,
    }
}

/// The caution that belongs to a thing.
pub const fn at(part: Part) -> Option<Message> {
    match part {
        Part::Disconnect => Some(Message::new("caution-at-disconnect")),
        Part::Compressor => Some(Message::new("caution-at-compressor")),
        Part::Joint(_) | Part::Drier => Some(Message::new("caution-at-joint")),
        Part::Port(_) | Part::Hose(_) => Some(Message::new("caution-at-hose")),
        Part::Nitrogen | Part::Regulator => Some(Message::new("caution-at-nitrogen")),
        Part::Cylinder => Some(Message::new("caution-at-cylinder")),
        Part::Tool(name) => match tools::own_place(name) {
            Some(place) => Some(Message::new(place.caution)),
            None => None,
        },
        Part::Protection
        | Part::Thermostat
        | Part::Nameplate
        | Part::OutdoorCoil
        | Part::IndoorCoil
        | Part::Filter
        | Part::Valve(_)
        | Part::SightGlass
        | Part::Place(_)
        | Part::HandValve(_)
        | Part::Pump
        | Part::MicronGauge
        | Part::Thermometers
        | Part::Detector => None,
    }
}

/// Shows a caution: a bordered line that begins with its word.
pub fn caution_ui(ui: &mut Ui, language: Language, what: Message) {
    let palette = Palette::of(ui);
    let text = Message::new("caution-caution").with("text", what);
    Frame::NONE
        .stroke(Stroke::new(1.0, palette.warn))
        .inner_margin(Margin::symmetric(6, 3))
        .show(ui, |ui| {
            ui.label(RichText::new(text.in_language(language)).color(palette.warn));
        });
}
