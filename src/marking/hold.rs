//! All conditions held together without a break.
//!
//! The course is looked at once a second and at every action. A stretch lasts from the first
//! moment at which all was so to the last; where an action ended it, to that action. It counts
//! only later than the last time `after` was reached, and up to the first time that `before` was
//! reached from there.

use super::conditions::{all_hold, miss, tolerance, what_failed, what_was_seen};
use super::course::{Course, Sample};
use super::evidence;
use super::mark::{Evidence, Verdict};
use super::window::Window;
use crate::job::TICKS_PER_SECOND;
use crate::text::Message;
use crate::units::Time;
use crate::words::{Condition, Level, Milestone, Reading};
use std::ops::Range;

/// The longest stretch that held: its first and last moment, and how long it lasted in ticks.
struct Stretch {
    first: usize,
    last: usize,
    ticks: u64,
}

pub(super) fn judge(
    course: &Course,
    all: &[Condition],
    lasting: Time,
    within: Option<Level>,
    (after, before): (Option<Milestone>, Option<Milestone>),
) -> Verdict {
    let start = match after.map(|after| (after, course.reached(after).last())) {
        None => 0,
        Some((_, Some((i, _)))) => i,
        Some((after, None)) => {
            let text = Message::new("mark-never").with("what", evidence::milestone(after));
            return Verdict::new(false, vec![Evidence::at(course.end, text)]);
        }
    };
    let stop = before
        .and_then(|m| course.reached(m).map(|(i, _)| i).find(|&i| i > start))
        .unwrap_or(course.moments.len());
    let range = start..stop;
    let evidence = match longest(course, all, within, range.clone()) {
        Some(stretch) => {
            let needed = lasting.seconds() * TICKS_PER_SECOND as f64;
            let is_met = stretch.ticks as f64 >= needed;
            let told = tell(course, all, &stretch, is_met, &range);
            return Verdict::new(is_met, told);
        }
        None => nearest(course, all, range),
    };
    Verdict::new(false, vec![evidence])
}

/// The longest stretch in a range of moments; the first of equals.
fn longest(
    course: &Course,
    all: &[Condition],
    within: Option<Level>,
    range: Range<usize>,
) -> Option<Stretch> {
    let moments = &course.moments;
    let mut windows = windows(all, within)?;
    let mut best: Option<Stretch> = None;
    let mut first = range.start;
    for i in range {
        let seen = &moments[i].seen;
        let fits = all_hold(all, seen)
            && windows
                .iter_mut()
                .all(|(reading, w)| w.take(i, seen.shown(*reading).quantity()));
        if !fits {
            for (_, window) in &mut windows {
                window.clear();
            }
            first = i + 1;
            continue;
        }
        for (_, window) in &windows {
            first = first.max(window.first());
        }
        let ticks = lasted_to(moments, i).saturating_sub(moments[first].tick);
        if best.as_ref().is_none_or(|b| ticks > b.ticks) {
            let last = i;
            best = Some(Stretch { first, last, ticks });
        }
    }
    best
}

/// A window for each reading that may not move far; `None` where `within` measures none of them.
fn windows(all: &[Condition], within: Option<Level>) -> Option<Vec<(Reading, Window)>> {
    let Some(within) = within else {
        return Some(Vec::new());
    };
    let windows: Vec<(Reading, Window)> = all
        .iter()
        .filter_map(|condition| match *condition {
            Condition::Shows(r, _) => {
                tolerance(within, r.dimension()).map(|most| (r, Window::of(most)))
            }
            _ => None,
        })
        .collect();
    (!windows.is_empty()).then_some(windows)
}

/// To which tick what was so at moment `i` lasted: an action that follows ends it when it comes.
fn lasted_to(moments: &[Sample], i: usize) -> u64 {
    match moments.get(i + 1) {
        Some(next) if next.action.is_some() => next.tick,
        _ => moments[i].tick,
    }
}

fn tell(
    course: &Course,
    all: &[Condition],
    stretch: &Stretch,
    is_met: bool,
    range: &Range<usize>,
) -> Vec<Evidence> {
    let (first, last) = (
        &course.moments[stretch.first],
        &course.moments[stretch.last],
    );
    let (lasted, from) = (evidence::span(stretch.ticks), evidence::clock(first.tick));
    let began = what_was_seen(all, &first.seen);
    if is_met {
        return vec![
            Evidence::at(
                first.tick,
                Message::new("mark-lasted")
                    .with("lasted", lasted)
                    .with("from", from)
                    .with("seen", began),
            ),
            Evidence::at(
                last.tick,
                Message::new("mark-at-its-end").with("seen", what_was_seen(all, &last.seen)),
            ),
        ];
    }
    let after = stretch.last + 1;
    let text = match course.moments.get(after) {
        Some(next) if after < range.end => match what_failed(all, &next.seen) {
            None => Message::new("mark-longest-then-moved")
                .with("lasted", lasted)
                .with("from", from)
                .with("seen", what_was_seen(all, &next.seen)),
            Some(failed) => Message::new("mark-longest-then")
                .with("lasted", lasted)
                .with("from", from)
                .with("failed", failed),
        },
        Some(_) => Message::new("mark-longest-then-next")
            .with("lasted", lasted)
            .with("from", from),
        None => Message::new("mark-longest-then-end")
            .with("lasted", lasted)
            .with("from", from),
    };
    vec![Evidence::at(first.tick, text)]
}

/// What came nearest where nothing ever held.
fn nearest(course: &Course, all: &[Condition], range: Range<usize>) -> Evidence {
    let moments = course.moments.get(range).unwrap_or_default();
    let nearest = moments.iter().min_by(|a, b| {
        let (a, b) = (miss(all, &a.seen), miss(all, &b.seen));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
    });
    match nearest {
        Some(moment) => {
            let text = match what_failed(all, &moment.seen) {
                Some(failed) => Message::new("mark-nearest").with("failed", failed),
                None => Message::new("mark-nearest-unmeasured"),
            };
            Evidence::at(moment.tick, text)
        }
        None => Evidence::at(course.end, Message::new("mark-never-so")),
    }
}
