//! The watch: it notes what happens, judges nothing, and refuses nothing.

use super::TICKS_PER_SECOND;
use crate::text::Message;
use crate::units::{GaugePressure, Mass, PressureDifference, Time, Torque};
use crate::words::{Dimension, Finding, FindingKind};

/// An event that still goes on, or has only just stopped.
#[derive(Debug, Clone, PartialEq)]
struct Ongoing {
    kind: FindingKind,
    place: Message,
    began: u64,
    last: u64,
    size: f64,
    /// Where it stands in the list, once it is large enough to be noted.
    noted: Option<usize>,
    /// The size that its text tells.
    told: f64,
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
    pub(super) fn note(&mut self, tick: u64, kind: FindingKind, place: Message, size: f64) {
        let text = words(kind, place.clone(), size);
        self.findings.push(Finding {
            tick,
            kind,
            size,
            place,
            text,
        });
    }

    /// Adds to an event that goes on, in the SI unit of its kind.
    pub(super) fn grow(&mut self, tick: u64, kind: FindingKind, place: Message, by: f64) {
        self.go_on(tick, kind, place, |size| size + by);
    }

    /// Raises an event that goes on to the highest it has had.
    pub(super) fn peak(&mut self, tick: u64, kind: FindingKind, place: Message, at: f64) {
        self.go_on(tick, kind, place, |size| size.max(at));
    }

    fn go_on(&mut self, tick: u64, kind: FindingKind, place: Message, grown: impl Fn(f64) -> f64) {
        let known = self.ongoing.iter().position(|event| {
            event.kind == kind && event.place == place && tick - event.last <= OVER_AFTER
        });
        let index = known.unwrap_or_else(|| {
            self.ongoing.retain(|event| tick - event.last <= OVER_AFTER);
            let began = tick;
            self.ongoing.push(Ongoing {
                kind,
                place,
                began,
                last: tick,
                size: 0.0,
                noted: None,
                told: 0.0,
            });
            self.ongoing.len() - 1
        });
        let event = &mut self.ongoing[index];
        event.last = tick;
        event.size = grown(event.size);
        if event.size < least(kind) {
            return;
        }
        let at = *event.noted.get_or_insert_with(|| {
            self.findings.push(Finding {
                tick: event.began,
                kind,
                size: event.size,
                place: event.place.clone(),
                text: Message::verbatim(String::new()),
            });
            self.findings.len() - 1
        });
        self.findings[at].size = event.size;
        // The text is told anew for each twentieth that the size grows by.
        if event.size > 1.05 * event.told {
            event.told = event.size;
            self.findings[at].text = words(kind, event.place.clone(), event.size);
        }
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

/// The size from which an event counts, in the SI unit of its kind.
///
/// Chosen: a tenth of a gram of refrigerant, a hundredth of air, half a gram of what burns, and the
/// second or two in which a gauge shows a thing.
fn least(kind: FindingKind) -> f64 {
    match kind {
        FindingKind::Released | FindingKind::PumpedAway => 1e-4,
        FindingKind::AirDrawnIn => 1e-5,
        FindingKind::IgnitionRisk => 5e-4,
        FindingKind::LiquidToCompressor => 0.02,
        FindingKind::RanInVacuum => 2.0,
        FindingKind::RanWithoutOilReturn => 60.0,
        FindingKind::StoodOpen => 1.0,
        _ => 0.0,
    }
}

/// A finding in the technician's words.
fn words(kind: FindingKind, place: Message, size: f64) -> Message {
    use FindingKind as K;
    let (at, amount) = (place.the(), amount(kind, size));
    match kind {
        K::Released => Message::new("finding-released")
            .with("amount", amount)
            .with("place", at),
        K::AirDrawnIn => Message::new("finding-air-drawn-in")
            .with("amount", amount)
            .with("place", at),
        K::OpenedUnderPressure => Message::new("finding-opened-under-pressure")
            .with("place", at)
            .with("amount", amount),
        K::StoodOpen => Message::new("finding-stood-open")
            .with("amount", amount)
            .with("place", at),
        K::RanInVacuum => Message::new("finding-ran-in-vacuum").with("amount", amount),
        K::RanWithoutOilReturn => {
            Message::new("finding-ran-without-oil-return").with("amount", amount)
        }
        K::EnergisedInDeepVacuum => Message::new("finding-energised-in-deep-vacuum"),
        K::LiquidToCompressor => {
            Message::new("finding-liquid-to-compressor").with("amount", amount)
        }
        K::OverNameplate => Message::new("finding-over-nameplate")
            .with("place", at)
            .with("amount", amount),
        K::NoRegulator => Message::new("finding-no-regulator"),
        K::HighPressureTrip => Message::new("finding-high-pressure-trip"),
        K::MicronGaugeOverPressured => {
            Message::new("finding-micron-gauge-over-pressured").with("amount", amount)
        }
        K::PumpUnderPressure => Message::new("finding-pump-under-pressure").with("amount", amount),
        K::PumpedAway => Message::new("finding-pumped-away").with("amount", amount),
        K::WorkedLive => Message::new("finding-worked-live").with("place", at),
        K::Unprotected => Message::new("finding-unprotected").with("place", at),
        K::OverTightened => Message::new("finding-over-tightened").with("place", at),
        K::JointLeftLoose => {
            let short = Torque::from_newton_metres(size);
            Message::new("finding-joint-left-loose")
                .with("place", at)
                .with("metric", format!("{:.0} N m", short.newton_metres()))
                .with("inch", format!("{:.0} ft lb", short.foot_pounds()))
        }
        K::CapLeftOff => Message::new("finding-cap-left-off").with("place", at),
        K::KitLeftOn => Message::new("finding-kit-left-on").with("place", at),
        K::ValveLeftShut => Message::new("finding-valve-left-shut").with("place", at),
        K::DrierBackwards => Message::new("finding-drier-backwards"),
        K::IgnitionRisk => Message::new("finding-ignition-risk")
            .with("amount", amount)
            .with("place", at),
        K::FlammableAir => Message::new("finding-flammable-air")
            .with("place", at)
            .with("percent", format!("{:.0}", 100.0 * size)),
        K::OpenedUnpurged => Message::new("finding-opened-unpurged").with("place", at),
        K::Unventilated => Message::new("finding-unventilated").with("place", at),
        K::ToolNotRated => Message::new("finding-tool-not-rated").with("place", at),
    }
}

/// A size in the SI unit of its kind, as a person reads it.
fn amount(kind: FindingKind, size: f64) -> String {
    match kind.dimension() {
        Dimension::Mass => format!("{:.1} g", Mass::from_kilograms(size).grams()),
        Dimension::GaugePressure => {
            format!("{:.0} psig", GaugePressure::from_pascals(size).psig())
        }
        Dimension::PressureDifference => {
            format!("{:.0} psi", PressureDifference::from_pascals(size).psi())
        }
        Dimension::Time if size < 120.0 => format!("{size:.0} s"),
        Dimension::Time => format!("{:.0} min", Time::from_seconds(size).minutes()),
        _ => String::new(),
    }
}
