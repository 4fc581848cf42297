//! The window in another language, switched while a job is under way.

#[path = "support/folder.rs"]
mod folder;

use coldbench::gui::{App, Attempts};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::text::Language;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use folder::Folder;

type Window = Harness<'static, App>;

/// A window with the default scenario open.
fn at_work(folder: &Folder) -> Window {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    let mut window = Harness::builder()
        .with_size([1360.0, 860.0])
        .with_context_setup(App::dress)
        .build_ui_state(
            |ui, app: &mut App| app.window_ui(ui),
            App::new(scenarios, Attempts::in_folder(folder.path())),
        );
    window.state_mut().open(0);
    window.run();
    window
}

fn switch_to(window: &mut Window, language: Language) {
    window.get_by_label(language.own_name()).click();
    window.run();
}

#[test]
fn the_language_is_switched_while_a_job_is_under_way_and_back() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    window.state_mut().choose_sheet();
    window.run();
    window.get_by_label("Hand the job back");
    let ticks = window.state().job().expect("it is under way").now();
    switch_to(&mut window, Language::Spanish);
    window.get_by_label("Entregar el trabajo");
    assert!(window.query_by_label("Hand the job back").is_none());
    switch_to(&mut window, Language::English);
    window.get_by_label("Hand the job back");
    assert_eq!(window.state().job().expect("it goes on").now(), ticks);
}
