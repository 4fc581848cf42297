//! A pressure gauge with a bourdon tube, as on a manifold or a regulator.

use super::Instrument;
use crate::units::{ATMOSPHERE, PSI};

/// One dial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressureGauge {
    needle: Instrument,
    /// The lower end of the scale, Pa gauge.
    pub least: f64,
    /// The upper end of the scale, Pa gauge.
    pub most: f64,
}

impl PressureGauge {
    /// The compound gauge of the low side: 30 inches of vacuum to 250 psi.
    pub const fn compound() -> Self {
        // Chosen: it settles within a second and is read to half a psi (common practice).
        Self {
            needle: Instrument::at(0.0, 0.25, 0.5 * PSI),
            least: -ATMOSPHERE,
            most: 250.0 * PSI,
        }
    }

    /// The gauge of the high side: 0 to 500 psi.
    pub const fn high() -> Self {
        Self {
            needle: Instrument::at(0.0, 0.25, PSI),
            least: -ATMOSPHERE,
            most: 500.0 * PSI,
        }
    }

    /// The outlet gauge of a nitrogen regulator: 0 to 800 psi.
    pub const fn regulator_outlet() -> Self {
        Self {
            needle: Instrument::at(0.0, 0.25, 5.0 * PSI),
            least: 0.0,
            most: 800.0 * PSI,
        }
    }

    /// The cylinder gauge of a nitrogen regulator: 0 to 4,000 psi.
    pub const fn cylinder() -> Self {
        Self {
            needle: Instrument::at(0.0, 0.25, 50.0 * PSI),
            least: 0.0,
            most: 4000.0 * PSI,
        }
    }

    /// Follows an absolute pressure, Pa, for `dt` seconds.
    pub fn follow(&mut self, pressure: f64, dt: f64) {
        self.needle.follow(pressure - ATMOSPHERE, dt);
    }

    /// What is read, Pa gauge; `None` beyond the scale.
    pub fn shown(&self) -> Option<f64> {
        let shown = self.needle.shown();
        (shown <= self.most).then_some(shown.max(self.least))
    }

    /// Where the needle stands as a share of the scale, 0..=1, without steps.
    pub fn needle(&self) -> f64 {
        let at = self.needle.position() + self.needle.zero;
        ((at - self.least) / (self.most - self.least)).clamp(0.0, 1.0)
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(self.needle.position());
        visit(self.needle.zero);
    }
}
