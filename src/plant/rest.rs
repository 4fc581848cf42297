//! A circuit that has rested: its nodes, and how much lies where.

use super::network::{Draws, Fill, Network, NodeId, NodeSpec};
use super::oil;
use super::receiver::ReceiverData;
use super::unit::Unit;

/// How the liquid of a rested circuit lies: in coil, both halves of the liquid line, indoor coil.
const RESTS: [(usize, f64); 4] = [(2, 0.556), (3, 0.067), (4, 0.067), (5, 0.31)];

/// The same with a receiver, where most of it lies. Chosen.
const RESTS_IN_RECEIVER: [(usize, f64); 5] =
    [(7, 0.75), (2, 0.05), (3, 0.05), (4, 0.05), (5, 0.10)];

/// Lays the nodes of a unit out, rested at `t`, K, with `charge` kg in them, in the order of
/// [`Section`](super::Section); where there is no receiver the outdoor coil stands in its place.
pub(super) fn lay_out(network: &mut Network, unit: &Unit, charge: f64, t: f64) -> [NodeId; 8] {
    let shapes = shapes(unit);
    let (masses, dissolved) = rested(unit, &shapes, charge, t);
    let mut add = |i: usize, draws: Draws| {
        let [volume, wall, to_ambient] = shapes[i];
        let fill = Fill::Refrigerant {
            mass: masses[i],
            temperature: t,
        };
        let oil = if i == 0 {
            unit.compressor.oil.kilograms()
        } else {
            0.0
        };
        let dissolved = if i == 0 { dissolved.max(0.0) } else { 0.0 };
        let spec = NodeSpec {
            volume,
            wall,
            to_ambient,
            fill,
        };
        let node = network.add_node_with_oil(spec, oil, dissolved);
        network.set_draws(node, draws);
        node
    };
    let shell = add(0, Draws::Sump);
    let discharge = add(1, Draws::Mixed);
    let coil = add(2, Draws::Mixed);
    let before = add(3, Draws::Settled);
    let after = add(4, Draws::Settled);
    let indoor = add(5, Draws::Mixed);
    let suction = add(6, Draws::Settled);
    let receiver = unit.receiver.as_ref().map(|_| add(7, Draws::Reservoir));
    [
        shell,
        discharge,
        coil,
        before,
        after,
        indoor,
        suction,
        receiver.unwrap_or(coil),
    ]
}

/// Volume, wall and conductance to the air of each place, a receiver last: nothing
/// where there is none.
fn shapes(unit: &Unit) -> [[f64; 3]; 8] {
    let compressor = &unit.compressor;
    let (liquid, suction) = (&unit.liquid_line, &unit.suction_line);
    let half = [
        0.5 * liquid.volume.cubic_metres(),
        0.5 * liquid.wall.joules_per_kelvin(),
        0.5 * liquid.to_air.watts_per_kelvin(),
    ];
    [
        [
            compressor.shell.cubic_metres(),
            compressor.shell_wall.joules_per_kelvin(),
            compressor.shell_to_air.watts_per_kelvin(),
        ],
        [
            compressor.discharge.cubic_metres(),
            compressor.discharge_wall.joules_per_kelvin(),
            0.0,
        ],
        [
            unit.condenser.volume.cubic_metres(),
            unit.condenser.wall.joules_per_kelvin(),
            0.0,
        ],
        half,
        half,
        [
            unit.evaporator.volume.cubic_metres(),
            unit.evaporator.wall.joules_per_kelvin(),
            0.0,
        ],
        [
            suction.volume.cubic_metres(),
            suction.wall.joules_per_kelvin(),
            suction.to_air.watts_per_kelvin(),
        ],
        unit.receiver.as_ref().map_or([0.0; 3], ReceiverData::shape),
    ]
}

/// How much refrigerant lies in each place after a long rest at `t`, K, and in the oil, kg.
fn rested(unit: &Unit, shapes: &[[f64; 3]; 8], charge: f64, t: f64) -> ([f64; 8], f64) {
    let fluid = unit.refrigerant.get();
    let s = fluid.at(t);
    let volume: f64 = shapes.iter().map(|shape| shape[0]).sum();
    let oil = unit.compressor.oil.kilograms();
    // Vapour everywhere; what is over lies as liquid in the coils. In the oil it is saturated
    // only while there is liquid, and a rested shell is a little warmer than the coils.
    let full = s.rho_g * volume;
    let dissolved = oil::at_rest(fluid, oil, (charge / (full + 0.2 * oil)).min(0.5));
    let left = (charge - dissolved).max(0.0);
    let spare = (left - full).max(0.0);
    let density = if spare > 0.0 { s.rho_g } else { left / volume };
    let mut masses = shapes.map(|shape| density * shape[0]);
    let mut placed = 0.0;
    let rests: &[(usize, f64)] = match unit.receiver {
        None => &RESTS,
        Some(_) => &RESTS_IN_RECEIVER,
    };
    for &(i, share) in rests {
        let most = 0.85 * shapes[i][0] * s.rho_l;
        let liquid = (spare * share).min(most);
        masses[i] += liquid * (1.0 - s.rho_g / s.rho_l);
        placed += liquid * (1.0 - s.rho_g / s.rho_l);
    }
    // The vapour that the liquid displaced, and what found no room, go to the outdoor coil.
    masses[2] += spare - placed;
    (masses, charge.max(0.0) - masses.iter().sum::<f64>())
}
