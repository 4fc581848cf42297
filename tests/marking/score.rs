//! Points, pass, critical criteria, judgement.

use crate::story::{Story, criterion};
use coldbench::kit::nitrogen;
use coldbench::marking::{AssessorMark, NotAMark, Report};
use coldbench::scenario::{Criterion, Rule};
use coldbench::units::Fraction;
use coldbench::words::FindingKind;

/// A criterion that the story below meets.
fn met(points: u32) -> Criterion {
    let finding = FindingKind::of(nitrogen::Finding::NoRegulator);
    let rule = Rule::Never {
        finding,
        up_to: None,
    };
    criterion(points, rule)
}

/// A criterion that the story below misses.
fn missed(points: u32) -> Criterion {
    let finding = FindingKind::CapLeftOff;
    let rule = Rule::Never {
        finding,
        up_to: None,
    };
    criterion(points, rule)
}

fn judgement(points: u32) -> Criterion {
    let question = "Was the place left clean?".to_owned();
    criterion(points, Rule::Judgement { question })
}

fn critical(criterion: Criterion) -> Criterion {
    Criterion {
        critical: true,
        ..criterion
    }
}

fn report(rubric: &[Criterion], pass: f64) -> Report {
    let story = Story::new().finds(FindingKind::CapLeftOff, 1.0);
    Report::new(&story.course, rubric, Fraction::clamped(pass))
}

fn own(points: u32) -> AssessorMark {
    AssessorMark {
        assessor: "R. Okafor".to_owned(),
        points,
        reason: "swept and wiped".to_owned(),
    }
}

#[test]
fn the_score_is_the_share_of_the_points_and_the_pass_is_reached_on_the_point() {
    let right = report(&[met(7), missed(3)], 0.7);
    assert_eq!(right.points(), (7, 10));
    assert!((right.score_percent - 70.0).abs() < 1e-9);
    assert!(right.passed);
    assert!(!report(&[met(7), missed(3)], 0.71).passed);
    assert_eq!(right.findings.len(), 1);
}

#[test]
fn a_critical_criterion_missed_fails_whatever_the_score() {
    let failed = report(&[met(99), critical(missed(1))], 0.5);
    assert!((failed.score_percent - 99.0).abs() < 1e-9);
    assert!(!failed.passed);
    assert_eq!(failed.critical_missed().count(), 1);
    assert!(report(&[met(99), missed(1)], 0.5).passed);
    assert!(report(&[critical(met(99)), missed(1)], 0.5).passed);
}

#[test]
fn a_critical_criterion_without_points_still_fails() {
    let failed = report(&[met(9), critical(missed(0))], 0.5);
    assert!(!failed.passed);
    assert!(report(&[met(9), critical(met(0))], 0.5).passed);
}

#[test]
fn judgement_is_left_open_and_not_counted_until_an_assessor_gives_it() {
    let mut report = report(&[met(6), missed(2), judgement(2)], 0.7);
    assert_eq!(report.points(), (6, 8));
    assert_eq!(report.left_open(), 1);
    assert!((report.score_percent - 75.0).abs() < 1e-9);
    let open = &report.marks[2];
    assert_eq!((open.points, open.of, open.counted()), (0, 2, None));
    let said = "for the assessor: Was the place left clean?";
    assert_eq!(open.evidence[0].text.to_string(), said);

    report.assess(2, own(2)).expect("it is a mark");
    assert_eq!(report.points(), (8, 10));
    assert_eq!(report.left_open(), 0);
    assert!((report.score_percent - 80.0).abs() < 1e-9);
    let beside = report.marks[2].assessor.as_ref().expect("it was given");
    assert_eq!(beside.reason, "swept and wiped");
}

#[test]
fn a_critical_judgement_fails_only_once_it_is_given() {
    let mut report = report(&[met(6), critical(judgement(2))], 0.5);
    assert!(report.passed);
    report.assess(1, own(1)).expect("it is a mark");
    assert!(!report.passed);
}

#[test]
fn an_assessors_mark_counts_and_stands_beside_what_was_earned() {
    let mut report = report(&[met(6), missed(4)], 0.9);
    report.assess(1, own(4)).expect("it is a mark");
    assert_eq!(report.marks[1].points, 0);
    assert_eq!(report.marks[1].counted(), Some(4));
    assert!(report.passed);
}

#[test]
fn an_assessors_mark_needs_a_criterion_points_that_exist_and_a_reason() {
    let mut report = report(&[met(6)], 0.9);
    let before = report.clone();
    let (number, count) = (2, 1);
    let no_such = Err(NotAMark::NoSuchCriterion { number, count });
    assert_eq!(report.assess(1, own(1)), no_such);
    let (points, of) = (7, 6);
    let too_many = Err(NotAMark::TooManyPoints { points, of });
    assert_eq!(report.assess(0, own(7)), too_many);
    let mut silent = own(1);
    silent.reason = "  ".to_owned();
    assert_eq!(report.assess(0, silent), Err(NotAMark::NoReason));
    assert_eq!(report, before);
}

#[test]
fn nothing_to_count_is_nothing_passed() {
    assert!(!report(&[], 0.0).passed);
    assert!(!report(&[judgement(2)], 0.0).passed);
}

#[test]
fn the_same_course_gets_the_same_marks_and_keeps_its_skill() {
    let rubric = [met(6), missed(4), judgement(2)];
    let (once, twice) = (report(&rubric, 0.5), report(&rubric, 0.5));
    assert_eq!(once, twice);
    let skill = once.marks[0].skill.as_deref();
    assert_eq!(skill, Some("EU 2015/2067 Annex I 5.01"));
}
