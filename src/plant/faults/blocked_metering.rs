//! Dirt at the metering device.

use super::{Fault, FaultSheet, FaultTarget};
use crate::units::Fraction;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "blocked-metering",
    key: "fault-blocked-metering",
    unit: "share of the flow area lost",
    range: (0.0, 0.95),
    of_size: |share| Fault::BlockedMetering(Fraction::clamped(share)),
};

/// Takes flow area from the metering device.
pub(super) fn plant(share: Fraction, patient: &mut FaultTarget<'_>) {
    patient.fittings.metering_dirt = share.get();
}
