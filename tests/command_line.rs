//! The command line: exit codes, the keys of its JSON, what it says about bad files.

#![expect(
    clippy::unwrap_used,
    reason = "a test that cannot go on has failed, in its helpers as well"
)]

use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// A file of these tests.
fn file(name: &str) -> String {
    format!("{}/tests/files/{name}", env!("CARGO_MANIFEST_DIR"))
}

/// An empty directory of a test's own.
fn empty(name: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    if path.exists() {
        fs::remove_dir_all(&path).unwrap();
    }
    fs::create_dir_all(&path).unwrap();
    path
}

fn coldbench(directory: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_coldbench"))
        .args(arguments)
        .current_dir(directory)
        .output()
        .unwrap()
}

/// Runs it anywhere.
fn run(arguments: &[&str]) -> Output {
    coldbench(Path::new(env!("CARGO_TARGET_TMPDIR")), arguments)
}

fn text(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn complaint(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).unwrap()
}

fn json(output: &Output) -> Value {
    serde_json::from_slice(&output.stdout).unwrap()
}

#[track_caller]
fn exits(output: &Output, code: i32) {
    let (out, err) = (text(output), complaint(output));
    assert_eq!(output.status.code(), Some(code), "{out}\n{err}");
}

/// Performs a script of these tests into a new file, with an exit code.
fn attempt(directory: &Path, script: &str, code: i32) -> String {
    let out = directory.join(script).with_extension("attempt");
    let out = out.to_str().unwrap().to_owned();
    let (scenario, script) = (file("sound_unit.ron"), file(script));
    let arguments = ["perform", &scenario, &script, "--out", &out, "--who", "Ann"];
    exits(&coldbench(directory, &arguments), code);
    out
}

#[track_caller]
fn has_keys(value: &Value, keys: &[&str]) {
    for key in keys {
        assert!(value.get(key).is_some(), "no `{key}` in {value:#}");
    }
}

#[test]
fn used_wrongly_it_exits_2_and_says_how() {
    for wrong in [
        &["sing"][..],
        &["chart"],
        &["chart", "R-22", "--at-f", "warm"],
        &["chart", "water"],
        &["chart", "R-22", "--at-f", "9999"],
        &["mark"],
        &["mark", "no_such_file"],
        &["replay", "no_such_file"],
        &["check", "no_such_file"],
        &["perform", "no_such_scenario"],
        &["perform", "clogged_drier", "no_such_script"],
        &["mark", "x", "--json", "--csv"],
    ] {
        let output = run(wrong);
        exits(&output, 2);
        assert!(!complaint(&output).is_empty(), "{wrong:?} says nothing");
        assert!(text(&output).is_empty(), "{wrong:?} answers");
    }
}

#[test]
fn every_command_has_help() {
    for command in ["check", "settle", "perform", "replay", "mark", "chart"] {
        let output = run(&[command, "--help"]);
        exits(&output, 0);
        assert!(text(&output).contains("--json"), "{command}");
    }
    exits(&run(&["--help"]), 0);
    exits(&run(&["--version"]), 0);
}

/// Source: R-22 at 40 °F is 68.5 psig on the pressure-temperature card (common practice).
#[test]
fn the_chart_of_r22_at_40_f() {
    let output = run(&["chart", "R-22", "--at-f", "40", "--json"]);
    exits(&output, 0);
    let row = json(&output);
    has_keys(
        &row,
        &["refrigerant", "fahrenheit", "bubble_psig", "dew_psig"],
    );
    assert!((row["dew_psig"].as_f64().unwrap() - 68.5).abs() < 0.3);
    let output = run(&["chart", "r410a"]);
    exits(&output, 0);
    assert!(text(&output).lines().count() > 20);
}

#[test]
fn a_bad_scenario_gets_all_its_errors_at_once() {
    let bad = file("two_mistakes.ron");
    let output = run(&["check", &bad]);
    exits(&output, 1);
    assert!(text(&output).contains(&format!("{bad}:10:27: error: ")));
    assert!(text(&output).contains(&format!("{bad}:19:66: error: ")));
    let output = run(&["check", "--json", &file("sound_unit.ron"), &bad]);
    exits(&output, 1);
    let found = json(&output);
    assert_eq!(found["ok"], false);
    assert_eq!(found["files"][0]["ok"], true);
    assert_eq!(found["files"][1]["errors"].as_array().unwrap().len(), 2);
    // Used where a good one is needed, it is used wrongly.
    exits(&run(&["perform", &bad, &file("says_nothing.ron")]), 2);
}

#[test]
fn good_files_check() {
    let directory = empty("good_files");
    let made = attempt(&directory, "looks_and_leaves.ron", 0);
    let files = [
        &file("sound_unit.ron"),
        &file("looks_and_leaves.ron"),
        &made,
    ];
    let output = run(&["check", files[0], files[1], files[2]]);
    exits(&output, 0);
    for kind in ["scenario", "procedure", "attempt"] {
        assert!(text(&output).contains(&format!(": {kind}: ")), "{kind}");
    }
}

const KEYS: [&str; 10] = [
    "scenario",
    "genuine",
    "duration_s",
    "readings",
    "truth",
    "findings",
    "marks",
    "score_percent",
    "passed",
    "fingerprint",
];

const TRUTH: [&str; 5] = [
    "refrigerant_released_g",
    "air_inside_g",
    "water_inside_g",
    "charge_kg",
    "microns",
];

