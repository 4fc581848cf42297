//! Clamp and hanging thermometers.

use super::{Instrument, ThermometerPlace};

/// The thermometers as they stand: at most one at each place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thermometers {
    placed: [Option<Instrument>; ThermometerPlace::ALL.len()],
    air: f64,
    count: u8,
}

/// The share of the difference to the air that a clamp on a pipe misses.
/// Chosen: 1 %, a good clamp on a clean, insulated pipe (common practice, no source).
const CONTACT_ERROR: f64 = 0.01;

impl Thermometers {
    /// So many thermometers, put away at an air temperature, K.
    pub const fn put_away(air: f64, count: u8) -> Self {
        Self {
            placed: [None; ThermometerPlace::ALL.len()],
            air,
            count,
        }
    }

    /// How many are still free.
    pub fn free(&self) -> usize {
        usize::from(self.count).saturating_sub(self.placed.iter().flatten().count())
    }

    /// Whether one is at a place.
    pub const fn is_at(&self, place: ThermometerPlace) -> bool {
        self.placed[place as usize].is_some()
    }

    /// Puts one at a place; it starts from the air.
    pub fn put(&mut self, place: ThermometerPlace) {
        // Chosen: 8 s on a pipe or in air, read to 0.1 °F (common practice, no source).
        self.placed[place as usize] = Some(Instrument::at(self.air, 8.0, 0.1 / 1.8));
    }

    /// Takes one away.
    pub fn take(&mut self, place: ThermometerPlace) {
        self.placed[place as usize] = None;
    }

    /// Follows the true temperature at a place, K, in air of `air`, K, for `dt` seconds.
    pub fn follow(&mut self, place: ThermometerPlace, truth: f64, air: f64, dt: f64) {
        if let Some(thermometer) = &mut self.placed[place as usize] {
            let seen = if place.is_on_a_pipe() {
                truth + CONTACT_ERROR * (air - truth)
            } else {
                truth
            };
            thermometer.follow(seen, dt);
        }
    }

    /// What the one at a place shows, K. It is read in steps of 0.1 °F.
    pub fn shown(&self, place: ThermometerPlace) -> Option<f64> {
        self.placed[place as usize].map(|thermometer| thermometer.shown())
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        for thermometer in &self.placed {
            visit(thermometer.map_or(-1.0, |t| t.position()));
        }
    }
}
