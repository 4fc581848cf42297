//! An event that must not happen, or come to no more than a limit over the whole job.
//!
//! Amounts are added up: grams, seconds, times. Of pressures and shares of a limit the highest
//! counts.

use super::course::Course;
use super::mark::{Evidence, Verdict};
use super::phrases;
use crate::words::{Finding, FindingKind, Level, Quantity};

/// So many findings are quoted; the rest are counted.
const QUOTED: usize = 6;

pub(super) fn judge(course: &Course, kind: FindingKind, up_to: Option<Level>) -> Verdict {
    let found: Vec<&Finding> = course.findings.iter().filter(|f| f.kind == kind).collect();
    if found.is_empty() {
        let evidence = Evidence::at(course.end, "nothing of the kind was noted");
        return Verdict::new(true, vec![evidence]);
    }
    let quoted = found.iter().take(QUOTED);
    let mut evidence: Vec<Evidence> = quoted
        .map(|finding| Evidence::at(finding.tick, finding.text.clone()))
        .collect();
    if found.len() > QUOTED {
        let more = format!("and {} more", found.len() - QUOTED);
        evidence.push(Evidence::at(found[QUOTED].tick, more));
    }
    let Some(up_to) = up_to else {
        return Verdict::new(false, evidence);
    };
    let sizes = found.iter().map(|finding| finding.size);
    let (si, how) = if kind.highest_counts() {
        (sizes.fold(f64::NEG_INFINITY, f64::max), "at the most")
    } else {
        (sizes.sum(), "in all")
    };
    let sum = Quantity {
        si,
        dimension: kind.dimension(),
    };
    let limit = up_to.quantity();
    let is_met = limit.dimension == sum.dimension && sum.si <= limit.si;
    evidence.push(Evidence::at(
        course.end,
        format!(
            "{} {how}, {} {}",
            phrases::as_written(sum, up_to),
            phrases::level(up_to),
            if is_met { "let pass" } else { "is the limit" },
        ),
    ));
    Verdict::new(is_met, evidence)
}
