//! The oil in the shell and the refrigerant dissolved in it.

use super::network::Network;
use super::network::NodeId;
use crate::fluid::refrigerant::Refrigerant;

/// Density of the oil, kg/m³, from memory: mineral oil.
const DENSITY: f64 = 900.0;

/// Lets the oil of a node take up or give off refrigerant for `dt`, s, with its `lag`, s.
///
/// What is dissolved keeps the energy of liquid in the node, so the heat of boiling off comes
/// from the shell by itself and nothing is lost.
pub(super) fn exchange(network: &mut Network, shell: NodeId, lag: f64, dt: f64) {
    let fluid = network.refrigerant();
    let node = network.node_mut(shell);
    let saturated = fluid.dew_pressure(node.temperature.min(fluid.hottest()));
    let held = node.oil * fluid.in_oil().held(node.refrigerant_pressure / saturated);
    let taken = (held - node.dissolved) * dt / (lag + dt);
    let taken = taken.min(0.2 * node.refrigerant).max(-node.dissolved);
    node.dissolved += taken;
    node.refrigerant -= taken;
}

/// Sets oil and what is dissolved in it for a circuit that has rested.
pub(super) fn at_rest(fluid: &Refrigerant, oil: f64, saturation: f64) -> f64 {
    oil * fluid.in_oil().held(saturation)
}

/// Level in the shell: volume of oil, dissolved and free liquid as a share of `volume`, m³.
pub(super) fn level(network: &Network, shell: NodeId) -> f64 {
    let node = network.node(shell);
    let liquid = (node.dissolved + node.liquid) / node.liquid_density;
    (node.oil / DENSITY + liquid) / node.volume
}
