//! Hands on the site by pointer, wheel and key: stems turn, hoses and probes are carried, and the
//! units of measure go with all of it.

use crate::support::{Sheet, Window, area, at_work, drag, job, next_frame, recorded, refusal};
use coldbench::gui::Part;
use coldbench::kit::tools::Name;
use coldbench::kit::{Hose, HoseEnd, ThermometerPlace};
use coldbench::plant::{Joint, Line, Made, Spot, ThermostatCall};
use coldbench::scenario::shipped_names;
use coldbench::units::GaugePressure;
use coldbench::words::{Action, GaugePlace, SheetField};
use eframe::egui::accesskit::Role;
use eframe::egui::{Event, Key, Modifiers, MouseWheelSource, MouseWheelUnit, Pos2, TouchPhase};
use eframe::egui::{Vec2, vec2};
use egui_kittest::kittest::Queryable as _;
use std::time::Duration;

fn act(window: &mut Window, action: Action) {
    window.state_mut().act(action);
    window.run();
}

fn open(window: &Window, line: Line) -> f64 {
    job(window).fittings().valve(line).open.get()
}

/// Points on a circle round a middle, each ten degrees on, clockwise on the screen.
fn round(middle: Pos2, radius: f32, degrees: i32) -> Vec<Pos2> {
    let steps = degrees.abs() / 10;
    (0..=steps)
        .map(|i| {
            let angle = (i * 10 * degrees.signum()) as f32;
            middle + Vec2::angled(angle.to_radians()) * radius
        })
        .collect()
}

/// How often a stem was turned.
fn stems(window: &Window) -> usize {
    recorded(window, "Stem(")
}

fn press(window: &mut Window, label: &str) {
    // A person scrolls to what is out of sight.
    window.get_by_label(label).scroll_to_me();
    window.run_steps(3);
    window.get_by_label(label).click();
    window.run_steps(4);
    window.run();
}

fn wheel(window: &mut Window, at: Pos2, notches: f32) {
    window.hover_at(at);
    window.run();
    window.event(Event::MouseWheel {
        unit: MouseWheelUnit::Line,
        delta: vec2(0.0, notches),
        phase: TouchPhase::Move,
        source: MouseWheelSource::Wheel,
        modifiers: Modifiers::NONE,
    });
    // The toolkit glides after a wheel for some frames.
    window.run_steps(8);
}

/// Right-handed threads: clockwise goes in. Common practice, no source.
#[test]
fn a_stem_turns_with_the_hand_that_goes_round_it() {
    let mut window = at_work("clogged_drier");
    let line = Line::Liquid;
    act(&mut window, Action::StemCap { line, on: false });
    let middle = area(&window, Part::Valve(line)).center();
    drag(&mut window, &round(middle, 20.0, 360));
    assert!(
        (open(&window, line) - 0.8).abs() < 0.006,
        "{}",
        open(&window, line)
    );
    // Ten degrees are a ninth of a quarter turn: at most one action for each step of the hand.
    assert!(
        (20..=40).contains(&stems(&window)),
        "{} actions",
        stems(&window)
    );
    drag(&mut window, &round(middle, 20.0, -180));
    assert!((open(&window, line) - 0.9).abs() < 0.006);
    let before = stems(&window);
    window.run_steps(10);
    assert_eq!(
        stems(&window),
        before,
        "a hand that is off the stem does nothing"
    );
}

#[test]
fn a_stem_stops_at_its_front_seat() {
    let mut window = at_work("clogged_drier");
    let line = Line::Suction;
    act(&mut window, Action::StemCap { line, on: false });
    let middle = area(&window, Part::Valve(line)).center();
    drag(&mut window, &round(middle, 20.0, 2160));
    assert_eq!(open(&window, line), 0.0);
}

#[test]
fn a_hand_that_holds_still_gives_no_action() {
    let mut window = at_work("clogged_drier");
    let line = Line::Liquid;
    act(&mut window, Action::StemCap { line, on: false });
    let path = round(area(&window, Part::Valve(line)).center(), 20.0, 90);
    window.drag_at(path[0]);
    window.run();
    for &point in &path {
        window.hover_at(point);
        window.run();
    }
    let turned = stems(&window);
    assert!(turned > 5);
    window.get_by_label_contains("quarter turns open");
    window.run_steps(20);
    assert_eq!(stems(&window), turned);
}

