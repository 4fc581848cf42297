//! The state at the hand-back, or at the end of a course that was not handed back.
//!
//! What is only true of a running unit is taken at the end of the last stretch of running that
//! lasted at least 10 minutes and was not followed by work on the circuit, for the unit may be
//! switched off before the hoses come off.

use super::course::Course;
use super::evidence;
use super::mark::{Evidence, Verdict};
use crate::job::Truth;
use crate::scenario::EndState;
use crate::text::Message;
use crate::units::MassFlow;
use crate::words::{Bound, Quantity};

pub(super) fn judge(course: &Course, state: EndState, must: Bound) -> Verdict {
    let (tick, truth) = if needs_running(state) {
        let Some(proof) = &course.proof else {
            let text = Message::new("mark-end-not-run").with("state", name(state));
            return Verdict::new(false, vec![Evidence::at(course.end, text)]);
        };
        (proof.tick, &proof.truth)
    } else {
        (course.handed_back.unwrap_or(course.end), &course.truth)
    };
    let Some(si) = value(state, truth).filter(|value| value.is_finite()) else {
        let text = Message::new("mark-end-unknown")
            .with("state", name(state))
            .with("why", why_not(state));
        return Verdict::new(false, vec![Evidence::at(tick, text)]);
    };
    let quantity = Quantity {
        si,
        dimension: state.dimension(),
    };
    let is_met = must.holds(quantity);
    let amount = evidence::as_written(quantity, must.levels()[0]);
    let text = if is_met {
        Message::new("mark-end-as-asked")
            .with("state", name(state))
            .with("amount", amount)
            .with("bound", evidence::bound(must))
    } else {
        Message::new("mark-end-not")
            .with("state", name(state))
            .with("amount", amount)
            .with("bound", evidence::bound(must))
    };
    Verdict::new(is_met, vec![Evidence::at(tick, text)])
}

/// Whether a state is only true of a running unit.
const fn needs_running(state: EndState) -> bool {
    matches!(
        state,
        EndState::SuperheatOffTarget | EndState::Subcooling | EndState::DropAcrossDrier
    )
}

/// The state in the SI unit of its dimension; grams a year for what leaks.
fn value(state: EndState, truth: &Truth) -> Option<f64> {
    Some(match state {
        EndState::ChargeShare => truth.charge / truth.nominal_charge,
        EndState::SuperheatOffTarget => truth.superheat - truth.target_superheat?,
        EndState::Subcooling => truth.subcooling,
        EndState::PermanentGas => truth.permanent_gas,
        EndState::Water => truth.water,
        EndState::DrierWater => truth.drier_water,
        EndState::RefrigerantLost => truth.refrigerant_released,
        EndState::LeakRate => MassFlow::from_kilograms_per_second(truth.leak).grams_per_year(),
        EndState::DropAcrossDrier => truth.drop_across_drier,
    })
}

const fn name(state: EndState) -> Message {
    Message::new(match state {
        EndState::ChargeShare => "mark-end-charge-share",
        EndState::SuperheatOffTarget => "mark-end-superheat",
        EndState::Subcooling => "mark-end-subcooling",
        EndState::PermanentGas => "mark-end-permanent-gas",
        EndState::Water => "mark-end-water",
        EndState::DrierWater => "mark-end-drier-water",
        EndState::RefrigerantLost => "mark-end-lost",
        EndState::LeakRate => "mark-end-leak",
        EndState::DropAcrossDrier => "mark-end-drier-drop",
    })
}

const fn why_not(state: EndState) -> Message {
    Message::new(match state {
        EndState::SuperheatOffTarget => "mark-end-no-superheat",
        EndState::Subcooling => "mark-end-no-subcooling",
        _ => "mark-end-no-value",
    })
}
