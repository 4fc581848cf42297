//! Air in the circuit.

use super::{Fault, FaultSheet};
use crate::units::Mass;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "air-inside",
    label: "air inside",
    unit: "grams of air",
    range: (0.0, 100.0),
    of_size: |grams| Fault::AirInside(Mass::from_grams(grams)),
};
