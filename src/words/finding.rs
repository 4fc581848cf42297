//! What the watch can note.

use super::Dimension;
use crate::text::Message;
use serde::{Deserialize, Serialize};

/// A kind of fact that the job's watch notes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum FindingKind {
    /// Refrigerant went to the air; size in kilograms.
    Released,
    /// Air went into the circuit; size in kilograms.
    AirDrawnIn,
    /// A joint was opened with pressure behind it; size is that pressure, Pa gauge.
    OpenedUnderPressure,
    /// The circuit stood open to the air; size in seconds.
    StoodOpen,
    /// The compressor ran with its suction below the atmosphere; size in seconds.
    RanInVacuum,
    /// The compressor ran with too little flow to bring its oil back; size in seconds.
    RanWithoutOilReturn,
    /// The compressor was energised in a deep vacuum: its motor is ruined.
    EnergisedInDeepVacuum,
    /// Liquid came back to the running compressor; size in kilograms.
    LiquidToCompressor,
    /// A part stood above its nameplate pressure; size is the excess, Pa.
    OverNameplate,
    /// Nitrogen was let in without a regulator.
    NoRegulator,
    /// The high-pressure switch had to stop the compressor.
    HighPressureTrip,
    /// The micron gauge met a pressure that ruins it; size is that pressure, Pa gauge.
    MicronGaugeOverPressured,
    /// The running vacuum pump met pressure from the circuit; size is that pressure, Pa gauge.
    PumpUnderPressure,
    /// Refrigerant was pumped out through the vacuum pump; size in kilograms.
    PumpedAway,
    /// Hands were in the unit while it was live.
    WorkedLive,
    /// Circuit work without glasses and gloves.
    Unprotected,
    /// A flare was tightened beyond what it bears: it cracked.
    OverTightened,
    /// A joint was left short of its torque at the hand-back; size is the shortfall, N m.
    JointLeftLoose,
    /// A cap was left off at the hand-back.
    CapLeftOff,
    /// A hose, tool or instrument was left on the unit at the hand-back.
    KitLeftOn,
    /// A service valve was not back-seated at the hand-back.
    ValveLeftShut,
    /// The drier's arrow points against the flow.
    DrierBackwards,
    /// Refrigerant that burns went out beside something that could light it; size in kilograms.
    IgnitionRisk,
    /// Refrigerant that burns gathered in the air of a room; size is the highest share of its
    /// lower flammability limit, from a quarter of it.
    FlammableAir,
    /// A joint was opened with refrigerant that burns behind it, not purged with nitrogen; size is
    /// its density as a share of the lower flammability limit.
    OpenedUnpurged,
    /// A joint of a circuit whose refrigerant burns was opened in a room that is not ventilated.
    Unventilated,
    /// A tool that is not rated for refrigerants that burn was used at a unit with one.
    ToolNotRated,
}

impl FindingKind {
    /// Every kind.
    pub const ALL: [Self; 27] = [
        Self::Released,
        Self::AirDrawnIn,
        Self::OpenedUnderPressure,
        Self::StoodOpen,
        Self::RanInVacuum,
        Self::RanWithoutOilReturn,
        Self::EnergisedInDeepVacuum,
        Self::LiquidToCompressor,
        Self::OverNameplate,
        Self::NoRegulator,
        Self::HighPressureTrip,
        Self::MicronGaugeOverPressured,
        Self::PumpUnderPressure,
        Self::PumpedAway,
        Self::WorkedLive,
        Self::Unprotected,
        Self::OverTightened,
        Self::JointLeftLoose,
        Self::CapLeftOff,
        Self::KitLeftOn,
        Self::ValveLeftShut,
        Self::DrierBackwards,
        Self::IgnitionRisk,
        Self::FlammableAir,
        Self::OpenedUnpurged,
        Self::Unventilated,
        Self::ToolNotRated,
    ];

    /// What its size measures; a kind that is only counted has a plain size of 1.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Released
            | Self::AirDrawnIn
            | Self::LiquidToCompressor
            | Self::PumpedAway
            | Self::IgnitionRisk => Dimension::Mass,
            Self::OpenedUnderPressure
            | Self::MicronGaugeOverPressured
            | Self::PumpUnderPressure => Dimension::GaugePressure,
            Self::OverNameplate => Dimension::PressureDifference,
            Self::StoodOpen | Self::RanInVacuum | Self::RanWithoutOilReturn => Dimension::Time,
            _ => Dimension::Plain,
        }
    }

    /// Whether of several findings the highest counts; of the others the sum.
    pub const fn highest_counts(self) -> bool {
        matches!(
            self.dimension(),
            Dimension::GaugePressure | Dimension::PressureDifference
        ) || matches!(self, Self::FlammableAir | Self::OpenedUnpurged)
    }
}

/// One fact that the watch noted. While its event goes on, its size grows.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// The tick at which the event began.
    pub tick: u64,
    /// What it was.
    pub kind: FindingKind,
    /// How much, in the SI unit of the kind.
    pub size: f64,
    /// Where it was, as a technician calls the place.
    pub place: Message,
    /// The same in the technician's words, with place and size.
    pub text: Message,
}
