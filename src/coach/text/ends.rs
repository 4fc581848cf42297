//! Of states at the hand-back.

use super::Said;
use crate::scenario::EndState;

/// The finished unit has not run for long enough.
pub(in crate::coach) const NOT_RUN: Said = Said {
    aim: "The repair is done. How does anybody know that the unit is right?",
    way: "Only a run tells, long enough to be steady, on the circuit as it is handed back. Then \
          superheat and subcooling, worked out once more.",
};

/// A state that is not as asked.
pub(in crate::coach) const fn end(state: EndState) -> Said {
    match state {
        EndState::ChargeShare => Said {
            aim: "How much belongs in this unit, and how much is in it?",
            way: "The nameplate says what belongs in, the scale what goes in, superheat or \
                  subcooling whether it fits. Small steps, and a wait after each.",
        },
        EndState::SuperheatOffTarget => Said {
            aim: "Is the superheat what this weather asks for?",
            way: "The charging chart has the target for outdoor air and indoor wet bulb. More \
                  charge lowers the superheat of a fixed orifice; a wait shows by how much.",
        },
        EndState::Subcooling => Said {
            aim: "How much liquid stands before the metering device?",
            way: "With an expansion valve subcooling tells the charge: liquid pressure and \
                  liquid line, against the nameplate.",
        },
        EndState::PermanentGas => Said {
            aim: "What else is in the circuit beside refrigerant and oil?",
            way: "Air and nitrogen do not condense: they stay in the condenser and raise the head \
                  pressure. Only a vacuum takes them out.",
        },
        EndState::Water => Said {
            aim: "Is it dry, or did it only look so for a moment?",
            way: "Water hides in oil and drier and comes out slowly. A decay that levels off \
                  above the pump's own vacuum tells, on the micron gauge.",
        },
        EndState::DrierWater => Said {
            aim: "How much of its life did the drier spend on the air of the place?",
            way: "Its filling takes up water as long as it stands open. The clock tells.",
        },
        EndState::RefrigerantLost => Said {
            aim: "Where did the charge go?",
            way: "The scale and the job sheet tell what went in and out.",
        },
        EndState::LeakRate => Said {
            aim: "How do you know that it is tight under the pressure it works at?",
            way: "The detector below each joint that was touched, then bubbles, with the unit \
                  running.",
        },
        EndState::DropAcrossDrier => Said {
            aim: "Does the liquid arrive as it left?",
            way: "Where liquid is throttled it cools. A thermometer before and one after the \
                  drier tell.",
        },
    }
}

/// What a state is called.
pub(in crate::coach) const fn state_name(state: EndState) -> &'static str {
    match state {
        EndState::ChargeShare => "charge, as a share of what belongs in",
        EndState::SuperheatOffTarget => "superheat less its target",
        EndState::Subcooling => "subcooling",
        EndState::PermanentGas => "air and nitrogen inside",
        EndState::Water => "water inside",
        EndState::DrierWater => "water in the drier",
        EndState::RefrigerantLost => "refrigerant lost",
        EndState::LeakRate => "leak, grams a year",
        EndState::DropAcrossDrier => "temperature drop across the drier",
    }
}
