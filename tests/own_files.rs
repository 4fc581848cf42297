//! Files of one's own: a unit beside its scenario, a procedure beside both, all by path.

use coldbench::scenario::{Diagnostic, Scenario};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// A folder with an own scenario of an own unit.
fn own_folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("it can be removed");
    }
    fs::create_dir_all(folder.join("procedures")).expect("it can be made");
    let read = |path: &str| fs::read_to_string(path).expect("it is shipped");
    let unit = read("assets/units/r22_3ton_orifice.ron");
    let unit = unit.replacen("3-ton R-22, fixed orifice", "The unit of our workshop", 1);
    write(&folder.join("my_unit.ron"), &unit);
    let scenario = read("scenarios/clogged_drier.ron");
    let named = scenario.replacen("\"r22_3ton_orifice\"", "\"my_unit.ron\"", 1);
    assert_ne!(named, scenario);
    write(&folder.join("my_drier.ron"), &named);
    let procedure = read("scenarios/procedures/clogged_drier_right.ron");
    let procedure = procedure.replacen("\"clogged_drier\"", "\"my_drier\"", 1);
    write(&folder.join("procedures/my_drier_right.ron"), &procedure);
    folder
}

fn write(path: &Path, text: &str) {
    fs::write(path, text).expect("it can be written");
}

fn coldbench(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_coldbench"))
        .args(arguments)
        .current_dir(folder)
        .output()
        .expect("the program starts")
}

#[track_caller]
fn exits(output: &Output, code: i32) -> String {
    let out = String::from_utf8_lossy(&output.stdout).into_owned();
    let err = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(code), "{out}\n{err}");
    format!("{out}{err}")
}

#[test]
fn every_command_takes_own_files_by_path() {
    let folder = own_folder("own_files");
    let run = |arguments: &[&str]| coldbench(&folder, arguments);
    let files = [
        "my_drier.ron",
        "my_unit.ron",
        "procedures/my_drier_right.ron",
    ];
    let checked = exits(&run(&["check", files[0], files[1], files[2]]), 0);
    for kind in ["scenario", "unit: The unit of our workshop", "procedure"] {
        assert!(checked.contains(kind), "{checked}");
    }
    exits(&run(&["settle", "my_unit.ron", "--point", "A"]), 0);
    exits(&run(&["settle", "my_drier.ron", "--no-faults"]), 0);
    // Without a script the right procedure beside the scenario is done.
    let done = exits(&run(&["perform", "my_drier.ron", "--out", "a.attempt"]), 0);
    assert!(done.contains("my_unit.ron"), "{done}");
    exits(&run(&["replay", "a.attempt"]), 0);
    exits(&run(&["mark", "a.attempt"]), 0);
    exits(&run(&["check", "a.attempt"]), 0);
    // From elsewhere too, where the scenario is named.
    let elsewhere = folder.join("procedures");
    let moved = ["mark", "../a.attempt", "--scenario", "../my_drier.ron"];
    exits(&coldbench(&elsewhere, &moved), 0);

    // The attempt knows the unit that it was done on.
    let unit = fs::read_to_string(folder.join("my_unit.ron")).expect("it is there");
    write(
        &folder.join("my_unit.ron"),
        &unit.replacen("3.108", "3.2", 1),
    );
    let said = exits(&run(&["mark", "a.attempt"]), 1);
    assert!(
        said.contains("the unit `my_unit.ron` is not as it was"),
        "{said}"
    );
}

/// What is wrong with the scenario of a folder.
fn errors(folder: &Path) -> Vec<Diagnostic> {
    Scenario::load(&folder.join("my_drier.ron"))
        .err()
        .unwrap_or_default()
}

#[test]
fn an_own_unit_is_checked_with_its_scenario_and_each_error_names_its_file() {
    let folder = own_folder("own_unit_with_errors");
    assert!(errors(&folder).is_empty());
    let unit_file = folder.join("my_unit.ron");
    let unit = fs::read_to_string(&unit_file).expect("it is there");
    let wrong = unit
        .replacen("Kilograms(3.108)", "Kilograms(0)", 1)
        .replacen("power_factor: 0.95", "power_factor: 95", 1);
    write(&unit_file, &wrong);
    let scenario_file = folder.join("my_drier.ron");
    let scenario = fs::read_to_string(&scenario_file).expect("it is there");
    write(
        &scenario_file,
        &scenario.replacen("version: 1", "version: 2", 1),
    );

    let found = errors(&folder);
    let told: Vec<(&str, &str)> = found
        .iter()
        .map(|wrong| {
            (
                wrong.path.rsplit('/').next().unwrap_or(""),
                wrong.message.as_str(),
            )
        })
        .collect();
    let expected = [
        ("my_drier.ron", "version 2 of this format is not known"),
        ("my_unit.ron", "charge is out of range: 0 kg"),
        ("my_unit.ron", "power_factor is out of range: 95"),
    ];
    assert_eq!(told, expected);
}

#[test]
fn a_unit_that_cannot_be_found_is_told_where_it_is_named() {
    let folder = own_folder("own_unit_missing");
    let unit_file = folder.join("my_unit.ron");
    fs::remove_file(&unit_file).expect("it is there");
    let told = |found: &[Diagnostic]| {
        assert_eq!(found.len(), 1, "{found:?}");
        assert!(found[0].path.ends_with("my_drier.ron") && found[0].line > 1);
        assert!(
            found[0]
                .hint
                .as_ref()
                .is_some_and(|hint| hint.contains("my_unit.ron"))
        );
        found[0].message.clone()
    };
    assert!(told(&errors(&folder)).contains("there is no such file"));
    fs::create_dir(&unit_file).expect("it can be made");
    assert!(told(&errors(&folder)).contains("it is a folder"));

    // A name without an ending is that of a shipped unit.
    let scenario_file = folder.join("my_drier.ron");
    let scenario = fs::read_to_string(&scenario_file).expect("it is there");
    write(
        &scenario_file,
        &scenario.replacen("my_unit.ron", "my_unit", 1),
    );
    assert!(told(&errors(&folder)).contains("there is no unit \"my_unit\""));
}

#[test]
fn a_file_of_the_wrong_kind_is_told_plainly() {
    let folder = own_folder("wrong_kind");
    for (arguments, sentence) in [
        (
            vec!["perform", "my_unit.ron"],
            "this is a unit, and a scenario is asked for",
        ),
        (
            vec!["perform", "my_drier.ron", "my_unit.ron"],
            "this is a unit, and a procedure",
        ),
        (
            vec!["settle", "procedures/my_drier_right.ron"],
            "this is a procedure, and a scenario is asked for",
        ),
    ] {
        let said = exits(&coldbench(&folder, &arguments), 2);
        assert!(said.contains(sentence), "{said}");
    }
}
