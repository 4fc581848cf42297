//! Files changed at random: no text makes the program panic, and every error has its place.
//!
//! The changes are drawn from a fixed seed, so a failure comes again.

use coldbench::attempt::{End, Journal, Opening, Recorder};
use coldbench::job::procedure::Procedure;
use coldbench::job::{Driver as _, Job};
use coldbench::plant::ThermostatCall;
use coldbench::scenario::{Diagnostic, Scenario};
use coldbench::words::Action;
use rand::{RngExt as _, SeedableRng as _};
use rand_chacha::ChaCha8Rng;
use rayon::prelude::*;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

/// How often each file is changed.
const ROUNDS: u64 = 120;

/// Pieces that people and programs put in the wrong place.
const PIECES: [&str; 22] = [
    "(",
    ")",
    "[",
    "]",
    "\"",
    "\\",
    ",",
    ":",
    "/*",
    "*/",
    "//",
    "Some(",
    "None",
    "NaN",
    "-1",
    "1e308",
    "99999999999999999999",
    "\u{feff}",
    "é",
    "\r",
    "r#\"",
    "'",
];

fn files_in(folder: &str) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("the folder is there");
    let paths = entries.map(|entry| entry.expect("readable").path());
    let mut files: Vec<_> = paths.filter(|path| path.is_file()).collect();
    files.sort();
    files
}

/// A place between two letters.
fn place(text: &[char], random: &mut ChaCha8Rng) -> usize {
    random.random_range(0..=text.len())
}

/// Changes a text once to a few times.
fn changed(text: &str, random: &mut ChaCha8Rng) -> String {
    let mut text: Vec<char> = text.chars().collect();
    for _ in 0..random.random_range(1..4) {
        let (a, b) = (place(&text, random), place(&text, random));
        let (from, to) = (a.min(b), a.max(b).min(a.min(b) + 40));
        let piece = PIECES[random.random_range(0..PIECES.len())];
        match random.random_range(0..6) {
            0 => drop(text.drain(from..to)),
            1 => {
                let copy = text[from..to].to_vec();
                text.splice(b..b, copy);
            }
            2 => drop(text.splice(a..a, piece.chars())),
            3 => drop(text.splice(from..to, piece.chars())),
            4 => text.truncate(a),
            _ => text[from..to].reverse(),
        }
    }
    text.into_iter().collect()
}

/// Reads a text as what its file is; gives what is wrong, or a scenario to run.
fn read(path: &Path, bytes: &[u8]) -> Result<Option<Scenario>, Vec<Diagnostic>> {
    let shown = path.to_str().expect("plain letters");
    if shown.contains("procedures") {
        Procedure::from_bytes(shown, bytes).map(|_| None)
    } else if shown.contains("units") {
        Scenario::of_unit_bytes(shown, "own", bytes).map(Some)
    } else {
        Scenario::from_bytes(shown, "own", bytes).map(Some)
    }
}

/// Each error has a place in the text.
fn are_located(path: &Path, text: &str, wrong: &[Diagnostic]) -> Result<(), String> {
    // Where there is no LF at all, lines end in CR.
    let end = if text.contains('\n') { '\n' } else { '\r' };
    let lines: Vec<&str> = text.split(end).collect();
    if wrong.is_empty() || wrong.len() > 100 {
        return Err(format!("{} errors", wrong.len()));
    }
    for one in wrong {
        let line = lines.get(one.line.wrapping_sub(1));
        let is_there =
            line.is_some_and(|line| (1..=line.chars().count() + 1).contains(&one.column));
        if !is_there || one.message.is_empty() || Path::new(&one.path) != path {
            return Err(format!("{one}"));
        }
    }
    Ok(())
}

/// A scenario that was read runs.
fn runs(scenario: &Scenario) -> Result<(), String> {
    let mut job = Job::new(scenario);
    let cool = Action::Thermostat(ThermostatCall::Cool);
    job.apply(cool).map_err(|refused| refused.to_string())?;
    (0..50).for_each(|_| job.tick());
    let charge = job.truth().charge;
    charge
        .is_finite()
        .then_some(())
        .ok_or_else(|| format!("the charge is {charge}"))
}

