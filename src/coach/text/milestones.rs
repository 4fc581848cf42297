//! Of milestones.

use super::Said;
use crate::plant::Line;
use crate::words::{Hose, Milestone};

/// A second time is asked for.
pub(in crate::coach) const AGAIN: Said = Said {
    aim: "Once is one look. What would a second time show that the first could not?",
    way: "Some faults thaw, drain or settle while the unit rests, and come back. Compare the \
          gauges of both runs on the strip chart.",
};

/// Refrigerant before nitrogen.
pub(in crate::coach) const TRACE: Said = Said {
    aim: "What will the detector hear in a circuit full of pure nitrogen?",
    way: "Nothing. A trace of refrigerant goes in first, a few psi on the low gauge, and the \
          nitrogen on top of it.",
};

/// Nitrogen after the pump has pulled.
pub(in crate::coach) const VACUUM_BROKEN: Said = Said {
    aim: "What is still inside when a vacuum comes to rest and goes no deeper?",
    way: "Water boils off slowly and leaves slowly. Dry gas takes it along at the next pull; the \
          decay on the micron gauge tells whether it helped.",
};

/// Nothing is left.
pub(in crate::coach) const HAND_BACK: Said = Said {
    aim: "Would you get into the van now, or is there something you would come back for?",
    way: "Walk round once: what runs, what is capped, what is written down, what the customer \
          was told.",
};

/// A milestone.
pub(in crate::coach) const fn milestone(milestone: Milestone) -> Said {
    match milestone {
        Milestone::FrontSeated(Line::Liquid) => Said {
            aim: "Where should the charge be while the lines are open, and how does it get there?",
            way: "The compressor fills whatever has its way out shut, so the liquid side comes \
                  first. The low gauge tells what is left in the lines.",
        },
        Milestone::FrontSeated(Line::Suction) => Said {
            aim: "When is the low side empty enough, and what if the compressor goes on?",
            way: "Below the atmosphere air comes in and the motor loses its cooling. Watch the \
                  low gauge down, stop at once, then see whether it climbs again.",
        },
        Milestone::Opened(Line::Liquid) => Said {
            aim: "How does the charge come back without a jolt, and what has to be out of its way?",
            way: "What bears no pressure is isolated first. Then liquid, slowly, until the low \
                  gauge stands well above the atmosphere.",
        },
        Milestone::Opened(Line::Suction) => Said {
            aim: "What must the low side show before the vapour side is given free?",
            way: "Nothing may rush: both sides of the valve near each other. The low gauge tells.",
        },
        Milestone::Broke(_) | Milestone::BrokeAnyJoint => Said {
            aim: "What has to be true of the circuit before a flare may be opened?",
            way: "Nothing may be behind it: the charge shut away, the supply dead and locked, no \
                  pressure. The low gauge tells what is left, the first crack of the nut the rest.",
        },
        Milestone::MadeUp(_) => Said {
            aim: "What makes a flare tight: force, or the right force?",
            way: "A clean face, a drop of oil, two wrenches, and the torque that belongs to the \
                  size of the tube. The torque wrench tells.",
        },
        Milestone::RenewedFlare(_) => Said {
            aim: "Why does a joint leak that was pulled tight more than once?",
            way: "A scored face does not seal, however hard it is pressed. Look at it when the \
                  joint is apart.",
        },
        Milestone::DrierOut => Said {
            aim: "Which part of this circuit has done its time?",
            way: "A drier that is full or that holds back is not cleaned. What it has taken up, \
                  and the temperatures before and after it, tell.",
        },
        Milestone::DrierIn => Said {
            aim: "What goes in last of all, and stands open shortest?",
            way: "Its filling drinks the air of the place within minutes. The arrow goes with the \
                  liquid, toward the metering device.",
        },
        Milestone::ChangedFilter => Said {
            aim: "Does the indoor coil get the air that it needs?",
            way: "With little air a coil goes below freezing before anything else is wrong. \
                  Compare return and supply air.",
        },
        Milestone::Sniffed(_) => Said {
            aim: "A closed circuit uses nothing up. If some is missing, where did it go?",
            way: "Refrigerant is heavier than air: the detector is held below each joint, slowly, \
                  out of the wind. Oil marks a place worth a look.",
        },
        Milestone::Wetted(_) => Said {
            aim: "The detector says near. What says exactly where?",
            way: "Bubble solution grows at the very spot, if there is pressure behind it.",
        },
        Milestone::Purged(Hose::Low | Hose::High) => Said {
            aim: "What is inside a hose that comes from the cart, and where would it go?",
            way: "Air. A breath of refrigerant from the unit pushes it out at the manifold, \
                  before anything runs.",
        },
        Milestone::Purged(Hose::Centre) => Said {
            aim: "What stands in the hose between the cylinder and the manifold?",
            way: "Air, until what comes next has pushed it out.",
        },
        Milestone::NitrogenOpened => Said {
            aim: "How is it proved tight before it costs refrigerant?",
            way: "With dry nitrogen, through its regulator, in steps. The outlet gauge tells what \
                  goes in, the nameplate how much may.",
        },
        Milestone::PumpStarted => Said {
            aim: "What is inside now that must be gone before refrigerant comes back?",
            way: "Air and water, and they leave only by a deep vacuum: wide ways, fresh oil, and \
                  the micron gauge far from the pump.",
        },
        Milestone::CoolingCalled => Said {
            aim: "What can a unit at rest not tell?",
            way: "At rest all gauges say the same. Only a running circuit shows what each part \
                  does, so everything that reads is in place before.",
        },
        Milestone::LockedOut => Said {
            aim: "Who could start this machine while your hands are in it?",
            way: "Off is not dead. Your own lock and tag hold the supply away; then the meter \
                  proves it.",
        },
        Milestone::VerifiedDead => Said {
            aim: "How do you know that it is dead?",
            way: "A capacitor keeps its charge after the switch is off. The meter tells, when it \
                  was tried on something live.",
        },
        Milestone::CylinderOpened => Said {
            aim: "How much is missing, and how will you know when it is enough?",
            way: "By weight, in small steps, with a wait after each. The scale tells what went \
                  in, superheat or subcooling when to stop.",
        },
        Milestone::Diagnosed => super::DIAGNOSIS,
        Milestone::HandedBack => HAND_BACK,
    }
}

