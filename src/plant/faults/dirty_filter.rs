//! A dirty indoor air filter.

use super::{Fault, FaultSheet, FaultTarget};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "dirty-filter",
    key: "fault-dirty-filter",
    unit: "share of the air lost",
    range: (0.0, 0.95),
    of_size: |share| Fault::DirtyFilter(Fraction::clamped(share)),
};

/// Takes air from the indoor coil.
pub(super) fn plant(share: Fraction, patient: &mut FaultTarget<'_>) {
    patient.air.filter_dirt = share.get();
}