#[test]
fn a_file_changed_at_random_is_read_or_told_at_its_place_and_never_panics() {
    let folders = ["scenarios", "scenarios/procedures", "assets/units"];
    let files: Vec<_> = folders.iter().flat_map(|folder| files_in(folder)).collect();
    assert!(files.len() >= 25);
    let failures: Vec<String> = files
        .par_iter()
        .enumerate()
        .flat_map_iter(|(number, path)| {
            let text = fs::read_to_string(path).expect("it is shipped");
            let mut random = ChaCha8Rng::seed_from_u64(1_000 + number as u64);
            let (mut failures, mut read_ones) = (Vec::new(), 0);
            for round in 0..ROUNDS {
                let text = changed(&text, &mut random);
                let outcome = match read(path, text.as_bytes()) {
                    Ok(scenario) => {
                        read_ones += 1;
                        scenario.map_or(Ok(()), |scenario| runs(&scenario))
                    }
                    Err(wrong) => are_located(path, &text, &wrong),
                };
                if let Err(why) = outcome {
                    failures.push(format!("{}, round {round}: {why}", path.display()));
                }
            }
            if read_ones == ROUNDS {
                failures.push(format!("{}: nothing was refused", path.display()));
            }
            failures
        })
        .collect();
    let told = failures.join("\n");
    assert!(failures.is_empty(), "{} fail:\n{told}", failures.len());
}

#[test]
fn bytes_changed_at_random_never_panic() {
    let text = fs::read("scenarios/wet_circuit.ron").expect("it is shipped");
    let path = Path::new("scenarios/wet_circuit.ron");
    let mut random = ChaCha8Rng::seed_from_u64(2_000);
    for _ in 0..400 {
        let mut bytes = text.clone();
        for _ in 0..random.random_range(1..6) {
            let at = random.random_range(0..bytes.len());
            bytes[at] = random.random();
        }
        if let Err(wrong) = read(path, &bytes) {
            assert!(!wrong.is_empty() && wrong.iter().all(|one| one.line > 0 && one.column > 0));
        }
    }
}

/// A journal of a few actions.
fn journal() -> Vec<u8> {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("mutations");
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("it is ours");
    }
    let scenario = Scenario::shipped("clogged_drier").expect("it is shipped");
    let opening = Opening::practice("scenarios/clogged_drier.ron", "Ann");
    let path = folder.join("a.attempt");
    let mut recorder = Recorder::create(&path, &scenario, opening).expect("it can be made");
    for action in [
        Action::Protect(true),
        Action::Thermostat(ThermostatCall::Cool),
        Action::Ventilate(true),
        Action::HandBack,
    ] {
        recorder.apply(action).expect("it is never refused");
        (0..700).for_each(|_| recorder.tick());
    }
    recorder.close().expect("it can be written");
    fs::read(path).expect("it was written")
}

#[test]
fn an_attempt_changed_at_random_is_told_by_its_line_and_is_never_taken_for_the_whole_one() {
    let bytes = journal();
    let whole = Journal::from_bytes(&bytes).expect("it is genuine");
    assert_eq!(whole.end, End::Closed);
    let lines = bytes.split(|&byte| byte == b'\n').count();
    let mut random = ChaCha8Rng::seed_from_u64(3_000);
    for round in 0..3_000 {
        let mut other = bytes.clone();
        for _ in 0..random.random_range(1..4) {
            let (a, b) = (
                random.random_range(0..other.len()),
                random.random_range(0..other.len()),
            );
            match random.random_range(0..5) {
                0 => other[a] = random.random(),
                1 => drop(other.drain(a.min(b)..a.max(b).min(a.min(b) + 60))),
                2 => other.truncate(a.max(1)),
                3 => other.insert(a, random.random()),
                _ => other.swap(a, b),
            }
            if other.is_empty() {
                break;
            }
        }
        if other == bytes {
            continue;
        }
        match Journal::from_bytes(&other) {
            Err(wrong) => {
                assert!((1..=lines).contains(&wrong.line), "round {round}: {wrong}");
                assert!(!wrong.why.is_empty());
            }
            // Only its tail can be missing.
            Ok(read) => {
                assert_ne!(read.end, End::Closed, "round {round}");
                assert!(whole.lines.starts_with(&read.lines), "round {round}");
            }
        }
    }
}

