//! The settings as they are chosen.

use super::{Keeper, Scale, Settings, TextSize};
use crate::fluid::refrigerant::Refrigerant;
use crate::gui::system::System;
use crate::gui::theme::Colours;
use crate::gui::widgets::choice;
use eframe::egui::{Grid, RichText, Ui};

/// Shows the settings to choose from, and what is wrong with where they are kept.
pub fn settings_ui(ui: &mut Ui, settings: &mut Settings, keeper: &Keeper) {
    Grid::new("settings").num_columns(2).show(ui, |ui| {
        ui.label("Units");
        ui.horizontal_wrapped(|ui| {
            for (system, name) in [(System::InchPound, "psig, °F"), (System::Metric, "kPa, °C")] {
                ui.selectable_value(&mut settings.units, system, name);
            }
        });
        ui.end_row();
        ui.label("Gauges");
        scale_ui(ui, settings);
        ui.end_row();
        ui.label("Colours");
        ui.horizontal_wrapped(|ui| {
            for (colours, name) in [
                (Colours::Light, "light"),
                (Colours::Dark, "dark"),
                (Colours::Projector, "projector"),
            ] {
                ui.selectable_value(&mut settings.colours, colours, name);
            }
        });
        ui.end_row();
        ui.label("Text");
        ui.horizontal_wrapped(|ui| {
            for size in TextSize::ALL {
                let name = format!("{} %", size.percent());
                ui.selectable_value(&mut settings.text, size, name);
            }
        });
        ui.end_row();
    });
    if let Some(trouble) = &keeper.trouble {
        ui.label(RichText::new(trouble).color(ui.visuals().warn_fg_color));
    }
}

fn scale_ui(ui: &mut Ui, settings: &mut Settings) {
    const NONE: &str = "no saturation scale";
    let now = settings.gauge_scale.map_or(NONE, |scale| scale.0.name());
    let names = std::iter::once(NONE).chain(Refrigerant::names().iter().copied());
    if let Some(name) = choice(ui, "gauge scale", Some(now), names, |name| name) {
        settings.gauge_scale = Refrigerant::named(name).map(Scale);
    }
}
