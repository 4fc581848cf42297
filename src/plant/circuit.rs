//! The refrigerant circuit: seven nodes, with a receiver eight, what joins them, and the parts at
//! work in them.

use super::compressor::Compressor;
use super::condenser::{self, Condenser, Condensing};
use super::evaporator::{self, Evaporating, Evaporator};
use super::metering::{CoilEnd, Metering};
use super::network::gas::MOLAR_MASS;
use super::network::{
    Compressed, Direction, Draw, Drive, ElementId, End, Law, Machinery, Network, NodeId, Path,
    Phase, Restriction, Throttled,
};
use super::rest::lay_out;
use super::unit::Unit;
use super::{Operating, carried_water, desiccant, drain, oil};
use crate::units::Mass;

/// The length of a tick, s.
pub const TICK: f64 = 0.1;

/// A node of the bare unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Section {
    /// The compressor's shell, on the suction side.
    Shell,
    /// The discharge line.
    Discharge,
    /// The outdoor coil.
    Condenser,
    /// From the liquid service valve to the drier.
    LiquidLine,
    /// From the drier to the metering device.
    AfterDrier,
    /// The indoor coil.
    Evaporator,
    /// From the indoor coil to the suction service valve.
    SuctionLine,
    /// The liquid receiver; in a unit without one the outdoor coil stands for it.
    Receiver,
}

impl Section {
    /// Those of every unit, with the flow; see [`Plant::places`].
    pub const ALL: [Self; 7] = [
        Self::Shell,
        Self::Discharge,
        Self::Condenser,
        Self::LiquidLine,
        Self::AfterDrier,
        Self::Evaporator,
        Self::SuctionLine,
    ];
}

/// What joins two places.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Link {
    /// The compressor.
    Compression,
    /// The check valve in its discharge.
    DischargeCheck,
    /// The liquid service valve.
    LiquidValve,
    /// The filter drier.
    Drier,
    /// The metering device.
    Metering,
    /// The outlet of the indoor coil.
    CoilOutlet,
    /// The suction service valve.
    SuctionValve,
}

/// Air that goes over a coil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// Temperature, K.
    pub t: f64,
    /// Humidity ratio, kg of water per kg of dry air.
    pub w: f64,
}

/// What the unit works in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// The compressor has power.
    pub compressor_powered: bool,
    /// Air over the outdoor coil, share of its full air.
    pub condenser_fan: f64,
    /// Air over the indoor coil, share of its full air.
    pub blower: f64,
    /// Outdoor air.
    pub outdoor: Air,
    /// How much warmer than the outdoor air the sun keeps the metal around the circuit, K.
    pub sun: f64,
    /// Indoor air.
    pub indoor: Air,
}

/// Area of the check valve in the discharge, m². Chosen.
const CHECK_AREA: f64 = 1e-4;
/// The discharge temperature at which the model ends, K, and the conductance to the shell beyond
/// it, W/K. Chosen.
const DISCHARGE_MAX: f64 = 443.0;
const BEYOND: f64 = 250.0;

/// The refrigerant circuit of one unit.
#[derive(Debug, Clone)]
pub struct Plant {
    pub(super) network: Network,
    /// In the order of [`Section`].
    nodes: [NodeId; 8],
    links: [ElementId; 7],
    /// What leaves the outdoor coil: the liquid valve, or the pipe to the receiver.
    coil_outlet: ElementId,
    pub(super) valve_leak: ElementId,
    areas: [f64; 7],
    openings: [f64; 7],
    /// Share of the drier's flow area that dirt has taken.
    pub(super) drier_clogging: f64,
    pub(super) drier_capacity: f64,
    /// There is a drier with its desiccant in the line.
    pub(super) desiccant_in: bool,
    pub(super) machines: Machines,
    condenser: Condenser,
    evaporator: Evaporator,
    oil_lag: f64,
    /// Flow at the rating point, kg/s.
    rated_flow: f64,
    discharge_to_shell: f64,
    fan_power: f64,
    blower_power: f64,
    /// Enthalpy of what came into the indoor coil in the last tick, J/kg.
    enthalpy_in: f64,
    drive: Box<Drive>,
    operating: Operating,
}

