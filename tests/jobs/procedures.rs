//! Each shipped scenario done right and done wrong: the right way gets every point, the wrong
//! one fails, and for the right reason.

use coldbench::attempt::Observer;
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Door, Job, Refusal, TICKS_PER_SECOND};
use coldbench::marking::{CourseRecorder, Report};
use coldbench::plant::FaultKind;
use coldbench::scenario::{EndState, Rule, Scenario};
use coldbench::words::{Action, FindingKind, Milestone};

/// A job with somebody who looks on, as in a replay.
struct Watched {
    job: Job,
    course: CourseRecorder,
}

impl Door for Watched {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        let done = self.job.apply(action);
        self.course.action(&self.job, &action, done.is_err());
        done
    }

    fn tick(&mut self) {
        self.job.tick();
        if self.job.now().is_multiple_of(TICKS_PER_SECOND) {
            self.course.second(&self.job);
        }
    }

    fn job(&self) -> &Job {
        &self.job
    }
}

/// Does a shipped procedure to its end and marks it.
fn perform(scenario: &str, way: &str) -> (Report, Scenario, Job) {
    let name = format!("{scenario}_{way}");
    let scenario = Scenario::shipped(scenario).expect("it is shipped");
    let procedure = Procedure::shipped(&name).expect("it is shipped");
    let mut watched = Watched {
        job: Job::new(&scenario),
        course: CourseRecorder::default(),
    };
    let mut told = Vec::new();
    let mut tell = |line: coldbench::job::procedure::CourseLine| told.push(line.to_string());
    if let Err(stopped) = Performance::new(&mut watched, &mut tell).run(&procedure) {
        panic!("{name} stopped: {stopped}\n{}", told.join("\n"));
    }
    let course = watched.course.finish(&watched.job);
    let report = Report::new(&course, &scenario.file.rubric, scenario.file.pass);
    (report, scenario, watched.job)
}

/// The criteria that got fewer than their points, as text.
fn lost(report: &Report) -> Vec<String> {
    let missed = report.marks.iter().filter(|mark| mark.is_missed());
    missed
        .map(|mark| format!("{}: {:?}", mark.criterion, mark.evidence))
        .collect()
}

/// Whether a criterion with a rule like this lost its points.
fn lost_by(report: &Report, scenario: &Scenario, is_like: impl Fn(&Rule) -> bool) -> bool {
    let rubric = scenario.file.rubric.iter().zip(&report.marks);
    rubric
        .filter(|(c, _)| is_like(&c.rule))
        .any(|(_, mark)| mark.is_missed())
}

fn all_points(scenario: &str) {
    let (report, _, _) = perform(scenario, "right");
    assert!(report.passed, "{:#?}", lost(&report));
    assert!(
        (report.score_percent - 100.0).abs() < 1e-9,
        "{:#?}",
        lost(&report)
    );
}

#[test]
fn the_right_way_with_the_clogged_drier_gets_every_point() {
    all_points("clogged_drier");
}

#[test]
fn the_right_way_with_the_leaking_flare_gets_every_point() {
    all_points("leaking_flare");
}

#[test]
fn the_right_way_with_the_wet_circuit_gets_every_point() {
    all_points("wet_circuit");
}

#[test]
fn the_right_way_with_the_undercharge_gets_every_point() {
    all_points("undercharge");
}

#[test]
fn a_drier_changed_without_test_and_with_2000_microns_fails() {
    let (report, scenario, _) = perform("clogged_drier", "wrong");
    assert!(!report.passed);
    assert!(lost_by(&report, &scenario, |rule| matches!(
        rule,
        Rule::Hold { .. }
    )));
}

#[test]
fn a_flare_that_was_only_tightened_still_leaks() {
    let (report, scenario, job) = perform("leaking_flare", "wrong");
    assert!(!report.passed);
    assert!(job.truth().leak > 0.0, "the scored flare still leaks");
    assert!(lost_by(&report, &scenario, |rule| {
        matches!(
            rule,
            Rule::End {
                state: EndState::LeakRate,
                ..
            }
        )
    }));
    let untested = |rule: &Rule| {
        matches!(
            rule,
            Rule::Hold { .. }
                | Rule::Done {
                    what: Milestone::RenewedFlare(_),
                    ..
                }
        )
    };
    assert!(lost_by(&report, &scenario, untested), "it was not tested");
}

#[test]
fn a_wet_circuit_left_at_the_first_500_microns_stays_wet() {
    let (report, scenario, job) = perform("wet_circuit", "wrong");
    let (_, _, right) = perform("wet_circuit", "right");
    assert!(!report.passed);
    assert!(
        job.truth().water > 2.0 * right.truth().water,
        "water {} kg",
        job.truth().water
    );
    assert!(lost_by(&report, &scenario, |rule| {
        matches!(
            rule,
            Rule::End {
                state: EndState::Water,
                ..
            }
        )
    }));
}

#[test]
fn an_undercharge_that_was_only_topped_up_still_leaks() {
    let (report, scenario, job) = perform("undercharge", "wrong");
    assert!(!report.passed);
    assert!(job.truth().leak > 0.0, "the cause is still there");
    assert!(lost_by(&report, &scenario, |rule| {
        matches!(
            rule,
            Rule::Diagnosis {
                fault: Some(FaultKind::Leak),
                ..
            }
        ) || matches!(
            rule,
            Rule::End {
                state: EndState::LeakRate,
                ..
            }
        )
    }));
}

#[test]
fn a_procedure_that_is_done_right_leaves_no_finding_of_harm() {
    let harm = [
        FindingKind::OpenedUnderPressure,
        FindingKind::EnergisedInDeepVacuum,
        FindingKind::OverNameplate,
        FindingKind::NoRegulator,
        FindingKind::MicronGaugeOverPressured,
        FindingKind::WorkedLive,
        FindingKind::Unprotected,
        FindingKind::JointLeftLoose,
        FindingKind::CapLeftOff,
        FindingKind::KitLeftOn,
        FindingKind::ValveLeftShut,
        FindingKind::DrierBackwards,
    ];
    let (_, _, job) = perform("clogged_drier", "right");
    let found: Vec<_> = job
        .findings()
        .iter()
        .filter(|f| harm.contains(&f.kind))
        .collect();
    assert!(found.is_empty(), "{found:#?}");
}
