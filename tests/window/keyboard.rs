//! The window by keyboard alone: Tab, arrows, Enter, Space and typing. Nothing is clicked here and
//! nothing is asked of the accessibility tree but what has the focus and what it is called.

use crate::support::{Window, at_work, focused, job, key, tab_to, window};
use coldbench::gui::Part;
use coldbench::kit::tools::Name;
use coldbench::kit::{Hose, HoseEnd, ThermometerPlace};
use coldbench::plant::{Joint, Line, Made, ThermostatCall};
use coldbench::units::{ATMOSPHERE, PSI};
use coldbench::words::{Action, Level, Reading, SheetField};
use eframe::egui::accesskit::{self, Role};
use eframe::egui::{Event, Key, Modifiers};
use egui_kittest::kittest::NodeT as _;
use std::collections::{BTreeMap, BTreeSet};

/// Goes to a part and from it to the first thing that can be done to it.
fn at_hand(window: &mut Window, part: &str) {
    tab_to(window, &format!("{part}, "));
    key(window, Key::Enter);
}

/// Goes to a control and presses it.
fn press(window: &mut Window, control: &str) {
    tab_to(window, control);
    key(window, Key::Space);
}

/// Sets the clock, one Tab after the other so that little time passes.
fn rate(window: &mut Window, from: &str, to: &str) {
    tab_to(window, from);
    for _ in 0..5 {
        if focused(window).as_deref() == Some(to) {
            break;
        }
        window.key_press_modifiers(Modifiers::SHIFT, Key::Tab);
        window.step();
    }
    assert_eq!(focused(window).as_deref(), Some(to));
    window.key_press(Key::Space);
    window.step();
}

fn low(window: &Window) -> f64 {
    let shown = job(window).reading(Reading::LowGauge).quantity();
    shown.expect("the gauge shows something").si / PSI
}

/// Lets the clock run until the low gauge is below a pressure, psig.
fn until_below(window: &mut Window, psig: f64) {
    for _ in 0..3_000 {
        if low(window) < psig {
            return;
        }
        window.step();
    }
    panic!("the low side stays at {} psig", low(window));
}

/// From the cautions to the job, with a name typed.
fn begin() -> Window {
    let mut window = window([1280.0, 800.0]);
    tab_to(&mut window, "I have read this");
    key(&mut window, Key::Enter);
    tab_to(&mut window, "Your name");
    window.event(Event::Text("A. Prentice".into()));
    window.run();
    tab_to(&mut window, "Go to work: The bakery counter");
    key(&mut window, Key::Enter);
    assert_eq!(job(&window).now(), 0);
    window
}

fn hook_up(window: &mut Window) {
    at_hand(window, "glasses and gloves");
    key(window, Key::Space);
    assert!(job(window).kit().protection_on);
    for (port, hose) in [
        ("suction access port", "low hose (L)"),
        ("liquid access port", "high hose (H)"),
    ] {
        at_hand(window, port);
        press(window, "Take the port cap off");
        press(window, &format!("Put the {hose} on"));
        press(window, &format!("Purge the {hose}"));
    }
    let manifold = &job(window).kit().manifold;
    assert_eq!(manifold.hose(Hose::Low).end, Some(HoseEnd::SuctionPort));
    assert_eq!(manifold.hose(Hose::High).end, Some(HoseEnd::LiquidPort));
    assert!(manifold.hose(Hose::Low).purged && manifold.hose(Hose::High).purged);
    for valve in ["liquid service valve", "suction service valve"] {
        at_hand(window, valve);
        press(window, "Take the stem cap off");
    }
}

/// Front-seats a valve a quarter turn at a time.
fn front_seat(window: &mut Window, line: Line, name: &str) {
    tab_to(window, &format!("{name}, "));
    for _ in 0..20 {
        key(window, Key::ArrowDown);
    }
    assert_eq!(job(window).fittings().valve(line).open.get(), 0.0);
    let state = format!("{name}, front-seated, cap off");
    assert_eq!(focused(window), Some(state));
}

