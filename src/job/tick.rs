//! One tick of a job: what is open is set, the circuit moves, instruments follow, the watch looks.

use super::climate::TICKS_PER_STEP;
use super::watch::Watch;
use super::{Job, TICK, open_air};
use crate::fluid::gas::MOLAR_MASS;
use crate::fluid::moist_air;
use crate::kit::ThermometerPlace;
use crate::kit::tool::{After, Before, Follow};
use crate::plant::network::Flux;
use crate::plant::{Conditions, Joint, Line, Made, Section, Spot};
use crate::units::{ATMOSPHERE, PSI};
use crate::words::{FindingKind, HoseEnd, Part, Where};

/// Below this the windings of a compressor under tension break down, Pa absolute.
/// Chosen: 29 inches of vacuum (common practice, no source).
const DEEP_VACUUM: f64 = 3_400.0;

/// The share of its rated flow below which a compressor's oil does not come back. Chosen.
const OIL_RETURN: f64 = 0.1;

/// A node with more than this share of permanent gas by moles holds a test gas. Chosen.
const TEST_GAS: f64 = 0.2;

impl Job {
    /// Lets one tick pass.
    pub fn tick(&mut self) {
        if self.lost_at.is_some() {
            self.tick += 1;
            return;
        }
        let conditions = self.conditions();
        self.set_openings();
        self.plant.tick(&conditions);
        self.let_open_drier_breathe();
        self.kit.tools.after(&After {
            network: self.plant.network(),
            air_temperature: self.climate.outdoor.t,
            dt: TICK,
        });
        self.tick += 1;
        self.follow_electrics(TICK);
        self.follow_instruments(&conditions);
        self.look_at_outlets();
        self.look_at_pressures();
        self.look_at_compressor();
        self.look_at_fire();
        self.follow_climate(TICK);
        self.look_for_numbers();
    }

    /// The air goes on by `dt`, s: the room gives heat and water to the unit, and with every step
    /// of the climate weather, room and thermostat move.
    pub(super) fn follow_climate(&mut self, dt: f64) {
        if self.climate.stands_still() {
            return;
        }
        let operating = self.plant.operating();
        let blower = operating.capacity - operating.net_capacity;
        self.climate
            .give(operating.sensible - blower, operating.water, dt);
        if self.tick.is_multiple_of(TICKS_PER_STEP) {
            self.climate.step(self.tick as f64 * TICK);
            self.electrics.thermostat.feel(self.climate.indoor.t);
            let outside = open_air(self.climate.outdoor);
            self.plant.network_mut().set_boundary(self.outside, outside);
        }
    }

    /// Sets what is open in the circuit and in the kit.
    pub(super) fn set_openings(&mut self) {
        let manifold = &self.kit.manifold;
        let covered = |line: Line| manifold.hose_on(HoseEnd::of_port(line)).is_some();
        self.outlets.set(&self.fittings, covered, &mut self.plant);
        self.piping.set(&self.kit, &self.fittings, &mut self.plant);
        let on = self.kit.tool_in_use();
        let mut at = Before {
            network: self.plant.network_mut(),
            is_on: false,
            air_temperature: self.climate.outdoor.t,
        };
        self.kit.tools.before(on, &mut at);
    }

    /// Weather, and what of the air side runs.
    pub(super) fn conditions(&self) -> Conditions {
        let share = |runs: bool, dirt: f64| if runs { 1.0 - dirt } else { 0.0 };
        Conditions {
            compressor_powered: self.electrics.compressor_runs(),
            condenser_fan: share(self.electrics.outdoor_fan_runs(), self.air.outdoor_dirt),
            blower: share(self.electrics.blower_runs(), self.air.filter_dirt),
            outdoor: self.climate.outdoor,
            sun: self.climate.sun,
            indoor: self.climate.indoor,
        }
    }

    /// A drier with a flare apart takes water from the air of the place.
    fn let_open_drier_breathe(&mut self) {
        let joints = [Joint::DrierInlet, Joint::DrierOutlet];
        let is_open = joints
            .into_iter()
            .any(|joint| self.fittings.joint(joint).is_open());
        if is_open && self.fittings.drier.fitted.is_some() {
            let outside = moist_air::vapour_pressure(self.climate.outdoor.w);
            self.plant.expose_desiccant(outside, TICK);
        }
    }

