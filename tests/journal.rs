//! The recording: what a crash leaves, what a change shows, what a replay proves.

#![expect(
    clippy::unwrap_used,
    reason = "a test that cannot go on has failed, in its helpers as well"
)]

#[path = "support/forge.rs"]
mod forge;

use coldbench::attempt::{
    CatchUp, Closed, End, Head, Journal, JournalEntry, Mode, Opening, Recorder, ReplayError, replay,
};
use coldbench::job::{Driver, Job, TICKS_PER_SECOND};
use coldbench::kit::vacuum_pump;
use coldbench::scenario::Scenario;
use coldbench::words::{Action, Hose, Level, SheetField, ThermostatCall};
use forge::linked;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::thread::sleep;
use std::time::Duration;

/// A fresh path for a test's own file, under the directory that cargo gives to tests.
fn fresh(name: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}.attempt"));
    if path.exists() {
        fs::remove_file(&path).unwrap();
    }
    path
}

const FILE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/files/sound_unit.ron");

fn scenario() -> Scenario {
    Scenario::load(Path::new(FILE)).unwrap()
}

fn lookup(head: &Head) -> Result<Scenario, String> {
    let found = scenario();
    let is_meant = found.name == head.scenario;
    is_meant.then_some(found).ok_or("not here".to_owned())
}

fn run(door: &mut impl Driver, seconds: u64) {
    for _ in 0..seconds * TICKS_PER_SECOND {
        door.tick();
    }
}

/// A few minutes of work, with refusals, a number that is no round one, and a hand-back.
fn work(door: &mut impl Driver) {
    start(door);
    finish(door);
}

fn start(door: &mut impl Driver) {
    let _ = door.apply(Action::Protect(true));
    let _ = door.apply(Action::Thermostat(ThermostatCall::Cool));
    run(door, 61);
    let _ = door.apply(Action::Purge(Hose::Low));
    run(door, 7);
}

fn finish(door: &mut impl Driver) {
    let value = Level::Fahrenheit(0.1 + 0.2);
    let field = SheetField::OutdoorAir;
    let _ = door.apply(Action::Write { field, value });
    run(door, 130);
    let _ = door.apply(Action::HandBack);
    let _ = door.apply(Action::of(vacuum_pump::Action::Run(true)));
    run(door, 1);
}

fn record(name: &str) -> Closed {
    let mut recorder = Recorder::create(
        &fresh(name),
        &scenario(),
        Opening::practice(FILE, "Ann \"B\"\n"),
    )
    .unwrap();
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
    assert_eq!(replayed.head.who.as_str(), "Ann \"B\"");
    assert_eq!(replayed.done + replayed.refused, 6);
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
    assert!(Recorder::create(&closed.path, &scenario(), Opening::practice(FILE, "Bob")).is_err());
    assert_eq!(fs::read(&closed.path).unwrap(), before);
}

#[test]
fn every_minute_is_marked() {
    let closed = record("marked");
    let journal = Journal::read(&closed.path).unwrap().unwrap();
    let marks = journal
        .lines
        .iter()
        .filter(|l| l.entry == JournalEntry::Mark);
    assert_eq!(marks.map(|l| l.tick).collect::<Vec<_>>(), [600, 1200, 1800]);
}

