//! The job handed back in time.

use super::course::Course;
use super::evidence;
use super::mark::{Evidence, Verdict};
use crate::job::TICKS_PER_SECOND;
use crate::text::Message;
use crate::units::Time;

pub(super) fn judge(course: &Course, limit: Time) -> Verdict {
    let limit = (limit.seconds() * TICKS_PER_SECOND as f64).max(0.0) as u64;
    let allowed = evidence::span(limit);
    let Some(tick) = course.handed_back else {
        let text = Message::new("mark-not-handed-back").with("allowed", allowed);
        return Verdict::new(false, vec![Evidence::at(course.end, text)]);
    };
    let text = Message::new("mark-handed-back-after")
        .with("after", evidence::span(tick))
        .with("allowed", allowed);
    Verdict::new(tick <= limit, vec![Evidence::at(tick, text)])
}