    fn gauge_at(&self, place: Section) -> f64 {
        self.plant.pressure(place) - ATMOSPHERE
    }

    /// The absolute pressure inside at a spot, Pa.
    pub(super) fn pressure_behind(&self, spot: Spot) -> f64 {
        self.plant.pressure(self.fittings.place_of(spot))
    }

    /// The electric side goes on by `dt`, s.
    pub(super) fn follow_electrics(&mut self, dt: f64) {
        let (suction, discharge) = (
            self.gauge_at(Section::SuctionLine),
            self.gauge_at(Section::Discharge),
        );
        let power = self.plant.operating().compressor_power;
        if self.electrics.follow(suction, discharge, power, dt) {
            let kind = FindingKind::HighPressureTrip;
            self.watch.note(self.tick, kind, Part::Compressor, 1.0);
        }
        let runs = self.electrics.compressor_runs();
        self.running_ticks = if runs { self.running_ticks + 1 } else { 0 };
    }

    fn follow_instruments(&mut self, conditions: &Conditions) {
        self.piping.follow(&mut self.kit, &self.plant, TICK);
        self.kit.tools.follow(&Follow {
            network: self.plant.network(),
            air_temperature: self.climate.outdoor.t,
            dt: TICK,
        });
        let pressure = self
            .piping
            .at_micron_gauge(&self.kit, &self.fittings, &self.plant);
        let kit = &mut self.kit;
        if kit.micron_gauge.follow(pressure, TICK, &mut kit.noise) {
            let gauge = pressure - ATMOSPHERE;
            let kind = FindingKind::MicronGaugeOverPressured;
            self.watch.note(self.tick, kind, Where::MicronGauge, gauge);
        }
        let operating = self.plant.operating();
        kit.clamp_meter
            .follow(self.electrics.amps(operating.compressor_power), TICK);
        for place in ThermometerPlace::ALL {
            let (truth, air) = match place {
                ThermometerPlace::SuctionLine => (
                    self.plant.temperature(Section::SuctionLine),
                    conditions.outdoor.t,
                ),
                ThermometerPlace::LiquidLine => (
                    self.plant.temperature(Section::LiquidLine),
                    conditions.outdoor.t,
                ),
                ThermometerPlace::AfterDrier => (
                    self.plant.temperature(Section::AfterDrier),
                    conditions.outdoor.t,
                ),
                ThermometerPlace::DischargeLine => (
                    self.plant.temperature(Section::Discharge),
                    conditions.outdoor.t,
                ),
                ThermometerPlace::OutdoorAir => (conditions.outdoor.t, conditions.outdoor.t),
                ThermometerPlace::ReturnAir => (conditions.indoor.t, conditions.indoor.t),
                ThermometerPlace::ReturnWetBulb => {
                    (self.climate.indoor_wet_bulb, conditions.indoor.t)
                }
                ThermometerPlace::SupplyAir => (operating.indoor_air_out, conditions.indoor.t),
            };
            kit.thermometers.follow(place, truth, air, TICK);
        }
        let leak = kit.detector.at.map_or(0.0, |spot| {
            self.plant
                .network()
                .flux(self.outlets.element(spot))
                .refrigerant
                .max(0.0)
        });
        kit.detector.follow(leak, TICK);
        for spot in Spot::ALL {
            let flux = self.plant.network().flux(self.outlets.element(spot));
            let moles = flux.refrigerant / self.plant.refrigerant().molar_mass()
                + flux.gas.iter().sum::<f64>();
            let throughput =
                moles.max(0.0) * crate::fluid::gas::R_UNIVERSAL * self.climate.outdoor.t;
            kit.bubbles.follow(spot, throughput, TICK);
        }
    }

