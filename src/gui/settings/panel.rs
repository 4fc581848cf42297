//! The settings as they are chosen.

use crate::fluid::refrigerant::Refrigerant;
use crate::gui::settings::{Scale, Settings, SettingsFile, TextSize};
use crate::gui::theme::Colours;
use crate::gui::view::System;
use crate::gui::widgets::choice;
use eframe::egui::{Grid, RichText, Ui};

/// Shows the settings to choose from, and what is wrong with where they are kept.
pub fn settings_ui(ui: &mut Ui, settings: &mut Settings, file: &SettingsFile) {
    let language = settings.language;
    Grid::new("settings").num_columns(2).show(ui, |ui| {
        ui.label(language.say("settings-units"));
        ui.horizontal_wrapped(|ui| {
            for (system, name) in [(System::InchPound, "psig, °F"), (System::Metric, "kPa, °C")] {
                ui.selectable_value(&mut settings.units, system, name);
            }
        });
        ui.end_row();
        ui.label(language.say("settings-gauges"));
        scale_ui(ui, settings);
        ui.end_row();
        ui.label(language.say("settings-colours"));
        ui.horizontal_wrapped(|ui| {
            for (colours, name) in [
                (Colours::Paper, "settings-paper"),
                (Colours::Night, "settings-night"),
                (Colours::Wall, "settings-wall"),
            ] {
                ui.selectable_value(&mut settings.colours, colours, language.say(name));
            }
        });
        ui.end_row();
        ui.label(language.say("settings-text"));
        ui.horizontal_wrapped(|ui| {
            for size in TextSize::ALL {
                let name = format!("{} %", size.percent());
                ui.selectable_value(&mut settings.text, size, name);
            }
        });
        ui.end_row();
    });
    if let Some(trouble) = &file.trouble {
        ui.label(RichText::new(trouble.in_language(language)).color(ui.visuals().warn_fg_color));
    }
}

fn scale_ui(ui: &mut Ui, settings: &mut Settings) {
    let language = settings.language;
    let now = settings.gauge_scale;
    let all = Refrigerant::all().iter().map(Scale);
    let label = language.say("window-gauge-scale");
    let name = |scale: Option<Scale>| match scale {
        Some(scale) => scale.0.name().to_owned(),
        None => language.say("settings-no-scale"),
    };
    let all = std::iter::once(None).chain(all.map(Some));
    if let Some(scale) = choice(ui, &label, Some(now), all, name) {
        settings.gauge_scale = scale;
    }
}