/// The compressor and the metering device.
#[derive(Debug, Clone, Copy)]
pub(super) struct Machines {
    pub compressor: Compressor,
    pub metering: Metering,
}

impl Machinery for Machines {
    fn compression(&self, suction: &Draw, low: f64, high: f64) -> Compressed {
        self.compressor.compress(suction.rho, low, high)
    }
    fn metering(&self, donor: &Draw, upstream: f64, downstream: f64) -> Throttled {
        self.metering.throttle(donor, upstream, downstream)
    }
    fn metering_bore(&self) -> Path {
        self.metering.bore()
    }
}

impl Plant {
    /// A unit that has rested in outdoor air, equalised, with `charge` in it.
    pub fn new(unit: &Unit, conditions: &Conditions, charge: Mass) -> Self {
        let fluid = unit.refrigerant.get();
        let t = (conditions.outdoor.t + conditions.sun).clamp(220.0, fluid.hottest() - 5.0);
        let mut network = Network::new(fluid, t);
        let nodes = lay_out(&mut network, unit, charge.kilograms(), t);
        let areas = [
            0.0,
            CHECK_AREA,
            unit.liquid_line.valve.square_metres(),
            unit.drier.area.square_metres(),
            0.0,
            unit.coil_outlet.square_metres(),
            unit.suction_line.valve.square_metres(),
        ];
        let links = std::array::from_fn(|i| {
            let from = if i == Link::LiquidValve as usize {
                7
            } else {
                i
            };
            network.add_element(
                End::Node(nodes[from]),
                End::Node(nodes[(i + 1) % 7]),
                Law::Shut,
            )
        });
        let valve_leak = network.add_element(End::Node(nodes[1]), End::Node(nodes[0]), Law::Shut);
        let drain = unit.receiver.as_ref().map(|receiver| {
            let pipe = Restriction::opening(receiver.inlet.square_metres());
            let law = Law::Path(Path::through(&[pipe]));
            network.add_element(End::Node(nodes[2]), End::Node(nodes[7]), law)
        });
        let liquid = fluid.at(t);
        let mut plant = Self {
            network,
            nodes,
            links,
            coil_outlet: drain.unwrap_or(links[Link::LiquidValve as usize]),
            valve_leak,
            areas,
            openings: [1.0; 7],
            drier_clogging: 0.0,
            drier_capacity: desiccant::moles(unit.drier.capacity),
            desiccant_in: true,
            machines: Machines {
                compressor: Compressor::new(&unit.compressor),
                metering: Metering::new(&unit.metering, fluid, t),
            },
            condenser: Condenser::new(&unit.condenser),
            evaporator: Evaporator::new(&unit.evaporator, t),
            oil_lag: unit.compressor.oil_lag.seconds(),
            rated_flow: unit.nameplate.rated_flow.kilograms_per_second(),
            discharge_to_shell: unit.compressor.discharge_to_shell.watts_per_kelvin(),
            fan_power: unit.condenser.fan.watts(),
            blower_power: unit.evaporator.blower.watts(),
            enthalpy_in: liquid.h_l,
            drive: Box::default(),
            operating: Operating::default(),
        };
        for i in 0..7 {
            plant.renew_law(i);
        }
        plant
    }

    /// The network, with whatever kit is joined to it.
    pub const fn network(&self) -> &Network {
        &self.network
    }

    /// The network, to join kit to it.
    pub const fn network_mut(&mut self) -> &mut Network {
        &mut self.network
    }

    /// The node of a place.
    pub const fn node(&self, place: Section) -> NodeId {
        self.nodes[place as usize]
    }

    /// The element of a link.
    pub const fn link(&self, link: Link) -> ElementId {
        self.links[link as usize]
    }

