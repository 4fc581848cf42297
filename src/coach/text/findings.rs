//! Of what happened: why it matters.

use crate::text::Message;
use crate::words::FindingKind;

/// What follows from a finding.
pub(in crate::coach) fn consequence(kind: FindingKind) -> Message {
    Message::new(match kind {
        FindingKind::Released => "coach-why-released",
        FindingKind::AirDrawnIn => "coach-why-air-drawn-in",
        FindingKind::OpenedUnderPressure => "coach-why-opened-under-pressure",
        FindingKind::StoodOpen => "coach-why-stood-open",
        FindingKind::RanInVacuum => "coach-why-ran-in-vacuum",
        FindingKind::RanWithoutOilReturn => "coach-why-ran-without-oil-return",
        FindingKind::EnergisedInDeepVacuum => "coach-why-energised-in-deep-vacuum",
        FindingKind::LiquidToCompressor => "coach-why-liquid-to-compressor",
        FindingKind::OverNameplate => "coach-why-over-nameplate",
        FindingKind::HighPressureTrip => "coach-why-high-pressure-trip",
        FindingKind::MicronGaugeOverPressured => "coach-why-micron-gauge-over-pressured",
        FindingKind::WorkedLive => "coach-why-worked-live",
        FindingKind::Unprotected => "coach-why-unprotected",
        FindingKind::OverTightened => "coach-why-over-tightened",
        FindingKind::JointLeftLoose => "coach-why-joint-left-loose",
        FindingKind::CapLeftOff => "coach-why-cap-left-off",
        FindingKind::KitLeftOn => "coach-why-kit-left-on",
        FindingKind::ValveLeftShut => "coach-why-valve-left-shut",
        FindingKind::DrierBackwards => "coach-why-drier-backwards",
        FindingKind::IgnitionRisk => "coach-why-ignition-risk",
        FindingKind::FlammableAir => "coach-why-flammable-air",
        FindingKind::OpenedUnpurged => "coach-why-opened-unpurged",
        FindingKind::Unventilated => "coach-why-unventilated",
        FindingKind::ToolNotRated => "coach-why-tool-not-rated",
        FindingKind::Tool(finding) => return Message::form_of(finding.key(), "why"),
    })
}
