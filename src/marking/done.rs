//! An action, at least once while all conditions held.
//!
//! It counts only later than the first time `after` was reached, and only earlier than the first
//! time `before` was reached (the first since `after`, where both are asked). A `before` that
//! never came stands in nobody's way.

use super::conditions::{all_hold, miss, what_failed, what_was_seen};
use super::course::{Course, Sample};
use super::evidence;
use super::mark::{Evidence, Verdict};
use crate::text::Message;
use crate::words::{Condition, Milestone};

pub(super) fn judge(
    course: &Course,
    what: Milestone,
    when: &[Condition],
    (after, before): (Option<Milestone>, Option<Milestone>),
) -> Verdict {
    let told = evidence::milestone(what);
    let start = after.map_or(Some(0), |m| course.reached(m).next().map(|(i, _)| i + 1));
    let (Some(start), Some(_)) = (start, course.reached(what).next()) else {
        return never_done(course, what, after);
    };
    let stop = before
        .and_then(|m| course.reached(m).map(|(i, _)| i).find(|&i| i >= start))
        .unwrap_or(course.moments.len());
    let tries: Vec<&Sample> = course
        .reached(what)
        .filter(|(i, _)| (start..stop).contains(i))
        .map(|(_, moment)| moment)
        .collect();
    if let Some(good) = tries.iter().find(|moment| all_hold(when, &moment.seen)) {
        let text = if when.is_empty() {
            told
        } else {
            let seen = what_was_seen(when, &good.seen);
            Message::new("mark-done-with")
                .with("what", told)
                .with("seen", seen)
        };
        return Verdict::new(true, vec![Evidence::at(good.tick, text)]);
    }
    let nearest = tries.into_iter().min_by(|a, b| {
        let (a, b) = (miss(when, &a.seen), miss(when, &b.seen));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
    });
    let evidence = nearest.map_or_else(
        || at_the_wrong_time(course, what, start, (after, before)),
        |moment| {
            let text = match what_failed(when, &moment.seen) {
                None => told,
                Some(failed) => Message::new("mark-done-but")
                    .with("what", told)
                    .with("failed", failed),
            };
            Evidence::at(moment.tick, text)
        },
    );
    Verdict::new(false, vec![evidence])
}

/// Neither `what` nor, perhaps, that which it should have followed.
fn never_done(course: &Course, what: Milestone, after: Option<Milestone>) -> Verdict {
    let told = evidence::milestone;
    let evidence = match (course.reached(what).next(), after) {
        (Some((_, moment)), Some(after)) => Evidence::at(
            moment.tick,
            Message::new("mark-done-but-never")
                .with("what", told(what))
                .with("after", told(after)),
        ),
        _ => Evidence::at(
            course.end,
            Message::new("mark-never").with("what", told(what)),
        ),
    };
    Verdict::new(false, vec![evidence])
}

/// It was done, but only before `after` or only when `before` had been reached.
fn at_the_wrong_time(
    course: &Course,
    what: Milestone,
    start: usize,
    (after, before): (Option<Milestone>, Option<Milestone>),
) -> Evidence {
    let told = evidence::milestone;
    let late = course.reached(what).find(|(i, _)| *i >= start);
    match (late, after, before) {
        (Some((_, moment)), _, Some(before)) => Evidence::at(
            moment.tick,
            Message::new("mark-done-too-late")
                .with("what", told(what))
                .with("before", told(before)),
        ),
        (None, Some(after), _) => {
            let last = course.reached(what).last();
            let tick = last.map_or(course.end, |(_, moment)| moment.tick);
            let text = Message::new("mark-done-not-since")
                .with("what", told(what))
                .with("after", told(after));
            Evidence::at(tick, text)
        }
        _ => Evidence::at(
            course.end,
            Message::new("mark-never").with("what", told(what)),
        ),
    }
}