    /// How the unit stood in the last tick.
    pub const fn operating(&self) -> &Operating {
        &self.operating
    }

    /// Opens a link to a share of its full area; 0 shuts it, as a gap or a front-seated valve.
    pub fn set_opening(&mut self, link: Link, share: f64) {
        let share = if share > 0.0 { share.min(1.0) } else { 0.0 };
        if self.openings[link as usize] != share {
            self.openings[link as usize] = share;
            self.renew_law(link as usize);
        }
    }

    /// The area of a link that is fully open, m²; 0 for a machine.
    pub const fn full_area(&self, link: Link) -> f64 {
        self.areas[link as usize]
    }

    /// How far a link is open, 0 to 1.
    pub const fn opening(&self, link: Link) -> f64 {
        self.openings[link as usize]
    }

    /// Gives a link the law that its opening makes.
    pub(super) fn renew_law(&mut self, i: usize) {
        let share = self.openings[i];
        let law = match i {
            _ if share <= 0.0 => Law::Shut,
            0 => Law::Compression,
            4 => {
                self.machines.metering.opening = share;
                Law::Metering
            }
            _ => {
                let clean = if i == 3 {
                    1.0 - self.drier_clogging
                } else {
                    1.0
                };
                let area = self.areas[i] * share * clean;
                let path = Path::through(&[Restriction::opening(area)]);
                Law::Path(if i == 1 {
                    path.only(Direction::Forward)
                } else {
                    path
                })
            }
        };
        self.network.set_law(self.links[i], law);
    }

    /// What flowed through a link in the last tick, kg/s.
    fn passed(&self, link: Link) -> f64 {
        self.network.flux(self.link(link)).mass
    }

    /// One tick.
    pub fn tick(&mut self, conditions: &Conditions) {
        self.advance(conditions, TICK);
    }

    /// One tick of another length, s: to show that a steady state does not hang on it.
    pub fn advance(&mut self, conditions: &Conditions, dt: f64) {
        self.network
            .set_ambient(conditions.outdoor.t + conditions.sun);
        self.network.flash();
        self.machines.compressor.powered = conditions.compressor_powered;
        let condensing = self.condense(conditions);
        let evaporating = self.evaporate(conditions, dt);
        self.warm();
        self.network.advance(dt, &self.drive, &self.machines);
        oil::exchange(&mut self.network, self.nodes[0], self.oil_lag, dt);
        if self.has_receiver() {
            let pair = [Section::Condenser, Section::Receiver].map(|place| self.node(place));
            let carried = self.passed(Link::DischargeCheck) / self.evaporator.rated_flow;
            drain::exchange(&mut self.network, pair, carried, dt);
        }
        self.carry_water(dt);
        if self.desiccant_in {
            let capacity = self.drier_capacity;
            desiccant::exchange(&mut self.network, self.nodes[4], capacity, dt);
        }
        let coil = self.coil_end(evaporating.outlet_temperature);
        let freezes = self.machines.metering.freezes(&coil);
        let held = if freezes { self.held_at_throat() } else { 0.0 };
        self.machines.metering.live(&coil, held, dt);
        self.report(conditions, &condensing, &evaporating);
    }

    /// Round the circuit, against the flow, so that nothing goes twice.
    fn carry_water(&mut self, dt: f64) {
        let links = [
            Link::SuctionValve,
            Link::CoilOutlet,
            Link::Metering,
            Link::Drier,
            Link::LiquidValve,
            Link::DischargeCheck,
            Link::Compression,
        ];
        for link in links {
            let (from, stream) = (link as usize, self.passed(link) / self.rated_flow);
            let ends = [self.nodes[from], self.nodes[(from + 1) % 7]];
            if link == Link::Drier && self.desiccant_in {
                let held = self.network.node(ends[1]).bound_water;
                let room = self.drier_capacity - held;
                carried_water::filter(&mut self.network, ends, room, stream, dt);
            } else {
                carried_water::carry(&mut self.network, ends, stream, dt);
            }
        }
    }

