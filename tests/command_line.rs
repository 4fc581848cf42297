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
        &["settle"],
        &["settle", "no_such_unit"],
        &["settle", UNIT, "--fault", "gremlins=1"],
        &["settle", UNIT, "--fault", "leak"],
        &["settle", UNIT, "--fault", "undercharge=7"],
        &["settle", UNIT, "--charge-percent", "900"],
        &["settle", UNIT, "--outdoor-f", "NaN"],
        &["settle", UNIT, "--point", "C"],
        &["settle", UNIT, "--every-unit"],
        &["settle", UNIT, "--indoor-wb-f", "99"],
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

const UNIT: &str = "r22_3ton_orifice";

const SETTLED: [&str; 20] = [
    "suction_psig",
    "liquid_psig",
    "discharge_psig",
    "evaporating_f",
    "condensing_f",
    "superheat_f",
    "coil_superheat_f",
    "subcooling_f",
    "discharge_f",
    "condenser_air_rise_f",
    "evaporator_air_drop_f",
    "capacity_btu_h",
    "power_w",
    "compressor_w",
    "compressor_amps",
    "flow_kg_h",
    "charge_kg",
    "simulated_s",
    "wall_ms",
    "settled",
];

/// Settles with options, and gives a figure.
#[track_caller]
fn settled(options: &[&str], key: &str) -> f64 {
    let output = run(&[&["settle", "--json"], options].concat());
    exits(&output, 0);
    json(&output)[key].as_f64().unwrap()
}

#[test]
fn a_unit_settles_by_name_and_by_file_and_a_scenario_without_its_faults_likewise() {
    let output = run(&["settle", UNIT, "--json"]);
    exits(&output, 0);
    has_keys(&json(&output), &SETTLED);
    assert_eq!(json(&output)["settled"], true);
    let file = format!("{}/assets/units/{UNIT}.ron", env!("CARGO_MANIFEST_DIR"));
    let suction = settled(&[UNIT], "suction_psig");
    assert_eq!(settled(&[&file], "suction_psig"), suction);
    let clogged = settled(&["clogged_drier"], "suction_psig");
    let sound = settled(&["clogged_drier", "--no-faults"], "suction_psig");
    assert!(
        clogged < sound - 5.0,
        "{clogged} psig clogged, {sound} psig sound"
    );
}

/// The rating points: B has 82 °F outdoors (AHRI 210/240), and each unit its own room.
#[test]
fn a_unit_settles_at_its_rating_points() {
    for (point, outdoor) in [("A", "95"), ("b", "82")] {
        let at_point = settled(&[UNIT, "--point", point], "liquid_psig");
        assert_eq!(
            at_point,
            settled(&[UNIT, "--outdoor-f", outdoor], "liquid_psig")
        );
    }
    let cold = settled(&["r134a_receiver_txv", "--point", "A"], "evaporating_f");
    assert!(cold < 30.0, "{cold} °F in a room of 35 °F");
    let output = run(&["settle", "--every-unit", "--json"]);
    exits(&output, 0);
    let rows = json(&output);
    let rows = rows.as_array().expect("a row for each unit and point");
    let units = coldbench::scenario::unit_names();
    assert_eq!(rows.len(), 2 * units.len());
    for (row, unit) in rows.iter().zip(units.iter().flat_map(|unit| [unit, unit])) {
        assert_eq!(row["unit"], *unit);
        assert_eq!(row["settled"], true);
    }
    let table = run(&["settle", "--every-unit"]);
    exits(&table, 0);
    assert!(units.iter().all(|unit| text(&table).contains(unit)));
}

/// The signs of the trade (common practice, no source): hotter outdoors, higher head; less
/// charge, less subcooling and more superheat; a dirty outdoor coil, higher head.
#[test]
fn what_is_overridden_shows_in_what_is_read() {
    let hot = [UNIT, "--outdoor-f", "105"];
    assert!(settled(&hot, "liquid_psig") > settled(&[UNIT], "liquid_psig") + 10.0);
    let low = [UNIT, "--charge-percent", "80"];
    assert!(settled(&low, "subcooling_f") < settled(&[UNIT], "subcooling_f") - 2.0);
    assert!(settled(&low, "superheat_f") > settled(&[UNIT], "superheat_f") + 5.0);
    let planted = settled(&[UNIT, "--fault", "undercharge=0.2"], "suction_psig");
    assert_eq!(planted, settled(&low, "suction_psig"));
    let dirty = [UNIT, "--fault", "fouled-condenser=0.4"];
    assert!(settled(&dirty, "liquid_psig") > settled(&[UNIT], "liquid_psig") + 10.0);
}

