//! The schema of a rubric: criteria with their rules. `marking` has one file per kind of rule.

use crate::plant::{FaultKind, Spot};
use crate::units::Time;
use crate::words::{Bound, Condition, FindingKind, Level, Milestone, SheetField};
use serde::{Deserialize, Serialize};

/// One line of a rubric.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Criterion {
    /// What is asked, in the words of the trade.
    pub text: String,
    /// The points it gives.
    pub points: u32,
    /// Whether missing it fails the attempt outright.
    #[serde(default)]
    pub critical: bool,
    /// A published skill item, for example `EU 2015/2067 Annex I 5.01`.
    #[serde(default)]
    pub skill: Option<String>,
    /// How it is judged.
    pub rule: Rule,
}

/// How a criterion is judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Rule {
    /// An event must not happen, or come to no more than a limit over the whole job: amounts are
    /// added up, of pressures and shares of a limit the highest counts.
    Never {
        /// The kind of finding.
        finding: FindingKind,
        /// What is let pass; without it, one finding fails.
        #[serde(default)]
        up_to: Option<Level>,
    },
    /// One thing before another: the first `then` must have a `first` before it, and both happen.
    Order {
        /// What must come first.
        first: Milestone,
        /// What must come after.
        then: Milestone,
    },
    /// An action, at least once while all conditions held.
    Done {
        /// The action.
        what: Milestone,
        /// What the instruments and the site must have shown then.
        #[serde(default)]
        when: Vec<Condition>,
        /// Only after the first time this was reached; after itself asks for a second time.
        #[serde(default)]
        after: Option<Milestone>,
        /// Only before the first time this was reached, since `after` where that is asked.
        #[serde(default)]
        before: Option<Milestone>,
    },
    /// All conditions held together without a break.
    Hold {
        /// The conditions.
        all: Vec<Condition>,
        /// For how long.
        lasting: Time,
        /// How far each reading named in `all` may move while it lasts.
        #[serde(default)]
        within: Option<Level>,
        /// Only after the last time this was reached.
        #[serde(default)]
        after: Option<Milestone>,
        /// Only before the first time this was reached later.
        #[serde(default)]
        before: Option<Milestone>,
    },
    /// The state at the hand-back.
    End {
        /// What.
        state: EndState,
        /// Where it must lie.
        must: Bound,
    },
    /// A blank of the job sheet against what the instruments gave when it was written.
    Sheet {
        /// The blank.
        field: SheetField,
        /// How far it may be off.
        within: Level,
    },
    /// The diagnosis on the job sheet.
    Diagnosis {
        /// The fault; `None`: nothing is wrong.
        fault: Option<FaultKind>,
        /// Where, if that is asked.
        #[serde(default)]
        at: Option<Spot>,
    },
    /// The job handed back in time.
    InTime(Time),
    /// Left to the assessor.
    Judgement {
        /// The question that the assessor answers.
        question: String,
    },
}

/// A state of the unit that is looked at when the job is handed back.
///
/// Each is something a technician could have known: measured, or shown by the kit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum EndState {
    /// Refrigerant in the unit as a share of what belongs in it, plain number.
    ChargeShare,
    /// Superheat at the suction valve less the target for the weather, after 10 minutes of running.
    SuperheatOffTarget,
    /// Subcooling at the liquid valve, running.
    Subcooling,
    /// Air and nitrogen left in the unit, mass.
    PermanentGas,
    /// Water left in the unit, mass.
    Water,
    /// Water that the filter drier has taken up, mass.
    DrierWater,
    /// Refrigerant lost to the air over the job, mass.
    RefrigerantLost,
    /// What still leaks at the hand-back, grams a year as a plain number.
    LeakRate,
    /// Difference of temperature across the drier, running.
    DropAcrossDrier,
}

impl EndState {
    /// What its bound must be written in.
    pub const fn dimension(self) -> crate::words::Dimension {
        use crate::words::Dimension as D;
        match self {
            Self::ChargeShare | Self::LeakRate => D::Plain,
            Self::SuperheatOffTarget | Self::Subcooling | Self::DropAcrossDrier => {
                D::TemperatureDifference
            }
            Self::PermanentGas | Self::Water | Self::DrierWater | Self::RefrigerantLost => D::Mass,
        }
    }
}
