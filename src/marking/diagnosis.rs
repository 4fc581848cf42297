//! The diagnosis on the job sheet. The right fault at the wrong place gives half of the points.

use super::course::Course;
use super::mark::{Evidence, Share, Verdict};
use crate::plant::{FaultKind, Spot};
use crate::text::Message;
use crate::words::Diagnosis;

pub(super) fn judge(course: &Course, fault: Option<FaultKind>, at: Option<Spot>) -> Verdict {
    let Some((tick, written)) = course.diagnosis else {
        let evidence = Evidence::at(course.end, Message::new("mark-no-diagnosis"));
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
        Message::new("mark-diagnosis").with("diagnosis", written.words())
    } else {
        let right = Diagnosis { fault, at };
        Message::new("mark-diagnosis-wrong")
            .with("diagnosis", written.words())
            .with("right", right.words())
    };
    let evidence = vec![Evidence::at(tick, text)];
    Verdict { share, evidence }
}
