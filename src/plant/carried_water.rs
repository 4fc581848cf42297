//! Free water that the stream of refrigerant carries along the circuit.

use super::network::{Network, NodeId};

/// Lets a stream, kg/s, carry drops and crystals from one node to the next for `dt`, s: of the free
/// water the share that it takes of the refrigerant. None comes back. A running compressor churns
/// its shell, and its gas carries on what came there (common practice, no source).
pub(super) fn carry(network: &mut Network, [from, to]: [NodeId; 2], stream: f64, dt: f64) {
    let node = network.node_mut(from);
    let passes = dt * stream.max(0.0);
    if node.free_water <= 0.0 || passes <= 0.0 {
        return;
    }
    let share = passes / (node.refrigerant + passes);
    let (water, energy) = (share * node.free_water, share * node.free_water_energy);
    node.free_water -= water;
    node.free_water_energy -= energy;
    let next = network.node_mut(to);
    next.free_water += water;
    next.free_water_energy += energy;
}
