//! Cautions where work can hurt: once at the start, and at the thing itself.

use super::part::Part;
use super::theme::Palette;
use eframe::egui::{Frame, Margin, RichText, Stroke, Ui};

/// What the whole program is, and is not.
pub const PRACTICE_ONLY: &str = "This is practice only. It makes nobody a licensed technician: \
     local codes, the nameplate and licensed practice decide.";

/// What can hurt in this work, said once before it starts.
pub const AT_THE_START: [&str; 7] = [
    "Pressure: a circuit or a cylinder that lets go can injure. Eyes and hands first.",
    "Electricity: lock out, discharge the capacitor, prove that nothing is live.",
    "Cold: liquid refrigerant burns the skin and the eyes.",
    "Never oxygen, never shop air: with oil under pressure they explode. Dry nitrogen only.",
    "Never nitrogen without its regulator: a full cylinder bursts a coil.",
    "Heat: the discharge line and a running compressor burn.",
    "Fire: some refrigerants burn. Ventilate, keep sparks and flames away, use rated tools.",
];

/// The caution where the refrigerant burns.
const BURNS: &str = "This refrigerant burns: ventilate, no flame or spark near, rated tools. \
     Purge with nitrogen before you open or braze.";

/// The caution that belongs to a thing of a circuit whose refrigerant burns.
pub const fn at_what_burns(part: Part) -> Option<&'static str> {
    match part {
        Part::Nameplate
        | Part::Joint(_)
        | Part::Drier
        | Part::Port(_)
        | Part::Hose(_)
        | Part::Cylinder
        | Part::Pump
        | Part::Detector => Some(BURNS),
        _ => None,
    }
}

/// The caution that belongs to a thing.
pub const fn at(part: Part) -> Option<&'static str> {
    match part {
        Part::Disconnect => Some("Lock out and prove dead before hands go in."),
        Part::Compressor => Some("Live terminals, a charged capacitor, a hot discharge line."),
        Part::Joint(_) | Part::Drier => {
            Some("Prove 0 psig first. Loosen slowly, away from the face.")
        }
        Part::Port(_) | Part::Hose(_) => Some("Liquid at a hose end burns: glasses and gloves."),
        Part::Nitrogen => Some("Regulator on and backed off first. Never oxygen in its place."),
        Part::Cylinder => Some("Pressure, and cold burns from liquid."),
        _ => None,
    }
}

/// Shows a caution: a bordered line that begins with its word.
pub fn caution_ui(ui: &mut Ui, text: &str) {
    let palette = Palette::of(ui);
    Frame::NONE
        .stroke(Stroke::new(1.0, palette.warn))
        .inner_margin(Margin::symmetric(6, 3))
        .show(ui, |ui| {
            ui.label(RichText::new(format!("Caution. {text}")).color(palette.warn));
        });
}
