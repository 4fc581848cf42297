//! The refrigerant cylinder on its scale.

use super::Instrument;
use crate::units::Fraction;

/// Cylinder and scale as they stand. What is inside is a node of the network.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RefrigerantCylinder {
    /// Its valve.
    pub valve: Fraction,
    /// It stands on its head: liquid comes out.
    pub inverted: bool,
    scale: Instrument,
    tare: f64,
}

impl RefrigerantCylinder {
    /// Shut, upright, the scale not tared.
    pub const fn closed() -> Self {
        // Chosen: a charging scale settles in a second and is read to 5 g (common practice).
        Self {
            valve: Fraction::ZERO,
            inverted: false,
            scale: Instrument::at(0.0, 0.5, 5e-3),
            tare: 0.0,
        }
    }

    /// Sets the scale to zero as it stands.
    pub fn tare(&mut self) {
        self.tare = self.scale.shown();
    }

    /// The scale follows the refrigerant in the cylinder, kg, for `dt` seconds.
    pub fn follow(&mut self, refrigerant: f64, dt: f64) {
        self.scale.follow(refrigerant, dt);
    }

    /// Puts the scale at rest on what is in the cylinder, kg.
    pub fn rest_on(&mut self, refrigerant: f64) {
        self.scale.set(refrigerant);
    }

    /// What the scale shows, kg; negative when the cylinder has given since the tare.
    pub fn shown(&self) -> f64 {
        self.scale.shown() - self.tare
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(self.valve.get());
        visit(f64::from(u8::from(self.inverted)));
        visit(self.scale.position());
        visit(self.tare);
    }
}
