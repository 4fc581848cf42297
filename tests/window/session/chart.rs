//! The strip chart: marks of what was done, values under the pointer, stretches to look at.

use super::room::{Window, act, at_work};
use crate::folder::Folder;
use coldbench::kit::{Hose, HoseEnd};
use coldbench::plant::Line;
use coldbench::words::Action;
use eframe::egui::{Pos2, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};

const GOGGLES: &str = "0:00:00  glasses and gloves on";

const CAP: Action = Action::PortCap {
    line: Line::Suction,
    on: false,
};

const HOSE: Action = Action::Connect {
    hose: Hose::Low,
    to: HoseEnd::SuctionPort,
};

const PURGE: Action = Action::Purge(Hose::Low);

/// A window with a mark at the start, three close together at 0:20:00, and 0:30:00 on the clock.
fn with_marks(folder: &Folder) -> Window {
    let mut window = at_work(folder);
    act(&mut window, Action::Protect(true));
    window.state_mut().run(12_000);
    act(&mut window, CAP);
    act(&mut window, HOSE);
    window.state_mut().run(30);
    act(&mut window, PURGE);
    window.state_mut().run(5_970);
    window.run();
    window
}

/// The middle of a mark whose words begin so.
fn mark(window: &Window, text: &str) -> Pos2 {
    window.get_by_label_contains(text).rect().center()
}

#[test]
fn marks_that_are_close_together_are_one() {
    let folder = Folder::fresh();
    let window = with_marks(&folder);
    window.get_by_label(GOGGLES);
    let told = format!("0:20:00  {CAP}\n0:20:00  {HOSE}\n0:20:03  {PURGE}");
    window.get_by_label(&told);
}

#[test]
fn the_pointer_tells_what_all_instruments_showed_then_in_the_units_chosen() {
    let folder = Folder::fresh();
    let mut window = with_marks(&folder);
    // On the upper strip, behind the mark at 0:20:00: the hose was just put on.
    let at = mark(&window, "0:20:00") + vec2(8.0, -30.0);
    window.hover_at(at);
    window.run();
    let readout = window.get_by_label_contains(", low gauge ");
    let text = readout.accesskit_node().value().expect("it has words");
    assert!(text.starts_with("0:20:"), "{text}");
    let words: Vec<&str> = text.split(", ").collect();
    let pressure = |words: &str| {
        let number = words.split(' ').nth(2).expect("a number");
        number.parse::<f64>().expect("a number")
    };
    assert!(
        pressure(words[1]) > 50.0 && words[1].ends_with(" psig"),
        "{text}"
    );
    assert!(words[2].starts_with("high gauge ") && words[2].ends_with(" psig"));
    assert_eq!(words[3], "micron gauge no reading");
    window.get_by_label("Menu").click();
    window.run();
    window.get_by_label("Settings").click();
    window.run();
    window.get_by_label("kPa, °C").click();
    window.run();
    window.hover_at(at);
    window.run();
    window.get_by_label_contains("kPa gauge, high gauge ");
    window.remove_cursor();
    window.run();
    assert!(window.query_by_label_contains(", low gauge ").is_none());
}

#[test]
fn one_looks_at_the_last_ten_minutes_drags_and_comes_back_to_all() {
    let folder = Folder::fresh();
    let mut window = with_marks(&folder);
    let is_in_sight = |window: &Window| window.query_by_label(GOGGLES).is_some();
    assert!(is_in_sight(&window));
    let press = |window: &mut Window, label: &str| {
        window.get_by_label(label).click();
        // The strips follow in the frame after.
        window.run_steps(3);
    };
    press(&mut window, "Last 10 min");
    assert!(!is_in_sight(&window), "it was done half an hour ago");
    let latest = mark(&window, "0:20:00");
    press(&mut window, "All");
    assert!(is_in_sight(&window));
    let all = mark(&window, "0:20:00");
    assert!(
        latest.x < all.x,
        "it moves to the left as the stretch is shorter"
    );

    // Dragged to the left, the beginning goes out of sight, and "All" brings it back.
    let from = all - vec2(0.0, 30.0);
    window.drag_at(from);
    window.step();
    for way in [15.0, 30.0, 45.0, 60.0] {
        window.hover_at(from - vec2(way, 0.0));
        window.step();
    }
    window.drop_at(from - vec2(60.0, 0.0));
    window.run_steps(3);
    assert!(!is_in_sight(&window), "it was dragged out of sight");
    press(&mut window, "All");
    assert!(is_in_sight(&window));
}
