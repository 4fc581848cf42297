//! The watch: it notes what happens, judges nothing, and refuses nothing.

use super::TICKS_PER_SECOND;
use crate::units::{GaugePressure, Mass, PressureDifference, Time, Torque};
use crate::words::{Dimension, Finding, FindingKind};

/// An event that still goes on, or has only just stopped.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Ongoing {
    kind: FindingKind,
    place: &'static str,
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
    pub(super) fn note(&mut self, tick: u64, kind: FindingKind, place: &'static str, size: f64) {
        let text = words(kind, place, size);
        self.findings.push(Finding {
            tick,
            kind,
            size,
            text,
        });
    }

    /// Adds to an event that goes on, in the SI unit of its kind.
    pub(super) fn grow(&mut self, tick: u64, kind: FindingKind, place: &'static str, by: f64) {
        self.go_on(tick, kind, place, |size| size + by);
    }

    /// Raises an event that goes on to the highest it has had.
    pub(super) fn peak(&mut self, tick: u64, kind: FindingKind, place: &'static str, at: f64) {
        self.go_on(tick, kind, place, |size| size.max(at));
    }

    fn go_on(
        &mut self,
        tick: u64,
        kind: FindingKind,
        place: &'static str,
        grown: impl Fn(f64) -> f64,
    ) {
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
                text: String::new(),
            });
            self.findings.len() - 1
        });
        self.findings[at].size = event.size;
        // The text is told anew for each twentieth that the size grows by.
        if event.size > 1.05 * event.told {
            event.told = event.size;
            self.findings[at].text = words(kind, place, event.size);
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
fn words(kind: FindingKind, place: &str, size: f64) -> String {
    let amount = match kind.dimension() {
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
    };
    match kind {
        FindingKind::Released => format!("{amount} of refrigerant released at the {place}"),
        FindingKind::AirDrawnIn => format!("{amount} of air drawn in at the {place}"),
        FindingKind::OpenedUnderPressure => format!("the {place} opened under {amount}"),
        FindingKind::StoodOpen => format!("the circuit stood open for {amount} at the {place}"),
        FindingKind::RanInVacuum => format!("the compressor ran below 0 psig for {amount}"),
        FindingKind::RanWithoutOilReturn => {
            format!("the compressor ran for {amount} with too little flow to bring its oil back")
        }
        FindingKind::EnergisedInDeepVacuum => {
            "the compressor was energised in a deep vacuum: its motor is ruined".into()
        }
        FindingKind::LiquidToCompressor => {
            format!("{amount} of liquid came back to the running compressor")
        }
        FindingKind::OverNameplate => {
            format!("the {place} stood {amount} above its nameplate test pressure")
        }
        FindingKind::NoRegulator => "nitrogen was let in without a regulator".into(),
        FindingKind::HighPressureTrip => "the high-pressure switch stopped the compressor".into(),
        FindingKind::MicronGaugeOverPressured => {
            format!("the micron gauge met {amount}: its sensor is ruined")
        }
        FindingKind::PumpUnderPressure => format!("the running vacuum pump met {amount}"),
        FindingKind::PumpedAway => format!("{amount} of refrigerant went out through the pump"),
        FindingKind::WorkedLive => {
            format!("work at the {place} without lock and tag on the disconnect")
        }
        FindingKind::Unprotected => format!("work at the {place} without glasses and gloves"),
        FindingKind::OverTightened => format!("the {place} was over-tightened: it split"),
        FindingKind::JointLeftLoose => {
            let short = Torque::from_newton_metres(size);
            format!(
                "the {place} was left {:.0} N m ({:.0} ft lb) short of its torque",
                short.newton_metres(),
                short.foot_pounds()
            )
        }
        FindingKind::CapLeftOff => format!("the cap of the {place} was left off"),
        FindingKind::KitLeftOn => format!("{place} was left on the unit"),
        FindingKind::ValveLeftShut => format!("the {place} was not back-seated"),
        FindingKind::DrierBackwards => "the drier's arrow points against the flow".into(),
        FindingKind::IgnitionRisk => {
            format!("{amount} of refrigerant that burns went out beside {place}")
        }
        FindingKind::FlammableAir => {
            let share = 100.0 * size;
            format!("the air at the {place} came to {share:.0} % of what can burn")
        }
        FindingKind::OpenedUnpurged => {
            format!("the {place} opened with refrigerant that burns behind it, not purged")
        }
        FindingKind::Unventilated => {
            format!("the {place} opened in a room that was not ventilated")
        }
        FindingKind::ToolNotRated => {
            format!("the {place} is not rated for a refrigerant that burns")
        }
    }
}
