//! Free water in a node: it boils, condenses, freezes and melts at a temperature of its own.

use super::gas::{self, MOLAR_MASS, R_UNIVERSAL};
use super::node::{Node, PATCH, patch};
use crate::fluid::refrigerant::Refrigerant;
use crate::fluid::water::{self, SPECIFIC_HEAT_ICE as ICE_HEAT};
use crate::fluid::water::{FUSION, SPECIFIC_HEAT_LIQUID as LIQUID_HEAT};
use std::f64::consts::PI;

/// Conductance between a puddle and the wall, W/K. Chosen: a few grams that boil at full pump
/// speed cool themselves, as they do in a wet circuit that is pulled too fast.
const PUDDLE: f64 = 0.5;
/// Conductance between condensing water and the wall, W/K. Chosen: high enough that vapour does
/// not supersaturate.
const DEW: f64 = 50.0;
/// Area of a puddle, m². Chosen.
const PUDDLE_AREA: f64 = 5e-5;
/// How much more area condenses than boils.
const DEW_AREA: f64 = 100.0;

/// Coldest row of the table, K.
const COLDEST: f64 = 173.15;
/// Rows of the table per kelvin.
const PER_KELVIN: f64 = 4.0;
/// Count of rows: up to 155 °C.
const ROWS: usize = 1021;

/// Water's vapour pressure, and what liquid refrigerant holds of it, by temperature.
#[derive(Debug, Clone)]
pub(super) struct Moisture {
    pressure: Vec<f64>,
    space: Vec<f64>,
}

impl Moisture {
    /// Tabulated for a refrigerant.
    pub fn of(refrigerant: &Refrigerant) -> Self {
        let at = |row: usize| COLDEST + row as f64 / PER_KELVIN;
        let pressure: Vec<f64> = (0..ROWS)
            .map(|row| water::vapour_pressure(at(row)))
            .collect();
        let space = (0..ROWS)
            .map(|row| {
                let t = at(row);
                let moles = 1e-6 * refrigerant.dissolves_water(t) / MOLAR_MASS[2];
                moles * R_UNIVERSAL * t / pressure[row]
            })
            .collect();
        Self { pressure, space }
    }

    #[inline]
    fn read(table: &[f64], t: f64) -> (f64, f64) {
        let place = ((t - COLDEST) * PER_KELVIN).clamp(0.0, ROWS as f64 - 1.001);
        let row = place as usize;
        let rise = table[row + 1] - table[row];
        (table[row] + (place - row as f64) * rise, rise * PER_KELVIN)
    }

    /// Vapour pressure over water, or over ice below 0 °C, Pa, and its slope, Pa/K.
    #[inline]
    pub fn vapour_pressure(&self, t: f64) -> (f64, f64) {
        Self::read(&self.pressure, t)
    }

    /// The space for the vapour of water to which a kilogram of liquid refrigerant amounts, m³/kg.
    #[inline]
    pub fn space_in_liquid(&self, t: f64) -> f64 {
        Self::read(&self.space, t).0
    }
}

/// Lets the free water of `node` boil or condense for `dt`, s: implicit in its mass and energy.
pub(super) fn exchange(moisture: &Moisture, node: &mut Node, dt: f64) {
    let t = node.temperature;
    if node.free_water <= 0.0 {
        if node.gas[2] <= 0.0 || node.water_pressure < moisture.vapour_pressure(t).0 {
            return;
        }
        let warm = PATCH * (t - 273.15);
        node.free_water_energy = warm;
        node.energy -= warm;
    }
    let (own, capacity) = patch(node.free_water, node.free_water_energy);
    // Hertz-Knudsen: what a surface in vacuum can give off at most.
    let free = PUDDLE_AREA / (2.0 * PI * R_UNIVERSAL * own * MOLAR_MASS[2]).sqrt();
    let (p_own, p_slope) = moisture.vapour_pressure(own);
    // The pressure now, after the amounts have moved.
    let per_mole = if node.gas[2] > 0.0 && node.water_pressure > 0.0 {
        R_UNIVERSAL * t * node.water_vapour_share / node.vapour_volume
    } else {
        R_UNIVERSAL * t / node.vapour_volume
    };
    let p_vapour = node.gas[2] * per_mole;
    let (to_wall, k) = if p_vapour > p_own {
        (DEW, DEW_AREA * free)
    } else {
        (PUDDLE, free)
    };
    let specific = if own < 273.15 {
        -FUSION + ICE_HEAT * (own - 273.15)
    } else {
        LIQUID_HEAT * (own - 273.15)
    };
    let latent = gas::enthalpy(2, own) - MOLAR_MASS[2] * specific;
    let inertia = capacity + to_wall * dt;
    let drive = p_own + p_slope * to_wall * dt * (t - own) / inertia - p_vapour;
    let mut boiled = dt * k * drive / (1.0 + dt * k * (p_slope * latent / inertia + per_mole));
    let all = boiled * MOLAR_MASS[2] >= node.free_water;
    if all {
        boiled = node.free_water / MOLAR_MASS[2];
    }
    boiled = boiled.max(-0.9 * node.gas[2]);
    let carried = boiled * gas::enthalpy(2, own);
    let heat = -(to_wall * dt) * ((t - own) * capacity + boiled * latent) / inertia;
    node.gas[2] += boiled;
    node.energy += carried + heat;
    node.free_water_energy -= carried + heat;
    node.free_water -= boiled * MOLAR_MASS[2];
    if all || node.free_water <= 1e-15 {
        node.gas[2] += node.free_water.max(0.0) / MOLAR_MASS[2];
        node.free_water = 0.0;
        node.energy += node.free_water_energy;
        node.free_water_energy = 0.0;
    }
}