#[test]
fn the_kinds_of_fault_are_listed() {
    let output = run(&["settle", "--list-faults", "--json"]);
    exits(&output, 0);
    let kinds = json(&output);
    assert!(kinds.as_array().unwrap().len() >= 11);
    has_keys(&kinds[0], &["kind", "unit", "least", "most"]);
    for kind in kinds.as_array().unwrap() {
        let planted = format!("{}={}", kind["kind"].as_str().unwrap(), kind["least"]);
        // It may not come to rest, but it must be understood.
        let output = run(&["settle", UNIT, "--json", "--fault", &planted]);
        assert_ne!(
            output.status.code(),
            Some(2),
            "{planted}: {}",
            complaint(&output)
        );
    }
}

/// With no display: the default scenario, start to finish.
#[cfg(target_os = "linux")]
#[test]
fn without_a_display_it_does_the_default_job_to_full_marks() {
    let directory = empty("no_display");
    let output = Command::new(env!("CARGO_BIN_EXE_coldbench"))
        .current_dir(&directory)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .output()
        .unwrap();
    exits(&output, 0);
    let said = text(&output);
    for words in ["100.0 %", "passed", "needs a display", "coldbench perform"] {
        assert!(said.contains(words), "no `{words}` in {said}");
    }
    let made = directory.join("attempts").join("clogged_drier-1.attempt");
    exits(&run(&["replay", made.to_str().unwrap()]), 0);
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

const KEYS: [&str; 11] = [
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
    "mode",
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
        b"coldbench attempt 2\n",
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

/// Names that have spoilt a page, a gradebook or a terminal somewhere.
fn names() -> Vec<String> {
    vec![
        "-2+3".to_owned(),
        "--json".to_owned(),
        "=cmd|'/c calc'!A1".to_owned(),
        "x".repeat(10_000),
        "李".repeat(10_000),
        format!("e{}", "\u{301}".repeat(10_000)),
        "Ann\r\nFingerprint 00\n\u{2028}B".to_owned(),
        "\u{1b}[2J\u{1b}]0;title\u{7}".to_owned(),
        "Ann \u{202e}gnorw\u{2066}".to_owned(),
        "a,\"b\",c".to_owned(),
        "محمد علی".to_owned(),
    ]
}

#[test]
fn no_name_spoils_journal_page_gradebook_or_terminal() {
    let directory = empty("names");
    for (number, name) in names().iter().enumerate() {
        let attempt = format!("{number}.attempt");
        let script = file("looks_and_leaves.ron");
        let arguments = [
            "perform",
            "clogged_drier",
            &script,
            "--out",
            &attempt,
            "--who",
            name,
        ];
        let performed = coldbench(&directory, &arguments);
        assert_eq!(
            performed.status.code(),
            Some(1),
            "{name:.40}: {}",
            complaint(&performed)
        );
        let journal = fs::read_to_string(directory.join(&attempt)).unwrap();
        let heads = journal.lines().filter(|line| line.starts_with("who "));
        assert_eq!(heads.count(), 1, "{name:.40}");

        for arguments in [
            vec!["mark", &attempt],
            vec!["mark", "--csv", &attempt],
            vec!["replay", &attempt],
            vec!["mark", &attempt, &attempt],
        ] {
            let printed = text(&coldbench(&directory, &arguments));
            for line in printed.lines() {
                let line = line.trim_end_matches('\r');
                assert!(!line.chars().any(char::is_control), "{name:.40}: {line:?}");
                assert!(
                    !line.contains(['\u{202e}', '\u{2066}', '\u{2028}']),
                    "{line:?}"
                );
                assert!(line.chars().count() < 400, "{name:.40}: {line}");
            }
        }
        // A row of a gradebook has its columns and no formula.
        let csv = coldbench(&directory, &["mark", "--csv", &attempt]).stdout;
        let mut rows = csv::Reader::from_reader(csv.as_slice());
        let columns = rows.headers().unwrap().len();
        let row = rows.records().next().unwrap().unwrap();
        assert_eq!(row.len(), columns, "{name:.40}");
        assert!(!row[0].starts_with(['=', '+', '-', '@']), "{}", &row[0]);
        assert!(row[0].chars().count() <= 200);
    }
}
