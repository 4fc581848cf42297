//! The electronic vacuum gauge, read in microns.

use super::{GaugePlace, Instrument, instrument::jitter};
use crate::units::{ATMOSPHERE, MICRON, PSI};
use rand_chacha::ChaCha8Rng;

/// Above this it only says that it is over range, Pa. Chosen: 25,000 micron (common practice).
const RANGE: f64 = 25_000.0 * MICRON;

/// Above this its sensor is ruined, Pa absolute. Chosen: 100 psig (no source; sensors differ).
const PROOF: f64 = 100.0 * PSI + ATMOSPHERE;

/// The micron gauge as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MicronGauge {
    /// Where it is.
    pub place: GaugePlace,
    /// Its own valve is open.
    pub valve_open: bool,
    /// Its sensor met too much pressure.
    pub ruined: bool,
    sensor: Instrument,
    shown: f64,
}

impl MicronGauge {
    /// On the cart, its valve open.
    pub const fn on_the_cart() -> Self {
        Self {
            place: GaugePlace::Cart,
            valve_open: true,
            ruined: false,
            // Chosen: the sensor follows in 1.5 s and shows whole microns (common practice).
            sensor: Instrument::at(ATMOSPHERE, 1.5, MICRON),
            shown: ATMOSPHERE,
        }
    }

    /// Follows an absolute pressure, Pa, for `dt` seconds. With its valve shut it holds what it
    /// had. Gives whether the pressure ruined it just now.
    pub fn follow(&mut self, pressure: f64, dt: f64, noise: &mut ChaCha8Rng) -> bool {
        if self.valve_open || self.place == GaugePlace::Cart {
            if pressure > PROOF && !self.ruined {
                self.ruined = true;
                return true;
            }
            self.sensor.follow(pressure.min(2.0 * ATMOSPHERE), dt);
        }
        // Chosen: the last digit dances by half a percent (common practice, no source).
        let noisy = self.sensor.position() * (1.0 + 0.005 * jitter(noise));
        self.shown = (noisy / MICRON).round() * MICRON;
        false
    }

    /// What is read, Pa absolute: `Ok(None)` over range, an error when it is ruined.
    pub fn shown(&self) -> Result<Option<f64>, Ruined> {
        if self.ruined {
            Err(Ruined)
        } else {
            Ok((self.shown <= RANGE).then_some(self.shown))
        }
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(f64::from(self.place as u8));
        visit(f64::from(u8::from(self.valve_open)));
        visit(f64::from(u8::from(self.ruined)));
        visit(self.sensor.position());
        visit(self.shown);
    }
}

/// The sensor is ruined: it shows nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ruined;
