//! Rows for other programs. Their keys are relied on: add to them, never rename.

use crate::job::TICKS_PER_SECOND;
use crate::marking::{AssessorMark, Evidence, Mark, Report};
use crate::words::{Dimension, Finding, FindingKind};
use serde::Serialize;

/// What a course earned.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ReportRows {
    /// What the watch noted.
    pub findings: Vec<FindingRow>,
    /// One for each criterion.
    pub marks: Vec<MarkRow>,
    /// The points that count, percent of those that can be had.
    pub score_percent: f64,
    /// Whether it passes.
    pub passed: bool,
    /// Criteria that wait for an assessor.
    pub left_open: usize,
}

/// One mark.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MarkRow {
    /// The criterion's text.
    pub criterion: String,
    /// The points that count; none while it waits for an assessor.
    pub points: Option<u32>,
    /// The points that it has.
    pub of: u32,
    /// Whether missing it fails the attempt.
    pub critical: bool,
    /// On what evidence.
    pub evidence: Vec<EvidenceRow>,
    /// The published skill item.
    pub skill: Option<String>,
    /// The assessor's own mark.
    pub assessor: Option<AssessorRow>,
}

/// When, and what was seen then.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct EvidenceRow {
    /// Seconds since the start.
    pub at_s: f64,
    /// In the technician's words.
    pub text: String,
}

/// An assessor's own mark.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AssessorRow {
    /// Who.
    pub assessor: String,
    /// The points that they gave.
    pub points: u32,
    /// Why.
    pub reason: String,
    /// The points that the course earned.
    pub in_place_of: u32,
}

/// One finding.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FindingRow {
    /// Seconds since the start.
    pub at_s: f64,
    /// What it was.
    pub kind: FindingKind,
    /// In the technician's words.
    pub text: String,
    /// How much.
    pub size: f64,
    /// The unit of the size; empty where the kind has none.
    pub unit: &'static str,
}

impl From<&Report> for ReportRows {
    fn from(report: &Report) -> Self {
        Self {
            findings: report.findings.iter().map(FindingRow::from).collect(),
            marks: report.marks.iter().map(MarkRow::from).collect(),
            score_percent: report.score_percent,
            passed: report.passed,
            left_open: report.left_open(),
        }
    }
}

impl From<&Mark> for MarkRow {
    fn from(mark: &Mark) -> Self {
        let own = |own: &AssessorMark| AssessorRow {
            assessor: own.assessor.clone(),
            points: own.points,
            reason: own.reason.clone(),
            in_place_of: mark.points,
        };
        Self {
            criterion: mark.criterion.clone(),
            points: mark.counted(),
            of: mark.of,
            critical: mark.critical,
            evidence: mark.evidence.iter().map(EvidenceRow::from).collect(),
            skill: mark.skill.clone(),
            assessor: mark.assessor.as_ref().map(own),
        }
    }
}

impl From<&Evidence> for EvidenceRow {
    fn from(evidence: &Evidence) -> Self {
        Self {
            at_s: seconds(evidence.at),
            text: evidence.text.to_string(),
        }
    }
}

impl From<&Finding> for FindingRow {
    fn from(finding: &Finding) -> Self {
        Self {
            at_s: seconds(finding.tick),
            kind: finding.kind,
            text: finding.text().to_string(),
            size: finding.size,
            unit: unit(finding.kind),
        }
    }
}

fn seconds(tick: u64) -> f64 {
    tick as f64 / TICKS_PER_SECOND as f64
}

/// The SI unit of a kind's size.
fn unit(kind: FindingKind) -> &'static str {
    match (kind, kind.dimension()) {
        (FindingKind::JointLeftLoose, _) => "N m",
        (_, Dimension::Mass) => "kg",
        (_, Dimension::Time) => "s",
        (_, Dimension::GaugePressure | Dimension::PressureDifference | Dimension::Vacuum) => "Pa",
        (_, Dimension::Temperature | Dimension::TemperatureDifference) => "K",
        (_, Dimension::Current) => "A",
        (_, Dimension::Plain) => "",
    }
}
