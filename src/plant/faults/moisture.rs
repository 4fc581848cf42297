//! Water in the circuit.

use super::{Fault, FaultSheet, FaultTarget};
use crate::plant::{Section, network::Amounts};
use crate::units::Mass;

/// What there is to know about this kind.
pub(super) static SHEET: FaultSheet = FaultSheet {
    name: "moisture",
    key: "fault-moisture",
    unit: "grams of water",
    range: (0.0, 100.0),
    of_size: |grams| Fault::Moisture(Mass::from_grams(grams)),
};

/// Free water beside which the desiccant is full, kg. Chosen: a charge of some kilograms dissolves
/// about as much, and a desiccant fills before the liquid does.
const FILLS_DESICCANT: f64 = 2e-3;

/// Puts water in the liquid line, whose liquid takes up what it can dissolve. The drier has stood
/// in it for long and holds its share besides.
pub(super) fn plant(water: Mass, patient: &mut FaultTarget<'_>) {
    let at = patient.plant.node(Section::LiquidLine);
    patient
        .plant
        .network_mut()
        .add(at, Amounts::water(water.kilograms()));
    let filled = (water.kilograms() / FILLS_DESICCANT).clamp(0.0, 1.0);
    let held = filled * patient.plant.desiccant_capacity();
    patient.plant.set_desiccant_water(held);
}
