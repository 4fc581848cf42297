//! A job that was cut, by a crash or a power failure, is taken up again with nothing lost.

use super::room::{
    Hands, Window, act, at_work, attempts, begin, job, lookup, press, title, window,
};
use crate::folder::Folder;
use coldbench::attempt::{End, Journal, JournalEntry, Mode, replay};
use coldbench::gui::Stint;
use coldbench::plant::FaultKind;
use coldbench::words::{Action, Diagnosis, Level, SheetField, ThermostatCall};
use egui_kittest::kittest::Queryable as _;
use std::fs::{self, OpenOptions};
use std::io::Write as _;
use std::path::Path;
use std::time::Instant;

const COOL: Action = Action::Thermostat(ThermostatCall::Cool);

const WRITE: Action = Action::Write {
    field: SheetField::ReturnAir,
    value: Level::Fahrenheit(71.0),
};

const DIAGNOSIS: Diagnosis = Diagnosis {
    fault: Some(FaultKind::CloggedDrier),
    at: None,
};

/// Appends what a write leaves that was cut.
fn tear(path: &Path) {
    let mut file = OpenOptions::new()
        .append(true)
        .open(path)
        .expect("it is there");
    file.write_all(b"   99999  00").expect("it can be written");
}

/// Goes on with the one attempt that is offered.
fn go_on(window: &mut Window) {
    window
        .get_by_label_contains(&format!("Go on with: {}, A. Prentice, at ", title()))
        .click();
    let mut frames = 0;
    while window.state().job().is_none() {
        window.step();
        frames += 1;
        assert!(frames < 20_000, "it is never done");
    }
    window.run();
}

#[test]
fn a_job_cut_in_the_middle_earns_what_an_uninterrupted_one_earns() {
    let (whole, cut) = (Folder::fresh(), Folder::fresh());
    let (_, expected) = Hands::at(at_work(&whole)).perform();
    let expected = expected.expect("it was handed back");

    let mut crash = |before: Window| {
        let (now, digest) = (job(&before).now(), job(&before).digest());
        drop(before);
        tear(&attempts(&cut)[0]);
        let mut window = window(&cut);
        let begun = Instant::now();
        go_on(&mut window);
        let wall = begun.elapsed();
        println!("{now} ticks taken up in {wall:?}");
        let found = job(&window).now();
        assert!(now - found < 600, "only time behind the last line is lost");
        window.state_mut().run(now - found);
        assert_eq!(job(&window).digest(), digest);
        window
    };
    let hands = Hands::at(at_work(&cut)).with(60, &mut crash);
    let (window, report) = hands.perform();
    let report = report.expect("it was handed back");
    assert_eq!(report, expected);

    let path = attempts(&cut).remove(0);
    let replayed = replay(&path, &lookup, &mut ()).expect("it is genuine");
    assert_eq!(replayed.end, End::Closed);
    window.get_by_label_contains(&replayed.fingerprint);
    window.get_by_label_contains(&path.display().to_string());
    let journal = Journal::read(&path).expect("it is there").expect("genuine");
    let resumed = |entry: &JournalEntry| *entry == JournalEntry::Resumed;
    assert_eq!(
        journal.lines.iter().filter(|l| resumed(&l.entry)).count(),
        1
    );
    let without = replay(&attempts(&whole)[0], &lookup, &mut ()).expect("it is genuine");
    assert_eq!(replayed.job.digest(), without.job.digest());
}

#[test]
fn what_was_done_before_the_cut_is_there_again() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    act(&mut window, Action::Protect(true));
    window.state_mut().run(6_130);
    act(&mut window, COOL);
    act(&mut window, WRITE);
    act(&mut window, Action::Diagnose(DIAGNOSIS));
    drop(window);

    let mut window = self::window(&folder);
    go_on(&mut window);
    assert_eq!(job(&window).now(), 6_130);
    // On the strip chart and among the moments.
    let row = format!("0:10:13  {COOL}");
    window.get_by_label_contains(&row);
    press(&mut window, "Log");
    let rows = window.get_all_by_label_contains(&row);
    assert_eq!(rows.count(), 2);
    // On the job sheet, as if it had never been laid aside.
    press(&mut window, "Job sheet");
    window.get_by_label("71.0 °F");
    window.get_by_label(&format!("On the sheet: {DIAGNOSIS}"));
    window.get_by_label("Write the diagnosis");
}

