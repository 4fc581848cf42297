//! The strip chart: marks of what was done, values under the pointer, stretches to look at.

use crate::folder::Folder;
use crate::room::{Window, act, at_work};
use coldbench::kit::{Hose, HoseEnd};
use coldbench::plant::Line;
use coldbench::words::Action;
use eframe::egui::{Pos2, vec2};
use egui_kittest::kittest::Queryable as _;

const GOGGLES: &str = "0:00:00  glasses and gloves on";

/// A window with a mark at the start, three close together at 0:20:00, and 0:30:00 on the clock.
fn with_marks(folder: &Folder) -> Window {
    let mut window = at_work(folder);
    act(&mut window, Action::Protect(true));
    window.state_mut().run(12_000);
    let line = Line::Suction;
    act(&mut window, Action::PortCap { line, on: false });
    let to = HoseEnd::SuctionPort;
    let hose = Hose::Low;
    act(&mut window, Action::Connect { hose, to });
    window.state_mut().run(30);
    act(&mut window, Action::Purge(hose));
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
    window.get_by_label(
        "0:20:00  take the port cap off the suction valve\n\
         0:20:00  put the low hose on the suction port\n\
         0:20:03  purge the low hose",
    );
}

#[test]
fn the_pointer_tells_what_all_instruments_showed_then_in_the_units_chosen() {
    let folder = Folder::fresh();
    let mut window = with_marks(&folder);
    // On the upper strip, above the mark at 0:20:00: the hose was just put on.
    let at = mark(&window, "0:20:00") - vec2(0.0, 30.0);
    window.hover_at(at);
    window.run();
    let readout = window.get_by_label_contains("low gauge ");
    let text = egui_kittest::kittest::NodeT::accesskit_node(&readout)
        .value()
        .or_else(|| egui_kittest::kittest::NodeT::accesskit_node(&readout).label())
        .expect("it has words");
    assert!(
        text.starts_with("0:20:0") || text.starts_with("0:19:5"),
        "{text}"
    );
    assert!(
        text.contains("psig") && text.contains("high gauge"),
        "{text}"
    );
    assert!(text.contains("micron gauge no reading"), "{text}");
    window.get_by_label("kPa, °C").click();
    window.run();
    window.hover_at(at);
    window.run();
    window.get_by_label_contains("kPa gauge, high gauge ");
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
    for _ in 0..4 {
        window.hover_at(from - vec2(60.0, 0.0));
        window.step();
    }
    window.drop_at(from - vec2(60.0, 0.0));
    window.run_steps(3);
    assert!(!is_in_sight(&window), "it was dragged out of sight");
    press(&mut window, "All");
    assert!(is_in_sight(&window));
}
