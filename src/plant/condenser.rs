//! The outdoor coil: desuperheating, condensing, and a level of liquid that subcools.

use super::network::{Node, Outlet, Phase, slip};
use super::zones::{mean_void, rising_root};
use crate::fluid::refrigerant::Refrigerant;
use crate::units::{Conductance, HeatCapacity, MassFlow, Power, Volume};
use serde::{Deserialize, Serialize};

/// An outdoor coil as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CondenserData {
    /// Inner volume.
    pub volume: Volume,
    /// Heat capacity of the tubes.
    pub wall: HeatCapacity,
    /// Conductance if all of it condensed.
    pub condensing: Conductance,
    /// Conductance if all of it held vapour.
    pub vapour: Conductance,
    /// Conductance if all of it held liquid.
    pub liquid: Conductance,
    /// Air at full speed of the fan, at 35 °C.
    pub air: MassFlow,
    /// Power of the fan.
    pub fan: Power,
    /// How much of the conductance a coil full of permanent gas would lose.
    pub gas_spoils: f64,
    /// Share of the conductance that stays with the fan off.
    pub still: f64,
}

/// Specific heat of air, J/(kg K), from memory.
const AIR: f64 = 1006.0;
/// Temperature at which a unit's file gives the air, K. A fan moves a volume, so its air is the
/// heavier the colder it is.
const RATED_AIR: f64 = 308.15;
/// The most of the coil that desuperheats. Chosen.
const DESUPERHEATS_MAX: f64 = 0.6;

/// What the coil does in one tick.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Condensing {
    /// Heat into the refrigerant, W, and its slope with the pressure, W/Pa.
    pub heat: f64,
    pub heat_per_pressure: f64,
    /// J/kg that the inlet's and the outlet's single-phase zone add to what passes.
    pub on_entering: f64,
    pub on_leaving: f64,
    pub outlet: Option<Outlet>,
    /// Share of the coil that holds liquid.
    pub liquid_zone: f64,
    /// Heat into the air, W.
    pub rejected: f64,
}

/// What passes the coil.
#[derive(Debug, Clone, Copy)]
pub(super) struct Passing {
    /// What came in and went out in the last tick, kg/s.
    pub inflow: f64,
    pub outflow: f64,
    /// The air's temperature, K.
    pub air: f64,
    /// Share of the full air.
    pub speed: f64,
}

/// The coil with its numbers in SI.
#[derive(Debug, Clone, Copy)]
pub(super) struct Condenser {
    condensing: f64,
    vapour: f64,
    liquid: f64,
    air: f64,
    gas_spoils: f64,
    still: f64,
}

impl Condenser {
    pub fn new(data: &CondenserData) -> Self {
        Self {
            condensing: data.condensing.watts_per_kelvin(),
            vapour: data.vapour.watts_per_kelvin(),
            liquid: data.liquid.watts_per_kelvin(),
            air: data.air.kilograms_per_second(),
            gas_spoils: data.gas_spoils,
            still: data.still,
        }
    }

    /// Heat capacity of the air that passes at a temperature, K, and a share of full speed, W/K.
    pub fn air_heat(&self, air: f64, speed: f64) -> f64 {
        self.air * RATED_AIR / air * speed * AIR
    }

    /// Reads the zones from the charge inside.
    pub fn work(
        &self,
        fluid: &Refrigerant,
        node: &Node,
        inlet: &Node,
        passing: &Passing,
    ) -> Condensing {
        let ts = node.temperature;
        let air_side = if passing.speed > 0.02 {
            passing.speed.sqrt()
        } else {
            0.0
        };
        let air_heat = self.air_heat(passing.air, passing.speed);
        // Permanent gas lies between the vapour and the tube.
        let gas_share = (node.pressure - node.refrigerant_pressure).max(0.0) / node.pressure;
        let spoiled = if node.phase == Phase::Liquid {
            0.0
        } else {
            gas_share.min(0.9)
        };
        let conductance =
            self.condensing * (air_side + self.still) * (1.0 - self.gas_spoils * spoiled);
        let lift = ts - passing.air;
        if node.phase == Phase::Vapour {
            let rejected = 0.25 * conductance * lift;
            return Condensing {
                heat: -rejected,
                rejected,
                ..Condensing::default()
            };
        }
        let (s, g) = fluid.at_with_slopes(ts);
        let zones = fluid.zones();
        let dry = 0.3 + 0.7 * air_side;
        let mut done = Condensing::default();
        let mut desuperheats = 0.0;
        let hot = inlet.enthalpy > s.h_g && inlet.phase == Phase::Vapour;
        if hot {
            done.on_entering = s.h_g - inlet.enthalpy;
            if passing.inflow > 1e-5 && lift > 0.5 {
                let ratio = ((inlet.temperature - passing.air) / lift).max(1.0);
                desuperheats = (passing.inflow * zones.hot_vapour / (self.vapour * dry)
                    * libm::log(ratio))
                .min(DESUPERHEATS_MAX);
            }
        }
        let psi = slip(&s);
        let rest = 1.0 - desuperheats;
        let filled = node.liquid / (s.rho_l * node.volume);
        let whole = mean_void(0.0, 1.0, psi);
        let mut quality = 0.0;
        if filled >= rest * (1.0 - whole) {
            done.liquid_zone = ((filled - rest * (1.0 - whole)) / whole).min(rest);
        } else {
            let target = 1.0 - filled / rest;
            quality = rising_root(|x| mean_void(x, 1.0, psi) - target);
        }
        let condenses = rest - done.liquid_zone;
        let per_kelvin = condenses
            * if air_heat > 1.0 {
                air_heat * (1.0 - libm::exp(-conductance / air_heat))
            } else {
                conductance
            };
        done.heat = -per_kelvin * lift;
        done.heat_per_pressure = -per_kelvin / g.p.max(1.0);
        let mut enthalpy = s.h_l + quality * (s.h_g - s.h_l);
        let mut temperature = ts;
        if done.liquid_zone > 0.0 {
            let transfer =
                self.liquid * dry * done.liquid_zone / (passing.outflow.max(1e-4) * zones.liquid);
            // A blend is all liquid only at its bubble line, below where it condenses on the whole.
            let bubble = ts - node.quality * (s.p - s.p_dew) / g.p.max(1.0);
            let above_air = bubble - passing.air;
            temperature = bubble - above_air * (1.0 - libm::exp(-transfer.min(30.0)));
            let cold = fluid.at(temperature);
            enthalpy = cold.u_l + node.pressure / cold.rho_l;
            done.on_leaving = enthalpy - s.h_l;
        }
        done.rejected = per_kelvin * lift
            - passing.inflow * done.on_entering
            - passing.outflow * done.on_leaving;
        done.outlet = Some(Outlet {
            quality,
            enthalpy,
            temperature,
            is_bulk: false,
        });
        done
    }
}
