//! Compressor valves that leak back.

use super::{Fault, FaultSheet, FaultTarget};
use crate::units::Area;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "weak-compressor-valves",
    key: "fault-weak-compressor-valves",
    unit: "area of the leak, mm²",
    range: (0.0, 10.0),
    of_size: |area| Fault::WeakCompressorValves(Area::from_square_millimetres(area)),
};

/// Lets gas leak back from the discharge side to the shell.
pub(super) fn plant(area: Area, patient: &mut FaultTarget<'_>) {
    patient.plant.set_valve_leak(area.square_metres());
}
