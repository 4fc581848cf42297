//! A finding in the technician's words, with its place and amount.

use super::{Dimension, Finding, FindingKind};
use crate::text::Message;
use crate::units::{GaugePressure, Mass, PressureDifference, Time, Torque};

impl Finding {
    /// The finding in the technician's words.
    pub fn text(&self) -> Message {
        use FindingKind as K;
        let (at, amount) = (self.at.label().the(), self.amount());
        match self.kind {
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
            K::HighPressureTrip => Message::new("finding-high-pressure-trip"),
            K::MicronGaugeOverPressured => {
                Message::new("finding-micron-gauge-over-pressured").with("amount", amount)
            }
            K::WorkedLive => Message::new("finding-worked-live").with("place", at),
            K::Unprotected => Message::new("finding-unprotected").with("place", at),
            K::OverTightened => Message::new("finding-over-tightened").with("place", at),
            K::JointLeftLoose => {
                let short = Torque::from_newton_metres(self.size);
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
                .with("percent", format!("{:.0}", 100.0 * self.size)),
            K::OpenedUnpurged => Message::new("finding-opened-unpurged").with("place", at),
            K::Unventilated => Message::new("finding-unventilated").with("place", at),
            K::ToolNotRated => Message::new("finding-tool-not-rated").with("place", at),
            K::Tool(finding) => Message::new(finding.key()).with("amount", amount),
        }
    }

    /// Its size as a person reads it.
    fn amount(&self) -> String {
        let size = self.size;
        match self.kind.dimension() {
            Dimension::Mass => format!("{:.1} g", Mass::from_kilograms(size).grams()),
            Dimension::GaugePressure => {
                format!("{:.0} psig", GaugePressure::from_pascals(size).psig())
            }
            Dimension::PressureDifference => {
                format!("{:.0} psi", PressureDifference::from_pascals(size).psi())
            }
            Dimension::Time if size < 120.0 => format!("{size:.0} s"),
            Dimension::Time => format!("{:.0} min", Time::from_seconds(size).minutes()),
            Dimension::Vacuum
            | Dimension::Temperature
            | Dimension::TemperatureDifference
            | Dimension::Current
            | Dimension::Plain => String::new(),
        }
    }
}
