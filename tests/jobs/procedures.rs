//! Each shipped scenario done right and done wrong: the right way gets every point, the wrong
//! one fails, and for the right reason.

use coldbench::attempt::Observer;
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Driver, Job, Refusal, TICKS_PER_SECOND};
use coldbench::kit::{nitrogen, vacuum_pump};
use coldbench::marking::{CourseRecorder, Report};
use coldbench::plant::FaultKind;
use coldbench::scenario::{EndState, Rule, Scenario};
use coldbench::words::{Action, Condition, FindingKind, Milestone, Reading};

/// A job with somebody who looks on, as in a replay.
struct Watched {
    job: Job,
    course: CourseRecorder,
}

impl Driver for Watched {
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

/// The critical criteria that were missed, as text.
fn fatal(report: &Report) -> Vec<&str> {
    let fatal = report
        .marks
        .iter()
        .filter(|mark| mark.critical && mark.is_missed());
    fatal.map(|mark| mark.criterion.as_str()).collect()
}

/// Whether a rule looks at the end state asked for.
fn is_end(rule: &Rule, asked: EndState) -> bool {
    matches!(rule, Rule::End { state, .. } if *state == asked)
}

/// Whether a rule asks for a stretch in which this instrument shows something.
fn holds_on(rule: &Rule, instrument: Reading) -> bool {
    let shows = |c: &Condition| matches!(c, Condition::Shows(reading, _) if *reading == instrument);
    matches!(rule, Rule::Hold { all, .. } if all.iter().any(shows))
}

/// The right way: every point, no harm found, and the unit left as a master leaves it.
fn all_points(scenario: &str) {
    all_points_and_lets_go(scenario, 0.06);
}

/// The same with what hoses, opened circuit and pump may take, kg.
fn all_points_and_lets_go(scenario: &str, most: f64) {
    let harm = [
        FindingKind::OpenedUnderPressure,
        FindingKind::EnergisedInDeepVacuum,
        FindingKind::OverNameplate,
        FindingKind::of(nitrogen::Finding::NoRegulator),
        FindingKind::MicronGaugeOverPressured,
        FindingKind::of(vacuum_pump::Finding::UnderPressure),
        FindingKind::WorkedLive,
        FindingKind::Unprotected,
        FindingKind::OverTightened,
        FindingKind::JointLeftLoose,
        FindingKind::CapLeftOff,
        FindingKind::KitLeftOn,
        FindingKind::ValveLeftShut,
        FindingKind::DrierBackwards,
        FindingKind::IgnitionRisk,
        FindingKind::FlammableAir,
        FindingKind::OpenedUnpurged,
        FindingKind::Unventilated,
        FindingKind::ToolNotRated,
    ];
    let (report, _, job) = perform(scenario, "right");
    assert!(report.passed, "{:#?}", lost(&report));
    assert!(
        (report.score_percent - 100.0).abs() < 1e-9,
        "{:#?}",
        lost(&report)
    );
    let found: Vec<_> = job
        .findings()
        .iter()
        .filter(|f| harm.contains(&f.kind))
        .collect();
    assert!(found.is_empty(), "{found:#?}");
    let truth = job.truth();
    let share = truth.charge / truth.nominal_charge;
    assert!((0.98..1.02).contains(&share), "charge {share}");
    assert!(truth.leak == 0.0, "leaks {} kg/s", truth.leak);
    assert!(
        truth.refrigerant_released < most,
        "let go {} kg",
        truth.refrigerant_released
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
fn the_right_way_with_what_burns_gets_every_point() {
    all_points("flammable_leak");
}

#[test]
fn the_right_way_in_the_cold_room_gets_every_point() {
    // Its compressor is evacuated as well, with what its oil gives off.
    all_points_and_lets_go("cold_room_drier", 0.08);
}

#[test]
fn ports_without_cores_left_off_their_back_seats_let_the_charge_go() {
    let (report, scenario, job) = perform("cold_room_drier", "wrong");
    assert!(!report.passed);
    assert_eq!(
        fatal(&report),
        ["Below 500 microns, pump shut off, 10 minutes"]
    );
    for kind in [FindingKind::Released, FindingKind::ValveLeftShut] {
        let is_lost = lost_by(
            &report,
            &scenario,
            |rule| matches!(rule, Rule::Never { finding, .. } if *finding == kind),
        );
        assert!(is_lost, "{kind:?}");
    }
    let lost = job.truth().refrigerant_released;
    assert!(lost > 0.1, "{lost} kg");
    // The drier itself was changed well.
    assert!(!lost_by(&report, &scenario, |rule| is_end(
        rule,
        EndState::DropAcrossDrier
    )));
}

#[test]
fn what_burns_handled_as_if_it_did_not_fails_though_the_repair_is_sound() {
    let (report, scenario, job) = perform("flammable_leak", "wrong");
    assert!(!report.passed);
    assert_eq!(
        fatal(&report),
        [
            "Nothing let go beside what could light it",
            "Purged with nitrogen before it is opened"
        ]
    );
    let never = |kind: FindingKind| {
        lost_by(
            &report,
            &scenario,
            |rule| matches!(rule, Rule::Never { finding, .. } if *finding == kind),
        )
    };
    assert!(never(FindingKind::Unventilated));
    assert!(!never(FindingKind::OpenedUnderPressure));
    // Nothing of the repair itself shows it.
    for state in [
        EndState::LeakRate,
        EndState::ChargeShare,
        EndState::Subcooling,
    ] {
        assert!(
            !lost_by(&report, &scenario, |rule| is_end(rule, state)),
            "{state:?}"
        );
    }
    assert!(job.truth().leak == 0.0);
}

#[test]
fn a_drier_left_open_over_lunch_without_test_and_with_2000_microns_fails() {
    let (report, scenario, job) = perform("clogged_drier", "wrong");
    assert!(!report.passed);
    assert_eq!(
        fatal(&report),
        ["Below 500 microns, pump shut off, 10 minutes"]
    );
    assert!(
        lost_by(&report, &scenario, |rule| holds_on(rule, Reading::Microns)),
        "vacuum"
    );
    assert!(
        lost_by(&report, &scenario, |rule| holds_on(rule, Reading::LowGauge)),
        "nitrogen"
    );
    assert!(lost_by(&report, &scenario, |rule| {
        matches!(
            rule,
            Rule::Never {
                finding: FindingKind::StoodOpen,
                ..
            }
        )
    }));
    assert!(lost_by(&report, &scenario, |rule| is_end(
        rule,
        EndState::DrierWater
    )));
    let (_, _, right) = perform("clogged_drier", "right");
    let water = |job: &Job| job.truth().drier_water;
    assert!(
        water(&job) > 10.0 * water(&right),
        "{} {}",
        water(&job),
        water(&right)
    );
}

#[test]
fn a_flare_that_was_only_tightened_still_leaks() {
    let (report, scenario, job) = perform("leaking_flare", "wrong");
    assert!(!report.passed);
    assert_eq!(fatal(&report), ["Tight"]);
    assert!(job.truth().leak > 0.0, "the scored flare still leaks");
    assert!(lost_by(&report, &scenario, |rule| is_end(
        rule,
        EndState::LeakRate
    )));
    assert!(
        lost_by(&report, &scenario, |rule| holds_on(rule, Reading::LowGauge)),
        "no test"
    );
    assert!(lost_by(&report, &scenario, |rule| {
        matches!(
            rule,
            Rule::Done {
                what: Milestone::RenewedFlare(_),
                ..
            }
        )
    }));
    // What makes it plausible: on the day it cools as it should.
    assert!(!lost_by(&report, &scenario, |rule| is_end(
        rule,
        EndState::SuperheatOffTarget
    )));
}

#[test]
fn a_wet_circuit_left_at_the_first_500_microns_stays_wet() {
    let (report, scenario, job) = perform("wet_circuit", "wrong");
    let (_, _, right) = perform("wet_circuit", "right");
    assert!(!report.passed);
    assert_eq!(
        fatal(&report),
        ["A decay that stays below 500 microns for 10 minutes"]
    );
    assert!(
        job.truth().water > 2.0 * right.truth().water,
        "water {} kg",
        job.truth().water
    );
    assert!(lost_by(&report, &scenario, |rule| is_end(
        rule,
        EndState::Water
    )));
    assert!(lost_by(&report, &scenario, |rule| {
        let nitrogen = Milestone::of(nitrogen::Milestone::Opened);
        matches!(rule, Rule::Done { what, .. } if *what == nitrogen)
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
        )
    }));
    assert!(lost_by(&report, &scenario, |rule| is_end(
        rule,
        EndState::LeakRate
    )));
    assert!(lost_by(&report, &scenario, |rule| {
        matches!(
            rule,
            Rule::Order {
                first: Milestone::Sniffed(_),
                ..
            }
        )
    }));
    // What makes it plausible: on the day it cools as it should.
    for state in [EndState::SuperheatOffTarget, EndState::ChargeShare] {
        assert!(
            !lost_by(&report, &scenario, |rule| is_end(rule, state)),
            "{state:?}"
        );
    }
}
