//! The manifold's hoses and hand valves.

use super::require;
use super::valves::port_label;
use crate::job::{Job, Refusal};
use crate::units::Fraction;
use crate::words::{Hose, HoseEnd};

/// How long a purge lets a breath out, s. Chosen: one to three grams (common practice).
const BREATH: f64 = 1.5;

/// How long a hose end spills until its low-loss fitting has shut, s. Chosen.
const SPILL: f64 = 0.3;

impl Job {
    pub(super) fn connect(&mut self, hose: Hose, to: HoseEnd) -> Result<(), Refusal> {
        require(
            self.kit.manifold.hose(hose).end.is_none(),
            "This hose is on something else: take it off first.",
        )?;
        require(
            to == HoseEnd::OpenAir || self.kit.manifold.hose_on(to).is_none(),
            "Another hose is there already.",
        )?;
        match (hose, to.port()) {
            (Hose::Centre, Some(_)) => {
                return Err(Refusal::because(
                    "The centre hose is for service: pump, nitrogen or cylinder.",
                ));
            }
            (Hose::Low | Hose::High, None) if to != HoseEnd::OpenAir => {
                return Err(Refusal::because("Only the centre hose reaches there."));
            }
            (_, Some(line)) => {
                let port = &self.fittings.valve(line).port;
                require(!port.cap_on, "Take the port cap off first.")?;
                self.hands_on_circuit(port_label(line));
            }
            (_, None) => {}
        }
        let state = self.kit.manifold.hose_mut(hose);
        state.end = Some(to);
        state.purged = false;
        Ok(())
    }

    pub(super) fn take_off(&mut self, hose: Hose) -> Result<(), Refusal> {
        let state = self.kit.manifold.hose_mut(hose);
        require(state.end.is_some(), "This hose is not on anything.")?;
        let from = state.end.take();
        if from != Some(HoseEnd::OpenAir) {
            state.spilling = SPILL;
        }
        if let Some(line) = from.and_then(HoseEnd::port) {
            self.hands_on_circuit(port_label(line));
        }
        Ok(())
    }

    pub(super) fn purge(&mut self, hose: Hose) -> Result<(), Refusal> {
        let state = self.kit.manifold.hose_mut(hose);
        require(
            state.end.is_some_and(|end| end != HoseEnd::OpenAir),
            "Put the hose on something that can purge it first.",
        )?;
        state.purging = BREATH;
        state.purged = true;
        Ok(())
    }

    pub(super) fn set_hand_valve(&mut self, hose: Hose, open: Fraction) -> Result<(), Refusal> {
        match hose {
            Hose::Low => self.kit.manifold.low_valve = open,
            Hose::High => self.kit.manifold.high_valve = open,
            Hose::Centre => {
                return Err(Refusal::because(
                    "The centre of the manifold has no hand valve.",
                ));
            }
        }
        Ok(())
    }
}
