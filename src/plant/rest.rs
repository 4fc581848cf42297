//! A circuit that has rested: how much lies where.

use super::oil;
use super::unit::Unit;

/// How the liquid of a rested circuit lies: in coil, both halves of the liquid line, indoor coil.
const RESTS: [(usize, f64); 4] = [(2, 0.556), (3, 0.067), (4, 0.067), (5, 0.31)];

/// Volume, wall and conductance to the air of each place, in the order of [`Place::ALL`].
pub(super) fn shapes(unit: &Unit) -> [[f64; 3]; 7] {
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
    ]
}

/// How much refrigerant lies in each place after a long rest at `t`, K, and in the oil, kg.
pub(super) fn rested(unit: &Unit, shapes: &[[f64; 3]; 7], charge: f64, t: f64) -> ([f64; 7], f64) {
    let s = unit.refrigerant.get().at(t);
    let volume: f64 = shapes.iter().map(|shape| shape[0]).sum();
    let oil = unit.compressor.oil.kilograms();
    // Vapour everywhere; what is over lies as liquid in the coils. In the oil it is saturated
    // only while there is liquid, and a rested shell is a little warmer than the coils.
    let full = s.rho_g * volume;
    let dissolved = oil::at_rest(oil, (charge / (full + 0.2 * oil)).min(0.5));
    let left = (charge - dissolved).max(0.0);
    let spare = (left - full).max(0.0);
    let density = if spare > 0.0 { s.rho_g } else { left / volume };
    let mut masses = shapes.map(|shape| density * shape[0]);
    let mut placed = 0.0;
    for (i, share) in RESTS {
        let most = 0.85 * shapes[i][0] * s.rho_l;
        let liquid = (spare * share).min(most);
        masses[i] += liquid * (1.0 - s.rho_g / s.rho_l);
        placed += liquid * (1.0 - s.rho_g / s.rho_l);
    }
    // The vapour that the liquid displaced, and what found no room, go to the outdoor coil.
    masses[2] += spare - placed;
    (masses, charge.max(0.0) - masses.iter().sum::<f64>())
}
