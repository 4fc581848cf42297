//! An event that must not happen, or come to no more than a limit over the whole job.
//!
//! Amounts are added up: grams, seconds, times. Of pressures and shares of a limit the highest
//! counts.

use super::course::Course;
use super::evidence;
use super::mark::{Evidence, Verdict};
use crate::text::Message;
use crate::words::{Finding, FindingKind, Level, Quantity};

/// So many findings are quoted; the rest are counted.
const QUOTED: usize = 6;

pub(super) fn judge(course: &Course, kind: FindingKind, up_to: Option<Level>) -> Verdict {
    let found: Vec<&Finding> = course.findings.iter().filter(|f| f.kind == kind).collect();
    if found.is_empty() {
        let evidence = Evidence::at(course.end, Message::new("mark-nothing-noted"));
        return Verdict::new(true, vec![evidence]);
    }
    let quoted = found.iter().take(QUOTED);
    let mut evidence: Vec<Evidence> = quoted
        .map(|finding| Evidence::at(finding.tick, finding.text()))
        .collect();
    if found.len() > QUOTED {
        let more = Message::new("mark-and-more").with("count", found.len() - QUOTED);
        evidence.push(Evidence::at(found[QUOTED].tick, more));
    }
    let Some(up_to) = up_to else {
        return Verdict::new(false, evidence);
    };
    let sizes = found.iter().map(|finding| finding.size);
    let highest = kind.highest_counts();
    let si = if highest {
        sizes.fold(f64::NEG_INFINITY, f64::max)
    } else {
        sizes.sum()
    };
    let sum = Quantity {
        si,
        dimension: kind.dimension(),
    };
    let limit = up_to.quantity();
    let is_met = limit.dimension == sum.dimension && sum.si <= limit.si;
    let (amount, limit) = (evidence::as_written(sum, up_to), evidence::level(up_to));
    let told = match (highest, is_met) {
        (true, true) => Message::new("mark-let-pass-highest")
            .with("amount", amount)
            .with("limit", limit),
        (true, false) => Message::new("mark-limit-highest")
            .with("amount", amount)
            .with("limit", limit),
        (false, true) => Message::new("mark-let-pass-sum")
            .with("amount", amount)
            .with("limit", limit),
        (false, false) => Message::new("mark-limit-sum")
            .with("amount", amount)
            .with("limit", limit),
    };
    evidence.push(Evidence::at(course.end, told));
    Verdict::new(is_met, evidence)
}
