//! The equilibrium flash: pressure, temperature and quality from mass, energy and volume.
//!
//! Two phases: `M a(T) + V θ(T) + C T = U` with `θ = (u_g - u_l)/(v_g - v_l)`, `a = u_l - v_l θ`,
//! by Newton from the last temperature. Gases add their partial pressures in the space that the
//! liquid leaves. All slopes are analytic, for the pressures of the network.

use super::gas::{CV, ENERGY_ORIGIN, MOLAR_MASS, R_UNIVERSAL};
use super::node::{Node, Phase};
use super::water::Moisture;
use crate::fluid::refrigerant::Refrigerant;
use crate::fluid::water::SPECIFIC_HEAT_LIQUID as LIQUID_HEAT;

/// Stiffness of the liquid, Pa. Chosen: softer than nature's 3e8 Pa, so that a full
/// line is no water hammer; a line at 20 bar then holds 0.2 % more.
pub(super) const STIFFNESS: f64 = 3e7;
/// Newton stops after a step smaller than this, K: its next would be of the order of the square.
const LAST_STEP: f64 = 1e-4;
/// The most rounds of Newton.
const ROUNDS: u32 = 40;
/// The hottest vapour, K; the tables go on to here.
const HOTTEST: f64 = 428.0;
/// Less refrigerant than this is always vapour, kg.
const TRACE: f64 = 1e-9;

/// A pocket of gas over compressible liquid.
///
/// `Vg² - (V - Vl) Vg - Vl n R T / K = 0`, `pg = n R T / Vg`; with no gas it is the liquid's own
/// `K (ρ/ρ_l - 1)`. No floor on the volume: that would take the stiffness from a full line.
struct Pocket {
    volume: f64,
    pressure: f64,
    /// dp/dVl, Pa/m³.
    per_liquid_volume: f64,
    /// 1/s: dp/dn = R T / s.
    per_root: f64,
}

impl Pocket {
    #[inline]
    fn over(volume: f64, liquid: f64, nrt: f64) -> Self {
        let free = volume - liquid;
        let root = (free * free + 4.0 * liquid * nrt / STIFFNESS)
            .sqrt()
            .max(1e-12);
        let (space, pressure) = if free > 0.0 {
            let space = 0.5 * (free + root);
            (space, nrt / space)
        } else {
            let squeeze = root - free;
            (
                2.0 * liquid * nrt / STIFFNESS / squeeze,
                STIFFNESS * squeeze / (2.0 * liquid),
            )
        };
        Self {
            volume: space.max(1e-10),
            pressure,
            per_liquid_volume: pressure * (1.0 - pressure / STIFFNESS) / root,
            per_root: 1.0 / root,
        }
    }
}

/// What does not change while one node is flashed.
struct Given {
    mass: f64,
    volume: f64,
    /// Moles of gas in the vapour's space.
    moles: f64,
    /// Refrigerant dissolved in oil, kg: it has the energy of liquid.
    dissolved: f64,
    /// Heat capacity of wall, gases and bound water, J/K.
    capacity: f64,
    /// Energy that these have to account for, J.
    energy: f64,
}

/// Brings the derived half of `node` up to its state.
pub(super) fn flash(refrigerant: &Refrigerant, moisture: &Moisture, node: &mut Node) {
    let [nitrogen, air, water] = node.gas;
    let bound = node.bound_water * LIQUID_HEAT * MOLAR_MASS[2];
    node.mass =
        node.refrigerant + nitrogen * MOLAR_MASS[0] + air * MOLAR_MASS[1] + water * MOLAR_MASS[2];
    let given = Given {
        mass: node.refrigerant,
        volume: node.volume,
        moles: node.moles_of_gas(),
        dissolved: node.dissolved,
        capacity: node.wall + nitrogen * CV[0] + air * CV[1] + water * CV[2] + bound,
        energy: node.energy - water * ENERGY_ORIGIN[2] + bound * 273.15,
    };
    let is_vapour = node.phase == Phase::Vapour || given.mass < TRACE;
    let done = is_vapour && vapour(refrigerant, node, &given, false)
        || two_phase(refrigerant, node, &given)
        || vapour(refrigerant, node, &given, true);
    debug_assert!(done, "the last resort takes every state");
    partition_water(moisture, node);
}

