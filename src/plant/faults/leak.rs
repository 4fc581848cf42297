//! A hole to the air.

use super::{Fault, FaultSheet, FaultTarget};
use crate::plant::{Joint, Spot};
use crate::units::Length;
use std::f64::consts::FRAC_PI_4;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "leak",
    key: "fault-leak",
    unit: "diameter of the hole, mm",
    range: (0.001, 2.0),
    of_size: |hole| Fault::Leak {
        at: Spot::Joint(Joint::IndoorSuction),
        hole: Length::from_millimetres(hole),
    },
};

/// Scores a flare, or makes a hole in a core, a packing or a coil. The cap of a port or stem that
/// leaks is gone: on, it would be the seal.
pub(super) fn plant(at: Spot, hole: Length, patient: &mut FaultTarget<'_>) {
    let area = FRAC_PI_4 * hole.metres() * hole.metres();
    let fittings = &mut *patient.fittings;
    match at {
        Spot::Joint(joint) => fittings.joint_mut(joint).scored = area,
        Spot::Port(line) => {
            let port = &mut fittings.valve_mut(line).port;
            port.core_leak = area;
            port.cap_on = false;
        }
        Spot::Stem(line) => {
            let valve = fittings.valve_mut(line);
            valve.packing_leak = area;
            valve.cap_on = false;
        }
        Spot::IndoorCoil => fittings.indoor_coil_leak = area,
        Spot::OutdoorCoil => fittings.outdoor_coil_leak = area,
    }
}
