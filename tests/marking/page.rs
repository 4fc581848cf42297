//! The printed page, the class, the gradebook, the rows.

use crate::story::{Story, criterion};
use coldbench::attempt::Mode;
use coldbench::marking::{AssessorMark, Report};
use coldbench::report::{Page, ReportRows, class_csv, class_table};
use coldbench::scenario::{Criterion, Rule};
use coldbench::units::{Fraction, Time};
use coldbench::words::{Action, FindingKind};

fn never(text: &str, finding: FindingKind, critical: bool) -> Criterion {
    let rule = Rule::Never {
        finding,
        up_to: None,
    };
    Criterion {
        text: text.to_owned(),
        critical,
        ..criterion(5, rule)
    }
}

fn page(person: &str) -> Page {
    let story = Story::new()
        .seconds(843)
        .finds(FindingKind::WorkedLive, 1.0)
        .seconds(60)
        .does(Action::HandBack);
    let question = "Was the place left clean?".to_owned();
    let rubric = [
        never("Nobody works on a live unit", FindingKind::WorkedLive, true),
        never("No cap left off", FindingKind::CapLeftOff, false),
        criterion(8, Rule::InTime(Time::from_minutes(20.0))),
        criterion(2, Rule::Judgement { question }),
    ];
    Page {
        person: person.to_owned(),
        scenario: "clogged_drier".to_owned(),
        title: "The bakery that got warm".to_owned(),
        unit: "r22_3ton_orifice".to_owned(),
        customer: "M. Lindqvist, a bakery".to_owned(),
        complaint: "It ran all night and the shop is warm as an oven.".to_owned(),
        program: "0.1.0".to_owned(),
        mode: Some(Mode::Assessed),
        went_on_from: None,
        taken_up: 0,
        duration: story.course.end,
        is_genuine: true,
        fingerprint: "5e1f00d5".to_owned(),
        report: Report::new(&story.course, &rubric, Fraction::clamped(0.7)),
    }
}

const PRINTED: &str = "\
Coldbench: report of an attempt

Name         Ada Nwosu
Scenario     The bakery that got warm (clogged_drier)
Unit         r22_3ton_orifice
Customer     M. Lindqvist, a bakery
Complaint    It ran all night and the shop is warm as an oven.
Mode         assessed
Duration     0:15:03
Recording    proved unchanged by replay
Fingerprint  5e1f00d5
Program      0.1.0

Findings
   0:14:03  work at the compressor without lock and tag on the disconnect

Marks
    0/5    Nobody works on a live unit (critical)
            0:14:03  work at the compressor without lock and tag on the
                     disconnect
              skill  EU 2015/2067 Annex I 5.01
    5/5    No cap left off
            0:15:03  nothing of the kind was noted
              skill  EU 2015/2067 Annex I 5.01
    8/8    asked
            0:15:03  handed back after 15 min 3 s; 20 min allowed
              skill  EU 2015/2067 Annex I 5.01
    _/2    asked
            0:15:03  for the assessor: Was the place left clean?
              skill  EU 2015/2067 Annex I 5.01

Score  13 of 18 points, 72.2 %; 70.0 % passes: not passed
       critical, and missed: Nobody works on a live unit
       1 criterion waits for the assessor
";

#[test]
fn the_page_is_printed_with_head_findings_marks_and_score() {
    assert_eq!(page("Ada Nwosu").to_string(), PRINTED);
}

#[test]
fn an_assessors_mark_is_printed_beside_what_was_earned() {
    let mut page = page("Ada Nwosu");
    let own = |points| AssessorMark {
        assessor: "R. Okafor".to_owned(),
        points,
        reason: "the lock was on; I saw it".to_owned(),
    };
    page.report.assess(0, own(5)).expect("it is a mark");
    page.report.assess(3, own(1)).expect("it is a mark");
    let text = page.to_string();
    let beside = "assessor  R. Okafor: 5 of 5 in place of 0; the lock was on; I saw it";
    assert!(text.contains(beside), "{text}");
    let given = "assessor  R. Okafor: 1 of 2; the lock was on; I saw it";
    assert!(text.contains(given), "{text}");
    let score = "Score  19 of 20 points, 95.0 %; 70.0 % passes: passed";
    assert!(text.contains(score), "{text}");
}

#[test]
fn the_page_says_for_what_it_was_begun_and_how_it_went_on() {
    let mut page = page("Ada Nwosu");
    page.mode = Some(Mode::Practice);
    page.went_on_from = Some("clogged_drier-1.attempt, line 34".to_owned());
    let text = page.to_string();
    let second_try = "Mode         practice; went on from clogged_drier-1.attempt, line 34\n";
    assert!(text.contains(second_try), "{text}");
    page.went_on_from = None;
    page.taken_up = 1;
    let text = page.to_string();
    let interrupted = "Mode         practice; interrupted, and taken up again once\n";
    assert!(text.contains(interrupted), "{text}");
}

#[test]
fn a_recording_that_is_not_genuine_never_passes() {
    let mut page = page("Ada Nwosu");
    page.report.passed = true;
    page.is_genuine = false;
    assert!(page.to_string().contains("passes: not genuine"));
    assert!(class_table(&[page.clone()]).contains("0 of 1 passed"));
    assert!(class_csv(&[page]).contains(",false,13,18,72.2,false,"));
}

#[test]
fn a_class_is_one_line_an_attempt() {
    let table = class_table(&[page("Ada Nwosu"), page("Bartholomew Quincey Featherstone")]);
    let rest = "clogged_drier    assessed  0:15:03  72.2 %  not passed   1 (1 critical) 1 open";
    let expected = format!(
        "\
name                   scenario         mode         time   score  result       missed
Ada Nwosu              {rest}
Bartholomew Quincey F… {rest}
0 of 2 passed
"
    );
    assert_eq!(table, expected);
}

#[test]
fn a_gradebook_takes_names_as_names() {
    let csv = class_csv(&[page("Nwosu, \"Ada\""), page("=2+3")]);
    let lines: Vec<&str> = csv.split("\r\n").collect();
    let columns = lines[0].split(',').count();
    assert_eq!(columns, 13);
    let rest = "clogged_drier,903.0,true,13,18,72.2,false,1,1,1,5e1f00d5,assessed";
    assert_eq!(lines[1], format!("\"Nwosu, \"\"Ada\"\"\",{rest}"));
    assert_eq!(lines[2], format!("'=2+3,{rest}"));
    assert_eq!(lines[3], "");
}

#[test]
fn rows_carry_the_keys_that_others_rely_on() {
    let rows = serde_json::to_value(ReportRows::from(&page("Ada Nwosu").report));
    let rows = rows.expect("rows are plain data");
    assert_eq!(rows["passed"], false);
    assert_eq!(rows["findings"][0]["at_s"], 843.0);
    assert_eq!(rows["findings"][0]["kind"], "WorkedLive");
    assert_eq!(
        rows["findings"][0]["text"],
        "work at the compressor without lock and tag on the disconnect"
    );
    assert_eq!(rows["findings"][0]["size"], 1.0);
    let mark = &rows["marks"][2];
    assert_eq!(mark["criterion"], "asked");
    assert_eq!((&mark["points"], &mark["of"]), (&8.into(), &8.into()));
    assert_eq!(mark["critical"], false);
    assert_eq!(mark["evidence"][0]["at_s"], 903.0);
    assert!(rows["marks"][3]["points"].is_null());
    let score = rows["score_percent"].as_f64().expect("a number");
    assert!((score - 1300.0 / 18.0).abs() < 1e-9);
}
