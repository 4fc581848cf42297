//! Of states at the hand-back.

use super::Said;
use crate::scenario::EndState;
use crate::text::Message;

/// The finished unit has not run for long enough.
pub(in crate::coach) const NOT_RUN: Said = Said::new("thought-not-run-aim", "thought-not-run-way");

/// A state that is not as asked.
pub(in crate::coach) const fn end(state: EndState) -> Said {
    match state {
        EndState::ChargeShare => Said::new("thought-charge-share-aim", "thought-charge-share-way"),
        EndState::SuperheatOffTarget => Said::new(
            "thought-superheat-target-aim",
            "thought-superheat-target-way",
        ),
        EndState::Subcooling => {
            Said::new("thought-subcooling-end-aim", "thought-subcooling-end-way")
        }
        EndState::PermanentGas => {
            Said::new("thought-permanent-gas-aim", "thought-permanent-gas-way")
        }
        EndState::Water => Said::new("thought-water-aim", "thought-water-way"),
        EndState::DrierWater => Said::new("thought-drier-water-aim", "thought-drier-water-way"),
        EndState::RefrigerantLost => Said::new("thought-lost-aim", "thought-lost-way"),
        EndState::LeakRate => Said::new("thought-tight-aim", "thought-tight-way"),
        EndState::DropAcrossDrier => Said::new("thought-drier-drop-aim", "thought-drier-drop-way"),
    }
}

/// What a state is called.
pub(in crate::coach) const fn state_name(state: EndState) -> Message {
    Message::new(match state {
        EndState::ChargeShare => "coach-state-charge",
        EndState::SuperheatOffTarget => "coach-state-superheat",
        EndState::Subcooling => "coach-state-subcooling",
        EndState::PermanentGas => "coach-state-gas",
        EndState::Water => "coach-state-water",
        EndState::DrierWater => "coach-state-drier-water",
        EndState::RefrigerantLost => "coach-state-lost",
        EndState::LeakRate => "coach-state-leak",
        EndState::DropAcrossDrier => "coach-state-drop",
    })
}
