//! A mark with its evidence, and the marking of a course by a rubric.

use super::course::Course;
use super::{diagnosis, done, end_state, hold, in_time, judgement, never, order, sheet_rule};
use crate::scenario::{Criterion, Rule};
use crate::text::Message;

/// When, and what was seen then.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Evidence {
    /// The tick.
    pub at: u64,
    /// In the technician's words.
    pub text: Message,
}

impl Evidence {
    /// What was seen at a tick.
    pub(super) fn at(tick: u64, text: Message) -> Self {
        Self { at: tick, text }
    }
}

/// An assessor's own mark, with its reason.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AssessorMark {
    /// Who gave it.
    pub assessor: String,
    /// The points; never more than the criterion has.
    pub points: u32,
    /// Why.
    pub reason: String,
}

/// What one criterion gave.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mark {
    /// The criterion's text.
    pub criterion: String,
    /// The points that the course earned.
    pub points: u32,
    /// The points that the criterion has.
    pub of: u32,
    /// Whether the course met it in full.
    pub is_met: bool,
    /// Whether missing it fails the attempt outright.
    pub critical: bool,
    /// On what evidence.
    pub evidence: Vec<Evidence>,
    /// The published skill item, if the criterion names one.
    pub skill: Option<String>,
    /// The question that only an assessor can answer, where the criterion is one of judgement.
    pub question: Option<String>,
    /// The assessor's own mark. It counts, and stands beside what the course earned.
    pub assessor: Option<AssessorMark>,
}

impl Mark {
    /// The points that count: the assessor's, or else those that the course earned. `None` while
    /// a criterion of judgement waits for its assessor.
    pub fn counted(&self) -> Option<u32> {
        match (&self.assessor, &self.question) {
            (Some(own), _) => Some(own.points.min(self.of)),
            (None, Some(_)) => None,
            (None, None) => Some(self.points),
        }
    }

    /// Whether it counts and was not met in full: by the assessor's own mark, where there is one.
    pub fn is_missed(&self) -> bool {
        match (&self.assessor, &self.question) {
            (Some(own), _) => own.points < self.of,
            (None, Some(_)) => false,
            (None, None) => !self.is_met,
        }
    }
}

/// How much of its points a criterion gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Share {
    /// All.
    All,
    /// Half, rounded down.
    Half,
    /// None.
    Nothing,
}

/// What a rule says about a course.
#[derive(Debug)]
pub(super) struct Verdict {
    /// How much of the points.
    pub share: Share,
    /// On what evidence.
    pub evidence: Vec<Evidence>,
}

impl Verdict {
    /// All of the points, or none.
    pub(super) const fn new(is_met: bool, evidence: Vec<Evidence>) -> Self {
        let share = if is_met { Share::All } else { Share::Nothing };
        Self { share, evidence }
    }
}

/// Marks a course: one mark for each criterion, in the order of the rubric.
pub fn mark(course: &Course, rubric: &[Criterion]) -> Vec<Mark> {
    rubric.iter().map(|c| mark_one(course, c)).collect()
}

/// Whether a course meets a rule in full.
pub fn meets(course: &Course, rule: &Rule) -> bool {
    judge(course, rule).share == Share::All
}

fn mark_one(course: &Course, criterion: &Criterion) -> Mark {
    let verdict = judge(course, &criterion.rule);
    let question = match &criterion.rule {
        Rule::Judgement { question } => Some(question.clone()),
        _ => None,
    };
    Mark {
        criterion: criterion.text.clone(),
        points: match verdict.share {
            Share::All => criterion.points,
            Share::Half => criterion.points / 2,
            Share::Nothing => 0,
        },
        of: criterion.points,
        is_met: verdict.share == Share::All,
        critical: criterion.critical,
        evidence: verdict.evidence,
        skill: criterion.skill.clone(),
        question,
        assessor: None,
    }
}

fn judge(course: &Course, rule: &Rule) -> Verdict {
    match rule {
        Rule::Never { finding, up_to } => never::judge(course, *finding, *up_to),
        Rule::Order { first, then } => order::judge(course, *first, *then),
        Rule::Done {
            what,
            when,
            after,
            before,
        } => done::judge(course, *what, when, (*after, *before)),
        Rule::Hold {
            all,
            lasting,
            within,
            after,
            before,
        } => hold::judge(course, all, *lasting, *within, (*after, *before)),
        Rule::End { state, must } => end_state::judge(course, *state, *must),
        Rule::Sheet { field, within } => sheet_rule::judge(course, *field, *within),
        Rule::Diagnosis { fault, at } => diagnosis::judge(course, *fault, *at),
        Rule::InTime(limit) => in_time::judge(course, *limit),
        Rule::Judgement { question } => judgement::judge(course, question),
    }
}
