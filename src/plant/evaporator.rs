//! The indoor coil: a wetted part, a superheating part, dew and frost on its fins.

use super::network::{Network, Node, Outlet, Phase, slip};
use super::zones::{mean_void, rising_root};
use crate::fluid::refrigerant::Refrigerant;
use crate::units::{ATMOSPHERE, Conductance, HeatCapacity, Mass, MassFlow, Power, Volume};
use serde::{Deserialize, Serialize};

/// An indoor coil as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EvaporatorData {
    /// Inner volume.
    pub volume: Volume,
    /// Heat capacity of the tubes in touch with the refrigerant.
    pub wall: HeatCapacity,
    /// Heat capacity of the fins.
    pub fins: HeatCapacity,
    /// Conductance of the refrigerant's side at the rated flow, if all of it were wetted.
    pub refrigerant_side: Conductance,
    /// Flow of refrigerant at which it holds.
    pub rated_flow: MassFlow,
    /// Transfer units of the air's side at full air.
    pub air_units: f64,
    /// Conductance between vapour and full air of the superheating part, if it were all of the
    /// coil. Less than what the air carries: 1,020 J/(kg K) times its flow.
    pub superheating: Conductance,
    /// Air at full speed of the blower.
    pub air: MassFlow,
    /// Power of the blower.
    pub blower: Power,
    /// Share of the refrigerant side's conductance that stays with the blower off.
    pub still: f64,
    /// Frost that leaves a tenth of the air; what grows beyond it chokes the rest.
    pub frost_full: Mass,
}

/// Specific heat of moist air, J/(kg K), from memory.
const AIR: f64 = 1020.0;
/// Latent heat of condensing water from the air, J/kg, from memory: at 10 °C and above ice less
/// exact.
const LATENT: f64 = 2.45e6;
/// Heat of fusion, J/kg, from memory.
const FUSION: f64 = 334e3;
/// The point of ice, K.
const ICE: f64 = 273.15;
/// So far below it, K, all of the fins freeze what falls on them: their coldest parts are first.
/// Chosen.
const ALL_FREEZES: f64 = 1.0;
/// Below this share of its air a blower moves nothing that counts. Chosen.
const STILL: f64 = 0.02;
/// Share of the rated flow below which the vapour in a dry coil stands. Chosen.
const STANDS: f64 = 0.02;
/// Share of its conductance that the superheating part has in still air. Chosen.
const STILL_SUPERHEATS: f64 = 0.1;
/// How the refrigerant side grows with flow, and the least of it. Chosen.
const FLOW_POWER: f64 = 0.35;
const FLOW_MIN: f64 = 0.15;
/// Share of the rated flow that spreads the liquid along the coil. Chosen.
const STIRS: f64 = 0.2;
/// Time in which it spreads or runs together, s. Chosen: a start after a rest then throws little
/// liquid at the compressor, as the coil's riser sees to (common practice, no source).
const SPREADS: f64 = 240.0;

/// What the coil feels.
#[derive(Debug, Clone, Copy)]
pub(super) struct Passing {
    /// What came in and went out in the last tick, kg/s.
    pub inflow: f64,
    pub outflow: f64,
    /// Enthalpy of what comes in, J/kg.
    pub enthalpy_in: f64,
    /// The air's temperature, K, and humidity ratio.
    pub air: f64,
    pub humidity: f64,
    /// Share of the full air, before frost.
    pub speed: f64,
}

/// What the coil does in one tick.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Evaporating {
    /// Heat into the refrigerant, W, and its slope with the pressure, W/Pa.
    pub heat: f64,
    pub heat_per_pressure: f64,
    /// J/kg that the superheating part adds to what leaves.
    pub on_leaving: f64,
    pub outlet: Option<Outlet>,
    /// Temperature at the outlet, K.
    pub outlet_temperature: f64,
    /// Share of the coil that is wetted.
    pub wetted: f64,
    /// Quality at the outlet.
    pub quality: f64,
    /// Sensible and latent heat from the air, W.
    pub sensible: f64,
    pub latent: f64,
    /// Water that the air leaves on the fins, kg/s.
    pub water: f64,
    /// Air that passes, kg/s.
    pub air: f64,
}

/// The coil with its numbers in SI, and its fins.
#[derive(Debug, Clone, Copy)]
pub(super) struct Evaporator {
    fins: f64,
    refrigerant_side: f64,
    /// The flow for which it is made, kg/s.
    pub rated_flow: f64,
    air_units: f64,
    superheating: f64,
    air: f64,
    still: f64,
    frost_full: f64,
    /// Temperature of the fins, K.
    pub wall: f64,
    /// Frost, kg.
    pub frost: f64,
    /// How far the flow has spread the liquid along the coil: 0 after a rest, when it lies at the
    /// bottom, to 1 in steady flow.
    pub spread: f64,
}

