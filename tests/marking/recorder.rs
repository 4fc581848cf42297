//! A recorder that watches a job keeps what the job shows.

use coldbench::attempt::Observer;
use coldbench::job::{Job, TICKS_PER_SECOND};
use coldbench::kit::{nitrogen, vacuum_pump};
use coldbench::marking::{Course, CourseRecorder};
use coldbench::plant::{Spot, ThermostatCall};
use coldbench::scenario::Scenario;
use coldbench::words::{Action, Finding, Hose, HoseEnd, Level, Reading, SheetField, Shown, Status};

/// Does a few things on a job, one a second, with a recorder looking on.
fn watched(actions: &[Action]) -> (Job, Course) {
    let scenario = Scenario::shipped("clogged_drier").expect("the default scenario is shipped");
    let mut job = Job::new(&scenario);
    let mut recorder = CourseRecorder::default();
    for action in actions {
        let refused = job.apply(*action).is_err();
        recorder.action(&job, action, refused);
        for _ in 0..TICKS_PER_SECOND {
            job.tick();
        }
        recorder.second(&job);
    }
    let course = recorder.finish(&job);
    (job, course)
}

fn work() -> Vec<Action> {
    let hose = Hose::Low;
    let to = HoseEnd::SuctionPort;
    vec![
        Action::Protect(true),
        Action::Connect { hose, to },
        Action::Wet(Spot::IndoorCoil),
        Action::Thermostat(ThermostatCall::Cool),
        Action::Write {
            field: SheetField::OutdoorAir,
            value: Level::Fahrenheit(95.0),
        },
        Action::HandBack,
    ]
}

#[test]
fn a_course_has_every_second_and_every_action_that_was_carried_out() {
    let (job, course) = watched(&work());
    let seconds = course.moments.iter().filter(|m| m.action.is_none()).count();
    assert_eq!(seconds, work().len());
    assert_eq!(course.end, job.now());
    assert_eq!(course.handed_back, Some(5 * TICKS_PER_SECOND));
    let last = course.moments.iter().rev().find_map(|m| m.action);
    assert_eq!(last, Some(Action::HandBack));
    let ticks: Vec<u64> = course.moments.iter().map(|m| m.tick).collect();
    assert!(ticks.is_sorted());
}

#[test]
fn a_refused_action_leaves_no_trace_in_the_course() {
    let scenario = Scenario::shipped("clogged_drier").expect("the default scenario is shipped");
    let job = Job::new(&scenario);
    let mut recorder = CourseRecorder::default();
    recorder.action(&job, &Action::HandBack, true);
    let course = recorder.finish(&job);
    assert!(course.moments.is_empty());
    assert_eq!(course.handed_back, None);
}

#[test]
fn a_course_ends_with_what_the_job_shows() {
    let (job, course) = watched(&work());
    let seen = course.moments.last().expect("time passed").seen;
    for reading in Reading::all() {
        assert_eq!(seen.shown(reading), job.reading(reading), "{reading:?}");
    }
    for status in [
        Status::CompressorRuns,
        Status::of(nitrogen::Status::RegulatorFitted),
        Status::of(vacuum_pump::Status::ShutOff),
    ] {
        assert_eq!(seen.is(status), job.status(status), "{status:?}");
    }
    assert_eq!(course.truth.charge.to_bits(), job.truth().charge.to_bits());
    let noted: Vec<Finding> = job.findings().to_vec();
    assert_eq!(course.findings, noted);
    for field in SheetField::ALL {
        assert_eq!(course.entries.get(&field), job.sheet().entry(field));
    }
}

#[test]
fn the_same_work_gives_the_same_course() {
    let (_, once) = watched(&work());
    let (_, twice) = watched(&work());
    assert_eq!(once.moments.len(), twice.moments.len());
    for (a, b) in once.moments.iter().zip(&twice.moments) {
        for reading in Reading::all() {
            let bits = |shown: Shown| shown.quantity().map(|q| q.si.to_bits());
            assert_eq!(bits(a.seen.shown(reading)), bits(b.seen.shown(reading)));
        }
    }
}