/// The order and the 0 to 2 psig at the end: common practice, no source.
#[test]
fn a_pump_down_is_done_by_keyboard_alone() {
    let mut window = begin();
    let window = &mut window;
    hook_up(window);
    at_hand(window, "thermostat");
    press(window, "Set to cool");
    assert_eq!(job(window).electrics().call, ThermostatCall::Cool);
    rate(window, "15×", "15×");
    window.run_steps(40);
    rate(window, "15×", "Stop");
    let running = low(window);
    assert!(running > 20.0, "it runs at {running} psig");

    front_seat(window, Line::Liquid, "liquid service valve");
    rate(window, "4×", "4×");
    until_below(window, 12.0);
    rate(window, "4×", "Stop");
    rate(window, "1×", "1×");
    until_below(window, 1.5);
    rate(window, "1×", "Stop");
    front_seat(window, Line::Suction, "suction service valve");
    at_hand(window, "thermostat");
    press(window, "Set to off");
    rate(window, "1×", "1×");
    window.run_steps(40);
    rate(window, "1×", "Stop");

    let job = job(window);
    assert!(!job.electrics().compressor_runs());
    let truth = job.truth();
    let left = (truth.line_set_pressure - ATMOSPHERE) / PSI;
    // The oil and the last liquid give some off; what is left is far from the 50 psig before.
    assert!((-3.0..6.0).contains(&left), "{left} psig in the line set");
    assert!(truth.refrigerant_released < 0.010, "two purges: {truth:?}");
    assert!(truth.charge > 0.95 * truth.nominal_charge, "{truth:?}");
}

/// A list, a number and a blank: none of them needs the pointer.
#[test]
fn lists_numbers_and_blanks_are_worked_by_keyboard() {
    let mut window = at_work("clogged_drier");
    let window = &mut window;
    at_hand(window, "centre hose (yellow, C)");
    assert_eq!(focused(window).as_deref(), Some("put its end"));
    key(window, Key::Space);
    press(window, "on the vacuum pump");
    let hose = job(window).kit().manifold.hose(Hose::Centre);
    assert_eq!(hose.end, Some(HoseEnd::Tool(Name::VacuumPump)));

    at_hand(window, "thermometer case");
    key(window, Key::Space);
    press(window, "discharge line");
    let place = ThermometerPlace::DischargeLine;
    assert!(job(window).kit().thermometers.is_at(place));

    let joint = Joint::DrierOutlet;
    at_hand(window, &joint.label().to_string());
    press(window, "Loosen the nut a turn");
    tab_to(window, "torque wrench");
    type_in(window, "27");
    press(window, "Make up to this torque");
    let Made::Up(torque) = job(window).fittings().joint(joint).made else {
        panic!("it is made up");
    };
    assert!((torque.foot_pounds() - 27.0).abs() < 1e-6, "{torque:?}");

    press(window, "Job sheet");
    tab_to(window, "superheat");
    type_in(window, "12,5");
    let entry = job(window).sheet().entry(SheetField::Superheat);
    let value = entry.expect("it stands on the sheet").value;
    assert_eq!(value, Level::FahrenheitDegrees(12.5));
}

/// Types over what stands in the field that has the focus, and leaves it by Enter.
fn type_in(window: &mut Window, text: &str) {
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    window.event(Event::Text(text.into()));
    window.run();
    key(window, Key::Enter);
}

/// What the keyboard or an assistive program can work: role, name and identity of each.
fn controls(window: &Window) -> BTreeMap<String, (Role, String)> {
    window
        .root()
        .children_recursive()
        .filter(|node| {
            let data = node.accesskit_node();
            let data = data.data();
            let works = |action| data.supports_action(action);
            // Text can be selected by the pointer: it is read and not worked. A scroll bar is the
            // toolkit's own and has no name; the focus scrolls by itself.
            let is_worked = !matches!(data.role(), Role::Label | Role::ScrollBar);
            // The marks on the strip chart are for the pointer: the keyboard has the same in the
            // list of moments.
            let name = node.accesskit_node().label().unwrap_or_default();
            let time = name.split("  ").next().unwrap_or_default();
            let is_worked = is_worked && time.matches(':').count() != 2;
            (works(accesskit::Action::Focus) || works(accesskit::Action::Click)) && is_worked
        })
        .map(|node| {
            let node = node.accesskit_node();
            let name = node.label().unwrap_or_default();
            (format!("{:?}", node.id()), (node.role(), name))
        })
        .collect()
}

/// Fails on a control without a name, and on two that are told apart by nothing.
fn check_names(found: &BTreeMap<String, (Role, String)>, room: &str) {
    let mut seen = BTreeSet::new();
    for (role, name) in found.values() {
        assert!(!name.trim().is_empty(), "{room}: a {role:?} without a name");
        let told_apart = seen.insert(format!("{role:?} {name}"));
        assert!(told_apart, "{room}: two are called {name:?}");
    }
}

