//! No number from a file reaches the plant unchecked.
//!
//! Each number of each shipped unit, scenario and procedure, and of a scenario that writes every
//! field, is replaced in turn. A value that
//! makes no sense is refused with its place and a hint; with one that is taken the job stays
//! finite.

#[path = "support/numbers.rs"]
mod numbers;

use coldbench::job::procedure::{Procedure, Step};
use coldbench::job::{Job, Outcome};
use coldbench::kit::refrigerant_cylinder;
use coldbench::plant::ThermostatCall;
use coldbench::scenario::{Diagnostic, Scenario};
use coldbench::words::{Action, Reading};
use numbers::{Number, numbers_of};
use rayon::prelude::*;
use std::fs;
use std::path::PathBuf;

/// What a number is replaced by. The first two make sense for some numbers.
const REPLACEMENTS: [&str; 6] = ["0", "-1", "1e9", "NaN", "inf", "-inf"];

/// What was made of a file.
enum Read {
    Job(Box<Scenario>),
    Procedure(Procedure),
}

#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Unit,
    Scenario,
    Procedure,
}

impl Kind {
    fn read(self, path: &str, text: &str) -> Result<Read, Vec<Diagnostic>> {
        let bytes = text.as_bytes();
        match self {
            Self::Unit => {
                Scenario::of_unit_bytes(path, "own", bytes).map(|s| Read::Job(Box::new(s)))
            }
            Self::Scenario => {
                Scenario::from_bytes(path, "own", bytes).map(|s| Read::Job(Box::new(s)))
            }
            Self::Procedure => Procedure::from_bytes(path, bytes).map(Read::Procedure),
        }
    }
}

fn shipped() -> Vec<(Kind, PathBuf)> {
    let folders = [
        (Kind::Unit, "assets/units"),
        (Kind::Scenario, "scenarios"),
        (Kind::Procedure, "scenarios/procedures"),
    ];
    // What the shipped scenarios leave out stands in this one.
    let mut files = vec![(Kind::Scenario, PathBuf::from("tests/files/every_field.ron"))];
    for (kind, folder) in folders {
        for entry in fs::read_dir(folder).expect("the folder is there") {
            let path = entry.expect("readable").path();
            if path.extension().is_some_and(|ending| ending == "ron") {
                files.push((kind, path));
            }
        }
    }
    files.sort_by(|a, b| a.1.cmp(&b.1));
    files
}

/// Runs a job for a minute of cooling; gives the first thing that is not a finite number.
fn runs_finite(scenario: &Scenario, action: Option<Action>) -> Result<(), String> {
    let mut job = Job::new(scenario);
    let cool = Action::Thermostat(ThermostatCall::Cool);
    job.apply(cool).expect("a thermostat is never refused");
    if let Some(action) = action {
        // A refusal is an answer too.
        job.apply(action).ok();
    }
    for _ in 0..600 {
        job.tick();
    }
    let settled = serde_json::to_value(job.settled(Outcome::NotSettled)).expect("numbers");
    let truth = job.truth();
    for (name, value) in settled.as_object().expect("fields") {
        // What is no finite number is null in JSON. A share of no capacity is none.
        if value.is_null() {
            return Err(format!("{name} is no number"));
        }
    }
    for (name, value) in [("charge", truth.charge), ("superheat", truth.superheat)] {
        if !value.is_finite() {
            return Err(format!("{name} is {value}"));
        }
    }
    for reading in [
        Reading::LowGauge,
        Reading::HighGauge,
        Reading::of(refrigerant_cylinder::Reading::Scale),
    ] {
        let shown = job.reading(reading).quantity();
        if shown.is_some_and(|quantity| !quantity.si.is_finite()) {
            return Err(format!("{reading:?} shows no number"));
        }
    }
    Ok(())
}

/// The actions that a procedure does and that another does not.
fn new_actions(steps: &[Step], before: &[Step]) -> Vec<Action> {
    let mut actions = Vec::new();
    for (step, old) in steps.iter().zip(before) {
        match (step, old) {
            (Step::Do(action), Step::Do(old)) if action != old => actions.push(*action),
            (Step::Repeat { steps, .. }, Step::Repeat { steps: old, .. }) => {
                actions.extend(new_actions(steps, old));
            }
            (_, _) => {}
        }
    }
    actions
}

