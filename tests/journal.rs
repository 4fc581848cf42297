//! The recording: what a crash leaves, what a change shows, what a replay proves.

use coldbench::attempt::{Closed, End, Entry, Head, Journal, Recorder, ReplayError, replay};
use coldbench::job::{Door, Job, TICKS_PER_SECOND};
use coldbench::scenario::Scenario;
use coldbench::words::{Action, Hose, Level, SheetField};
use std::fs;
use std::path::PathBuf;

/// A fresh path for a test's own file, under the directory that cargo gives to tests.
fn fresh(name: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}.attempt"));
    if path.exists() {
        fs::remove_file(&path).unwrap();
    }
    path
}

fn scenario() -> Scenario {
    Scenario {
        name: "bare".to_owned(),
        file: ron::from_str(
            r#"(version: 1, title: "Bare", trains: "Nothing.", level: 1, unit: "none", seed: 7,
                site: (outdoor: Fahrenheit(95), outdoor_humidity: 0.4, indoor: Fahrenheit(80),
                    indoor_wet_bulb: Fahrenheit(67), line_set: Feet(25)),
                customer: (name: "", place: "", complaint: ""),
                faults: [], pass: 0.8, rubric: [])"#,
        )
        .unwrap(),
        digest: "d0".to_owned(),
        unit_digest: "d1".to_owned(),
    }
}

fn lookup(_: &Head) -> Result<Scenario, String> {
    Ok(scenario())
}

fn run(door: &mut impl Door, seconds: u64) {
    for _ in 0..seconds * TICKS_PER_SECOND {
        door.tick();
    }
}

/// A few minutes of work, with refusals, a number that is no round one, and a hand-back.
fn work(door: &mut impl Door) {
    start(door);
    finish(door);
}

fn start(door: &mut impl Door) {
    let _ = door.apply(Action::Protect(true));
    run(door, 61);
    let _ = door.apply(Action::Purge(Hose::Low));
    run(door, 7);
}

fn finish(door: &mut impl Door) {
    let value = Level::Fahrenheit(0.1 + 0.2);
    let field = SheetField::OutdoorAir;
    let _ = door.apply(Action::Write { field, value });
    run(door, 130);
    let _ = door.apply(Action::HandBack);
    let _ = door.apply(Action::Pump(true));
    run(door, 1);
}

fn record(name: &str) -> Closed {
    let mut recorder =
        Recorder::create(&fresh(name), &scenario(), "bare.ron", "Ann \"B\"\n").unwrap();
    work(&mut recorder);
    recorder.close().unwrap()
}

#[test]
fn a_recording_replays_to_the_same_bits() {
    let closed = record("replays");
    let replayed = replay(&closed.path, &lookup, &mut ()).unwrap();
    assert_eq!(replayed.end, End::Closed);
    assert_eq!(replayed.job.now(), 1990);
    assert_eq!(replayed.job.digest(), closed.job.digest());
    assert_eq!(replayed.fingerprint, closed.fingerprint);
    assert_eq!(replayed.head.who, "Ann \"B\"\n");
    assert_eq!(replayed.done + replayed.refused, 5);
}

#[test]
fn a_recorded_job_is_the_job_without_a_recorder() {
    let mut job = Job::new(&scenario());
    work(&mut job);
    assert_eq!(job.digest(), record("as_without").job.digest());
}

#[test]
fn two_recordings_of_the_same_work_are_the_same_bytes() {
    let (one, two) = (record("same_1"), record("same_2"));
    assert_eq!(one.fingerprint, two.fingerprint);
    assert_eq!(fs::read(one.path).unwrap(), fs::read(two.path).unwrap());
}

#[test]
fn an_attempt_is_never_overwritten() {
    let closed = record("kept");
    let before = fs::read(&closed.path).unwrap();
    assert!(Recorder::create(&closed.path, &scenario(), "bare.ron", "Bob").is_err());
    assert_eq!(fs::read(&closed.path).unwrap(), before);
}

#[test]
fn every_minute_is_marked() {
    let closed = record("marked");
    let journal = Journal::read(&closed.path).unwrap().unwrap();
    let marks = journal.lines.iter().filter(|l| l.entry == Entry::Mark);
    assert_eq!(marks.map(|l| l.tick).collect::<Vec<_>>(), [600, 1200, 1800]);
}

