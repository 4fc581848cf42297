//! The window in another language, switched while a job is under way.

use crate::support::{Window, at_work};
use coldbench::gui::Part;
use coldbench::text::Language;
use coldbench::words::Action;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

fn switch_to(window: &mut Window, language: Language) {
    // While a job is under way, the languages are behind the menu.
    for menu in ["Menu", "Menú"] {
        let is_shut = window.query_by_label(language.own_name()).is_none();
        if is_shut && let Some(menu) = window.query_by_label(menu) {
            menu.click();
            window.run();
        }
    }
    window.get_by_label(language.own_name()).click();
    window.run();
}

#[test]
fn the_language_is_switched_while_a_job_is_under_way_and_back() {
    let mut window = at_work("clogged_drier");
    window.state_mut().choose_sheet();
    window.run();
    window.get_by_label("what is wrong");
    let ticks = window.state().job().expect("it is under way").now();
    switch_to(&mut window, Language::Spanish);
    window.get_by_label("qué falla");
    assert!(window.query_by_label("what is wrong").is_none());
    switch_to(&mut window, Language::English);
    window.get_by_label("what is wrong");
    assert_eq!(window.state().job().expect("it goes on").now(), ticks);
}

/// The width of the window, and a hair.
const WIDTH: f64 = 1281.0;

/// The texts of one language, by their keys.
fn texts_of(language: Language) -> BTreeMap<String, String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/text");
    let mut texts = BTreeMap::new();
    for file in fs::read_dir(folder.join(language.code())).expect("the folder of the language") {
        let path = file.expect("an entry of the folder").path();
        let source = fs::read_to_string(path).expect("a file of text");
        for line in source.lines().filter(|line| !line.starts_with([' ', '#'])) {
            if let Some((key, text)) = line.split_once(" = ") {
                texts.insert(key.to_owned(), text.to_owned());
            }
        }
    }
    texts
}

/// What English says and Spanish says otherwise, of texts without blanks.
fn english_alone() -> BTreeSet<String> {
    let (english, spanish) = (texts_of(Language::English), texts_of(Language::Spanish));
    let all_spanish: BTreeSet<&String> = spanish.values().collect();
    english
        .into_values()
        .filter(|text| !text.contains('{') && !all_spanish.contains(text))
        .collect()
}

/// Everything that is said in the window, names, states, texts, with its right edge.
fn said(window: &Window) -> Vec<(String, f64)> {
    let mut said = Vec::new();
    for node in window.root().children_recursive() {
        let node = node.accesskit_node();
        let Some(place) = node.bounding_box() else {
            continue;
        };
        let value = node.value();
        let texts = node.label().into_iter().chain(value);
        said.extend(texts.map(|text| (text, place.x1)));
    }
    said
}

/// Fails on a text in English, and on one that runs out of the window to the right.
fn check_spanish(window: &Window, english: &BTreeSet<String>, room: &str) {
    for (text, right) in said(window) {
        assert!(!english.contains(&text), "{room}: {text:?} is English");
        for part in text.split(", ") {
            assert!(
                !english.contains(part),
                "{room}: {part:?} in {text:?} is English"
            );
        }
        assert!(right <= WIDTH, "{room}: {text:?} runs out of the window");
    }
}

#[test]
fn every_part_and_panel_speaks_spanish_and_keeps_inside_the_window() {
    let english = english_alone();
    assert!(english.len() > 300, "only {} texts", english.len());
    let mut window = at_work("clogged_drier");
    let seen = said(&window).iter().any(|(text, _)| english.contains(text));
    assert!(seen, "the check sees English where it stands");
    switch_to(&mut window, Language::Spanish);
    check_spanish(&window, &english, "the room");
    for part in Part::all() {
        window.state_mut().choose(part);
        window.run();
        check_spanish(&window, &english, &part.label().to_string());
    }
    window.state_mut().choose_sheet();
    window.run();
    check_spanish(&window, &english, "the job sheet");
    for tab in [
        "room-strip-chart",
        "time-open",
        "room-complaint",
        "room-reference",
        "room-log",
    ] {
        let label = Language::Spanish.say(tab);
        if let Some(tab) = window.query_by_label(&label) {
            tab.click();
            window.run();
            check_spanish(&window, &english, &label);
        }
    }
}

#[test]
fn a_refusal_and_the_end_of_a_job_are_told_in_the_language_that_was_chosen_last() {
    let english = english_alone();
    let mut window = at_work("clogged_drier");
    window.state_mut().act(Action::TakeOutDrier);
    window.run();
    window.get_by_label("Not done: Take both flares of the drier apart first.");
    switch_to(&mut window, Language::Spanish);
    window.get_by_label("No se hizo: Desarme primero los dos abocardados del filtro.");
    window.state_mut().act(Action::HandBack);
    window.run();
    check_spanish(&window, &english, "the end");
    window.get_by_label_contains("No aprobado");
    switch_to(&mut window, Language::English);
    window.get_by_label_contains("Not passed");
}
