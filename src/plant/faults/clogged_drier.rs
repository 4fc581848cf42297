//! Dirt in the filter drier.

use super::{Fault, FaultSheet, FaultTarget};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "clogged-drier",
    key: "fault-clogged-drier",
    unit: "share of the flow area lost",
    range: (0.0, 0.99),
    of_size: |share| Fault::CloggedDrier(Fraction::clamped(share)),
};

/// Takes flow area from the drier in place.
pub(super) fn plant(share: Fraction, patient: &mut FaultTarget<'_>) {
    patient.fittings.drier.clogging = share.get();
}