/// A milestone as something that is so once it is reached; `place` is what a joint or spot may be
/// called.
pub(in crate::coach) fn goal(
    milestone: Milestone,
    place: &dyn Fn(&'static str) -> String,
) -> String {
    let valve = |line| match line {
        Line::Liquid => "liquid valve",
        Line::Suction => "suction valve",
    };
    let told = match milestone {
        Milestone::FrontSeated(line) => return format!("the {} on its front seat", valve(line)),
        Milestone::Opened(line) => return format!("the {} off its seat", valve(line)),
        Milestone::Broke(joint) => return format!("{} open", place(joint.label())),
        Milestone::MadeUp(joint) => {
            return format!("{} made up to its torque", place(joint.label()));
        }
        Milestone::RenewedFlare(joint) => return format!("a new face at {}", place(joint.label())),
        Milestone::Sniffed(spot) => return format!("the detector held at {}", place(spot.label())),
        Milestone::Wetted(spot) => return format!("bubble solution on {}", place(spot.label())),
        Milestone::BrokeAnyJoint => "the circuit open",
        Milestone::DrierOut => "the old drier out",
        Milestone::DrierIn => "a new drier in the line, arrow with the flow",
        Milestone::ChangedFilter => "a clean air filter",
        Milestone::Purged(Hose::Low) => "the low hose purged",
        Milestone::Purged(Hose::High) => "the high hose purged",
        Milestone::Purged(Hose::Centre) => "the centre hose purged",
        Milestone::NitrogenOpened => "nitrogen let in",
        Milestone::PumpStarted => "the vacuum pump running",
        Milestone::CoolingCalled => "cooling called for",
        Milestone::LockedOut => "lock and tag on the disconnect",
        Milestone::VerifiedDead => "no voltage, and the proof of it",
        Milestone::CylinderOpened => "refrigerant let in from the cylinder",
        Milestone::Diagnosed => "a diagnosis on the sheet",
        Milestone::HandedBack => "the job handed back",
    };
    told.to_owned()
}