#[test]
fn a_stem_under_its_cap_is_not_turned_and_the_window_says_why() {
    let mut window = at_work("clogged_drier");
    let middle = area(&window, Part::Valve(Line::Liquid)).center();
    drag(&mut window, &round(middle, 20.0, 90));
    assert_eq!(open(&window, Line::Liquid), 1.0);
    let why = refusal(&window).expect("it says why");
    assert!(why.contains("Take the stem cap off first"), "{why}");
}

#[test]
fn the_wheel_turns_what_the_pointer_is_on_by_a_quarter_turn_a_notch() {
    let mut window = at_work("clogged_drier");
    let line = Line::Liquid;
    act(&mut window, Action::StemCap { line, on: false });
    let middle = area(&window, Part::Valve(line)).center();
    wheel(&mut window, middle, -1.0);
    assert!((open(&window, line) - 0.95).abs() < 1e-9);
    wheel(&mut window, middle, -2.0);
    assert!((open(&window, line) - 0.85).abs() < 1e-9);
    wheel(&mut window, middle, 1.0);
    assert!((open(&window, line) - 0.9).abs() < 1e-9);
    let low = area(&window, Part::HandValve(Hose::Low)).center();
    wheel(&mut window, low, 5.0);
    assert!((job(&window).kit().manifold.low_valve.get() - 0.5).abs() < 1e-9);
}

#[test]
fn keys_turn_the_stem_that_has_the_focus() {
    let mut window = at_work("clogged_drier");
    let line = Line::Suction;
    act(&mut window, Action::StemCap { line, on: false });
    crate::support::tab_to(&mut window, "suction service valve, ");
    for _ in 0..3 {
        crate::support::key(&mut window, Key::ArrowDown);
    }
    assert!((open(&window, line) - 0.85).abs() < 1e-9);
    crate::support::key(&mut window, Key::Plus);
    assert!((open(&window, line) - 0.9).abs() < 1e-9);
    window.key_press_modifiers(Modifiers::SHIFT, Key::ArrowDown);
    window.run();
    assert!((open(&window, line) - 0.895).abs() < 1e-9);
    crate::support::key(&mut window, Key::Home);
    assert_eq!(open(&window, line), 0.0);
    let name = crate::support::focused(&window).expect("it has the focus still");
    assert_eq!(name, "suction service valve, front-seated, cap off");
}

#[test]
fn an_assistive_program_turns_a_stem_too() {
    let mut window = at_work("clogged_drier");
    let line = Line::Suction;
    act(&mut window, Action::StemCap { line, on: false });
    let name = "suction service valve, back-seated, cap off";
    window.get_by_label(name).decrement_accesskit();
    window.run();
    assert!((open(&window, line) - 0.95).abs() < 1e-9);
}

/// Right-handed threads: clockwise makes a nut up. Common practice, no source.
#[test]
fn a_nut_is_loosened_and_pulled_up_by_a_quarter_turn_of_the_wrench() {
    let mut window = at_work("clogged_drier");
    let joint = Joint::DrierInlet;
    let made = |window: &Window| job(window).fittings().joint(joint).made;
    let nut = area(&window, Part::Joint(joint)).center();
    drag(&mut window, &round(nut, 9.0, -60));
    assert!(
        matches!(made(&window), Made::Up(_)),
        "less than a quarter turn"
    );
    drag(&mut window, &round(nut, 9.0, -100));
    assert_eq!(made(&window), Made::Cracked);
    window
        .get_by_role_and_label(Role::SpinButton, "torque wrench")
        .set_value_accesskit(27.0);
    window.run();
    drag(&mut window, &round(nut, 9.0, 400));
    let Made::Up(torque) = made(&window) else {
        panic!("it is made up");
    };
    assert!((torque.foot_pounds() - 27.0).abs() < 1e-6);
    assert_eq!(recorded(&window, "MakeUp("), 1, "it clicks once");
}

#[test]
fn hand_valves_the_cylinder_and_the_regulator_turn_like_a_stem() {
    let mut window = at_work("clogged_drier");
    let sheet = Sheet::of(&window);
    drag(&mut window, &round(sheet.at(476.0, 538.0), 16.0, -180));
    let high = job(&window).kit().manifold.high_valve.get();
    assert!((high - 0.2).abs() < 0.011, "{high}");
    drag(&mut window, &round(sheet.at(800.0, 486.0), 16.0, -90));
    let cylinder = job(&window).kit().tools.refrigerant_cylinder.valve.get();
    assert!((cylinder - 0.1).abs() < 0.011, "{cylinder}");
    // A regulator's screw loads its spring as it goes in: clockwise is more.
    drag(&mut window, &round(sheet.at(622.0, 472.0), 16.0, 360));
    let psig = job(&window).kit().tools.nitrogen.setting.psig();
    assert!((psig - 100.0).abs() < 2.6, "{psig}");
}

