//! The marks of one course together: score and result.

use super::course::Course;
use super::mark::{AssessorMark, Mark, mark};
use crate::scenario::Criterion;
use crate::units::Fraction;
use crate::words::Finding;
use thiserror::Error;

/// An assessor's mark that cannot stand.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum NotAMark {
    /// There is no such criterion.
    #[error("there is no criterion {number}; the rubric has {count}")]
    NoSuchCriterion {
        /// The number asked for, counted from 1.
        number: usize,
        /// How many there are.
        count: usize,
    },
    /// More points than the criterion has.
    #[error("{points} points given where the criterion has {of}")]
    TooManyPoints {
        /// The points given.
        points: u32,
        /// The points there are.
        of: u32,
    },
    /// No reason given.
    #[error("an assessor's mark needs a reason")]
    NoReason,
}

/// What a course earned.
#[derive(Debug, Clone, PartialEq)]
pub struct Report {
    /// One for each criterion.
    pub marks: Vec<Mark>,
    /// The points that count, as a percentage of the points that can be had.
    pub score_percent: f64,
    /// Whether the share of points reaches the pass and no critical criterion was missed.
    pub passed: bool,
    /// What the watch had noted.
    pub findings: Vec<Finding>,
    pass: Fraction,
}

impl Report {
    /// Marks a course by a rubric; `pass` is the share of the points that passes.
    pub fn new(course: &Course, rubric: &[Criterion], pass: Fraction) -> Self {
        let mut report = Self {
            marks: mark(course, rubric),
            score_percent: 0.0,
            passed: false,
            findings: course.findings.clone(),
            pass,
        };
        report.count();
        report
    }

    /// Puts an assessor's own mark beside a criterion, counted from 0, and counts anew.
    pub fn assess(&mut self, criterion: usize, own: AssessorMark) -> Result<(), NotAMark> {
        let count = self.marks.len();
        let Some(mark) = self.marks.get_mut(criterion) else {
            let number = criterion.saturating_add(1);
            return Err(NotAMark::NoSuchCriterion { number, count });
        };
        if own.points > mark.of {
            let (points, of) = (own.points, mark.of);
            return Err(NotAMark::TooManyPoints { points, of });
        }
        if own.reason.trim().is_empty() {
            return Err(NotAMark::NoReason);
        }
        mark.assessor = Some(own);
        self.count();
        Ok(())
    }

    /// The points that count, and those that can be had.
    pub fn points(&self) -> (u64, u64) {
        let counted = self.marks.iter().filter_map(|m| Some((m.counted()?, m.of)));
        counted.fold((0, 0), |(points, of), (p, o)| {
            (points + u64::from(p), of + u64::from(o))
        })
    }

    /// How many criteria still wait for an assessor.
    pub fn left_open(&self) -> usize {
        let open = self.marks.iter().filter(|mark| mark.counted().is_none());
        open.count()
    }

    /// The critical criteria that were missed.
    pub fn critical_missed(&self) -> impl Iterator<Item = &Mark> {
        let marks = self.marks.iter();
        marks.filter(|mark| mark.critical && mark.is_missed())
    }

    /// The share of the points that passes.
    pub const fn pass(&self) -> Fraction {
        self.pass
    }

    fn count(&mut self) {
        let (points, of) = self.points();
        // With nothing to count nothing has been shown, so nothing is passed.
        let share = if of == 0 {
            0.0
        } else {
            points as f64 / of as f64
        };
        self.score_percent = 100.0 * share;
        // The last bits are let pass: 7 of 10 reach a pass of 0.7.
        let reaches = of > 0 && share + 1e-12 >= self.pass.get();
        self.passed = reaches && self.critical_missed().next().is_none();
    }
}
