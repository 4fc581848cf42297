//! A service valve that does not seat.

use super::{Fault, FaultSheet};
use crate::plant::Line;
use crate::units::Length;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "leaking-seat",
    label: "service valve that does not seat",
    unit: "diameter of the hole, mm",
    range: (0.01, 3.0),
    of_size: |hole| Fault::LeakingSeat {
        at: Line::Suction,
        hole: Length::from_millimetres(hole),
    },
};
