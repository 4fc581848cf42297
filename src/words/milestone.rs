//! Milestones and conditions: the words in which a rubric speaks about a course of events.

use super::{Action, Bound, GaugePlace, Hose, Reading, Spot};
use crate::plant::{Joint, Line};
use serde::{Deserialize, Serialize};

/// A thing done that a rubric can ask for or put in order.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
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
    /// The nitrogen cylinder was opened.
    NitrogenOpened,
    /// The vacuum pump was started.
    PumpStarted,
    /// The compressor was called for.
    CoolingCalled,
    /// The electric supply was locked out.
    LockedOut,
    /// It was proved that nothing is live.
    VerifiedDead,
    /// The refrigerant cylinder was opened.
    CylinderOpened,
    /// Doors were opened and a fan was set up.
    Ventilated,
    /// A diagnosis was written down.
    Diagnosed,
    /// The job was handed back.
    HandedBack,
}

impl Milestone {
    /// Whether an action that was carried out reaches this milestone.
    pub fn is_reached_by(self, action: &Action) -> bool {
        use super::{DisconnectMove, ThermostatCall};
        match (self, action) {
            (Self::FrontSeated(line), Action::Stem { line: l, open }) => {
                line == *l && open.get() == 0.0
            }
            (Self::Opened(line), Action::Stem { line: l, open }) => line == *l && open.get() > 0.0,
            (Self::Broke(joint), Action::Loosen(j) | Action::TakeApart(j))
            | (Self::MadeUp(joint), Action::MakeUp { joint: j, .. })
            | (Self::RenewedFlare(joint), Action::RenewFlare(j)) => joint == *j,
            (Self::Sniffed(spot), Action::Sniff(s)) | (Self::Wetted(spot), Action::Wet(s)) => {
                spot == *s
            }
            (Self::Purged(hose), Action::Purge(h)) => hose == *h,
            (Self::CylinderOpened, Action::CylinderValve(open)) => open.get() > 0.0,
            (Self::BrokeAnyJoint, Action::Loosen(_) | Action::TakeApart(_))
            | (Self::DrierOut, Action::TakeOutDrier)
            | (Self::DrierIn, Action::FitDrier(_))
            | (Self::ChangedFilter, Action::ChangeFilter)
            | (Self::NitrogenOpened, Action::NitrogenValve(true))
            | (Self::PumpStarted, Action::Pump(true))
            | (Self::CoolingCalled, Action::Thermostat(ThermostatCall::Cool))
            | (Self::LockedOut, Action::Disconnect(DisconnectMove::LockAndTag))
            | (Self::VerifiedDead, Action::VerifyDead)
            | (Self::Ventilated, Action::Ventilate(true))
            | (Self::Diagnosed, Action::Diagnose(_))
            | (Self::HandedBack, Action::HandBack) => true,
            _ => false,
        }
    }
}

/// A state of things that anybody at the unit can see.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Status {
    /// The compressor runs.
    CompressorRuns,
    /// The vacuum pump runs and its valve is open.
    Evacuating,
    /// The vacuum pump is shut off from the hoses, or stands still.
    PumpShutOff,
    /// The micron gauge reads the circuit and not the pump: manifold or port.
    GaugeAwayFromPump,
    /// The micron gauge sits at a port of the unit.
    GaugeAtUnit,
    /// The nitrogen cylinder or its regulator is shut off.
    NitrogenShutOff,
    /// The nitrogen regulator is fitted.
    RegulatorFitted,
    /// Both manifold hand valves are open.
    BothHandValvesOpen,
    /// The charge is shut in: liquid and suction valve are front-seated, or in a unit with a
    /// receiver the liquid valve is and the compressor stands.
    ChargeIsolated,
    /// The disconnect is locked and tagged.
    LockedOut,
    /// The work is ventilated.
    Ventilated,
}

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