#[test]
fn an_assessment_that_was_cut_is_still_one() {
    let folder = Folder::fresh();
    let mut window = self::window(&folder);
    window.get_by_label_contains("Be assessed").click();
    window.run();
    begin(&mut window);
    act(&mut window, Action::Protect(true));
    drop(window);
    // The next one to come practises, and that changes nothing about it.
    let mut window = self::window(&folder);
    let offer = format!("Go on with: {}, no name, at 0:00:00, assessed", title());
    window.get_by_label(&offer).click();
    window.run_steps(3);
    window.get_by_label("Assessment");
    act(&mut window, Action::HandBack);
    let path = attempts(&folder).remove(0);
    let replayed = replay(&path, &lookup, &mut ()).expect("it is genuine");
    assert_eq!((replayed.head.mode, replayed.taken_up), (Mode::Assessed, 1));
}

#[test]
fn put_aside_no_time_is_lost() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    window.state_mut().run(1_234);
    press(&mut window, "Wait …");
    press(&mut window, "Put the job aside");
    window.get_by_label(&format!("Go on with: {}, A. Prentice, at 0:02:03", title()));
    go_on(&mut window);
    assert_eq!(job(&window).now(), 1_234);
    act(&mut window, Action::HandBack);
    let path = attempts(&folder).remove(0);
    replay(&path, &lookup, &mut ()).expect("it is genuine");
}

#[test]
fn a_window_that_is_closed_puts_its_job_aside() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    window.state_mut().run(1_234);
    eframe::App::on_exit(window.state_mut(), None);
    drop(window);
    let path = attempts(&folder).remove(0);
    let journal = Journal::read(&path).expect("it is there").expect("genuine");
    assert_eq!(journal.end, End::Cut);
    let last = journal.lines.last().expect("it has lines");
    assert_eq!((last.tick, &last.entry), (1_234, &JournalEntry::Aside));
}

#[test]
fn what_cannot_be_gone_on_with_is_listed_with_the_reason() {
    let folder = Folder::fresh();
    // One that is handed back, one that another window works on, one of rubbish, and two whose
    // heads were linked anew: another scenario, another program.
    let mut done = at_work(&folder);
    act(&mut done, Action::HandBack);
    let mut cut = window(&folder);
    begin(&mut cut);
    act(&mut cut, Action::Protect(true));
    let text = fs::read_to_string(&attempts(&folder)[1]).expect("it is text");
    let scenario = crate::forge::linked(&text, |line| {
        if line.starts_with("scenario-digest ") {
            format!("scenario-digest \"{}\"", "ee".repeat(32))
        } else {
            line.to_owned()
        }
    });
    let program = crate::forge::linked(&text, |line| {
        if line.starts_with("program-digest ") {
            format!("program-digest \"{}\"", "ee".repeat(32))
        } else {
            line.to_owned()
        }
    });
    let write = |name: &str, text: &str| {
        fs::write(folder.path().join(name), text).expect("it can be written");
    };
    write("other_scenario.attempt", &scenario);
    write("other_program.attempt", &program);
    write("rubbish.attempt", "coldbench attempt 2\n");

    let mut list = window(&folder);
    press(&mut list, "4 that cannot be gone on with");
    for why in [
        "it is being worked on in another window",
        "is not as it was when this was recorded",
        "recorded by another program",
        "rubbish.attempt: it cannot be gone on with",
    ] {
        list.get_by_label_contains(why);
    }
    assert!(list.query_by_label_contains("Go on with: ").is_none());
    let before = attempts(&folder).len();
    drop((cut, list));
    // Once that window is gone, its attempt is offered, and nothing was taken off the disk.
    let list = window(&folder);
    list.get_by_label_contains("Go on with: ");
    assert_eq!(attempts(&folder).len(), before);
}

#[test]
fn a_long_job_shows_how_far_it_is_and_can_be_stopped_on_the_way() {
    let folder = Folder::fresh();
    let hands = Hands::at(at_work(&folder)).stopping(|action| *action == Action::HandBack);
    let (long, _) = hands.perform();
    let ticks = job(&long).now();
    drop(long);
    let path = attempts(&folder).remove(0);
    let before = fs::read(&path).expect("it is there");

    let mut window = window(&folder);
    // So little a frame that it takes more than two of them on any machine.
    window.state_mut().set_stint(Stint::Ticks(2_000));
    let begin = |window: &mut Window| {
        window.get_by_label_contains("Go on with: ").click();
        window.run_steps(2);
    };
    begin(&mut window);
    window.get_by_label("Stop this");
    assert!(window.state().job().is_none());
    press(&mut window, "Stop this");
    assert!(window.state().job().is_none());
    assert!(fs::read(&path).expect("it is there") == before);
    go_on(&mut window);
    assert!(ticks - job(&window).now() < 600);
}