/// Replaces a number; gives what is wrong with what comes of it.
fn tried(kind: Kind, path: &str, text: &str, number: &Number, new: &str) -> Result<(), String> {
    let changed = number.replaced_in(text, new);
    let place = format!("{path}:{}: {} -> {new}", number.line(text), number.written);
    match kind.read(path, &changed) {
        Err(wrong) => {
            // The error stands at the number, at the value around it or at one beside it.
            let line = number.line(text);
            let is_near = wrong.iter().any(|w| w.line.abs_diff(line) < 12);
            let are_told = wrong.iter().all(|w| !w.message.is_empty() && w.column > 0);
            if is_near && are_told {
                return Ok(());
            }
            Err(format!("{place}: told elsewhere: {wrong:?}"))
        }
        Ok(_) if !matches!(new, "0" | "-1") => Err(format!("{place}: taken")),
        Ok(Read::Job(scenario)) => {
            let Ok(Read::Job(before)) = kind.read(path, text) else {
                return Err(format!("{place}: the shipped file is refused"));
            };
            // A rubric does not move the plant.
            let (mut a, mut b) = (scenario.file.clone(), before.file.clone());
            a.rubric.clear();
            b.rubric.clear();
            if a == b && scenario.unit == before.unit {
                return Ok(());
            }
            runs_finite(&scenario, None).map_err(|why| format!("{place}: {why}"))
        }
        Ok(Read::Procedure(procedure)) => {
            let before = Procedure::from_bytes(path, text.as_bytes()).expect("shipped");
            let scenario = Scenario::shipped(&before.scenario).expect("shipped");
            for action in new_actions(&procedure.steps, &before.steps) {
                runs_finite(&scenario, Some(action)).map_err(|why| format!("{place}: {why}"))?;
            }
            Ok(())
        }
    }
}

#[test]
fn a_senseless_number_is_refused_at_its_place_and_a_job_with_any_other_stays_finite() {
    let mut cases = Vec::new();
    let files = shipped();
    for (kind, path) in &files {
        let path = path.to_str().expect("plain letters").to_owned();
        let text = fs::read_to_string(&path).expect("it is shipped");
        let wrong = kind.read(&path, &text).err().unwrap_or_default();
        assert!(wrong.is_empty(), "{path} is refused as it is: {wrong:?}");
        for number in numbers_of(&text) {
            for new in REPLACEMENTS {
                cases.push((*kind, path.clone(), text.clone(), number.clone(), new));
            }
        }
    }
    assert!(cases.len() > 6 * 800, "{} numbers", cases.len() / 6);
    let failures: Vec<String> = cases
        .par_iter()
        .filter_map(|(kind, path, text, number, new)| tried(*kind, path, text, number, new).err())
        .collect();
    let told = failures.join("\n");
    assert!(failures.is_empty(), "{} fail:\n{told}", failures.len());
}

/// The ends of a range, out of the hint of an error: `it must lie from 0.1 to 100 kg`.
fn ends(hint: &str) -> Option<[String; 2]> {
    let (least, most) = hint.strip_prefix("it must lie from ")?.split_once(" to ")?;
    let (most, _) = most.split_once(' ').unwrap_or((most, ""));
    Some([least.to_owned(), most.to_owned()])
}

/// The word of a file for the unit of a range.
fn unit_word(hint: &str) -> &'static str {
    match hint.rsplit(' ').next() {
        Some("kg") => "Kilograms",
        Some("g") => "Grams",
        Some("m") => "Metres",
        Some("mm") => "Millimetres",
        Some("mm²") => "SquareMillimetres",
        Some("L") => "Litres",
        Some("L/s") => "LitresPerSecond",
        Some("psig") => "Psig",
        Some("°F") => "Fahrenheit",
        Some("K") => "Kelvins",
        Some("W") => "Watts",
        Some("kg/s") => "KilogramsPerSecond",
        Some("W/K") => "WattsPerKelvin",
        Some("J/K") => "JoulesPerKelvin",
        Some("s") => "Seconds",
        Some("V") => "Volts",
        Some("A") => "Amps",
        Some(_) | None => "",
    }
}

#[test]
fn every_number_of_a_unit_has_a_range_and_the_model_is_finite_at_both_its_ends() {
    let files = shipped()
        .into_iter()
        .filter(|(kind, _)| *kind == Kind::Unit);
    let mut cases = Vec::new();
    let mut failures = Vec::new();
    for (_, path) in files {
        let path = path.to_str().expect("plain letters").to_owned();
        let text = fs::read_to_string(&path).expect("it is shipped");
        for number in numbers_of(&text) {
            let asked =
                Scenario::of_unit_bytes(&path, "own", number.replaced_in(&text, "1e7").as_bytes());
            let Some(wrong) = asked.err() else {
                failures.push(format!("{path}:{}: no range", number.line(&text)));
                continue;
            };
            let ranges: Vec<_> = wrong.iter().filter_map(|w| w.hint.as_deref()).collect();
            let [hint] = ranges[..] else {
                // The version of the format.
                continue;
            };
            let Some(ends) = ends(hint) else { continue };
            for end in ends {
                let value = number.with_unit_replaced_in(&text, unit_word(hint), &end);
                cases.push((format!("{path}:{}: {end}", number.line(&text)), value));
            }
        }
    }
    assert!(cases.len() > 2 * 400, "{}", cases.len());
    failures.extend(
        cases
            .par_iter()
            .filter_map(|(place, text)| {
                match Scenario::of_unit_bytes("own.ron", "own", text.as_bytes()) {
                    Ok(scenario) => runs_finite(&scenario, None).err(),
                    // Beside the other numbers an end may make no sense.
                    Err(wrong) if wrong.iter().all(|w| !w.message.contains("out of range")) => None,
                    Err(wrong) => Some(format!("{wrong:?}")),
                }
                .map(|why| format!("{place}: {why}"))
            })
            .collect::<Vec<_>>(),
    );
    let told = failures.join("\n");
    assert!(failures.is_empty(), "{} fail:\n{told}", failures.len());
}
