//! The window. Its ground is `canvas`, `theme`, `view/` and `widgets/`. `tools/` and `parts/` stand
//! on it with one file for each thing, then `site/` and `instruments/`, then the rooms `start/` and
//! `practise/`.
//!
//! A panel is a free function that reads a [`view::View`] and pushes actions. The view shows only
//! what a person at the unit can see; the actions go through the driver of a session, which records
//! them. Time on the wall only decides how many ticks run.

mod app;
mod canvas;
mod catch_up;
mod cautions;
mod end;
mod instruments;
mod moment;
mod no_window;
mod notes;
mod pace;
mod part;
mod parts;
mod practise;
mod session;
mod settings;
mod site;
mod start;
mod theme;
mod time;
mod tools;
mod view;
mod widgets;

pub use app::App;
pub use no_window::NoWindow;
pub use pace::Stint;
pub use part::Part;
pub use practise::fault_label;
pub use session::{Attempts, Kept};
pub use settings::{Settings, SettingsFile, TextSize};
pub use theme::Colours;
pub use view::System;

use crate::scenario::{Scenario, shipped_names};
use eframe::egui::ViewportBuilder;

/// Opens the window on the scenarios that come with the program and stays in it until it is
/// closed.
pub fn run() -> Result<(), NoWindow> {
    no_window::guard(|| {
        let viewport = ViewportBuilder::default()
            .with_title("Coldbench")
            .with_inner_size([1360.0, 860.0])
            .with_min_inner_size([900.0, 600.0]);
        let options = eframe::NativeOptions {
            viewport,
            ..Default::default()
        };
        let begin: eframe::AppCreator<'_> = Box::new(|cc| {
            no_window::is_up();
            App::dress(&cc.egui_ctx);
            let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
            let app = App::new(scenarios, Attempts::beside());
            Ok(Box::new(app.with_settings(SettingsFile::of_this_person())))
        });
        eframe::run_native("coldbench", options, begin)
    })
}
