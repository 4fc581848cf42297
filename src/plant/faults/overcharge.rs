//! Refrigerant too much.

use super::{Fault, FaultSheet};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "overcharge",
    key: "fault-overcharge",
    unit: "share of the nameplate charge too much",
    range: (0.0, 0.6),
    of_size: |share| Fault::Overcharge(Fraction::clamped(share)),
};
