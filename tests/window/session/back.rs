//! Going back to a moment: practice only, in an attempt of its own.

use super::room::{act, at_work, attempts, begin, job, lookup, press, window};
use crate::folder::Folder;
use coldbench::attempt::{CatchUp, End, Journal, JournalEntry, Mode, ReplayError, replay};
use coldbench::kit::{Hose, HoseEnd};
use coldbench::plant::Line;
use coldbench::words::Action;
use egui_kittest::kittest::Queryable as _;
use std::fs;
use std::path::Path;

fn journal(path: &Path) -> Journal {
    let read = Journal::read(path).expect("it can be read");
    read.expect("it is genuine")
}

const CAP: Action = Action::PortCap {
    line: Line::Suction,
    on: false,
};

const HOSE: Action = Action::Connect {
    hose: Hose::Low,
    to: HoseEnd::SuctionPort,
};

#[test]
fn in_practice_one_goes_back_to_before_an_action_and_tries_again() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    act(&mut window, Action::Protect(true));
    window.state_mut().run(1234);
    act(&mut window, CAP);
    window.state_mut().run(5);
    act(&mut window, HOSE);
    window.state_mut().run(700);
    act(&mut window, Action::Purge(Hose::Low));

    press(&mut window, "Log");
    let row = format!("0:02:03  {HOSE}");
    press(&mut window, &row);
    window.get_by_label(&format!("Go back to before: {row}"));
    press(&mut window, "Go back and try again");
    assert_eq!(job(&window).now(), 1239);
    assert_eq!(job(&window).kit().manifold.hose(Hose::Low).end, None);
    assert!(job(&window).kit().protection_on);
    // What was not done is no moment any more, what was is still one.
    assert!(window.query_by_label(&row).is_none());
    let row = format!("0:02:03  {CAP}");
    assert!(window.query_all_by_label(&row).count() > 0);

    // The old attempt is ended as left, all of it there; the new one says whence it came.
    let paths = attempts(&folder);
    assert_eq!(paths.len(), 2);
    let (old, new) = (journal(&paths[0]), journal(&paths[1]));
    assert_eq!((old.end, new.end), (End::Left, End::Cut));
    assert_eq!(old.lines.last().map(|line| line.tick), Some(1939));
    let branch = new.head.branch.expect("it says whence it came");
    assert_eq!(branch.attempt, "clogged_drier-1.attempt");
    let text = fs::read_to_string(&paths[0]).expect("it is text");
    let line = text.lines().nth(branch.line - 1).expect("it is there");
    assert!(line.contains("do Connect("), "{line}");
    let before = text.lines().nth(branch.line - 2).expect("it is there");
    assert!(before.ends_with(&branch.chain), "{before}");
    // Up to there both say the same.
    for (index, line) in new.lines.iter().enumerate() {
        assert_eq!(*line, old.lines[index]);
    }

    // Both are genuine, also when the new one has gone its own way.
    act(&mut window, Action::HandBack);
    assert!(window.state().report().is_some());
    let from = format!("went on from {}, line {}.", branch.attempt, branch.line);
    window.get_by_label_contains(&from);
    for path in &paths {
        replay(path, &lookup, &mut ()).expect("it is genuine");
    }
    assert_eq!(journal(&paths[1]).end, End::Closed);
    // Neither is offered at the start.
    press(&mut window, "Back to the list");
    assert!(window.query_by_label_contains("Go on with: ").is_none());
}

#[test]
fn a_mark_on_the_strip_chart_leads_to_its_moment() {
    let folder = Folder::fresh();
    let mut window = at_work(&folder);
    window.state_mut().run(600);
    act(&mut window, Action::Protect(true));
    window.state_mut().run(6000);
    window.run();
    press(&mut window, "0:01:00  glasses and gloves on");
    window.get_by_label("Go back to before: 0:01:00  glasses and gloves on");
    press(&mut window, "Stay here");
    assert!(window.query_by_label("Go back and try again").is_none());
    assert_eq!(attempts(&folder).len(), 1);
}

#[test]
fn in_an_assessment_nobody_goes_back() {
    let folder = Folder::fresh();
    let mut window = window(&folder);
    window.get_by_label_contains("Be assessed").click();
    window.run();
    begin(&mut window);
    window.get_by_label("Assessment");
    act(&mut window, Action::Protect(true));
    window.state_mut().run(6000);
    press(&mut window, "Log");
    window.get_by_label("This is an assessment: there is no going back.");
    let row = window.get_all_by_label("0:00:00  glasses and gloves on");
    assert!(row.count() > 0);
    let path = attempts(&folder).remove(0);
    assert_eq!(journal(&path).head.mode, Mode::Assessed);
    // Nor past the window.
    let back = CatchUp::with_moment(&path, &lookup, 0);
    assert!(matches!(back, Err(ReplayError::Assessed)));
    act(&mut window, Action::HandBack);
    window.get_by_label("This was an assessment.");
    let last = journal(&path).lines.pop().expect("it has lines");
    assert_eq!(last.entry, JournalEntry::Closed);
}