fn focused_id(window: &Window) -> Option<String> {
    let mut nodes = window.root().children_recursive();
    let node = nodes.find(egui_kittest::Node::is_focused)?;
    Some(format!("{:?}", node.accesskit_node().id()))
}

/// Presses Tab until all of these had the focus.
fn check_reach(window: &mut Window, mut wanted: BTreeMap<String, (Role, String)>, room: &str) {
    for _ in 0..200 {
        if wanted.is_empty() {
            return;
        }
        window.key_press(Key::Tab);
        window.run();
        if let Some(id) = focused_id(window) {
            wanted.remove(&id);
        }
    }
    panic!("{room}: the Tab key never reaches {wanted:?}");
}

#[test]
fn every_control_of_every_room_has_its_name_and_the_tab_key_reaches_it() {
    let mut window = window([1280.0, 1400.0]);
    for room in ["the cautions", "the list"] {
        let found = controls(&window);
        check_names(&found, room);
        check_reach(&mut window, found, room);
        if room == "the cautions" {
            tab_to(&mut window, "I have read this");
            key(&mut window, Key::Enter);
        }
    }
    tab_to(&mut window, "Go to work: The bakery counter");
    key(&mut window, Key::Enter);
    let found = controls(&window);
    check_names(&found, "the site");
    check_reach(&mut window, found, "the site");
    tab_to(&mut window, "Job sheet");
    key(&mut window, Key::Space);
    let found = controls(&window);
    check_names(&found, "the sheet");
    tab_to(&mut window, "standing pressure");
    let blanks = |found: &BTreeMap<String, (Role, String)>| {
        let mut blanks = found.clone();
        blanks.retain(|_, (role, _)| *role == Role::TextInput);
        blanks
    };
    let blanks = blanks(&found);
    assert!(blanks.len() > 10);
    key(&mut window, Key::Tab);
    check_reach_back(&mut window, blanks);
    press(&mut window, "Hand back");
    let found = controls(&window);
    check_names(&found, "the hand-back");
    press(&mut window, "Hold to hand back");
    press(&mut window, "Hand back now");
    assert!(window.state().report().is_some());
    let found = controls(&window);
    check_names(&found, "the end");
    check_reach(&mut window, found, "the end");
    // The marks are more than the window holds; by the Tab key one reads on to the last.
    let report = window.state().report().expect("the job is over");
    let last = report.marks.last().expect("it was marked");
    let last = last.criterion.clone();
    tab_to(&mut window, "Back to the list");
    tab_to(&mut window, &last);
}

/// The blanks by Shift and Tab, from the second up and round.
fn check_reach_back(window: &mut Window, mut wanted: BTreeMap<String, (Role, String)>) {
    for forth in [false, true] {
        for _ in 0..20 {
            if let Some(id) = focused_id(window) {
                wanted.remove(&id);
            }
            let modifiers = if forth {
                Modifiers::NONE
            } else {
                Modifiers::SHIFT
            };
            if !forth && focused(window).as_deref() == Some("standing pressure") {
                break;
            }
            window.key_press_modifiers(modifiers, Key::Tab);
            window.run();
        }
    }
    assert!(wanted.is_empty(), "never reached: {wanted:?}");
}

#[test]
fn what_each_part_offers_has_its_name_and_is_reached_from_the_part() {
    let mut window = at_work("clogged_drier");
    for action in [
        Action::CoreTool {
            line: Line::Liquid,
            fitted: true,
        },
        Action::Thermostat(ThermostatCall::Off),
    ] {
        window.state_mut().act(action);
    }
    window.run();
    // What the room offers with nothing chosen: the rest is what a part offers.
    let bare = controls(&window);
    for part in Part::all() {
        let name = part.label().to_string();
        window.state_mut().choose(part);
        window.run();
        let found = controls(&window);
        check_names(&found, &name);
        let mut offers = found;
        offers.retain(|id, _| !bare.contains_key(id));
        if offers.is_empty() {
            continue;
        }
        tab_to(&mut window, &format!("{name}, "));
        key(&mut window, Key::Enter);
        if let Some(id) = focused_id(&window) {
            assert!(
                offers.remove(&id).is_some(),
                "{name}: Enter leads elsewhere"
            );
        }
        for _ in 0..offers.len() {
            window.key_press(Key::Tab);
            window.run();
            offers.remove(&focused_id(&window).unwrap_or_default());
        }
        assert!(offers.is_empty(), "{name}: Tab never reaches {offers:?}");
        key(&mut window, Key::Escape);
    }
}
