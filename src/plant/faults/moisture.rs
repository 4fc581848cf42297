//! Water in the circuit.

use super::{Fault, FaultSheet};
use crate::units::Mass;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "moisture",
    label: "moisture inside",
    unit: "grams of water",
    range: (0.0, 100.0),
    of_size: |grams| Fault::Moisture(Mass::from_grams(grams)),
};