    /// What went out and came in at the spots, the hoses and the pump.
    fn look_at_outlets(&mut self) {
        let network = self.plant.network();
        let tick = self.tick;
        for spot in Spot::ALL {
            let flux = network.flux(self.outlets.element(spot));
            let inside = self.plant.pressure(self.fittings.place_of(spot));
            look_at_outlet(&mut self.watch, tick, flux, inside, spot);
        }
        let outlets = self.piping.outlets();
        for (outlet, node) in outlets.into_iter().zip(self.piping.hose_nodes()) {
            let flux = network.flux(outlet.element);
            let inside = network.node(node).pressure;
            look_at_outlet(&mut self.watch, tick, flux, inside, outlet.at);
        }
        let after = After {
            network,
            air_temperature: self.climate.outdoor.t,
            dt: TICK,
        };
        let watch = &mut self.watch;
        self.kit.tools.watch(&after, &mut |finding, size| {
            let at = Where::Tool(finding.tool());
            watch.take(tick, FindingKind::Tool(finding), at, size);
        });
        for joint in Joint::ALL {
            if self.fittings.joint(joint).made == Made::Apart {
                self.watch.grow(tick, FindingKind::StoodOpen, joint, TICK);
            }
        }
    }

    /// Test gas above the nameplate.
    fn look_at_pressures(&mut self) {
        let tick = self.tick;
        let (low, high) = self.test_pressures;
        let places = [
            (Section::Evaporator, low, Where::Part(Part::LowSide)),
            (Section::SuctionLine, low, Where::Part(Part::LowSide)),
            (Section::LiquidLine, high, Where::Part(Part::LiquidLine)),
            (Section::Condenser, high, Where::Spot(Spot::OutdoorCoil)),
        ];
        let receiver = (Section::Receiver, high, Where::Part(Part::Receiver));
        let receiver = self.plant.has_receiver().then_some(receiver);
        for (place, limit, at) in places.into_iter().chain(receiver) {
            let node = self.plant.network().node(self.plant.node(place));
            let excess = node.pressure - limit - ATMOSPHERE;
            if excess > 0.0 {
                let gas = node.gas[0] + node.gas[1];
                let molar_mass = self.plant.refrigerant().molar_mass();
                if gas > TEST_GAS * (gas + node.refrigerant / molar_mass) {
                    self.watch
                        .peak(tick, FindingKind::OverNameplate, at, excess);
                }
            }
        }
    }

    /// What the compressor had to bear.
    fn look_at_compressor(&mut self) {
        if !self.electrics.compressor_runs() {
            return;
        }
        let tick = self.tick;
        let suction = self.plant.pressure(Section::Shell);
        if suction < DEEP_VACUUM {
            self.electrics.motor_ruined = true;
            self.watch.note(
                tick,
                FindingKind::EnergisedInDeepVacuum,
                Part::Compressor,
                1.0,
            );
            return;
        }
        if suction < ATMOSPHERE - 0.5 * PSI {
            self.watch
                .grow(tick, FindingKind::RanInVacuum, Part::Compressor, TICK);
        }
        let operating = self.plant.operating();
        if operating.compressor_flow < OIL_RETURN * self.rated_flow {
            self.watch.grow(
                tick,
                FindingKind::RanWithoutOilReturn,
                Part::Compressor,
                TICK,
            );
        }
        if operating.liquid_pumped > 0.0 {
            let liquid = operating.liquid_pumped * TICK;
            self.watch.grow(
                tick,
                FindingKind::LiquidToCompressor,
                Part::Compressor,
                liquid,
            );
        }
    }
}

/// What goes out and comes in at one place, `inside` Pa behind it.
fn look_at_outlet(watch: &mut Watch, tick: u64, flux: &Flux, inside: f64, at: impl Into<Where>) {
    let at = at.into();
    if flux.refrigerant > 0.0 {
        watch.grow(tick, FindingKind::Released, at, flux.refrigerant * TICK);
    }
    // Air that a vacuum draws, not the breath that moves through an open joint.
    let air = -flux.gas[1] * MOLAR_MASS[1] * TICK;
    if air > 0.0 && inside < ATMOSPHERE - 0.5 * PSI {
        watch.grow(tick, FindingKind::AirDrawnIn, at, air);
    }
}
