//! The clamp meter on the compressor's lead.

use super::Instrument;

/// The clamp meter as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClampMeter {
    /// It is on the lead.
    pub on: bool,
    reading: Instrument,
}

impl ClampMeter {
    /// Put away.
    pub const fn put_away() -> Self {
        // Chosen: half a second, read to 0.1 A (common practice, no source).
        Self {
            on: false,
            reading: Instrument::at(0.0, 0.5, 0.1),
        }
    }

    /// Follows the current, A, for `dt` seconds.
    pub fn follow(&mut self, amps: f64, dt: f64) {
        self.reading.follow(if self.on { amps } else { 0.0 }, dt);
    }

    /// What it shows, A; `None` when it is not on the lead.
    pub fn shown(&self) -> Option<f64> {
        self.on.then(|| self.reading.shown())
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(f64::from(u8::from(self.on)));
        visit(self.reading.position());
    }
}
