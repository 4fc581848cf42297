//! The pipe from the outdoor coil down to a receiver: liquid that stands in the coil runs down it,
//! and vapour comes up in its place.

use super::network::gas::{self, MOLAR_MASS};
use super::network::{Amounts, Network, Node, NodeId, Phase, slip};
use super::zones::mean_void;
use crate::fluid::refrigerant::Refrigerant;

/// The time in which it runs down, s. Chosen: a coil is empty within a minute.
const RUNS_DOWN: f64 = 20.0;
/// The difference of pressure that keeps it from doing so, Pa. Chosen: half a metre of liquid.
const HELD_BY: f64 = 5e3;

/// Lets what stands in `coil` run down into `receiver` for `dt`, s. A stream holds up the share
/// `carried` of the film that lies along the tubes when all of the coil condenses.
pub(super) fn exchange(
    network: &mut Network,
    [coil, receiver]: [NodeId; 2],
    carried: f64,
    dt: f64,
) {
    let fluid = network.refrigerant();
    let (above, below) = (network.node(coil), network.node(receiver));
    let is_held = (above.pressure - below.pressure).abs() > HELD_BY;
    if is_held || above.phase == Phase::Vapour || below.phase == Phase::Liquid {
        return;
    }
    let curves = fluid.at(above.temperature);
    let film = (1.0 - mean_void(0.0, 1.0, slip(&curves))) * above.volume;
    let standing = above.liquid / above.liquid_density - film * carried.clamp(0.0, 1.0);
    let volume = (standing * dt / (RUNS_DOWN + dt)).min(0.1 * below.vapour_volume);
    if volume <= 0.0 {
        return;
    }
    let (down, up) = (
        liquid(fluid, above, volume),
        vapour(fluid, below, volume / below.vapour_volume),
    );
    take_up(network.node_mut(coil), &(up - down));
    take_up(network.node_mut(receiver), &(down - up));
}

/// What a volume of a node's liquid holds, with what is dissolved in it and its enthalpy.
fn liquid(fluid: &Refrigerant, node: &Node, volume: f64) -> Amounts {
    let mass = (volume * node.liquid_density).min(0.5 * node.refrigerant);
    let enthalpy = if node.phase == Phase::Liquid {
        node.enthalpy
    } else {
        fluid.at(node.temperature).h_l
    };
    let dissolved = (1.0 - node.water_vapour_share) * node.gas[2];
    let water = mass / node.liquid.max(mass) * dissolved;
    Amounts {
        refrigerant: mass,
        gas: [0.0, 0.0, water],
        energy: mass * enthalpy + water * gas::enthalpy(2, node.temperature),
    }
}

/// What a share of a node's vapour holds, with its enthalpy.
fn vapour(fluid: &Refrigerant, node: &Node, share: f64) -> Amounts {
    let mass = share * (node.refrigerant - node.liquid).max(0.0);
    let enthalpy = if node.phase == Phase::Vapour {
        node.enthalpy
    } else {
        fluid.at(node.temperature).h_g
    };
    let mut amounts = Amounts::refrigerant(mass);
    amounts.energy = mass * enthalpy;
    for k in 0..MOLAR_MASS.len() {
        let free = if k == 2 { node.water_vapour_share } else { 1.0 };
        let moles = share * free * node.gas[k];
        amounts.gas[k] = moles;
        amounts.energy += moles * gas::enthalpy(k, node.temperature);
    }
    amounts
}

fn take_up(node: &mut Node, amounts: &Amounts) {
    node.refrigerant += amounts.refrigerant;
    for (held, moles) in node.gas.iter_mut().zip(amounts.gas) {
        *held += moles;
    }
    node.energy += amounts.energy;
}
