//! Air in the circuit.

use super::{Fault, FaultSheet, FaultTarget};
use crate::plant::{Section, network::Amounts};
use crate::units::Mass;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "air-inside",
    key: "fault-air-inside",
    unit: "grams of air",
    range: (0.0, 100.0),
    of_size: |grams| Fault::AirInside(Mass::from_grams(grams)),
};

/// Puts air in the condenser, where it gathers.
pub(super) fn plant(air: Mass, patient: &mut FaultTarget<'_>) {
    let at = patient.plant.node(Section::Condenser);
    patient
        .plant
        .network_mut()
        .add(at, Amounts::air(air.kilograms()));
}
