//! Of milestones.

use super::Said;
use crate::plant::Line;
use crate::text::Message;
use crate::words::{Hose, Milestone};

/// A second time is asked for.
pub(in crate::coach) const AGAIN: Said = Said::new("thought-again-aim", "thought-again-way");

/// Refrigerant before nitrogen.
pub(in crate::coach) const TRACE: Said = Said::new("thought-trace-aim", "thought-trace-way");

/// Nitrogen after the pump has pulled.
pub(in crate::coach) const VACUUM_BROKEN: Said =
    Said::new("thought-vacuum-broken-aim", "thought-vacuum-broken-way");

/// Nothing is left.
pub(in crate::coach) const HAND_BACK: Said =
    Said::new("thought-hand-back-aim", "thought-hand-back-way");

/// A milestone.
pub(in crate::coach) fn milestone(milestone: Milestone) -> Said {
    match milestone {
        Milestone::FrontSeated(Line::Liquid) => Said::new(
            "thought-front-seat-liquid-aim",
            "thought-front-seat-liquid-way",
        ),
        Milestone::FrontSeated(Line::Suction) => Said::new(
            "thought-front-seat-suction-aim",
            "thought-front-seat-suction-way",
        ),
        Milestone::Opened(Line::Liquid) => {
            Said::new("thought-open-liquid-aim", "thought-open-liquid-way")
        }
        Milestone::Opened(Line::Suction) => {
            Said::new("thought-open-suction-aim", "thought-open-suction-way")
        }
        Milestone::Broke(_) | Milestone::BrokeAnyJoint => {
            Said::new("thought-open-joint-aim", "thought-open-joint-way")
        }
        Milestone::MadeUp(_) => Said::new("thought-make-up-aim", "thought-make-up-way"),
        Milestone::RenewedFlare(_) => {
            Said::new("thought-renew-flare-aim", "thought-renew-flare-way")
        }
        Milestone::DrierOut => Said::new("thought-drier-out-aim", "thought-drier-out-way"),
        Milestone::DrierIn => Said::new("thought-drier-in-aim", "thought-drier-in-way"),
        Milestone::ChangedFilter => {
            Said::new("thought-change-filter-aim", "thought-change-filter-way")
        }
        Milestone::Sniffed(_) => Said::new("thought-sniff-aim", "thought-sniff-way"),
        Milestone::Wetted(_) => Said::new("thought-wet-aim", "thought-wet-way"),
        Milestone::Purged(Hose::Low | Hose::High) => {
            Said::new("thought-purge-aim", "thought-purge-way")
        }
        Milestone::Purged(Hose::Centre) => {
            Said::new("thought-purge-centre-aim", "thought-purge-centre-way")
        }
        Milestone::CoolingCalled => Said::new("thought-cooling-aim", "thought-cooling-way"),
        Milestone::LockedOut => Said::new("thought-lock-out-aim", "thought-lock-out-way"),
        Milestone::Ventilated => Said::new("thought-ventilate-aim", "thought-ventilate-way"),
        Milestone::VerifiedDead => Said::new("thought-verify-dead-aim", "thought-verify-dead-way"),
        Milestone::Tool(milestone) => Said::OfTool(milestone.key()),
        Milestone::Diagnosed => super::DIAGNOSIS,
        Milestone::HandedBack => HAND_BACK,
    }
}

/// A milestone as something that is so once it is reached; `place` is what a joint or spot may be
/// called.
pub(in crate::coach) fn goal(milestone: Milestone, place: &dyn Fn(Message) -> Message) -> Message {
    let key = match milestone {
        Milestone::Broke(joint) => {
            return Message::new("coach-goal-broke").with("place", place(joint.label()));
        }
        Milestone::MadeUp(joint) => {
            return Message::new("coach-goal-made-up").with("place", place(joint.label()));
        }
        Milestone::RenewedFlare(joint) => {
            return Message::new("coach-goal-renewed").with("place", place(joint.label()));
        }
        Milestone::Sniffed(spot) => {
            return Message::new("coach-goal-sniffed").with("place", place(spot.label()));
        }
        Milestone::Wetted(spot) => {
            return Message::new("coach-goal-wetted").with("place", place(spot.label()));
        }
        Milestone::FrontSeated(Line::Liquid) => "coach-goal-liquid-shut",
        Milestone::FrontSeated(Line::Suction) => "coach-goal-suction-shut",
        Milestone::Opened(Line::Liquid) => "coach-goal-liquid-open",
        Milestone::Opened(Line::Suction) => "coach-goal-suction-open",
        Milestone::BrokeAnyJoint => "coach-goal-open",
        Milestone::DrierOut => "coach-goal-drier-out",
        Milestone::DrierIn => "coach-goal-drier-in",
        Milestone::ChangedFilter => "coach-goal-filter",
        Milestone::Purged(Hose::Low) => "coach-goal-purged-low",
        Milestone::Purged(Hose::High) => "coach-goal-purged-high",
        Milestone::Purged(Hose::Centre) => "coach-goal-purged-centre",
        Milestone::CoolingCalled => "coach-goal-cooling",
        Milestone::LockedOut => "coach-goal-locked",
        Milestone::VerifiedDead => "coach-goal-dead",
        Milestone::Ventilated => "coach-goal-ventilated",
        Milestone::Tool(milestone) => return Message::form_of(milestone.key(), "goal"),
        Milestone::Diagnosed => "coach-goal-diagnosed",
        Milestone::HandedBack => "coach-goal-handed-back",
    };
    Message::new(key)
}
