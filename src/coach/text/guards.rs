//! Of events that can be kept off.

use super::{Said, milestone};
use crate::text::Message;
use crate::words::{FindingKind, Milestone};

/// An event that could come as things stand.
pub(in crate::coach) fn guard(kind: FindingKind) -> Said {
    match kind {
        FindingKind::Unprotected => Said::new("thought-protect-aim", "thought-protect-way"),
        FindingKind::WorkedLive => milestone(Milestone::LockedOut),
        FindingKind::Unventilated => milestone(Milestone::Ventilated),
        FindingKind::OpenedUnderPressure => milestone(Milestone::BrokeAnyJoint),
        FindingKind::DrierBackwards => {
            Said::new("thought-drier-arrow-aim", "thought-drier-arrow-way")
        }
        FindingKind::StoodOpen => Said::new("thought-stand-open-aim", "thought-stand-open-way"),
        FindingKind::JointLeftLoose => {
            milestone(Milestone::MadeUp(crate::plant::Joint::DrierInlet))
        }
        FindingKind::Tool(finding) => Said::OfTool(finding.key()),
        FindingKind::MicronGaugeOverPressured => {
            Said::new("thought-gauge-pressure-aim", "thought-gauge-pressure-way")
        }
        FindingKind::CapLeftOff => Said::new("thought-caps-aim", "thought-caps-way"),
        FindingKind::ValveLeftShut => Said::new("thought-back-seat-aim", "thought-back-seat-way"),
        // The only kind left that has a stage: see `guard::stage`.
        _ => Said::new("thought-kit-aim", "thought-kit-way"),
    }
}

/// What is to be so, so that it does not come.
pub(in crate::coach) fn guard_goal(kind: FindingKind) -> Message {
    Message::new(match kind {
        FindingKind::Unprotected => "coach-goal-protected",
        FindingKind::WorkedLive => "coach-goal-not-live",
        FindingKind::Unventilated => "coach-goal-ventilated",
        FindingKind::OpenedUnderPressure => "coach-goal-no-pressure",
        FindingKind::DrierBackwards => "coach-goal-arrow",
        FindingKind::StoodOpen => "coach-goal-none-open",
        FindingKind::JointLeftLoose => "coach-goal-torque",
        FindingKind::Tool(finding) => return Message::form_of(finding.key(), "goal"),
        FindingKind::MicronGaugeOverPressured => "coach-goal-gauge-isolated",
        FindingKind::CapLeftOff => "coach-goal-caps",
        FindingKind::ValveLeftShut => "coach-goal-back-seated",
        _ => "coach-goal-nothing-left",
    })
}
