//! The desiccant of the filter drier: it takes water until it is full, and gives it back.

use super::network::gas::MOLAR_MASS;
use super::network::{Network, NodeId};
use crate::units::{Area, Mass};
use serde::{Deserialize, Serialize};

/// A filter drier as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DrierData {
    /// Area of flow when it is clean.
    pub area: Area,
    /// Water that its desiccant holds.
    pub capacity: Mass,
}

/// Uptake, mol/(s Pa). Chosen: a drier that lies open to humid air takes well over half of its
/// capacity in an hour (common practice: never leave one open; no source).
const UPTAKE: f64 = 4e-8;

/// Vapour pressure over a desiccant that holds `held` of `capacity` mol, Pa, and its slope, Pa/mol,
/// where that over water is `saturated`.
///
/// A molecular sieve holds four fifths of its capacity at a few hundredths of saturation, the 60
/// ppm in R-22 at which driers are rated (AHRI 710; sieve and rating from memory).
fn over_desiccant(held: f64, capacity: f64, saturated: f64) -> (f64, f64) {
    let filling = held / capacity;
    let cube = filling * filling * filling;
    let eleventh = cube * cube * cube * filling * filling;
    let pressure = saturated * eleventh * filling;
    (pressure, 12.0 * saturated * eleventh / capacity)
}

/// Lets the desiccant that holds `capacity` mol exchange with its node for `dt`, s.
///
/// ```text
/// dq/dt = K (p_w - p_eq)      p_eq = p_sat(T) (q / capacity)¹²
/// ```
///
/// Bound water has the energy of liquid in the node, so what it sets free warms the drier.
pub(super) fn exchange(network: &mut Network, drier: NodeId, capacity: f64, dt: f64) {
    let node = network.node(drier);
    let available = node.gas[2];
    if capacity <= 0.0 || available <= 0.0 && node.bound_water <= 0.0 {
        return;
    }
    let saturated = network.water_pressure(node.temperature);
    // Both sides implicit, so that no step can overshoot.
    let (held, held_slope) = over_desiccant(node.bound_water, capacity, saturated);
    let slope = network.water_pressure_per_mole(drier);
    let drive = available * slope - held;
    let taken = dt * UPTAKE * drive / (1.0 + dt * UPTAKE * (slope + held_slope));
    let taken = taken.min(0.9 * available).max(-node.bound_water);
    let node = network.node_mut(drier);
    node.gas[2] -= taken;
    node.bound_water += taken;
    // The vapour's energy of formation stays in the node: as warmth.
}

/// Mol that a desiccant which holds `held` of `capacity` mol takes in `dt`, s, from moist air with
/// the vapour pressure of water `outside`, Pa, at a temperature with the saturation `saturated`.
pub(super) fn taken_from_air(
    held: f64,
    capacity: f64,
    outside: f64,
    saturated: f64,
    dt: f64,
) -> f64 {
    if capacity <= 0.0 {
        return 0.0;
    }
    let (own, slope) = over_desiccant(held, capacity, saturated);
    dt * UPTAKE * (outside - own) / (1.0 + dt * UPTAKE * slope)
}

/// Moles of a mass of water.
pub(super) fn moles(mass: Mass) -> f64 {
    mass.kilograms() / MOLAR_MASS[2]
}