#[test]
fn an_action_is_in_the_file_before_it_takes_effect() {
    let path = fresh("at_once");
    let mut recorder = Recorder::create(&path, &scenario(), Opening::practice(FILE, "")).unwrap();
    let _ = recorder.apply(Action::Protect(true));
    // Read while the recorder still has the file open, as after a crash.
    let journal = Journal::read(&path).unwrap().unwrap();
    assert_eq!(journal.end, End::Cut);
    assert_eq!(
        journal.lines[0].entry,
        JournalEntry::Do(Action::Protect(true))
    );
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

/// Links the lines of a journal into a new chain, as a forger would.
fn forged(bytes: &[u8], forge: impl Fn(&str) -> String) -> Vec<u8> {
    linked(str::from_utf8(bytes).unwrap(), forge).into_bytes()
}

/// A whole chain over changed lines does not help: the physics do not agree. What it cannot hide
/// is that the fingerprint is another.
#[test]
fn a_forged_chain_is_caught_by_the_physics() {
    let closed = record("forged");
    let bytes = fs::read(&closed.path).unwrap();
    assert_eq!(forged(&bytes, str::to_owned), bytes);
    let changes = [
        // An action that was never done, one that was done, one done earlier, time left out.
        ("do Thermostat(Cool)", "do Thermostat(Fan)"),
        ("do Protect(true)", "do Protect(false)"),
        ("     610  ", "     609  "),
        ("    1980  ", "    1979  "),
        ("seed 11", "seed 12"),
        ("     680  ", "99999999  "),
        ("  closed", "  mark"),
    ];
    for (from, to) in changes {
        let changed = forged(&bytes, |text| text.replacen(from, to, 1));
        assert_ne!(changed, bytes, "nothing says `{from}`");
        fs::write(&closed.path, changed).unwrap();
        let Err(error) = replay(&closed.path, &lookup, &mut ()) else {
            panic!("{from} -> {to} is taken for genuine");
        };
        assert!(error.is_not_genuine(), "{from} -> {to}: {error}");
    }
}

/// Whatever the bytes, reading a journal ends in an answer.
#[test]
fn a_journal_of_rubbish_is_refused() {
    let bytes = fs::read(record("rubbish").path).unwrap();
    let mut dice = ChaCha8Rng::seed_from_u64(1);
    let mut throw = |below: usize| dice.next_u32() as usize % below;
    for _ in 0..2_000 {
        let mut rubbish = bytes.clone();
        for _ in 0..=throw(4) {
            let at = throw(rubbish.len());
            match throw(3) {
                0 => rubbish.truncate(at.max(1)),
                1 => rubbish[at] = throw(256) as u8,
                _ => rubbish.insert(at, throw(256) as u8),
            }
        }
        // Linked anew, what is wrong is met behind the chain as well.
        if let Ok(text) = str::from_utf8(&rubbish) {
            let _ = Journal::from_bytes(&forged(text.as_bytes(), str::to_owned));
        }
        if let Ok(journal) = Journal::from_bytes(&rubbish) {
            let whole = rubbish.iter().rposition(|&byte| byte == b'\n').unwrap();
            assert!(bytes.starts_with(&rubbish[..=whole]));
            assert!(rubbish == bytes || journal.end != End::Closed);
        }
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
    let line = bytes.split_inclusive(|&b| b == b'\n').count();
    for length in last + 1..bytes.len() {
        let journal = Journal::from_bytes(&bytes[..length]).unwrap();
        assert_eq!(journal.end, End::Torn(line), "cut after {length} bytes");
    }
    fs::write(&closed.path, &bytes[..bytes.len() - 10]).unwrap();
    let replayed = replay(&closed.path, &lookup, &mut ()).unwrap();
    assert_eq!(replayed.done + replayed.refused, 6);
}

#[test]
fn taken_up_again_it_goes_on_as_if_never_cut() {
    let whole = record("never_cut");
    let path = fresh("taken_up");
    let mut recorder = Recorder::create(&path, &scenario(), Opening::practice(FILE, "")).unwrap();
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
    let Err(error) = replay(&closed.path, &other, &mut ()) else {
        panic!("another scenario is taken for the one that was used");
    };
    assert!(matches!(
        error,
        ReplayError::Changed {
            what: "scenario",
            ..
        }
    ));
    assert!(!error.is_not_genuine());
}

/// The real program, killed in mid-job without a chance to tidy up.
#[test]
fn a_killed_program_leaves_a_journal_that_replays_to_its_last_line() {
    let path = fresh("killed");
    let script = Path::new(FILE).with_file_name("long_watch.ron");
    let mut program = Command::new(env!("CARGO_BIN_EXE_coldbench"))
        .args(["perform", FILE])
        .arg(script)
        .arg("--out")
        .arg(&path)
        .stdout(Stdio::null())
        .spawn()
        .unwrap();
    // Until it is well under way; it has 46 simulated hours before it.
    let is_under_way = || fs::read(&path).is_ok_and(|bytes| bytes.len() > 4000);
    for _ in 0..30_000 {
        if is_under_way() || program.try_wait().unwrap().is_some() {
            break;
        }
        sleep(Duration::from_millis(1));
    }
    // On Unix this is SIGKILL.
    program.kill().unwrap();
    assert!(
        !program.wait().unwrap().success(),
        "it came to its end before it was killed"
    );

    let journal = Journal::read(&path).unwrap().unwrap();
    assert_ne!(journal.end, End::Closed);
    let last = journal.lines.last().unwrap();
    assert!(last.tick >= 600 && last.tick < 46 * 36_000);
    let replayed = replay(&path, &lookup, &mut ()).unwrap();
    assert_eq!(replayed.job.now(), last.tick);
    assert_eq!(replayed.job.digest(), last.digest);
    assert_eq!(replayed.done, 2);
    assert_eq!(replayed.fingerprint, journal.fingerprint());
    // And it can be taken up and closed.
    let closed = Recorder::resume(&path, &lookup).unwrap().close().unwrap();
    assert_eq!(closed.job.now(), last.tick);
}

#[test]
fn a_journal_of_the_first_format_is_read_and_was_practice() {
    let closed = record("first_format");
    let text = fs::read_to_string(&closed.path).unwrap();
    let is_new = |line: &&str| line.starts_with("mode ") || line.starts_with("branch ");
    assert_eq!(text.lines().filter(is_new).count(), 2);
    let old: Vec<&str> = text.lines().filter(|line| !is_new(line)).collect();
    let old = linked(&old.join("\n"), |line| {
        line.replacen("attempt 2", "attempt 1", 1)
    });
    fs::write(&closed.path, old).unwrap();
    let replayed = replay(&closed.path, &lookup, &mut ()).unwrap();
    assert_eq!(
        (replayed.head.format, replayed.head.mode),
        (1, Mode::Practice)
    );
    assert_eq!(replayed.job.digest(), closed.job.digest());
    // A line that is wrong is named by its place in the file.
    let text = fs::read_to_string(&closed.path).unwrap();
    let wrong = linked(&text, |line| line.replacen("  mark", "  bark", 1));
    let error = Journal::from_bytes(wrong.as_bytes()).unwrap_err();
    let line = wrong.lines().position(|line| line.contains("  bark"));
    assert_eq!(Some(error.line - 1), line);
}

#[test]
fn the_head_says_for_what_it_was_begun() {
    let path = fresh("assessed");
    let opening = Opening {
        mode: Mode::Assessed,
        ..Opening::practice(FILE, "Ann")
    };
    let recorder = Recorder::create(&path, &scenario(), opening).unwrap();
    assert_eq!(recorder.head().mode, Mode::Assessed);
    let head = Journal::read(&path).unwrap().unwrap().head;
    assert_eq!((head.mode, head.branch), (Mode::Assessed, None));
    assert!(
        fs::read_to_string(&path)
            .unwrap()
            .contains("\nmode Assessed  ")
    );
}

#[test]
fn a_job_that_is_left_has_ended() {
    let path = fresh("left");
    let mut recorder = Recorder::create(&path, &scenario(), Opening::default()).unwrap();
    start(&mut recorder);
    recorder.leave().unwrap();
    assert_eq!(Journal::read(&path).unwrap().unwrap().end, End::Left);
    let again = Recorder::resume(&path, &lookup);
    assert!(matches!(again, Err(ReplayError::Closed)));
    assert_eq!(replay(&path, &lookup, &mut ()).unwrap().job.now(), 680);
}

#[test]
fn put_aside_it_keeps_the_time_since_its_last_line() {
    let path = fresh("aside");
    let mut recorder = Recorder::create(&path, &scenario(), Opening::default()).unwrap();
    start(&mut recorder);
    let now = recorder.job().now();
    recorder.put_aside().unwrap();
    assert_eq!(Journal::read(&path).unwrap().unwrap().end, End::Cut);
    let recorder = Recorder::resume(&path, &lookup).unwrap();
    assert_eq!(recorder.job().now(), now);
}

/// Locks are not asked for on Windows, where a locked file cannot even be read.
#[cfg(unix)]
#[test]
fn two_do_not_work_on_one_attempt() {
    let path = fresh("two");
    let mut recorder = Recorder::create(&path, &scenario(), Opening::default()).unwrap();
    start(&mut recorder);
    let before = fs::read(&path).unwrap();
    let other = Recorder::resume(&path, &lookup);
    assert!(matches!(other, Err(ReplayError::UnderWay)));
    assert_eq!(fs::read(&path).unwrap(), before);
    drop(recorder);
    assert!(Recorder::resume(&path, &lookup).is_ok());
}

#[test]
fn an_attempt_of_another_program_is_not_taken_up() {
    let path = fresh("foreign");
    let mut recorder = Recorder::create(&path, &scenario(), Opening::default()).unwrap();
    start(&mut recorder);
    drop(recorder);
    let text = fs::read_to_string(&path).unwrap();
    let foreign = linked(&text, |line| match line.split_once(' ') {
        Some(("program-digest", _)) => format!("program-digest {:?}", "ee".repeat(32)),
        _ => line.to_owned(),
    });
    fs::write(&path, &foreign).unwrap();
    let taken_up = Recorder::resume(&path, &lookup);
    assert!(matches!(
        taken_up,
        Err(ReplayError::OfAnotherProgram { .. })
    ));
    assert_eq!(fs::read_to_string(&path).unwrap(), foreign);
}

/// Done again in pieces of a few ticks, an attempt is the same to the bit, and so is one that goes
/// on from any of its moments.
#[test]
fn each_moment_of_an_attempt_can_be_gone_back_to() {
    let directory = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("moments");
    if directory.exists() {
        fs::remove_dir_all(&directory).unwrap();
    }
    let opening = Opening::practice(FILE, "Ann");
    let mut recorder = Recorder::create_in(&directory, &scenario(), opening).unwrap();
    work(&mut recorder);
    let closed = recorder.close().unwrap();
    let journal = Journal::read(&closed.path).unwrap().unwrap();
    let actions = journal.lines.iter().enumerate();
    let actions = actions.filter(|(_, line)| matches!(line.entry, JournalEntry::Do(_)));
    for (action, (index, line)) in actions.enumerate() {
        let mut again = CatchUp::with_moment(&closed.path, &lookup, action).unwrap();
        assert_eq!(again.progress(), (0, line.tick));
        while !again.advance(7, &mut ()).unwrap() {}
        let recorder = again.finish().unwrap();
        assert_eq!(recorder.job().now(), line.tick);
        assert_eq!(recorder.job().digest(), line.digest);
        let new = Journal::read(recorder.path()).unwrap().unwrap();
        assert_eq!(new.lines, journal.lines[..index]);
        let branch = new.head.branch.unwrap();
        assert_eq!(branch.line, journal.number(index));
        recorder.leave().unwrap();
    }
    let beyond = CatchUp::with_moment(&closed.path, &lookup, 6);
    assert!(matches!(beyond, Err(ReplayError::NoSuchAction(6))));
}
