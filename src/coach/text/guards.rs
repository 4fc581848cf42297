//! Of events that can be kept off.

use super::{Said, milestone};
use crate::words::{FindingKind, Milestone};

/// An event that could come as things stand.
pub(in crate::coach) const fn guard(kind: FindingKind) -> Said {
    match kind {
        FindingKind::Unprotected => Said {
            aim: "What could reach your eyes and hands before you know it?",
            way: "Liquid refrigerant burns cold, and a fitting lets go without a warning. What \
                  you wear tells.",
        },
        FindingKind::WorkedLive => milestone(Milestone::LockedOut),
        FindingKind::OpenedUnderPressure => milestone(Milestone::BrokeAnyJoint),
        FindingKind::DrierBackwards => Said {
            aim: "Which way does the liquid flow here, and which way does the drier want it?",
            way: "The arrow on the shell points with the flow, toward the metering device.",
        },
        FindingKind::StoodOpen => Said {
            aim: "What goes into a pipe that stands open?",
            way: "The air of the place, with its water: into the oil and into the drier. The \
                  clock tells; what is not worked on is plugged.",
        },
        FindingKind::JointLeftLoose => {
            milestone(Milestone::MadeUp(crate::plant::Joint::DrierInlet))
        }
        FindingKind::NoRegulator => Said {
            aim: "What stands between a full nitrogen cylinder and a thin coil?",
            way: "Only a regulator, with its screw backed off before the cylinder opens. Its two \
                  gauges tell.",
        },
        FindingKind::PumpUnderPressure => Said {
            aim: "What can the vacuum pump not bear at its inlet?",
            way: "Pressure. The nitrogen goes to the open air first, slowly. The low gauge tells \
                  when it is gone.",
        },
        FindingKind::MicronGaugeOverPressured => Said {
            aim: "Which of your instruments dies when the charge comes back?",
            way: "One made for a vacuum bears no pressure: it is isolated before anything opens.",
        },
        FindingKind::CapLeftOff => Said {
            aim: "What is the seal of a valve, when all is said and done?",
            way: "The cap. A core and a packing seep, a cap with its gasket does not. A walk \
                  round the unit tells.",
        },
        FindingKind::ValveLeftShut => Said {
            aim: "Where does a stem belong on a unit that is in service?",
            way: "On its back seat, out of the way of the flow. Turn by turn, until it stops.",
        },
        // The only kind left that has a stage: see `guard::stage`.
        _ => Said {
            aim: "What on this unit is yours?",
            way: "Hoses, tools and gauges go back to the cart, and each takes a breath along: \
                  the liquid of a hose is drawn into the low side first.",
        },
    }
}

/// What is to be so, so that it does not come.
pub(in crate::coach) const fn guard_goal(kind: FindingKind) -> &'static str {
    match kind {
        FindingKind::Unprotected => "glasses and gloves worn for all work on the circuit",
        FindingKind::WorkedLive => {
            "lock and tag on the disconnect, and no voltage, before hands go in"
        }
        FindingKind::OpenedUnderPressure => "no pressure behind a joint that is opened",
        FindingKind::DrierBackwards => "the arrow of the drier with the flow",
        FindingKind::StoodOpen => "no end of a pipe open to the air",
        FindingKind::JointLeftLoose => "each flare that was worked on at the torque of its size",
        FindingKind::NoRegulator => "the regulator on the nitrogen cylinder, backed off",
        FindingKind::PumpUnderPressure => "0 psig in the circuit before the pump is let to it",
        FindingKind::MicronGaugeOverPressured => "the micron gauge isolated from the circuit",
        FindingKind::CapLeftOff => "caps on both stems and both ports",
        FindingKind::ValveLeftShut => "both service valves back-seated",
        _ => "no hose, tool or gauge on the unit",
    }
}
