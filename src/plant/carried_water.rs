//! Free water that the stream of refrigerant carries along the circuit.

use super::network::gas::MOLAR_MASS;
use super::network::{Network, NodeId};

/// Time in which the rated flow carries drops and crystals out of a place, s. Chosen: films creep
/// and drops wait in low places, so water goes round in some minutes (common practice, no source).
const CARRIED_IN: f64 = 60.0;

/// Lets a stream, as a share of the rated flow, carry free water from one node to the next for
/// `dt`, s. None comes back. A running compressor churns its shell, and its gas carries on what
/// came there (common practice, no source).
pub(super) fn carry(network: &mut Network, [from, to]: [NodeId; 2], stream: f64, dt: f64) {
    let (water, energy) = taken(network, from, stream, dt);
    let next = network.node_mut(to);
    next.free_water += water;
    next.free_water_energy += energy;
}

/// The same into a filter drier with room for `room` mol: it holds drops back, and its desiccant
/// takes them (common practice, no source).
pub(super) fn filter(
    network: &mut Network,
    [from, drier]: [NodeId; 2],
    room: f64,
    stream: f64,
    dt: f64,
) {
    let (water, energy) = taken(network, from, stream, dt);
    if water <= 0.0 {
        return;
    }
    let held = (room.max(0.0) * MOLAR_MASS[2]).min(water);
    let passes = 1.0 - held / water;
    let node = network.node_mut(drier);
    node.bound_water += held / MOLAR_MASS[2];
    node.free_water += water - held;
    // What is bound has its energy in the node.
    node.energy += (1.0 - passes) * energy;
    node.free_water_energy += passes * energy;
}

/// Free water that comes with each kilogram of the stream out of a place that holds `water`, kg, in
/// a unit of this rated flow, kg/s.
pub(super) fn per_flow(water: f64, rated_flow: f64) -> f64 {
    water / (CARRIED_IN * rated_flow)
}

/// Takes out of a node what a stream carries away, kg, with its energy, J.
fn taken(network: &mut Network, from: NodeId, stream: f64, dt: f64) -> (f64, f64) {
    let node = network.node_mut(from);
    let passes = dt * stream.max(0.0);
    if node.free_water <= 0.0 || passes <= 0.0 {
        return (0.0, 0.0);
    }
    let share = passes / (CARRIED_IN + passes);
    let (water, energy) = (share * node.free_water, share * node.free_water_energy);
    node.free_water -= water;
    node.free_water_energy -= energy;
    (water, energy)
}
