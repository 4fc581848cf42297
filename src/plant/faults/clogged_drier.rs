//! Dirt in the filter drier.

use super::{Fault, FaultSheet};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "clogged-drier",
    label: "clogged filter drier",
    unit: "share of the flow area lost",
    range: (0.0, 0.99),
    of_size: |share| Fault::CloggedDrier(Fraction::clamped(share)),
};
