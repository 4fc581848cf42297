//! The printable page of one attempt.

use super::wrap::wrapped;
use crate::attempt::Mode;
use crate::marking::{Mark, Report, evidence};
use std::fmt;

/// One attempt, ready for print.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// Who did it.
    pub person: String,
    /// The scenario's short name.
    pub scenario: String,
    /// The scenario's title.
    pub title: String,
    /// The unit.
    pub unit: String,
    /// Who called, and where the unit stands.
    pub customer: String,
    /// What the customer said.
    pub complaint: String,
    /// The version of the program that recorded it.
    pub program: String,
    /// For what it was begun; of an attempt that is not genuine nobody knows.
    pub mode: Option<Mode>,
    /// The file and the line of the attempt from which it went on, if it is a second try.
    pub went_on_from: Option<String>,
    /// How often it was taken up again after it had been cut or put aside.
    pub taken_up: usize,
    /// How long the job took, ticks.
    pub duration: u64,
    /// Whether the recording was proved unchanged and replayed to the same bits.
    pub is_genuine: bool,
    /// The last digest of the recording's chain: it names this recording and no other.
    pub fingerprint: String,
    /// The marks.
    pub report: Report,
}

impl Page {
    /// The result in one or two words.
    pub(super) const fn result(&self) -> &'static str {
        if !self.is_genuine {
            "not genuine"
        } else if self.report.passed {
            "passed"
        } else {
            "not passed"
        }
    }

    /// Practice or assessed, whether it is a second try, and whether it was interrupted.
    fn mode_text(&self) -> String {
        let mut parts = vec![self.mode.map_or("not known", Mode::word).to_owned()];
        if let Some(other) = &self.went_on_from {
            parts.push(format!("went on from {other}"));
        }
        match self.taken_up {
            0 => {}
            1 => parts.push("interrupted, and taken up again once".to_owned()),
            n => parts.push(format!("interrupted, and taken up again {n} times")),
        }
        parts.join("; ")
    }

    fn head(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Coldbench: report of an attempt\n\n")?;
        let genuine = if self.is_genuine {
            "proved unchanged by replay"
        } else {
            "NOT GENUINE: changed, or it does not replay to the same bits"
        };
        let lines = [
            ("Name         ", self.person.clone()),
            (
                "Scenario     ",
                format!("{} ({})", self.title, self.scenario),
            ),
            ("Unit         ", self.unit.clone()),
            ("Customer     ", self.customer.clone()),
            ("Complaint    ", self.complaint.clone()),
            ("Mode         ", self.mode_text()),
            ("Duration     ", evidence::clock(self.duration)),
            ("Recording    ", genuine.to_owned()),
            ("Fingerprint  ", self.fingerprint.clone()),
            ("Program      ", self.program.clone()),
        ];
        for (name, text) in lines {
            f.write_str(&wrapped(name, &text))?;
        }
        Ok(())
    }

    fn findings(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("\nFindings\n")?;
        if self.report.findings.is_empty() {
            f.write_str("  none\n")?;
        }
        for finding in &self.report.findings {
            let head = format!("  {:>8}  ", evidence::clock(finding.tick));
            f.write_str(&wrapped(&head, &finding.text().to_string()))?;
        }
        Ok(())
    }

    fn score(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let report = &self.report;
        let (points, of) = report.points();
        let text = format!(
            "{points} of {of} points, {:.1} %; {:.1} % passes: {}",
            report.score_percent,
            100.0 * report.pass().get(),
            self.result()
        );
        f.write_str("\n")?;
        f.write_str(&wrapped("Score  ", &text))?;
        for mark in report.critical_missed() {
            let text = format!("critical, and missed: {}", mark.criterion);
            f.write_str(&wrapped("       ", &text))?;
        }
        match report.left_open() {
            0 => Ok(()),
            1 => f.write_str("       1 criterion waits for the assessor\n"),
            n => writeln!(f, "       {n} criteria wait for the assessor"),
        }
    }
}

impl fmt::Display for Page {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.head(f)?;
        self.findings(f)?;
        f.write_str("\nMarks\n")?;
        for mark in &self.report.marks {
            f.write_str(&mark_text(mark))?;
        }
        self.score(f)
    }
}

/// A mark with its evidence under it.
fn mark_text(mark: &Mark) -> String {
    let points = mark
        .counted()
        .map_or_else(|| "_".to_owned(), |points| points.to_string());
    let head = format!("  {points:>3}/{:<3}  ", mark.of);
    let critical = if mark.critical { " (critical)" } else { "" };
    let mut text = wrapped(&head, &format!("{}{critical}", mark.criterion));
    for evidence in &mark.evidence {
        let head = format!("           {:>8}  ", evidence::clock(evidence.at));
        text.push_str(&wrapped(&head, &evidence.text.to_string()));
    }
    if let Some(own) = &mark.assessor {
        let said = format!("{}: {} of {}", own.assessor, own.points, mark.of);
        let earned = match mark.question {
            Some(_) => String::new(),
            None => format!(" in place of {}", mark.points),
        };
        let head = "           assessor  ";
        text.push_str(&wrapped(head, &format!("{said}{earned}; {}", own.reason)));
    }
    if let Some(skill) = &mark.skill {
        text.push_str(&wrapped("              skill  ", skill));
    }
    text
}
