//! The gauge manifold: two gauges, two hand valves, three hoses.

use super::{Hose, HoseEnd, PressureGauge};
use crate::units::Fraction;

/// One hose.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HoseState {
    /// What its far end is on; `None`: hung up, its low-loss end shut.
    pub end: Option<HoseEnd>,
    /// Seconds for which its end at the manifold is still cracked to purge it.
    pub purging: f64,
    /// Seconds for which its far end still spills after it was taken off.
    pub spilling: f64,
    /// It was purged since it was last put on.
    pub purged: bool,
}

/// The manifold as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Manifold {
    hoses: [HoseState; 3],
    /// The low hand valve.
    pub low_valve: Fraction,
    /// The high hand valve.
    pub high_valve: Fraction,
    /// The low gauge.
    pub low_gauge: PressureGauge,
    /// The high gauge.
    pub high_gauge: PressureGauge,
}

impl Manifold {
    /// Hand valves shut, hoses hung up.
    pub fn on_the_cart() -> Self {
        Self {
            hoses: [HoseState::default(); 3],
            low_valve: Fraction::ZERO,
            high_valve: Fraction::ZERO,
            low_gauge: PressureGauge::compound(),
            high_gauge: PressureGauge::high(),
        }
    }

    /// A hose.
    pub const fn hose(&self, hose: Hose) -> &HoseState {
        &self.hoses[hose as usize]
    }

    /// A hose, to work on.
    pub const fn hose_mut(&mut self, hose: Hose) -> &mut HoseState {
        &mut self.hoses[hose as usize]
    }

    /// The hose that is on something.
    pub fn hose_on(&self, end: HoseEnd) -> Option<Hose> {
        Hose::ALL
            .into_iter()
            .find(|&hose| self.hose(hose).end == Some(end))
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        for hose in &self.hoses {
            visit(hose.end.map_or(-1.0, |end| f64::from(end.number())));
            visit(hose.purging);
            visit(hose.spilling);
            visit(f64::from(u8::from(hose.purged)));
        }
        visit(self.low_valve.get());
        visit(self.high_valve.get());
        self.low_gauge.visit_state(visit);
        self.high_gauge.visit_state(visit);
    }
}
