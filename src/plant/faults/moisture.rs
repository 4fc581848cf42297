//! Water in the circuit.

use super::{Fault, FaultSheet, Patient};
use crate::plant::{Place, network::Amounts};
use crate::units::Mass;

/// What there is to know about this kind.
pub(super) const SHEET: FaultSheet = FaultSheet {
    name: "moisture",
    label: "moisture inside",
    unit: "grams of water",
    range: (0.0, 100.0),
    of_size: |grams| Fault::Moisture(Mass::from_grams(grams)),
};

/// Puts water in the liquid line, whose liquid takes up what it can dissolve.
pub(super) fn plant(water: Mass, patient: &mut Patient<'_>) {
    let at = patient.plant.node(Place::LiquidLine);
    patient
        .plant
        .network_mut()
        .add(at, Amounts::water(water.kilograms()));
}
