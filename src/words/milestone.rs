//! Milestones and conditions: the words in which a rubric speaks about a course of events.

use super::{Action, Bound, GaugePlace, Hose, Reading, Spot};
use crate::kit::plain::plain;
use crate::kit::tools;
use crate::plant::{Joint, Line};
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoEnumIterator, VariantNames};

/// A thing done that a rubric can ask for or put in order.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, VariantNames)]
#[serde(remote = "Self")]
pub enum Milestone {
    /// A service valve was front-seated.
    FrontSeated(Line),
    /// A service valve was opened from its seat, by however little.
    Opened(Line),
    /// A joint was cracked or taken apart.
    Broke(Joint),
    /// Any joint was cracked or taken apart.
    BrokeAnyJoint,
    /// A joint was made up.
    MadeUp(Joint),
    /// A flare was renewed.
    RenewedFlare(Joint),
    /// The old drier came out.
    DrierOut,
    /// The new drier went in.
    DrierIn,
    /// The indoor air filter was changed.
    ChangedFilter,
    /// The detector was held at a spot.
    Sniffed(Spot),
    /// A spot was wetted with bubble solution.
    Wetted(Spot),
    /// A hose was purged.
    Purged(Hose),
    /// The compressor was called for.
    CoolingCalled,
    /// The electric supply was locked out.
    LockedOut,
    /// It was proved that nothing is live.
    VerifiedDead,
    /// Doors were opened and a fan was set up.
    Ventilated,
    /// A diagnosis was written down.
    Diagnosed,
    /// The job was handed back.
    HandedBack,
    /// With a tool. A file leaves this word out: `VacuumPump(Started)`.
    #[serde(skip)]
    Tool(tools::Milestone),
}

plain!(Milestone, tools::Milestone, earlier: [
    "NitrogenOpened" => Nitrogen "Opened",
    "CylinderOpened" => RefrigerantCylinder "Opened",
    "PumpStarted" => VacuumPump "Started",
]);

impl Milestone {
    /// What was done with a tool.
    pub fn of(one: impl Into<tools::Milestone>) -> Self {
        Self::Tool(one.into())
    }

    /// Whether an action that was carried out reaches this milestone.
    pub fn is_reached_by(self, action: &Action) -> bool {
        use super::{DisconnectMove, ThermostatCall};
        match self {
            Self::FrontSeated(line) => {
                matches!(action, Action::Stem { line: l, open } if line == *l && open.get() == 0.0)
            }
            Self::Opened(line) => {
                matches!(action, Action::Stem { line: l, open } if line == *l && open.get() > 0.0)
            }
            Self::Broke(joint) => {
                matches!(action, Action::Loosen(j) | Action::TakeApart(j) if joint == *j)
            }
            Self::BrokeAnyJoint => matches!(action, Action::Loosen(_) | Action::TakeApart(_)),
            Self::MadeUp(joint) => {
                matches!(action, Action::MakeUp { joint: j, .. } if joint == *j)
            }
            Self::RenewedFlare(joint) => *action == Action::RenewFlare(joint),
            Self::DrierOut => matches!(action, Action::TakeOutDrier),
            Self::DrierIn => matches!(action, Action::FitDrier(_)),
            Self::ChangedFilter => matches!(action, Action::ChangeFilter),
            Self::Sniffed(spot) => *action == Action::Sniff(spot),
            Self::Wetted(spot) => *action == Action::Wet(spot),
            Self::Purged(hose) => *action == Action::Purge(hose),
            Self::CoolingCalled => *action == Action::Thermostat(ThermostatCall::Cool),
            Self::LockedOut => *action == Action::Disconnect(DisconnectMove::LockAndTag),
            Self::VerifiedDead => matches!(action, Action::VerifyDead),
            Self::Ventilated => matches!(action, Action::Ventilate(true)),
            Self::Diagnosed => matches!(action, Action::Diagnose(_)),
            Self::HandedBack => matches!(action, Action::HandBack),
            Self::Tool(milestone) => {
                matches!(action, Action::Tool(done) if done.reaches() == Some(milestone))
            }
        }
    }
}

/// A state of things that anybody at the unit can see.
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
pub enum Status {
    /// The compressor runs.
    CompressorRuns,
    /// The micron gauge reads the circuit and not the pump: manifold or port.
    GaugeAwayFromPump,
    /// The micron gauge sits at a port of the unit.
    GaugeAtUnit,
    /// Both manifold hand valves are open.
    BothHandValvesOpen,
    /// The charge is shut in: liquid and suction valve are front-seated, or in a unit with a
    /// receiver the liquid valve is and the compressor stands.
    ChargeIsolated,
    /// The disconnect is locked and tagged.
    LockedOut,
    /// The work is ventilated.
    Ventilated,
    /// Of a tool. A file leaves this word out: `Nitrogen(ShutOff)`.
    #[serde(skip)]
    #[strum(disabled)]
    Tool(tools::Status),
}

plain!(Status, tools::Status, earlier: [
    "Evacuating" => VacuumPump "Evacuating",
    "PumpShutOff" => VacuumPump "ShutOff",
    "NitrogenShutOff" => Nitrogen "ShutOff",
    "RegulatorFitted" => Nitrogen "RegulatorFitted",
]);

impl Status {
    /// What can be seen of a tool.
    pub fn of(one: impl Into<tools::Status>) -> Self {
        Self::Tool(one.into())
    }

    /// How many there are.
    pub const COUNT: usize = OWN + tools::Status::COUNT;

    /// Every status that a criterion can name.
    pub fn all() -> impl Iterator<Item = Self> {
        Self::iter().chain(tools::Status::all().map(Self::Tool))
    }

    /// Its place in [`Status::all`].
    pub fn index(self) -> usize {
        match self {
            Self::CompressorRuns => 0,
            Self::GaugeAwayFromPump => 1,
            Self::GaugeAtUnit => 2,
            Self::BothHandValvesOpen => 3,
            Self::ChargeIsolated => 4,
            Self::LockedOut => 5,
            Self::Ventilated => 6,
            Self::Tool(status) => OWN + status.index(),
        }
    }
}

/// How many statuses are not those of a tool.
const OWN: usize = 7;

/// What must be so for an action or a stretch of time to count.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Condition {
    /// An instrument shows a value in a bound.
    Shows(Reading, Bound),
    /// Something can be seen to be so.
    Is(Status),
    /// Something can be seen not to be so.
    IsNot(Status),
    /// The micron gauge is here.
    GaugeAt(GaugePlace),
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_status_has_a_place_of_its_own() {
        assert!(Status::all().map(Status::index).eq(0..Status::COUNT));
    }
}
