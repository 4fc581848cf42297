//! The window in another language, switched while a job is under way.

#[path = "support/window.rs"]
mod support;

use coldbench::text::Language;
use egui_kittest::kittest::Queryable as _;
use support::{Window, at_work};

fn switch_to(window: &mut Window, language: Language) {
    window.get_by_label(language.own_name()).click();
    window.run();
}

#[test]
fn the_language_is_switched_while_a_job_is_under_way_and_back() {
    let mut window = at_work("clogged_drier");
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
