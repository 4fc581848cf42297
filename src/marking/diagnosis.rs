//! The diagnosis on the job sheet. The right fault at the wrong place gives half of the points.

use super::course::Course;
use super::mark::{Evidence, Share, Verdict};
use crate::plant::{FaultKind, Spot};
use crate::words::Diagnosis;

pub(super) fn judge(course: &Course, fault: Option<FaultKind>, at: Option<Spot>) -> Verdict {
    let Some((tick, written)) = course.diagnosis else {
        let evidence = Evidence::at(course.end, "no diagnosis was written");
        return Verdict::new(false, vec![evidence]);
    };
    let right_fault = written.fault == fault;
    let right_place = at.is_none() || written.at == at;
    let share = match (right_fault, right_place) {
        (true, true) => Share::All,
        (true, false) => Share::Half,
        (false, _) => Share::Nothing,
    };
    let text = if share == Share::All {
        format!("wrote: {written}")
    } else {
        let right = Diagnosis { fault, at };
        format!("wrote: {written}; it was: {right}")
    };
    let evidence = vec![Evidence::at(tick, text)];
    Verdict { share, evidence }
}