/// The air's side at one speed.
#[derive(Debug, Clone, Copy)]
struct AirSide {
    /// The blower moves it.
    is_blown: bool,
    /// kg/s times the share that touches the fins.
    touching: f64,
    flow: f64,
    humidity: f64,
    temperature: f64,
}

impl AirSide {
    /// Sensible and latent heat to a wall, W, and their slope with its temperature, W/K.
    fn given_to_wall(&self, network: &Network, wall: f64, wetted: f64) -> (f64, f64, f64) {
        let share = wetted * self.touching;
        let (p, slope) = network.water_pressure_and_slope(wall);
        let dry = ATMOSPHERE - p;
        // 0.62198: ratio of the molar masses of water and air.
        let excess = self.humidity - 0.62198 * p / dry;
        let latent_heat = LATENT + freezing(wall) * FUSION;
        let sensible = share * AIR * (self.temperature - wall);
        if excess > 0.0 {
            let humidity_slope = 0.62198 * ATMOSPHERE / (dry * dry) * slope;
            let per_kelvin = share * (AIR + latent_heat * humidity_slope);
            (sensible, share * latent_heat * excess, per_kelvin)
        } else {
            (sensible, 0.0, share * AIR)
        }
    }
}

impl AirSide {
    /// Conductance between vapour and air of a superheating part with `conductance`, W/K, which
    /// has its share of the air. Never more than that air carries, so it leaves no colder than
    /// what cools it.
    fn superheats(&self, conductance: f64, share: f64) -> f64 {
        if self.is_blown {
            let carries = share * self.flow * AIR;
            if carries > 0.0 {
                carries * (1.0 - libm::exp(-share * conductance / carries))
            } else {
                0.0
            }
        } else {
            STILL_SUPERHEATS * share * conductance
        }
    }
}

/// Share of the water that falls on fins at a temperature, K, and freezes there.
fn freezing(wall: f64) -> f64 {
    ((ICE - wall) / ALL_FREEZES).clamp(0.0, 1.0)
}

impl Evaporator {
    pub fn new(data: &EvaporatorData, t: f64) -> Self {
        // The file gives what the superheating part does in full air; the air is part of that.
        let carries = data.air.kilograms_per_second() * AIR;
        let given = data.superheating.watts_per_kelvin();
        let superheating = -carries * libm::log(1.0 - (given / carries).min(0.99));
        Self {
            fins: data.fins.joules_per_kelvin(),
            refrigerant_side: data.refrigerant_side.watts_per_kelvin(),
            rated_flow: data.rated_flow.kilograms_per_second(),
            air_units: data.air_units,
            superheating,
            air: data.air.kilograms_per_second(),
            still: data.still,
            frost_full: data.frost_full.kilograms(),
            wall: t,
            frost: 0.0,
            spread: 0.0,
        }
    }

    /// Reads the zones from the charge inside and lets the fins move on by `dt`, s.
    pub fn work(
        &mut self,
        network: &Network,
        node: &Node,
        passing: &Passing,
        dt: f64,
    ) -> Evaporating {
        let fluid = network.refrigerant();
        let te = node.temperature;
        let mut done = Evaporating {
            quality: 1.0,
            ..Evaporating::default()
        };
        let is_dry = node.phase == Phase::Vapour;
        if !is_dry {
            (done.wetted, done.quality) = zones(fluid, node, passing);
            // Liquid that lies at the bottom does not leave at the top.
            done.quality = 1.0 - self.spread * (1.0 - done.quality);
        }
        self.stir(passing.outflow, dt);
        let air = self.air_side(passing);
        done.air = air.flow;
        let through = 0.5 * (passing.inflow + passing.outflow) / self.rated_flow;
        let flow = if through > 1e-4 {
            libm::pow(through, FLOW_POWER)
        } else {
            0.0
        };
        let inner = self.refrigerant_side * flow.max(FLOW_MIN) * done.wetted.max(0.02);
        self.move_wall(network, &air, &mut done, inner, te, dt);
        let to_refrigerant = inner * (self.wall - te);
        done.outlet_temperature = te;
        if is_dry {
            self.superheat_dry(fluid, node, passing, &air, &mut done);
            done.heat += to_refrigerant;
            return done;
        }
        let (s, g) = fluid.at_with_slopes(te);
        let mut enthalpy = s.h_l + done.quality * (s.h_g - s.h_l);
        if done.wetted < 1.0 {
            let conductance = air.superheats(self.superheating, 1.0 - done.wetted);
            let units = conductance / (passing.outflow.max(1e-4) * fluid.zones().cold_vapour);
            // A blend has boiled away only at its dew line, above where it boils on the whole.
            let dew = te + (1.0 - node.quality) * (s.p - s.p_dew) / g.p_dew.max(1.0);
            done.outlet_temperature =
                dew + (passing.air - dew) * (1.0 - libm::exp(-units.min(30.0)));
            enthalpy = fluid.vapour_enthalpy(node.refrigerant_pressure, done.outlet_temperature);
            done.on_leaving = enthalpy - s.h_g;
            done.sensible += passing.outflow * done.on_leaving;
        }
        done.heat = to_refrigerant;
        done.heat_per_pressure = -inner / g.p_dew.max(1.0);
        done.outlet = Some(Outlet {
            quality: done.quality,
            enthalpy,
            temperature: done.outlet_temperature,
            is_bulk: false,
        });
        done
    }

