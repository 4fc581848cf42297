//! One thing before another: the first `then` must have a `first` before it, and both happen.

use super::course::Course;
use super::evidence;
use super::mark::{Evidence, Verdict};
use crate::text::Message;
use crate::words::Milestone;

pub(super) fn judge(course: &Course, first: Milestone, then: Milestone) -> Verdict {
    let told = evidence::milestone;
    let earliest = course.reached(first).next();
    let follower = course.reached(then).next();
    let (is_met, evidence) = match (earliest, follower) {
        (Some((i, a)), Some((j, b))) => {
            let mut evidence = vec![
                Evidence::at(a.tick, told(first)),
                Evidence::at(b.tick, told(then)),
            ];
            if i >= j {
                evidence.reverse();
                evidence[1].text = Message::new("mark-only-then").with("what", told(first));
            }
            (i < j, evidence)
        }
        (Some((_, a)), None) => (
            false,
            vec![
                Evidence::at(a.tick, told(first)),
                Evidence::at(
                    course.end,
                    Message::new("mark-never").with("what", told(then)),
                ),
            ],
        ),
        (None, Some((_, b))) => (
            false,
            vec![
                Evidence::at(b.tick, told(then)),
                Evidence::at(
                    course.end,
                    Message::new("mark-never").with("what", told(first)),
                ),
            ],
        ),
        (None, None) => (
            false,
            vec![Evidence::at(
                course.end,
                Message::new("mark-never-nor")
                    .with("what", told(first))
                    .with("other", told(then)),
            )],
        ),
    };
    Verdict::new(is_met, evidence)
}
