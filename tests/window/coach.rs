//! The coach in the window: asked, it says one thing at a time, and never where to put a hand.

use crate::folder::Folder;
use coldbench::gui::{App, Attempts, Part};
use coldbench::job::Job;
use coldbench::kit::{Hose, HoseEnd};
use coldbench::plant::{Line, ThermostatCall};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::units::Fraction;
use coldbench::words::{Action, Level, SheetField};
use eframe::egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use std::collections::BTreeSet;

type Window = Harness<'static, App>;

const ASK: [&str; 3] = ["Ask for a thought", "What would tell?", "What is asked?"];

/// A window at its start.
fn at_start(folder: &Folder) -> Window {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    let mut window = Harness::builder()
        .with_size([1360.0, 860.0])
        .with_context_setup(App::dress)
        .build_ui_state(
            |ui, app: &mut App| app.window_ui(ui),
            App::new(scenarios, Attempts::in_folder(folder.path())),
        );
    window.run();
    window
}

/// A window with the default scenario open, to practise.
fn at_work(folder: &Folder) -> Window {
    let mut window = at_start(folder);
    window.state_mut().open(0);
    window.run();
    window
}

fn job(window: &Window) -> &Job {
    window.state().job().expect("it is under way")
}

fn act(window: &mut Window, action: Action) {
    window.state_mut().act(action);
    window.run();
}

fn says(window: &Window, words: &str) -> bool {
    window.query_by_label_contains(words).is_some()
}

fn press(window: &mut Window, label: &str) {
    // A person scrolls to what is out of sight.
    window.get_by_label(label).scroll_to_me();
    window.run_steps(3);
    window.get_by_label(label).click();
    window.run();
}

/// What lets the charge out: the centre hose open to the air, and a hand valve open to it.
fn let_go() -> [Action; 5] {
    [
        Action::Protect(true),
        Action::PortCap {
            line: Line::Liquid,
            on: false,
        },
        Action::Connect {
            hose: Hose::High,
            to: HoseEnd::LiquidPort,
        },
        Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::OpenAir,
        },
        Action::HandValve {
            hose: Hose::High,
            open: Fraction::ONE,
        },
    ]
}

#[test]
fn a_thought_is_given_when_it_is_asked_for_and_more_only_after_a_try() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    assert!(!says(&window, "before you know it?"), "nobody has asked");
    press(&mut window, ASK[0]);
    assert!(says(&window, "before you know it?"));
    assert!(!says(&window, "burns cold, and a fitting"));
    // Nothing was tried yet: more is not to be had.
    press(&mut window, ASK[1]);
    assert!(!says(&window, "burns cold, and a fitting"));
    act(&mut window, Action::Thermostat(ThermostatCall::Off));
    press(&mut window, ASK[1]);
    assert!(says(&window, "burns cold, and a fitting"));
    // Half a minute of thinking is a try, too.
    window.state_mut().run(300);
    window.run();
    press(&mut window, ASK[2]);
    assert!(says(&window, "Asked for here: glasses and gloves"));
    assert!(ASK.iter().all(|ask| window.query_by_label(ask).is_none()));
    // At last the hints of who wrote the scenario, each after one more try.
    let [first, second] = ["Is subcooling low too", "something holds it back"];
    press(&mut window, "Is there a hint?");
    assert!(!says(&window, first));
    act(&mut window, Action::Thermostat(ThermostatCall::Off));
    press(&mut window, "Is there a hint?");
    assert!(says(&window, first) && !says(&window, second));
    // Done: the thought is gone, and the next one waits until it is asked for.
    act(&mut window, Action::Protect(true));
    assert!(!says(&window, "Asked for here"));
    press(&mut window, ASK[0]);
    assert!(says(&window, "comes from the cart"));
}

#[test]
fn what_happened_is_told_with_its_price_and_a_wrong_sum_is_worked_out() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    for action in let_go() {
        act(&mut window, action);
    }
    assert!(!says(&window, "Lost so far"));
    window.state_mut().run(300);
    window.run();
    assert!(!job(&window).findings().is_empty());
    assert!(says(&window, "of refrigerant released at the"));
    assert!(says(&window, "must be bought again") && says(&window, "Lost so far: $ "));
    write_superheat(&mut window, 16.0);
    assert!(!says(&window, "you wrote"));
    write_superheat(&mut window, 12.0);
    assert!(says(&window, "you wrote 12.0 °F"));
}

/// Writes a suction of 71.4 psig at 58 °F on the sheet, and a superheat made of them, °F.
fn write_superheat(window: &mut Window, superheat: f64) {
    for (field, value) in [
        (SheetField::SuctionPressure, Level::Psig(71.4)),
        (SheetField::SuctionLine, Level::Fahrenheit(58.0)),
        (SheetField::Superheat, Level::FahrenheitDegrees(superheat)),
    ] {
        act(window, Action::Write { field, value });
    }
}

#[test]
fn while_somebody_is_assessed_nothing_is_said() {
    let folder = Folder::fresh();
    let mut window = at_start(&folder);
    press(&mut window, "I have read this");
    window.get_by_label_contains("Be assessed").click();
    window.run();
    let title = Scenario::shipped("clogged_drier").expect("it is shipped");
    let title = title.file.title;
    press(&mut window, &format!("Go to work: {title}"));
    for action in let_go() {
        act(&mut window, action);
    }
    window.state_mut().run(300);
    write_superheat(&mut window, 12.0);
    assert!(!job(&window).findings().is_empty());
    window.state_mut().choose_sheet();
    window.run();
    for words in [
        "Ask for a thought",
        "released at the",
        "Lost so far",
        "you wrote",
        "Coach",
    ] {
        assert!(!says(&window, words), "{words}");
    }
}

/// The labels of every control of the window, whatever part is chosen.
fn controls(window: &mut Window) -> BTreeSet<String> {
    let mut labels = BTreeSet::new();
    let mut look = |window: &Window| {
        for role in [Role::Button, Role::Slider, Role::CheckBox, Role::ComboBox] {
            for node in window.query_all_by_role(role) {
                labels.extend(node.accesskit_node().label());
            }
        }
    };
    let parts: Vec<Part> = Part::all().collect();
    for part in parts {
        window.state_mut().choose(part);
        window.run();
        look(window);
    }
    window.state_mut().choose_sheet();
    window.run();
    look(window);
    labels
}

/// Names that the window and the trade share: what is called so is a thing, not a control.
const SHARED: [&str; 0] = [];

#[test]
fn no_thought_names_a_control() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    let labels = controls(&mut window);
    assert!(
        labels.len() > 60,
        "the window has many controls: {labels:?}"
    );
    let english = include_str!("../../assets/text/en/thought.ftl");
    let goals = include_str!("../../assets/text/en/coach.ftl");
    let goals = goals.lines().filter(|line| line.starts_with("coach-goal-"));
    let thoughts = english.lines().filter(|line| line.starts_with("thought-"));
    let mut wrong = Vec::new();
    for line in thoughts.chain(goals) {
        let (key, text) = line.split_once(" = ").expect("a key and its text");
        for label in &labels {
            // A control is called as it stands on the screen; a single small word proves nothing.
            let is_telling =
                label.contains(' ') || label.chars().next().is_some_and(char::is_uppercase);
            let starts = text.starts_with(label.as_str()) && label.contains(' ');
            let within = text.contains(&format!(" {label}"));
            if is_telling && (starts || within) && !SHARED.contains(&label.as_str()) {
                wrong.push(format!("{key}: {label}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
