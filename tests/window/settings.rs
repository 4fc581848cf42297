//! The settings: chosen in the window, kept in a folder, found again; and the room at any size of
//! text.

use crate::folder::Folder;
use coldbench::gui::{App, Attempts, Colours, Settings, SettingsFile, System, TextSize};
use coldbench::scenario::{Scenario, shipped_names};
use eframe::egui::accesskit::Role;
use eframe::egui::{Rect, Theme, pos2, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use std::fs;
use std::path::Path;

type Window = Harness<'static, App>;

fn app(folder: &Folder) -> App {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    App::new(scenarios, Attempts::in_folder(folder.path()))
}

/// A window of so many points.
fn window(app: App, size: [f32; 2]) -> Window {
    let mut window = Harness::builder()
        .with_size(size)
        .with_context_setup(App::dress)
        .build_ui_state(|ui, app: &mut App| app.window_ui(ui), app);
    window.run();
    window
}

fn kept_in(folder: &Folder) -> Window {
    window(
        app(folder).with_settings(SettingsFile::in_folder(&folder.path().join("settings"))),
        [1360.0, 860.0],
    )
}

fn press(window: &mut Window, label: &str) {
    // A person scrolls to what is out of sight.
    window.get_by_label(label).scroll_to_me();
    window.run_steps(3);
    window.get_by_label(label).click();
    window.run();
}

#[test]
fn what_is_chosen_in_the_window_is_there_when_it_is_opened_again() {
    let folder = Folder::fresh();
    let mut first = kept_in(&folder);
    let file = folder.path().join("settings/settings.ron");
    assert!(!file.exists());
    press(&mut first, "Settings");
    for choice in ["kPa, °C", "wall", "125 %", "Español"] {
        press(&mut first, choice);
    }
    assert_eq!(Colours::shown(&first.ctx), Colours::Wall);
    assert!((first.ctx.zoom_factor() - 1.25).abs() < 1e-6);
    let chosen = first.state().settings();
    assert_eq!((chosen.units, chosen.text.percent()), (System::Metric, 125));
    assert!(file.exists());
    let again = kept_in(&folder);
    assert_eq!(again.state().settings(), chosen);
    again.get_by_label("Ajustes");
    assert_eq!(Colours::shown(&again.ctx), Colours::Wall);
}

#[test]
fn a_bad_file_is_told_of_at_once_and_stays_until_something_is_changed() {
    let folder = Folder::fresh();
    let file = folder.path().join("settings/settings.ron");
    fs::create_dir_all(folder.path().join("settings")).expect("a passing folder");
    fs::write(&file, "(version: 1, colours: Pink)").expect("a passing file");
    let mut window = kept_in(&folder);
    window.get_by_label_contains("Pink");
    window.get_by_label_contains("The usual settings are in force");
    assert_eq!(window.state().settings(), Settings::default());
    let text = |file: &Path| fs::read_to_string(file).expect("it is there");
    assert!(text(&file).contains("Pink"));
    press(&mut window, "night");
    assert!(text(&file).contains("Night") && !text(&file).contains("Pink"));
    assert!(window.query_by_label_contains("Pink").is_none());
    assert_eq!(window.ctx.theme(), Theme::Dark);
}

/// What a screen of 1280 x 800 holds at a size of text, in points.
fn screen_at(size: TextSize) -> [f32; 2] {
    [1280.0 / size.factor(), 800.0 / size.factor()]
}

#[test]
fn at_every_size_of_text_each_thing_of_the_room_can_be_reached_and_lies_in_the_window() {
    let folder = Folder::fresh();
    for size in TextSize::ALL {
        let [width, height] = screen_at(size);
        let mut window = window(app(&folder), [width, height]);
        window.state_mut().open(0);
        window.run();
        let screen = Rect::from_min_size(pos2(0.0, 0.0), vec2(width, height)).expand(0.5);
        let percent = size.percent();
        let tabs = ["Complaint", "Job sheet", "Reference", "Log", "Strip chart"];
        let more = ["Site", "At hand", "Instruments", "Coach"];
        let is_narrow = window.query_by_label("Site").is_some();
        assert_eq!(is_narrow, percent >= 150, "{percent} %: {width} x {height}");
        let all = tabs.iter().chain(more.iter().filter(|_| is_narrow));
        for tab in all {
            let area = window.get_by_label(tab).rect();
            assert!(screen.contains_rect(area), "{percent} %: {tab} at {area}");
            press(&mut window, tab);
            for meter in window.query_all_by_role(Role::Meter) {
                let area = meter.rect();
                let name = meter.accesskit_node().label().unwrap_or_default();
                // The tab of the instruments can be scrolled; all else must be in sight.
                let in_sight = screen.contains_rect(area) || *tab == "Instruments";
                assert!(in_sight, "{percent} %, {tab}: {name} at {area}");
            }
            for label in ["low gauge", "high gauge", "microns"] {
                let faces = window.query_all_by_label(label).count();
                assert!(faces >= 1, "{percent} %, {tab}: no {label} in sight");
            }
        }
        let meters: Vec<Rect> = window
            .query_all_by_role(Role::Meter)
            .map(|m| m.rect())
            .collect();
        for (i, a) in meters.iter().enumerate() {
            for b in &meters[i + 1..] {
                let shared = a.intersect(*b);
                let apart = shared.width() <= 0.5 || shared.height() <= 0.5;
                assert!(apart, "{percent} %: {a} lies over {b}");
            }
        }
    }
}
