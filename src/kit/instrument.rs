//! What every instrument has: lag, range, resolution and error.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::Rng;

/// The moving part of an instrument: it follows the truth with a lag, and is read with an error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Instrument {
    /// Time to close 63 % of a step, s.
    pub lag: f64,
    /// The steps in which it can be read, in the unit of the value.
    pub resolution: f64,
    /// A constant error, in the unit of the value.
    pub zero: f64,
    at: f64,
}

impl Instrument {
    /// An instrument that shows `at` now.
    pub const fn at(at: f64, lag: f64, resolution: f64) -> Self {
        Self {
            lag,
            resolution,
            zero: 0.0,
            at,
        }
    }

    /// Follows the truth for `dt` seconds.
    pub fn follow(&mut self, truth: f64, dt: f64) {
        self.at += (truth - self.at) * dt / (self.lag + dt);
    }

    /// Jumps to a value, as when it is put somewhere else.
    pub fn set(&mut self, at: f64) {
        self.at = at;
    }

    /// Where the moving part stands, with no error of reading.
    pub const fn position(&self) -> f64 {
        self.at
    }

    /// What is read: the position with its zero error, in steps of the resolution.
    pub fn shown(&self) -> f64 {
        let value = self.at + self.zero;
        (value / self.resolution).round() * self.resolution
    }
}

/// A number evenly spread over -1..1 from the seeded noise.
pub fn jitter(noise: &mut ChaCha8Rng) -> f64 {
    f64::from(noise.next_u32()) / f64::from(u32::MAX) * 2.0 - 1.0
}