/// Splits the water between the vapour's space and the liquid refrigerant.
///
/// Dissolved water gives off a vapour pressure in proportion (Henry's law up to saturation): the
/// liquid counts as so much more space for the vapour of water.
#[inline]
fn partition_water(moisture: &Moisture, node: &mut Node) {
    if node.liquid > 0.0 {
        let space = node.vapour_volume + node.liquid * moisture.space_in_liquid(node.temperature);
        node.water_vapour_share = node.vapour_volume / space;
        node.water_pressure = node.gas[2] * R_UNIVERSAL * node.temperature / space;
    } else {
        node.water_vapour_share = 1.0;
        node.water_pressure = node.gas[2] * R_UNIVERSAL * node.temperature / node.vapour_volume;
    }
}

/// Tries vapour alone; gives up if it would condense, unless `forced`.
fn vapour(refrigerant: &Refrigerant, node: &mut Node, given: &Given, forced: bool) -> bool {
    let r = refrigerant.gas_constant();
    let (m, volume) = (given.mass, given.volume);
    let rho = m / volume;
    let mut t = node.temperature;
    let mut d;
    let mut round = 0;
    loop {
        let (s, g) = refrigerant.at_with_slopes(t);
        let rest = s.db * rho + 0.5 * s.dc * rho * rho;
        let rest_slope = g.db * rho + 0.5 * g.dc * rho * rho;
        let f = m * (s.u0 - r * t * t * rest) + given.dissolved * s.u_l + given.capacity * t
            - given.energy;
        d = given.capacity
            + given.dissolved * g.u_l
            + m * (g.u0 - 2.0 * r * t * rest - r * t * t * rest_slope).max(200.0);
        let dt = (-f / d).clamp(-30.0, 30.0);
        t = (t + dt).clamp(refrigerant.coldest(), HOTTEST);
        round += 1;
        if dt.abs() < LAST_STEP || round > ROUNDS {
            break;
        }
    }
    let (s, g) = refrigerant.at_with_slopes(t);
    if !(forced || m < TRACE || t > refrigerant.hottest() || rho <= s.rho_g) {
        return false;
    }
    let squares = 1.0 + s.b * rho + s.c * rho * rho;
    let p = rho * r * t * squares;
    let u = refrigerant.vapour_energy(&s, t, rho);
    node.phase = Phase::Vapour;
    node.temperature = t;
    node.quality = 1.0;
    node.liquid = 0.0;
    node.vapour_volume = volume;
    node.vapour_density = rho;
    node.liquid_density = s.rho_l;
    node.refrigerant_pressure = p;
    node.pressure = p + given.moles * R_UNIVERSAL * t / volume;
    let per_kelvin = rho * r * squares
        + rho * r * t * (g.b * rho + g.c * rho * rho)
        + given.moles * R_UNIVERSAL / volume;
    node.per_energy = per_kelvin / d;
    let energy_per_mass = u - rho * r * t * t * (s.db + s.dc * rho);
    node.per_mass = r * t * (1.0 + 2.0 * s.b * rho + 3.0 * s.c * rho * rho) / volume
        - node.per_energy * energy_per_mass;
    node.per_mole = R_UNIVERSAL * t / volume;
    node.enthalpy = u + r * t * squares;
    true
}