    /// The outdoor coil's part of the drive.
    fn condense(&mut self, conditions: &Conditions) -> Condensing {
        let [_, discharge, coil, ..] = self.nodes;
        let outlet = self.coil_outlet;
        let speed = conditions.condenser_fan.clamp(0.0, 1.5);
        // The fan carries the sun's warmth off; without it the coil is as warm as the cabinet.
        let sun = if speed > 0.02 { 0.0 } else { conditions.sun };
        let passing = condenser::Passing {
            inflow: self.passed(Link::DischargeCheck).max(0.0),
            outflow: self.network.flux(outlet).mass.max(0.0),
            air: conditions.outdoor.t + sun,
            speed,
        };
        let (node, inlet) = (self.network.node(coil), self.network.node(discharge));
        let done = self
            .condenser
            .work(self.network.refrigerant(), node, inlet, &passing);
        let drive = &mut self.drive;
        drive.heat[2] = done.heat;
        drive.heat_per_pressure[2] = done.heat_per_pressure;
        drive.outlets[2] = done.outlet;
        drive.on_entering[Link::DischargeCheck as usize] = done.on_entering;
        drive.on_leaving[outlet.index()] = done.on_leaving;
        done
    }

    /// The indoor coil's part of the drive.
    fn evaporate(&mut self, conditions: &Conditions, dt: f64) -> Evaporating {
        let passing = evaporator::Passing {
            inflow: self.passed(Link::Metering).max(0.0),
            outflow: self.passed(Link::CoilOutlet).max(0.0),
            enthalpy_in: self.enthalpy_in,
            air: conditions.indoor.t,
            humidity: conditions.indoor.w,
            speed: conditions.blower.clamp(0.0, 1.5),
        };
        let node = self.network.node(self.nodes[5]);
        let done = self.evaporator.work(&self.network, node, &passing, dt);
        let drive = &mut self.drive;
        drive.heat[5] = done.heat;
        drive.heat_per_pressure[5] = done.heat_per_pressure;
        drive.outlets[5] = done.outlet;
        drive.on_leaving[Link::CoilOutlet as usize] = done.on_leaving;
        done
    }

    /// The heat of the air around, and from the discharge to the shell around it.
    fn warm(&mut self) {
        self.network.warm_by_ambient(&mut self.drive.heat, &[2, 5]);
        let temperature = |i: usize| self.network.node(self.nodes[i]).temperature;
        // The vapour's table ends at 177 °C: beyond 170 °C all heat goes on to the shell. Oil has
        // long broken down by then, and the harm is done.
        let beyond = BEYOND * (temperature(1) - DISCHARGE_MAX).max(0.0);
        let given = self.discharge_to_shell * (temperature(1) - temperature(0)) + beyond;
        self.drive.heat[0] += given;
        self.drive.heat[1] -= given;
    }

    /// What the metering device feels.
    fn coil_end(&self, outlet: f64) -> CoilEnd {
        let node = self.network.node(self.node(Section::Evaporator));
        let before = self.network.node(self.node(Section::AfterDrier));
        CoilEnd {
            outlet,
            inside: node.temperature,
            pressure: node.pressure,
            flow: self.passed(Link::Metering).max(0.0),
            water: before.gas[2] * MOLAR_MASS[2] / before.refrigerant.max(1e-6)
                + carried_water::per_flow(before.free_water, self.rated_flow),
        }
    }

    /// Water that what comes out of the throat holds there, kg per kg: its liquid dissolves most
    /// of it, its vapour carries a little.
    fn held_at_throat(&self) -> f64 {
        let fluid = self.network.refrigerant();
        let pressure = self.network.node(self.node(Section::Evaporator)).pressure;
        let boiling = fluid.dew_temperature(pressure);
        let s = fluid.at(boiling);
        let quality = ((self.enthalpy_in - s.h_l) / (s.h_g - s.h_l)).clamp(0.0, 1.0);
        let ratio = MOLAR_MASS[2] / fluid.molar_mass();
        let carried = ratio * self.network.water_pressure(boiling) / pressure;
        let dissolved = 1e-6 * fluid.dissolves_water(boiling);
        quality * carried + (1.0 - quality) * dissolved
    }