    /// A coil with no liquid in it: what passes leaves as warm as it would behind a last drop of
    /// liquid, and vapour that stands is warmed as a whole.
    fn superheat_dry(
        &self,
        fluid: &Refrigerant,
        node: &Node,
        passing: &Passing,
        air: &AirSide,
        done: &mut Evaporating,
    ) {
        let te = node.temperature;
        let conductance = air.superheats(self.superheating, 1.0);
        let stands = libm::exp(-passing.outflow / (STANDS * self.rated_flow));
        done.heat = stands * conductance * (passing.air - te);
        done.sensible += done.heat;
        let units = conductance / (passing.outflow.max(1e-4) * fluid.zones().cold_vapour);
        // Gas that is no refrigerant goes as it is in the node.
        let refrigerant = if node.pressure > 0.0 {
            (node.refrigerant_pressure / node.pressure).clamp(0.0, 1.0)
        } else {
            0.0
        };
        let moves = refrigerant * (1.0 - stands) * (1.0 - libm::exp(-units.min(30.0)));
        done.outlet_temperature = te + moves * (passing.air - te);
        let enthalpy = fluid.vapour_enthalpy(node.refrigerant_pressure, done.outlet_temperature);
        done.on_leaving = enthalpy - node.enthalpy;
        done.sensible += passing.outflow * done.on_leaving;
        done.outlet = Some(Outlet {
            quality: 1.0,
            enthalpy,
            temperature: done.outlet_temperature,
            is_bulk: false,
        });
    }

    /// Flow spreads the liquid along the coil; at rest it runs together at the bottom.
    fn stir(&mut self, outflow: f64, dt: f64) {
        let target = if outflow > STIRS * self.rated_flow {
            1.0
        } else {
            0.0
        };
        self.spread += dt / (SPREADS + dt) * (target - self.spread);
    }

    /// The air that reaches the fins: frost takes of it, and in the end nearly all.
    fn air_side(&self, passing: &Passing) -> AirSide {
        let frost = self.frost / self.frost_full;
        // Continuous in value and slope where a tenth is left.
        let open = if frost < 1.0 {
            1.0 - 0.9 * frost
        } else {
            0.1 * libm::exp(-9.0 * (frost - 1.0))
        };
        let speed = passing.speed * open;
        let flow = self.air * speed;
        let is_blown = passing.speed > STILL;
        AirSide {
            is_blown,
            touching: if is_blown {
                flow * (1.0 - libm::exp(-self.air_units / speed.sqrt()))
            } else {
                self.still * self.refrigerant_side / AIR
            },
            flow,
            humidity: passing.humidity,
            temperature: passing.air,
        }
    }

    /// The fins between air and refrigerant, implicit in their temperature.
    fn move_wall(
        &mut self,
        network: &Network,
        air: &AirSide,
        done: &mut Evaporating,
        inner: f64,
        te: f64,
        dt: f64,
    ) {
        // Where nothing is wetted the refrigerant's own law takes the heat from the air.
        let wetted = done.wetted;
        let (sensible, latent, per_kelvin) = air.given_to_wall(network, self.wall, wetted);
        let capacity = self.fins * wetted.max(0.1);
        let surplus = sensible + latent - inner * (self.wall - te);
        self.wall += dt * surplus / (capacity + dt * (per_kelvin + inner));
        let (sensible, latent, _) = air.given_to_wall(network, self.wall, wetted);
        done.sensible = sensible;
        done.latent = latent;
        done.water = latent / (LATENT + freezing(self.wall) * FUSION);
        let freezes = freezing(self.wall);
        if freezes > 0.0 {
            self.frost += dt * freezes * done.water;
        } else if self.frost > 0.0 {
            let melted = self.frost.min((self.wall - ICE) * self.fins / FUSION);
            self.frost -= melted;
            self.wall -= melted * FUSION / self.fins;
        }
    }
}

/// Wetted share of the coil and quality at its outlet, from the liquid inside.
fn zones(fluid: &Refrigerant, node: &Node, passing: &Passing) -> (f64, f64) {
    let s = fluid.at(node.temperature);
    let psi = slip(&s);
    let inlet = ((passing.enthalpy_in - s.h_l) / (s.h_g - s.h_l)).clamp(0.02, 0.9);
    let filled = node.liquid / (s.rho_l * node.volume);
    let wetted = filled / (1.0 - mean_void(inlet, 1.0, psi));
    if wetted < 1.0 {
        return (wetted, 1.0);
    }
    let target = 1.0 - filled;
    let quality = rising_root(|x| {
        let from = inlet.min(x);
        mean_void(from, x.max(from + 1e-3), psi) - target
    });
    (1.0, quality)
}
