//! A hole to the air.

use super::{Fault, FaultSheet};
use crate::plant::{Joint, Spot};
use crate::units::Length;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "leak",
    label: "leak",
    unit: "diameter of the hole, mm",
    range: (0.001, 2.0),
    of_size: |hole| Fault::Leak {
        at: Spot::Joint(Joint::IndoorSuction),
        hole: Length::from_millimetres(hole),
    },
};
