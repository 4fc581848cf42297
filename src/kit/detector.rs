//! The electronic leak detector: it smells refrigerant, and nothing else.

use super::Instrument;
use crate::plant::Spot;
use crate::units::MassFlow;

/// The least leak that it notices, g a year.
/// Source: EC 1516/2007 asks for 5 g a year; SAE J2791 steps at 4, 7 and 14.
pub const LEAST_GRAMS_PER_YEAR: f64 = 4.0;

/// The detector as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Detector {
    /// Where its tip is held.
    pub at: Option<Spot>,
    signal: Instrument,
}

impl Detector {
    /// Put away, silent.
    pub const fn put_away() -> Self {
        // Chosen: it answers in a second and clears in as long (common practice, no source).
        Self {
            at: None,
            signal: Instrument::at(0.0, 1.0, 0.01),
        }
    }

    /// Follows the refrigerant that leaks at its tip, kg/s, for `dt` seconds.
    pub fn follow(&mut self, leak: f64, dt: f64) {
        self.signal.follow(strength(leak), dt);
    }

    /// Its signal: 0 silent, 1 full alarm; `None` when put away.
    pub fn shown(&self) -> Option<f64> {
        self.at.map(|_| self.signal.shown())
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(self.at.map_or(-1.0, |spot| spot.index() as f64));
        visit(self.signal.position());
    }
}

/// The strength of the alarm for a leak, kg/s: none below the least, full from 1,000 times it,
/// a third for each factor of ten between. Chosen: detectors step by factors (common practice).
fn strength(leak: f64) -> f64 {
    let grams_per_year = MassFlow::from_kilograms_per_second(leak).grams_per_year();
    if grams_per_year < LEAST_GRAMS_PER_YEAR {
        0.0
    } else {
        (0.1 + 0.3 * libm::log10(grams_per_year / LEAST_GRAMS_PER_YEAR)).min(1.0)
    }
}