/// Files that take long or deep if nothing bounds them: name and text.
fn monsters() -> Vec<(&'static str, String)> {
    const LONG: usize = (1 << 20) - 4_096;
    let scenario = fs::read_to_string("scenarios/clogged_drier.ron").expect("it is shipped");
    let (before, after) = scenario.split_once("rubric: [").expect("it has a rubric");
    let filled = |piece: &str| piece.repeat((LONG - scenario.len()) / piece.len());
    let criterion = "(text: \"\", points: -1, rule: Never(finding: Nothing)),";
    let level = "(text: \"a\", points: 1, rule: InTime(Hours(9999))),\n";
    vec![
        ("open brackets", "(".repeat(LONG)),
        ("open lists", "[".repeat(LONG)),
        ("words with brackets", "Some(".repeat(LONG / 5)),
        ("quotes", "\"".repeat(LONG)),
        ("one text", format!("\"{}\"", "x".repeat(LONG))),
        ("one number", "9".repeat(LONG)),
        ("one word", "x".repeat(LONG)),
        ("comments", "/*".repeat(LONG / 2)),
        ("lines", "\n".repeat(LONG)),
        ("doubled fields", format!("({})", "a:1,".repeat(LONG / 4))),
        ("unknown fields", {
            let fields = (0..80_000).map(|number| format!("f{number}:1,"));
            format!("({})", fields.collect::<String>())
        }),
        (
            "wrong criteria in a line",
            format!("{before}rubric: [{}{after}", filled(criterion)),
        ),
        (
            "wrong times",
            format!("{before}rubric: [{}{after}", filled(level)),
        ),
        ("a course of weather", {
            let point = "(after: Minutes(0), outdoor: Kelvin(0), humidity: 0),";
            let course = format!("site: (course: [{}],", filled(point));
            scenario.replacen("site: (", &course, 1)
        }),
        ("conditions", {
            let shows = filled("Shows(LowGauge, Above(Grams(1))),");
            let rule =
                format!("(text: \"\", points: 1, rule: Done(what: Noted, when: [{shows}])),");
            format!("{before}rubric: [{rule}{after}")
        }),
        (
            "a long title",
            scenario.replacen("title: \"", &format!("title: \"{}", filled("x")), 1),
        ),
        (
            "many hints",
            scenario.replacen("hints: [", &format!("hints: [{}", filled("\"\",")), 1),
        ),
    ]
}

#[test]
fn a_monster_of_a_file_is_told_within_seconds() {
    for (name, text) in monsters() {
        assert!(text.len() <= 1 << 20, "{name}");
        let (done, wait) = mpsc::channel();
        thread::spawn(move || {
            let scenario = Scenario::from_bytes("x.ron", "x", text.as_bytes()).err();
            let procedure = Procedure::from_bytes("x.ron", text.as_bytes()).err();
            let unit = Scenario::of_unit_bytes("x.ron", "x", text.as_bytes()).err();
            let errors = [scenario, procedure, unit].map(|wrong| wrong.map_or(0, |w| w.len()));
            done.send(errors).expect("somebody waits");
        });
        let errors = wait.recv_timeout(Duration::from_mins(1));
        let errors = errors.unwrap_or_else(|_| panic!("{name}: it takes for ever or panics"));
        assert!(
            errors.iter().all(|count| (1..=100).contains(count)),
            "{name}: {errors:?}"
        );
    }
}