/// Tries liquid and vapour, then liquid alone; gives up if there is only vapour.
fn two_phase(refrigerant: &Refrigerant, node: &mut Node, given: &Given) -> bool {
    if given.mass < TRACE {
        return false;
    }
    let (m, volume) = (given.mass, given.volume);
    let specific = volume / m;
    let mut t = node.temperature;
    let mut d;
    let mut round = 0;
    loop {
        let (s, g) = refrigerant.at_with_slopes(t);
        let (v_l, v_g) = (1.0 / s.rho_l, 1.0 / s.rho_g);
        let gap = v_g - v_l;
        let theta = (s.u_g - s.u_l) / gap;
        let a = s.u_l - v_l * theta;
        let (v_l_slope, v_g_slope) = (-g.rho_l * v_l * v_l, -g.rho_g * v_g * v_g);
        let theta_slope = (g.u_g - g.u_l - theta * (v_g_slope - v_l_slope)) / gap;
        let a_slope = g.u_l - v_l_slope * theta - v_l * theta_slope;
        let fixed = given.capacity + given.dissolved * g.u_l;
        d = m * a_slope + volume * theta_slope + fixed;
        if d < fixed + 100.0 * m {
            d = fixed + 600.0 * m;
        }
        let f =
            m * a + volume * theta + given.dissolved * s.u_l + given.capacity * t - given.energy;
        let dt = (-f / d).clamp(-20.0, 20.0);
        t = (t + dt).clamp(refrigerant.coldest() + 1.0, refrigerant.hottest());
        round += 1;
        if dt.abs() < LAST_STEP || round > ROUNDS {
            break;
        }
    }
    let (s, g) = refrigerant.at_with_slopes(t);
    let (v_l, v_g) = (1.0 / s.rho_l, 1.0 / s.rho_g);
    let x = (specific - v_l) / (v_g - v_l);
    if x >= 1.0 {
        return false;
    }
    if x <= 0.0 {
        full(refrigerant, node, given, t);
        return true;
    }
    let nrt = given.moles * R_UNIVERSAL * t;
    node.phase = Phase::TwoPhase;
    node.temperature = t;
    node.quality = x;
    node.liquid = m * (1.0 - x);
    node.vapour_density = s.rho_g;
    node.liquid_density = s.rho_l;
    // Of a blend the pressure lies between the bubble and the dew line.
    node.refrigerant_pressure = s.p + x * (s.p_dew - s.p);
    let p_slope = g.p + x * (g.p_dew - g.p);
    let pocket = Pocket::over(volume, node.liquid * v_l, nrt);
    node.vapour_volume = pocket.volume;
    node.pressure = node.refrigerant_pressure + pocket.pressure;
    let per_root = R_UNIVERSAL * pocket.per_root;
    node.per_energy = (p_slope + given.moles * per_root) / d;
    let a = s.u_l - v_l * (s.u_g - s.u_l) / (v_g - v_l);
    node.per_mass = pocket.per_liquid_volume * v_l * v_g / (v_g - v_l) - node.per_energy * a;
    node.per_mole = per_root * t;
    node.enthalpy = s.h_l + x * (s.h_g - s.h_l);
    true
}

/// Full of liquid, with at most a pocket of gas.
fn full(refrigerant: &Refrigerant, node: &mut Node, given: &Given, guess: f64) {
    let (m, liquid) = (given.mass, given.mass + given.dissolved);
    let mut t = guess;
    let mut d;
    let mut round = 0;
    loop {
        let (s, g) = refrigerant.at_with_slopes(t);
        let f = liquid * s.u_l + given.capacity * t - given.energy;
        d = liquid * g.u_l + given.capacity;
        let dt = (-f / d).clamp(-20.0, 20.0);
        t = (t + dt).clamp(refrigerant.coldest(), refrigerant.hottest());
        round += 1;
        if dt.abs() < LAST_STEP || round > ROUNDS {
            break;
        }
    }
    let (s, g) = refrigerant.at_with_slopes(t);
    let v_l = 1.0 / s.rho_l;
    let pocket = Pocket::over(given.volume, m * v_l, given.moles * R_UNIVERSAL * t);
    node.phase = Phase::Liquid;
    node.temperature = t;
    node.quality = 0.0;
    node.liquid = m;
    node.vapour_volume = pocket.volume;
    node.vapour_density = s.rho_g;
    node.liquid_density = s.rho_l;
    node.refrigerant_pressure = s.p;
    node.pressure = s.p + pocket.pressure;
    let per_root = R_UNIVERSAL * pocket.per_root;
    node.per_energy =
        (g.p + given.moles * per_root - pocket.per_liquid_volume * m * g.rho_l * v_l * v_l) / d;
    node.per_mass = pocket.per_liquid_volume * v_l - node.per_energy * s.u_l;
    node.per_mole = per_root * t;
    node.enthalpy = s.u_l + node.pressure * v_l;
}
