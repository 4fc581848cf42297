//! A blank of the job sheet against what the instruments gave when it was written.

use super::conditions::tolerance;
use super::course::Course;
use super::evidence;
use super::mark::{Evidence, Verdict};
use crate::text::Message;
use crate::words::{Level, Quantity, SheetField};

pub(super) fn judge(course: &Course, field: SheetField, within: Level) -> Verdict {
    let name = field.label();
    let Some(entry) = course.entries.get(&field) else {
        let text = Message::new("mark-sheet-blank").with("field", name);
        return Verdict::new(false, vec![Evidence::at(course.end, text)]);
    };
    let written = entry.value.quantity();
    let wrote = evidence::level(entry.value);
    let Some(given) = entry.instruments else {
        let text = Message::new("mark-sheet-no-reading")
            .with("field", name)
            .with("wrote", wrote);
        return Verdict::new(false, vec![Evidence::at(entry.tick, text)]);
    };
    let most = tolerance(within, field.dimension());
    let is_comparable = written.dimension == given.dimension;
    let off = (written.si - given.si).abs();
    let is_met = is_comparable && most.is_some_and(|most| off <= most);
    let instruments = evidence::as_written(given, entry.value);
    let text = if is_comparable {
        let by = Quantity {
            si: off,
            dimension: within.quantity().dimension,
        };
        Message::new("mark-sheet-off-by")
            .with("field", name)
            .with("wrote", wrote)
            .with("given", instruments)
            .with("off", evidence::as_written(by, within))
            .with("within", evidence::level(within))
    } else {
        Message::new("mark-sheet-other-kind")
            .with("field", name)
            .with("wrote", wrote)
            .with("given", instruments)
    };
    Verdict::new(is_met, vec![Evidence::at(entry.tick, text)])
}
