//! The job handed back in time.

use super::course::Course;
use super::mark::{Evidence, Verdict};
use super::phrases;
use crate::job::TICKS_PER_SECOND;
use crate::units::Time;

pub(super) fn judge(course: &Course, limit: Time) -> Verdict {
    let limit = (limit.seconds() * TICKS_PER_SECOND as f64).max(0.0) as u64;
    let allowed = phrases::span(limit);
    let Some(tick) = course.handed_back else {
        let text = format!("not handed back; {allowed} allowed");
        return Verdict::new(false, vec![Evidence::at(course.end, text)]);
    };
    let text = format!(
        "handed back after {}; {allowed} allowed",
        phrases::span(tick)
    );
    Verdict::new(tick <= limit, vec![Evidence::at(tick, text)])
}
