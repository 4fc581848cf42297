//! The state at the hand-back, or at the end of a course that was not handed back.
//!
//! What is only true of a running unit is taken at the end of the last stretch of running that
//! lasted at least 10 minutes and was not followed by work on the circuit, for the unit may be
//! switched off before the hoses come off.

use super::course::Course;
use super::mark::{Evidence, Verdict};
use super::phrases;
use crate::job::Truth;
use crate::scenario::EndState;
use crate::units::MassFlow;
use crate::words::{Bound, Quantity};

pub(super) fn judge(course: &Course, state: EndState, must: Bound) -> Verdict {
    let (tick, truth) = if needs_running(state) {
        let Some(proof) = &course.proof else {
            let text = format!(
                "{} cannot be judged: the finished unit was not run for 10 min",
                name(state)
            );
            return Verdict::new(false, vec![Evidence::at(course.end, text)]);
        };
        (proof.tick, &proof.truth)
    } else {
        (course.handed_back.unwrap_or(course.end), &course.truth)
    };
    let Some(si) = value(state, truth).filter(|value| value.is_finite()) else {
        let text = format!("{} cannot be told: {}", name(state), why_not(state));
        return Verdict::new(false, vec![Evidence::at(tick, text)]);
    };
    let quantity = Quantity {
        si,
        dimension: state.dimension(),
    };
    let is_met = must.holds(quantity);
    let text = format!(
        "{}: {}, {} {}",
        name(state),
        phrases::as_written(quantity, must.levels()[0]),
        if is_met { "as asked" } else { "not" },
        phrases::bound(must)
    );
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

const fn name(state: EndState) -> &'static str {
    match state {
        EndState::ChargeShare => "charge as a share of what belongs in",
        EndState::SuperheatOffTarget => "superheat off target",
        EndState::Subcooling => "subcooling",
        EndState::PermanentGas => "air and nitrogen left inside",
        EndState::Water => "water left inside",
        EndState::DrierWater => "water in the filter drier",
        EndState::RefrigerantLost => "refrigerant lost to the air",
        EndState::LeakRate => "leak in grams a year",
        EndState::DropAcrossDrier => "temperature drop across the drier",
    }
}

const fn why_not(state: EndState) -> &'static str {
    match state {
        EndState::SuperheatOffTarget => "no vapour at the suction valve, or no target in the chart",
        EndState::Subcooling => "no liquid at the liquid valve",
        _ => "no value",
    }
}