#[test]
fn a_hose_end_is_dragged_to_a_port_and_off_again() {
    let mut window = at_work("clogged_drier");
    let sheet = Sheet::of(&window);
    let (hook, port) = (sheet.at(300.0, 588.0), sheet.at(372.0, 372.0));
    let way = [hook, sheet.at(330.0, 480.0), sheet.at(368.0, 376.0)];
    drag(&mut window, &way);
    let why = refusal(&window).expect("the cap is on");
    assert!(why.contains("Take the port cap off first"), "{why}");
    let end = |window: &Window, hose| job(window).kit().manifold.hose(hose).end;
    assert_eq!(end(&window, Hose::Low), None);

    let line = Line::Suction;
    act(&mut window, Action::PortCap { line, on: false });
    drag(&mut window, &way);
    assert_eq!(end(&window, Hose::Low), Some(HoseEnd::SuctionPort));
    assert_eq!(refusal(&window), None);
    // Put back where it was: nothing happened.
    drag(&mut window, &[port, sheet.at(420.0, 400.0), port]);
    assert_eq!(end(&window, Hose::Low), Some(HoseEnd::SuctionPort));
    drag(
        &mut window,
        &[port, sheet.at(420.0, 400.0), sheet.at(560.0, 380.0)],
    );
    assert_eq!(end(&window, Hose::Low), None);

    let pump = sheet.at(176.0, 506.0);
    drag(
        &mut window,
        &[sheet.at(394.0, 588.0), sheet.at(300.0, 560.0), pump],
    );
    assert_eq!(
        end(&window, Hose::Centre),
        Some(HoseEnd::Tool(Name::VacuumPump))
    );
    // From one thing straight to another: off first, then on.
    drag(
        &mut window,
        &[pump, sheet.at(400.0, 560.0), sheet.at(640.0, 500.0)],
    );
    assert_eq!(
        end(&window, Hose::Centre),
        Some(HoseEnd::Tool(Name::Nitrogen))
    );
}

#[test]
fn escape_puts_back_what_is_in_the_hand() {
    let mut window = at_work("clogged_drier");
    let sheet = Sheet::of(&window);
    window.drag_at(sheet.at(394.0, 588.0));
    window.run();
    window.hover_at(sheet.at(180.0, 510.0));
    window.run();
    crate::support::key(&mut window, Key::Escape);
    window.drop_at(sheet.at(176.0, 506.0));
    window.run();
    assert_eq!(recorded(&window, "Connect("), 0);
    assert_eq!(job(&window).kit().manifold.hose(Hose::Centre).end, None);
}

#[test]
fn probes_are_carried_to_where_they_measure() {
    let mut window = at_work("clogged_drier");
    let sheet = Sheet::of(&window);
    let case = area(&window, Part::Thermometers).center();
    let suction = sheet.at(464.0, 318.0);
    let is_at = |window: &Window, place| job(window).kit().thermometers.is_at(place);
    drag(&mut window, &[case, sheet.at(600.0, 400.0), suction]);
    assert!(is_at(&window, ThermometerPlace::SuctionLine));
    drag(
        &mut window,
        &[suction, sheet.at(464.0, 250.0), sheet.at(464.0, 180.0)],
    );
    assert!(!is_at(&window, ThermometerPlace::SuctionLine));
    assert!(is_at(&window, ThermometerPlace::LiquidLine));

    let detector = area(&window, Part::Detector).center();
    drag(
        &mut window,
        &[detector, sheet.at(800.0, 400.0), sheet.at(748.0, 318.0)],
    );
    let joint = Spot::Joint(Joint::IndoorSuction);
    assert_eq!(job(&window).kit().detector.at, Some(joint));
    let detector = area(&window, Part::Detector).center();
    drag(
        &mut window,
        &[detector, sheet.at(700.0, 400.0), sheet.at(560.0, 400.0)],
    );
    assert_eq!(job(&window).kit().detector.at, None);

    let gauge = area(&window, Part::MicronGauge).center();
    drag(
        &mut window,
        &[gauge, sheet.at(300.0, 500.0), sheet.at(376.0, 448.0)],
    );
    assert_eq!(job(&window).kit().micron_gauge.place, GaugePlace::Manifold);
}

