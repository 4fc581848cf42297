//! Refrigerant that is missing.

use super::{Fault, FaultSheet};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "undercharge",
    key: "fault-undercharge",
    unit: "share of the nameplate charge missing",
    range: (0.0, 1.0),
    of_size: |share| Fault::Undercharge(Fraction::clamped(share)),
};
