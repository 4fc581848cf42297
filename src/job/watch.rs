//! The watch: it notes what happens, judges nothing, and refuses nothing.

use super::TICKS_PER_SECOND;
use crate::kit::tool::Size;
use crate::words::{Finding, FindingKind, Where};

/// An event that still goes on, or has only just stopped.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Ongoing {
    kind: FindingKind,
    at: Where,
    began: u64,
    last: u64,
    size: f64,
    /// Where it stands in the list, once it is large enough to be noted.
    noted: Option<usize>,
}

/// Notes findings, and lets an event that goes on grow instead of noting it again.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Watch {
    findings: Vec<Finding>,
    ongoing: Vec<Ongoing>,
}

/// An event that has rested this long is over, ticks.
const OVER_AFTER: u64 = 30 * TICKS_PER_SECOND;

impl Watch {
    /// What has been noted, in the order in which each began to count.
    pub(super) fn findings(&self) -> &[Finding] {
        &self.findings
    }

    /// Notes a single event.
    pub(super) fn note(&mut self, tick: u64, kind: FindingKind, at: impl Into<Where>, size: f64) {
        self.findings.push(Finding {
            tick,
            kind,
            size,
            at: at.into(),
        });
    }

    /// Takes what a tool has to say of a tick.
    pub(super) fn take(&mut self, tick: u64, kind: FindingKind, at: impl Into<Where>, size: Size) {
        match size {
            Size::Once(size) => self.note(tick, kind, at, size),
            Size::More(by) => self.grow(tick, kind, at, by),
            Size::Peak(to) => self.peak(tick, kind, at, to),
        }
    }

    /// Adds to an event that goes on, in the SI unit of its kind.
    pub(super) fn grow(&mut self, tick: u64, kind: FindingKind, at: impl Into<Where>, by: f64) {
        self.go_on(tick, kind, at.into(), |size| size + by);
    }

    /// Raises an event that goes on to the highest it has had.
    pub(super) fn peak(&mut self, tick: u64, kind: FindingKind, at: impl Into<Where>, to: f64) {
        self.go_on(tick, kind, at.into(), |size| size.max(to));
    }

    fn go_on(&mut self, tick: u64, kind: FindingKind, at: Where, grown: impl Fn(f64) -> f64) {
        let known = self.ongoing.iter().position(|event| {
            event.kind == kind && event.at == at && tick - event.last <= OVER_AFTER
        });
        let index = known.unwrap_or_else(|| {
            self.ongoing.retain(|event| tick - event.last <= OVER_AFTER);
            let began = tick;
            self.ongoing.push(Ongoing {
                kind,
                at,
                began,
                last: tick,
                size: 0.0,
                noted: None,
            });
            self.ongoing.len() - 1
        });
        let event = &mut self.ongoing[index];
        event.last = tick;
        event.size = grown(event.size);
        if event.size < kind.row().least {
            return;
        }
        let noted = *event.noted.get_or_insert_with(|| {
            self.findings.push(Finding {
                tick: event.began,
                kind,
                size: event.size,
                at,
            });
            self.findings.len() - 1
        });
        self.findings[noted].size = event.size;
    }

    /// Every number of the state, for digests.
    pub(super) fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(self.findings.len() as f64);
        for finding in &self.findings {
            visit(finding.tick as f64);
            visit(finding.size);
        }
        for event in &self.ongoing {
            visit(event.last as f64);
            visit(event.size);
        }
    }
}
