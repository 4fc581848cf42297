//! Dirt on the outdoor coil.

use super::{Fault, FaultSheet, FaultTarget};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "fouled-condenser",
    key: "fault-fouled-condenser",
    unit: "share of the air lost",
    range: (0.0, 0.95),
    of_size: |share| Fault::FouledCondenser(Fraction::clamped(share)),
};

/// Takes air from the outdoor coil.
pub(super) fn plant(share: Fraction, patient: &mut FaultTarget<'_>) {
    patient.air.outdoor_dirt = share.get();
}