    /// Writes down how the unit stands.
    fn report(
        &mut self,
        conditions: &Conditions,
        condensing: &Condensing,
        evaporating: &Evaporating,
    ) {
        let fluid = self.network.refrigerant();
        let node = |place: Section| self.network.node(self.nodes[place as usize]);
        let after_drier = node(Section::AfterDrier);
        if self.passed(Link::Metering) > 0.0 {
            self.enthalpy_in = after_drier.enthalpy;
        }
        let suction = node(Section::SuctionLine);
        let liquid = if suction.phase == Phase::Vapour {
            0.0
        } else {
            1.0 - suction.quality
        };
        let powered = f64::from(u8::from(conditions.compressor_powered));
        let fan = if conditions.condenser_fan > 0.02 {
            self.fan_power
        } else {
            0.0
        };
        let blower = if conditions.blower > 0.02 {
            self.blower_power
        } else {
            0.0
        };
        let compressor_power = powered * self.network.compressor_power();
        let (outdoor, fan_share) = (conditions.outdoor.t, conditions.condenser_fan);
        let air = self.condenser.air_heat(outdoor, fan_share).max(20.0);
        // Still air does not carry the coil's cold to where the supply air is measured.
        let moves = conditions.blower > 0.02;
        let per_air = if moves {
            1.0 / evaporating.air.max(1e-9)
        } else {
            0.0
        };
        let shell = node(Section::Shell);
        let capacity = evaporating.sensible + evaporating.latent;
        let coil = node(Section::Evaporator);
        self.operating = Operating {
            compressor_power,
            power: compressor_power + fan + blower,
            compressor_flow: self.passed(Link::Compression),
            coil_outlet_temperature: evaporating.outlet_temperature,
            coil_superheat: evaporating.outlet_temperature - fluid.dew_temperature(coil.pressure),
            wetted: evaporating.wetted,
            coil_outlet_quality: evaporating.quality,
            capacity,
            sensible: evaporating.sensible,
            latent: evaporating.latent,
            water: evaporating.water,
            net_capacity: capacity - blower,
            outdoor_air_out: conditions.outdoor.t + condensing.rejected / air,
            indoor_air: evaporating.air,
            indoor_air_out: conditions.indoor.t - evaporating.sensible * per_air / 1020.0,
            indoor_humidity_out: conditions.indoor.w - evaporating.water * per_air,
            liquid_zone: condensing.liquid_zone,
            liquid_temperature: condensing
                .outlet
                .map_or(node(Section::Condenser).temperature, |outlet| {
                    outlet.temperature
                }),
            metering_flow: self.passed(Link::Metering),
            throat_ice: self.machines.metering.iced(),
            valve_lift: self.machines.metering.lift(),
            liquid_pumped: (self.passed(Link::Compression)
                * (1.0 - self.network.drawn(self.nodes[0])))
            .max(0.0),
            liquid_return: (self.passed(Link::SuctionValve) * liquid).max(0.0),
            dissolved_in_oil: shell.dissolved,
            shell_level: oil::level(&self.network, self.nodes[0]),
            fin_temperature: self.evaporator.wall,
            frost: self.evaporator.frost,
        };
    }

    /// Every number of the state: equal bits are an equal state.
    pub fn visit_state(&self, visitor: &mut dyn FnMut(f64)) {
        self.network.visit_state(visitor);
        self.machines.metering.visit(visitor);
        let own = [
            self.evaporator.wall,
            self.evaporator.frost,
            self.evaporator.spread,
            self.enthalpy_in,
            self.drier_clogging,
            f64::from(u8::from(self.desiccant_in)),
        ];
        own.into_iter().chain(self.openings).for_each(visitor);
    }
}