#[test]
fn perform_replay_and_mark_say_the_same() {
    let directory = empty("same");
    let (scenario, script) = (file("sound_unit.ron"), file("looks_and_leaves.ron"));
    let performed = coldbench(&directory, &["perform", &scenario, &script, "--json"]);
    exits(&performed, 0);
    let performed = json(&performed);
    let path = performed["attempt"].as_str().unwrap();
    assert_eq!(
        Path::new(path),
        Path::new("attempts").join("sound_unit-1.attempt")
    );
    for command in ["replay", "mark"] {
        let output = coldbench(&directory, &[command, path, "--json"]);
        exits(&output, 0);
        let value = json(&output);
        has_keys(&value, &KEYS);
        has_keys(&value["truth"], &TRUTH);
        let mark = &value["marks"][0];
        has_keys(mark, &["criterion", "points", "of", "critical", "evidence"]);
        for key in KEYS {
            assert_eq!(value[key], performed[key], "{command} {key}");
        }
    }
    assert_eq!(performed["passed"], true);
    assert_eq!(performed["score_percent"], 100.0);
    assert_eq!(performed["duration_s"], 180.0);
}

#[test]
fn the_same_script_twice_is_the_same_file_twice() {
    let directory = empty("twice");
    let (scenario, script) = (file("sound_unit.ron"), file("looks_and_leaves.ron"));
    for _ in 0..2 {
        exits(&coldbench(&directory, &["perform", &scenario, &script]), 0);
    }
    let bytes = |n| fs::read(directory.join(format!("attempts/sound_unit-{n}.attempt"))).unwrap();
    assert_eq!(bytes(1), bytes(2));
}

#[test]
fn a_file_that_exists_is_never_overwritten() {
    let directory = empty("kept");
    let out = attempt(&directory, "looks_and_leaves.ron", 0);
    let before = fs::read(&out).unwrap();
    attempt(&directory, "looks_and_leaves.ron", 2);
    assert_eq!(fs::read(&out).unwrap(), before);
}

#[test]
fn an_attempt_that_fails_exits_1() {
    let directory = empty("fails");
    let out = attempt(&directory, "says_nothing.ron", 1);
    exits(&run(&["replay", &out]), 0);
    let output = run(&["mark", &out, "--json"]);
    exits(&output, 1);
    assert_eq!(json(&output)["passed"], false);
}

#[test]
fn a_wait_in_vain_stops_and_says_what_the_instruments_read() {
    let directory = empty("in_vain");
    let (scenario, script) = (file("sound_unit.ron"), file("waits_in_vain.ron"));
    let output = coldbench(&directory, &["perform", &scenario, &script, "--json"]);
    exits(&output, 1);
    let stopped = json(&output)["stopped"].as_str().unwrap().to_owned();
    assert!(stopped.contains("step 2"), "{stopped}");
}

#[test]
fn a_changed_attempt_is_not_genuine() {
    let directory = empty("tampered");
    let out = attempt(&directory, "looks_and_leaves.ron", 0);
    let honest = fs::read_to_string(&out).unwrap();
    fs::write(&out, honest.replace("\"Ann\"", "\"Bob\"")).unwrap();
    let line = 1 + honest.lines().position(|l| l.contains("\"Ann\"")).unwrap();
    let output = run(&["replay", &out]);
    exits(&output, 1);
    let said = text(&output);
    assert!(
        said.contains(&format!("line {line}: not genuine")),
        "{said}"
    );
    let output = run(&["replay", &out, "--json"]);
    exits(&output, 1);
    assert_eq!(json(&output)["genuine"], false);
    assert_eq!(json(&output)["line"], line);
    exits(&run(&["mark", &out]), 1);
    exits(&run(&["check", &out]), 1);
}

#[test]
fn a_class_is_a_table_and_a_gradebook() {
    let directory = empty("class");
    let good = attempt(&directory, "looks_and_leaves.ron", 0);
    let bad = attempt(&directory, "says_nothing.ron", 1);
    let tampered = directory.join("tampered.attempt");
    let text_of_good = fs::read_to_string(&good).unwrap();
    fs::write(
        &tampered,
        text_of_good.replace("Protect(true)", "Protect(false)"),
    )
    .unwrap();
    let tampered = tampered.to_str().unwrap();

    let output = run(&["mark", &good, &bad, tampered]);
    exits(&output, 1);
    let said = text(&output);
    for word in ["passed", "not passed", "not genuine"] {
        assert!(said.contains(word), "{said}");
    }
    let output = run(&["mark", "--csv", &good, &bad, tampered]);
    exits(&output, 1);
    assert_eq!(text(&output).lines().count(), 4);
    let output = run(&["mark", "--json", &good, &bad, tampered]);
    exits(&output, 1);
    let class = json(&output);
    assert_eq!(class.as_array().unwrap().len(), 3);
    assert_eq!(class[2]["genuine"], false);
    exits(&run(&["mark", &good, &good]), 0);
}

#[test]
fn files_of_rubbish_are_answered_and_never_panic() {
    let directory = empty("rubbish");
    let pieces: [&[u8]; 5] = [
        b"",
        b"\n",
        b"\xff\xfe\x00",
        b"coldbench attempt 1\n",
        b"(((((",
    ];
    for (n, bytes) in pieces.into_iter().enumerate() {
        let path = directory.join(format!("{n}.attempt"));
        fs::write(&path, bytes).unwrap();
        let path = path.to_str().unwrap();
        for command in ["check", "replay", "mark"] {
            exits(&run(&[command, path]), 1);
        }
        let ron = directory.join(format!("{n}.ron"));
        fs::write(&ron, bytes).unwrap();
        exits(&run(&["check", ron.to_str().unwrap()]), 1);
    }
}