#[test]
fn an_action_is_in_the_file_before_it_takes_effect() {
    let path = fresh("at_once");
    let mut recorder = Recorder::create(&path, &scenario(), "bare.ron", "").unwrap();
    let _ = recorder.apply(Action::Protect(true));
    // Read while the recorder still has the file open, as after a crash.
    let journal = Journal::read(&path).unwrap().unwrap();
    assert_eq!(journal.end, End::Cut);
    assert_eq!(journal.lines[0].entry, Entry::Do(Action::Protect(true)));
}

/// Every byte of every line, changed in three ways.
#[test]
fn a_changed_byte_shows_at_its_line() {
    let bytes = fs::read(record("changed").path).unwrap();
    let mut line = 1;
    for at in 0..bytes.len() {
        for flip in [0x01, 0x20, 0x80] {
            let mut changed = bytes.clone();
            changed[at] ^= flip;
            let found = Journal::from_bytes(&changed).unwrap_err();
            assert_eq!(found.line, line, "byte {at} ^ {flip:#x}: {found}");
        }
        line += usize::from(bytes[at] == b'\n');
    }
}

#[test]
fn a_line_taken_out_put_in_or_moved_shows() {
    let bytes = fs::read(record("moved").path).unwrap();
    let lines: Vec<&[u8]> = bytes.split_inclusive(|&b| b == b'\n').collect();
    for n in 0..lines.len() - 1 {
        let without = [&lines[..n], &lines[n + 1..]].concat().concat();
        assert_eq!(Journal::from_bytes(&without).unwrap_err().line, n + 1);
        let twice = [&lines[..=n], &lines[n..]].concat().concat();
        assert_eq!(Journal::from_bytes(&twice).unwrap_err().line, n + 2);
    }
}

#[test]
fn a_torn_tail_is_let_go_and_all_before_it_replays() {
    let closed = record("torn");
    let bytes = fs::read(&closed.path).unwrap();
    let last = bytes[..bytes.len() - 1]
        .iter()
        .rposition(|&b| b == b'\n')
        .unwrap()
        + 1;
    let line = bytes.iter().filter(|&&b| b == b'\n').count();
    for length in last + 1..bytes.len() {
        let journal = Journal::from_bytes(&bytes[..length]).unwrap();
        assert_eq!(journal.end, End::Torn(line), "cut after {length} bytes");
    }
    fs::write(&closed.path, &bytes[..bytes.len() - 10]).unwrap();
    let replayed = replay(&closed.path, &lookup, &mut ()).unwrap();
    assert_eq!(replayed.done + replayed.refused, 5);
}

#[test]
fn taken_up_again_it_goes_on_as_if_never_cut() {
    let whole = record("never_cut");
    let path = fresh("taken_up");
    let mut recorder = Recorder::create(&path, &scenario(), "bare.ron", "").unwrap();
    start(&mut recorder);
    // Without a closing line, as a killed program leaves it, and with a torn one at the end.
    let now = recorder.job().now();
    drop(recorder);
    let mut bytes = fs::read(&path).unwrap();
    bytes.extend_from_slice(b"     680  00");
    fs::write(&path, bytes).unwrap();

    let mut recorder = Recorder::resume(&path, &lookup).unwrap();
    let lost = now - recorder.job().now();
    assert_eq!(
        lost,
        7 * TICKS_PER_SECOND,
        "only time after the last line is lost"
    );
    run(&mut recorder, 7);
    finish(&mut recorder);
    let closed = recorder.close().unwrap();
    assert_eq!(closed.job.digest(), whole.job.digest());
    assert_eq!(replay(&path, &lookup, &mut ()).unwrap().end, End::Closed);
}

#[test]
fn a_closed_attempt_is_not_taken_up_again() {
    let closed = record("closed");
    let again = Recorder::resume(&closed.path, &lookup);
    assert!(matches!(again, Err(ReplayError::Closed)));
}

#[test]
fn a_changed_scenario_is_named() {
    let closed = record("other_scenario");
    let other = |_: &Head| {
        let digest = "ee".to_owned();
        Ok(Scenario {
            digest,
            ..scenario()
        })
    };
    let error = replay(&closed.path, &other, &mut ()).unwrap_err();
    assert!(matches!(
        error,
        ReplayError::Changed {
            what: "scenario",
            ..
        }
    ));
    assert!(!error.is_not_genuine());
}
