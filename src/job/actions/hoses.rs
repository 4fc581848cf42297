//! The manifold's hoses and hand valves.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::Spot;
use crate::text::Message;
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
            "refusal-hose-in-use",
        )?;
        require(
            to == HoseEnd::OpenAir || self.kit.manifold.hose_on(to).is_none(),
            "refusal-place-taken",
        )?;
        if let Some(tool) = to.tool() {
            require(self.kit.tools.has(tool), "refusal-not-on-cart")?;
        }
        match (hose, to.port()) {
            (Hose::Centre, Some(_)) => {
                return Err(Refusal::because(Message::new(
                    "refusal-centre-is-for-service",
                )));
            }
            (Hose::Low | Hose::High, None) if to != HoseEnd::OpenAir => {
                return Err(Refusal::because(Message::new(
                    "refusal-only-centre-reaches",
                )));
            }
            (_, Some(line)) => {
                let port = &self.fittings.valve(line).port;
                require(!port.cap_on, "refusal-port-cap-first")?;
                self.hands_on_circuit(Spot::Port(line));
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
        require(state.end.is_some(), "refusal-hose-not-on")?;
        let from = state.end.take();
        if from != Some(HoseEnd::OpenAir) {
            state.spilling = SPILL;
        }
        if let Some(line) = from.and_then(HoseEnd::port) {
            self.hands_on_circuit(Spot::Port(line));
        }
        Ok(())
    }

    pub(super) fn purge(&mut self, hose: Hose) -> Result<(), Refusal> {
        let state = self.kit.manifold.hose_mut(hose);
        require(
            state.end.is_some_and(|end| end != HoseEnd::OpenAir),
            "refusal-purge-needs-source",
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
                return Err(Refusal::because(Message::new(
                    "refusal-centre-has-no-valve",
                )));
            }
        }
        Ok(())
    }
}
