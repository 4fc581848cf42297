//! What the watch can note.

use super::{Dimension, Where};
use crate::kit::plain::plain;
use crate::kit::{Counts, FindingRow, Item, RowPrice, Stage, tools};
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoEnumIterator, VariantNames};

/// A kind of fact that the job's watch notes.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Serialize,
    Deserialize,
    EnumIter,
    VariantNames,
)]
#[serde(remote = "Self")]
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
    /// The high-pressure switch had to stop the compressor.
    HighPressureTrip,
    /// The micron gauge met a pressure that ruins it; size is that pressure, Pa gauge.
    MicronGaugeOverPressured,
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
    /// Of a tool. A file leaves this word out: `Nitrogen(NoRegulator)`.
    #[serde(skip)]
    #[strum(disabled)]
    Tool(tools::Finding),
}

plain!(FindingKind, tools::Finding, earlier: [
    "NoRegulator" => Nitrogen "NoRegulator",
    "PumpUnderPressure" => VacuumPump "UnderPressure",
    "PumpedAway" => VacuumPump "PumpedAway",
]);

/// Hours to cut off a flare and make it again. Chosen.
const FLARE: f64 = 0.5;

/// Hours to come back for what was forgotten. Chosen.
const CALL_BACK: f64 = 1.0;

/// Hours to evacuate once more. Chosen.
const EVACUATION: f64 = 2.0;

/// Hours to pump down, change a drier and evacuate once more. Chosen.
const DRIER: f64 = 3.0;

impl FindingKind {
    /// What was found of a tool.
    pub fn of(one: impl Into<tools::Finding>) -> Self {
        Self::Tool(one.into())
    }

    /// Every kind.
    pub fn all() -> impl Iterator<Item = Self> {
        Self::iter().chain(tools::Finding::all().map(Self::Tool))
    }

    /// What is fixed of the kind.
    ///
    /// Chosen: a finding counts from a tenth of a gram of refrigerant, a hundredth of air, half a
    /// gram of what burns, and the second or two in which a gauge shows a thing.
    pub fn row(self) -> FindingRow {
        use RowPrice::{Lost, Priceless, Risked};
        let row = FindingRow::new;
        let count = |price| row(Dimension::Plain, price);
        let forgotten = Lost(Item::Hours(CALL_BACK));
        let compressor = Risked(Item::Compressor);
        match self {
            Self::Released => row(Dimension::Mass, Lost(Item::Refrigerant)).from_size(1e-4),
            Self::AirDrawnIn => {
                row(Dimension::Mass, Risked(Item::Hours(EVACUATION))).from_size(1e-5)
            }
            Self::OpenedUnderPressure => row(Dimension::GaugePressure, Priceless)
                .highest()
                .at(Stage::Open),
            Self::StoodOpen => row(Dimension::Time, Risked(Item::Drier(0.0)))
                .from_size(1.0)
                .at(Stage::Close),
            Self::RanInVacuum => row(Dimension::Time, compressor).from_size(2.0),
            Self::RanWithoutOilReturn => row(Dimension::Time, compressor).from_size(60.0),
            Self::EnergisedInDeepVacuum => count(Lost(Item::Compressor)),
            Self::LiquidToCompressor => row(Dimension::Mass, compressor).from_size(0.02),
            Self::OverNameplate => row(Dimension::PressureDifference, Priceless).highest(),
            Self::HighPressureTrip => count(compressor),
            Self::MicronGaugeOverPressured => {
                row(Dimension::GaugePressure, Lost(Item::MicronGauge))
                    .highest()
                    .at(Stage::LetBack)
            }
            Self::WorkedLive | Self::Unventilated => count(Priceless).at(Stage::LockOut),
            Self::Unprotected => count(Priceless).at(Stage::Arrive),
            Self::OverTightened => count(Lost(Item::Hours(FLARE))),
            Self::JointLeftLoose => count(forgotten).at(Stage::Close),
            Self::CapLeftOff | Self::KitLeftOn | Self::ValveLeftShut => {
                count(forgotten).at(Stage::Leave)
            }
            Self::DrierBackwards => count(Lost(Item::Drier(DRIER))).at(Stage::Part),
            Self::IgnitionRisk => row(Dimension::Mass, Priceless).from_size(5e-4),
            Self::FlammableAir | Self::OpenedUnpurged => count(Priceless).highest(),
            Self::ToolNotRated => count(Priceless),
            Self::Tool(finding) => finding.row(),
        }
    }

    /// What its size measures; a kind that is only counted has a plain size of 1.
    pub fn dimension(self) -> Dimension {
        self.row().dimension
    }

    /// Whether of several findings the highest counts; of the others the sum.
    pub fn highest_counts(self) -> bool {
        self.row().counts == Counts::Highest
    }
}

/// One fact that the watch noted. While its event goes on, its size grows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finding {
    /// The tick at which the event began.
    pub tick: u64,
    /// What it was.
    pub kind: FindingKind,
    /// How much, in the SI unit of the kind.
    pub size: f64,
    /// Where it was.
    pub at: Where,
}
