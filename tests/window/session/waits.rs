//! Waiting: it goes as fast as the machine can and leaves the same behind as the clock at 1×.

use super::room::{Hands, Window, act, at_work, attempts, begin, job, press, window};
use crate::folder::Folder;
use coldbench::gui::Stint;
use coldbench::job::TICKS_PER_SECOND;
use coldbench::kit::Hose;
use coldbench::kit::vacuum_pump;
use coldbench::units::{Fraction, MICRON};
use coldbench::words::{Action, Reading, ThermometerPlace, ThermostatCall};
use eframe::egui::accesskit::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use std::fs;
use std::time::{Duration, Instant};

/// Chooses an instrument to wait for.
fn choose(window: &mut Window, instrument: &str) {
    press(window, "Wait …");
    press(window, "shows");
    press(window, &format!("wait for the {instrument}"));
}

/// Presses what begins a wait, and lets frames pass until it is over.
fn wait(window: &mut Window, button: &str) {
    window.get_by_label(button).click();
    window.run_steps(2);
    let mut frames = 0;
    while window.query_by_label("Stop waiting").is_some() {
        window.step();
        frames += 1;
        assert!(frames < 20_000, "it waits and waits");
    }
    window.run();
}

/// A window in which the pump was just let at the circuit.
fn before_the_evacuation(folder: &Folder) -> Window {
    let hands = Hands::at(at_work(folder))
        .stopping(|action| *action == Action::of(vacuum_pump::Action::Run(true)));
    let (mut window, _) = hands.perform();
    act(&mut window, Action::of(vacuum_pump::Action::Ballast(false)));
    act(&mut window, Action::of(vacuum_pump::Action::Run(true)));
    act(&mut window, Action::of(vacuum_pump::Action::Inlet(true)));
    for hose in [Hose::Low, Hose::High] {
        let open = Fraction::ONE;
        act(&mut window, Action::HandValve { hose, open });
    }
    window
}

#[test]
fn an_evacuation_is_waited_for_in_no_time_and_leaves_what_the_clock_leaves() {
    let (folder, other) = (Folder::fresh(), Folder::fresh());
    let mut window = before_the_evacuation(&folder);
    let start = job(&window).now();
    choose(&mut window, "micron gauge");
    // 500 microns stand there to begin with.
    let value = window.get_by_role_and_label(Role::SpinButton, "value");
    assert_eq!(value.accesskit_node().numeric_value(), Some(500.0));
    let begun = Instant::now();
    wait(&mut window, "Wait for it");
    let wall = begun.elapsed();
    let shown = job(&window).reading(Reading::Microns).quantity();
    let microns = shown.expect("it shows something").si / MICRON;
    assert!((400.0..500.0).contains(&microns), "{microns} microns");
    let ticks = job(&window).now() - start;
    let minutes = ticks / (60 * TICKS_PER_SECOND);
    println!("{minutes} min of evacuation in {wall:?} on the wall");
    assert!(minutes >= 1, "it was no wait: {ticks} ticks");
    // The least that is asked: a tenth of the time, on the slowest machine.
    assert!(wall < Duration::from_secs(6 * (minutes + 1)), "{wall:?}");
    window.get_by_label_contains(": micron gauge below 500 microns.");

    // The same with the clock, tick by tick.
    let mut clock = before_the_evacuation(&other);
    clock.state_mut().run(ticks);
    assert_eq!(job(&window).digest(), job(&clock).digest());
    for window in [&mut window, &mut clock] {
        if window.query_by_label("Put the job aside").is_none() {
            press(window, "Wait …");
        }
        press(window, "Put the job aside");
    }
    let journal = |folder: &Folder| fs::read(&attempts(folder)[0]).expect("it is there");
    assert!(journal(&folder) == journal(&other), "the journals differ");
}

#[test]
fn a_wait_that_never_comes_true_is_given_up_at_its_limit() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    choose(&mut window, "low gauge");
    press(&mut window, "above");
    window
        .get_by_role_and_label(Role::SpinButton, "value")
        .set_value_accesskit(200.0);
    window.run();
    press(&mut window, "at most");
    press(&mut window, "10 min");
    wait(&mut window, "Wait for it");
    assert_eq!(job(&window).now(), 600 * TICKS_PER_SECOND);
    window.get_by_label_contains("Given up after 0:10:00: not yet low gauge above 200.0 psig");
}

#[test]
fn only_what_shows_something_can_be_waited_for() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    press(&mut window, "Wait …");
    press(&mut window, "shows");
    window.get_by_label("wait for the low gauge");
    assert!(window.query_by_label("wait for the suction line").is_none());
    press(&mut window, "wait for the low gauge");
    act(&mut window, Action::Clamp(ThermometerPlace::SuctionLine));
    press(&mut window, "shows");
    press(&mut window, "wait for the suction line");
    // Without it there is nothing to wait for.
    act(&mut window, Action::Unclamp(ThermometerPlace::SuctionLine));
    window.get_by_label("Wait for it").click();
    window.run_steps(3);
    assert_eq!(job(&window).now(), 0);
}

#[test]
fn a_line_that_cools_is_waited_for_until_it_is_steady() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    let place = ThermometerPlace::SuctionLine;
    act(&mut window, Action::Clamp(place));
    act(&mut window, Action::Thermostat(ThermostatCall::Cool));
    choose(&mut window, "suction line");
    press(&mut window, "steady");
    wait(&mut window, "Wait for it");
    window.get_by_label_contains(": suction line steady.");
    let shown = |window: &Window| {
        let reading = job(window).reading(Reading::Thermometer(place));
        reading.quantity().expect("it shows something").si
    };
    // It had three minutes to show that it stands, and it goes on standing.
    assert!(job(&window).now() > 180 * TICKS_PER_SECOND);
    let before = shown(&window);
    wait(&mut window, "for 5 min");
    let moved = (shown(&window) - before).abs();
    assert!(moved < 1.0 / 1.8, "it moved by {moved} K in 5 min");
}

#[test]
fn one_is_away_for_15_min_and_doing_something_ends_a_wait() {
    let folder = Folder::fresh();
    let mut window = at_a_known_pace(&folder);
    press(&mut window, "Wait …");
    wait(&mut window, "for 15 min");
    assert_eq!(job(&window).now(), 15 * 60 * TICKS_PER_SECOND);
    window.get_by_label("0:15:00 went by.");

    window.get_by_label("for 1 h").click();
    window.run_steps(3);
    window.get_by_label("Stop waiting");
    window.state_mut().act(Action::Protect(true));
    window.run();
    assert!(window.query_by_label("Stop waiting").is_none());
    let now = job(&window).now();
    window.run();
    assert_eq!(job(&window).now(), now, "the clock stands again");
}

/// A window at work whose waits run 100 ticks a frame, however fast the machine is.
fn at_a_known_pace(folder: &Folder) -> Window {
    let mut window = window(folder);
    window.state_mut().set_stint(Stint::Ticks(100));
    begin(&mut window);
    window
}

#[test]
fn a_wait_is_stopped_by_its_button() {
    let folder = Folder::fresh();
    let mut window = at_a_known_pace(&folder);
    press(&mut window, "Wait …");
    window.get_by_label("for 1 h").click();
    window.run_steps(3);
    press(&mut window, "Stop waiting");
    let now = job(&window).now();
    // An hour has 36,000 ticks: 100 in each of at most 10 frames is less.
    assert!(now > 0 && now <= 1_000, "stopped after {now} ticks");
    window.get_by_label_contains("Stopped after 0:");
}
