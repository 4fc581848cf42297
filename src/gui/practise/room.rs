//! How the practise room is laid out: side by side, or, where the window is small or the text
//! large, one thing at a time over a row of what the most important instruments show.

use crate::gui::instruments::instruments_ui;
use crate::gui::view::View;
use crate::gui::widgets::display;
use crate::kit::ThermometerPlace;
use crate::units::{GaugePressure, MICRON};
use crate::words::{Reading, Shown};
use eframe::egui::{ScrollArea, Ui, Vec2, vec2};

/// A layout of the room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layout {
    /// Site, panel and instruments beside each other.
    Wide,
    /// One of them at a time.
    Narrow,
}

/// Less than this and the wide layout would cut something: found by trying.
const WIDE: Vec2 = vec2(880.0, 500.0);

/// The least size of the site at which its captions keep clear of each other.
const SITE: Vec2 = vec2(800.0, 462.0);

impl Layout {
    /// The layout for so much room.
    pub fn of(room: Vec2) -> Self {
        if room.x < WIDE.x || room.y < WIDE.y {
            Self::Narrow
        } else {
            Self::Wide
        }
    }
}

/// Shows the site at a size at which it can be read, to be scrolled where it does not fit.
pub fn scrolled_site(ui: &mut Ui, site: impl FnOnce(&mut Ui)) {
    let size = ui.available_size().max(SITE);
    ScrollArea::both().id_salt("site").show(ui, |ui| {
        ui.allocate_ui(size, |ui| {
            ui.set_min_size(size);
            site(ui);
        });
    });
}

/// The faces of the row, and what they are called there.
const FACES: [(Reading, &str); 5] = [
    (Reading::LowGauge, "narrow-low-gauge"),
    (Reading::HighGauge, "narrow-high-gauge"),
    (Reading::Microns, "narrow-microns"),
    (
        Reading::Thermometer(ThermometerPlace::SuctionLine),
        "narrow-suction-line",
    ),
    (
        Reading::Thermometer(ThermometerPlace::LiquidLine),
        "narrow-liquid-line",
    ),
];

/// The height of the row of faces.
pub const FACES_HEIGHT: f32 = 56.0;

/// Shows a row of what the most important instruments show.
pub fn faces_ui(ui: &mut Ui, view: &View) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        let width = (ui.available_width() + 4.0) / FACES.len() as f32 - 4.0;
        for (face, name) in FACES {
            let shown = view.reading(face);
            let text = face_text(view, face, shown);
            let number = shown.quantity().map(|quantity| quantity.si);
            display(
                ui,
                &view.say(name),
                &text,
                number,
                FACES_HEIGHT - 24.0,
                width,
            );
        }
    });
}

/// What a face of the row shows, with its unit.
fn face_text(view: &View, face: Reading, shown: Shown) -> String {
    match (face, shown) {
        (Reading::Microns, Shown::Value(q)) => format!("{:.0}", q.si / MICRON),
        (Reading::LowGauge | Reading::HighGauge, Shown::Value(q)) => {
            view.tell(&view.system().gauge(GaugePressure::from_pascals(q.si)))
        }
        (Reading::Thermometer(_), Shown::Nothing) => view.say("narrow-none"),
        (_, shown) => view.tell(&view.system().shown(shown)),
    }
}

/// The least size of the instruments at which each can be read.
const INSTRUMENTS: Vec2 = vec2(880.0, 200.0);

/// Shows the instruments as large as the height allows, to be scrolled where they do not fit.
pub fn scrolled_instruments(ui: &mut Ui, view: &View) {
    let size = ui.available_size().max(INSTRUMENTS);
    ScrollArea::both().id_salt("instruments").show(ui, |ui| {
        ui.allocate_ui(size, |ui| {
            ui.set_min_size(size);
            instruments_ui(ui, view);
        });
    });
}