/// 1 lbf·ft is 1.355 818 N·m and 1 psi 6.894 757 kPa. Source: NIST SP 811, Appendix B.
#[test]
fn the_wrench_and_the_regulator_count_in_the_units_that_were_chosen() {
    let mut window = at_work("clogged_drier");
    press(&mut window, "Menu");
    press(&mut window, "Settings");
    press(&mut window, "kPa, °C");
    let joint = Joint::DrierInlet;
    window.state_mut().choose(Part::Joint(joint));
    window.run();
    let wrench = |window: &Window| {
        let find = (Role::SpinButton, "torque wrench");
        window.get_by_role_and_label(find.0, find.1).value()
    };
    assert_eq!(wrench(&window).as_deref(), Some("13.6 N·m"));
    window
        .get_by_role_and_label(Role::SpinButton, "torque wrench")
        .set_value_accesskit(37.0);
    window.run();
    press(&mut window, "Make up to this torque");
    let Made::Up(torque) = job(&window).fittings().joint(joint).made else {
        panic!("it is made up");
    };
    assert!((torque.newton_metres() - 37.0).abs() < 1e-9);
    window.get_by_label("Last pulled to 37 N·m.");
    press(&mut window, "psig, °F");
    window.get_by_label("Last pulled to 27 ft·lb.");
    assert_eq!(wrench(&window).as_deref(), Some("27.3 ft·lb"));

    press(&mut window, "kPa, °C");
    window.state_mut().choose(Part::Regulator);
    window.run();
    window
        .get_by_role_and_label(Role::Slider, "regulator")
        .set_value_accesskit(700.0);
    window.run();
    let set = job(&window).kit().tools.nitrogen.setting;
    assert!((set.pascals() - 700e3).abs() < 1.0, "{set:?}");
    window.get_by_label("nitrogen regulator, set to 700 kPa gauge");
    press(&mut window, "psig, °F");
    window.get_by_label("nitrogen regulator, set to 102 psig");
    // Switching alone sets nothing anew.
    assert_eq!(job(&window).kit().tools.nitrogen.setting, set);
    assert_eq!(set, GaugePressure::from_pascals(700e3));
}

/// 12.6 °F apart are 7.0 K. Source: NIST SP 811, Appendix B.
#[test]
fn a_value_on_the_sheet_reads_in_either_system() {
    let mut window = at_work("clogged_drier");
    let value = coldbench::words::Level::FahrenheitDegrees(12.6);
    let field = SheetField::Superheat;
    act(&mut window, Action::Write { field, value });
    press(&mut window, "Job sheet");
    window.get_by_label("12.6 °F");
    press(&mut window, "Menu");
    press(&mut window, "Settings");
    press(&mut window, "kPa, °C");
    window.get_by_label("7.0 K");
    let entry = job(&window).sheet().entry(field).expect("it stands there");
    assert_eq!(
        entry.value, value,
        "what was written stands as it was written"
    );
}

#[test]
fn a_paused_room_asks_for_no_frame_and_the_fans_turn_with_the_time_of_the_job() {
    let mut window = at_work("clogged_drier");
    act(&mut window, Action::Thermostat(ThermostatCall::Cool));
    window.state_mut().run(600);
    window.run_steps(8);
    let idle = Duration::from_hours(1);
    assert!(next_frame(&window) > idle);
    let drawn = |window: &Window| format!("{:?}", window.output().shapes);
    let before = drawn(&window);
    window.run_steps(3);
    assert!(drawn(&window) == before, "nothing moves while it is paused");
    window.state_mut().run(1);
    window.run_steps(2);
    assert!(drawn(&window) != before, "a tick turns the fans");
    crate::support::tab_to(&mut window, "liquid service valve, ");
    window.run_steps(8);
    assert!(next_frame(&window) > idle, "with a focus");
}

#[test]
fn the_site_stays_where_it_is_whatever_is_chosen() {
    let mut window = at_work("clogged_drier");
    let before = area(&window, Part::Filter);
    for part in Part::all() {
        window.state_mut().choose(part);
        window.run();
        assert_eq!(area(&window, Part::Filter), before, "{part:?}");
    }
}

#[test]
fn the_scenarios_all_open() {
    for name in shipped_names() {
        let window = at_work(name);
        window.get_by_label_contains("sight glass, ");
    }
}
