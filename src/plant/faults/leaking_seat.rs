//! A service valve that does not seat.

use super::{Fault, FaultSheet, FaultTarget};
use crate::plant::Line;
use crate::units::Length;
use std::f64::consts::FRAC_PI_4;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "leaking-seat",
    key: "fault-leaking-seat",
    unit: "diameter of the hole, mm",
    range: (0.01, 3.0),
    of_size: |hole| Fault::LeakingSeat {
        at: Line::Suction,
        hole: Length::from_millimetres(hole),
    },
};

/// Lets the closed seat leak.
pub(super) fn plant(at: Line, hole: Length, patient: &mut FaultTarget<'_>) {
    let area = FRAC_PI_4 * hole.metres() * hole.metres();
    patient.fittings.valve_mut(at).seat_leak = area;
}
