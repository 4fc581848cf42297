//! Of conditions that must hold together.

use super::Said;
use crate::coach::stage::Subject;

/// What conditions are about.
pub(in crate::coach) const fn subject(subject: Subject) -> Said {
    match subject {
        Subject::SteadyRun => Said {
            aim: "From when on may you believe what the gauges show?",
            way: "After a start pressures and temperatures wander for a good ten minutes. They \
                  are steady when the strip chart lies flat.",
        },
        Subject::WatchedRun => Said {
            aim: "What does the unit do if nobody touches it and somebody watches?",
            way: "Some faults come and go. A quarter of an hour of the low gauge says more than \
                  one look.",
        },
        Subject::Sniff => Said {
            aim: "A closed circuit uses nothing up. If some is missing, where did it go?",
            way: "Refrigerant is heavier than air: the detector is held below each joint, slowly, \
                  out of the wind. Oil marks a place worth a look.",
        },
        Subject::BubblesGrow => Said {
            aim: "The detector says near. What says exactly where?",
            way: "Bubble solution grows at the very spot, if there is pressure behind it. Give it \
                  time at each place.",
        },
        Subject::BubblesStill => Said {
            aim: "How do you prove that this very joint is cured?",
            way: "Wetted and under test pressure nothing may grow. The low gauge tells that there \
                  is pressure, the bubbles that none gets out.",
        },
        Subject::PressureTest => Said {
            aim: "How would you know that nothing leaves, when a gauge is so coarse?",
            way: "With the source shut off: note pressure and time, and wait. What falls in \
                  steady weather is a leak. The low gauge tells.",
        },
        Subject::Decay => Said {
            aim: "What does a deep vacuum prove while the pump still pulls?",
            way: "Nothing. With the pump shut off, flat is dry and tight, a rise that levels off \
                  is water, a steady rise is a leak. The micron gauge tells, away from the pump.",
        },
        Subject::Other => Said {
            aim: "What has to stay as it is, and for how long?",
            way: "One look is no proof, time is. The instruments named in the task tell.",
        },
    }
}
