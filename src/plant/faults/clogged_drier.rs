//! Dirt in the filter drier.

use super::{Fault, FaultSheet, Patient};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "clogged-drier",
    label: "clogged filter drier",
    unit: "share of the flow area lost",
    range: (0.0, 0.99),
    of_size: |share| Fault::CloggedDrier(Fraction::clamped(share)),
};

/// Takes flow area from the drier in place.
pub(super) fn plant(share: Fraction, patient: &mut Patient<'_>) {
    patient.fittings.drier.clogging = share.get();
}
