//! Bubble solution: it shows any gas that comes out, whatever gas it is.

use crate::plant::Spot;

/// The least leak that grows a bubble, Pa m³/s: between 1e-4 and 1e-5 (from memory).
pub const LEAST: f64 = 3e-5;

/// Above this the solution is blown away before a bubble forms, Pa m³/s. Chosen.
const BLOWS_AWAY: f64 = 5.0;

/// The wetted spots as they stand.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BubbleSolution {
    wet: [bool; Spot::ALL.len()],
    foam: [f64; Spot::ALL.len()],
}

impl BubbleSolution {
    /// Wets a spot.
    pub fn wet(&mut self, spot: Spot) {
        self.wet[spot.index()] = true;
        self.foam[spot.index()] = 0.0;
    }

    /// Wipes a spot dry.
    pub fn wipe(&mut self, spot: Spot) {
        self.wet[spot.index()] = false;
        self.foam[spot.index()] = 0.0;
    }

    /// Whether a spot is wet.
    pub fn is_wet(&self, spot: Spot) -> bool {
        self.wet[spot.index()]
    }

    /// Lets `dt` seconds pass at a spot where this much gas comes out, Pa m³/s. Bubbles grow to a
    /// size that goes with the logarithm of the leak within some seconds (chosen).
    pub fn follow(&mut self, spot: Spot, leak: f64, dt: f64) {
        let i = spot.index();
        if !self.wet[i] {
            return;
        }
        if leak > BLOWS_AWAY {
            self.wipe(spot);
            return;
        }
        let size = if leak < LEAST {
            0.0
        } else {
            0.1 + 0.18 * libm::log10(leak / LEAST)
        };
        self.foam[i] += (size.clamp(0.0, 1.0) - self.foam[i]) * dt / (5.0 + dt);
    }

    /// How it bubbles at a wet spot: 0 still, 1 a wild foam; `None` where it is dry.
    pub fn shown(&self, spot: Spot) -> Option<f64> {
        let i = spot.index();
        self.wet[i].then(|| (self.foam[i] * 100.0).round() / 100.0)
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        for i in 0..self.wet.len() {
            visit(f64::from(u8::from(self.wet[i])));
            visit(self.foam[i]);
        }
    }
}
