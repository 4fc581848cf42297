//! A scenario under way: the clock, `apply(Action)`, `tick()`, readings, the hidden truth.

mod actions;
pub mod charging_chart;
mod climate;
mod flammability;
mod glass;
mod job_sheet;
mod lost;
mod measure;
mod outcome;
mod overrides;
mod pipe_surface;
pub mod procedure;
mod refusal;
mod settle;
mod surroundings;
mod tick;
mod truth;
mod watch;

pub use glass::Glass;
pub use job_sheet::{Entry, JobSheet};
pub use outcome::{Frozen, Outcome, Stop};
pub use overrides::{Contradiction, Overrides};
pub use pipe_surface::PipeSurface;
pub use refusal::Refusal;
pub use settle::{Settled, settle};
pub use truth::Truth;

use crate::fluid::moist_air;
use crate::kit::tool::{Bench, Load};
use crate::kit::{Kit, Piping, Tools};
use crate::plant::faults::FaultTarget;
use crate::plant::network::{Boundary, BoundaryId};
use crate::plant::{
    Air, AirSide, Conditions, Electrics, Fittings, Outlets, Plant, Target, Thermostat,
};
use crate::scenario::Scenario;
use crate::units::{ATMOSPHERE, Mass, Temperature};
use crate::words::{Action, Finding};
use climate::Climate;
use surroundings::Surroundings;
use watch::Watch;

/// The length of a tick, s.
pub const TICK: f64 = crate::plant::TICK;

/// Ticks in a second.
pub const TICKS_PER_SECOND: u64 = 10;

/// The one door: whoever drives a job, from window, command line, script, replay or test, does it
/// through these. A recorder stands in the same place and writes down what passes.
pub trait Driver {
    /// Does an action, or refuses it and changes nothing.
    fn apply(&mut self, action: Action) -> Result<(), Refusal>;
    /// Lets one tick pass.
    fn tick(&mut self);
    /// The job behind the door, to look at.
    fn job(&self) -> &Job;
}

/// Which tools are rated for refrigerants that burn.
#[derive(Debug, Clone, Copy)]
struct Rated {
    detector: bool,
    pump: bool,
}

/// One scenario under way.
#[derive(Debug, Clone)]
pub struct Job {
    tick: u64,
    /// The tick at which the state was found to be no number.
    lost_at: Option<u64>,
    handed_back: bool,
    running_ticks: u64,
    plant: Plant,
    outlets: Outlets,
    piping: Piping,
    fittings: Fittings,
    electrics: Electrics,
    air: AirSide,
    kit: Kit,
    sheet: JobSheet,
    watch: Watch,
    surroundings: Surroundings,
    rated: Rated,
    /// The air that opens joints and hoses let in.
    outside: BoundaryId,
    climate: Climate,
    nominal_charge: f64,
    /// What the right charge shows.
    target: Target,
    rated_flow: f64,
    /// Test pressures of low and high side, Pa gauge.
    test_pressures: (f64, f64),
}

impl Job {
    /// A job at its start: the unit rested at the weather's temperature, the kit on the cart.
    pub fn new(scenario: &Scenario) -> Self {
        let unit = &scenario.unit;
        let (site, cart) = (&scenario.file.site, &scenario.file.cart);
        let climate = Climate::of(site);
        let (outdoor, indoor) = (climate.outdoor, climate.indoor);
        let conditions = Conditions {
            compressor_powered: false,
            condenser_fan: 0.0,
            blower: 0.0,
            outdoor,
            sun: climate.sun,
            indoor,
        };
        let nominal = unit.nameplate.charge_for(site.line_set);
        let share: f64 = scenario
            .file
            .faults
            .iter()
            .map(|fault| fault.charge_share())
            .sum();
        let charge = Mass::from_kilograms(nominal.kilograms() * (1.0 + share));
        let installed = unit.clone().with_line_set(site.line_set);
        let mut plant = Plant::new(&installed, &conditions, charge);
        let mut fittings = Fittings::sound(&unit.service);
        let mut air = AirSide::default();
        for fault in &scenario.file.faults {
            fault.plant(&mut FaultTarget {
                plant: &mut plant,
                fittings: &mut fittings,
                air: &mut air,
            });
        }
        let outside = plant.network_mut().add_boundary(open_air(outdoor));
        let outlets = Outlets::lay_out(&mut plant, &fittings, outside);
        let piping = Piping::lay_out(&mut plant, &fittings, outside, cart.hose, cart.hose_bore);
        let tools = Tools::set_up(&mut Bench {
            network: plant.network_mut(),
            hose: piping.tee(),
            air: outside,
            air_temperature: outdoor.t,
            load: Load {
                refrigerant: cart.refrigerant,
                extra: &cart.tools,
                pump_rated: cart.pump_rated,
                recovery_rated: cart.recovery_rated,
            },
            is_extra: false,
        });
        let kit = Kit::on_the_cart(tools, outdoor.t, cart.thermometers, scenario.file.seed);
        let thermostat = Thermostat::set_to(
            site.thermostat.setpoint.map(Temperature::kelvin),
            site.thermostat.differential.kelvins(),
            indoor.t,
        );
        Self {
            tick: 0,
            lost_at: None,
            handed_back: false,
            running_ticks: 0,
            plant,
            outlets,
            piping,
            fittings,
            electrics: Electrics::at_rest(unit.electrics, thermostat),
            air,
            kit,
            sheet: JobSheet::default(),
            watch: Watch::default(),
            surroundings: Surroundings::of(site),
            rated: Rated {
                detector: cart.detector_rated,
                pump: cart.pump_rated,
            },
            outside,
            climate,
            nominal_charge: nominal.kilograms(),
            target: unit.nameplate.target,
            rated_flow: unit.nameplate.rated_flow.kilograms_per_second(),
            test_pressures: (
                unit.nameplate.low_side_test.pascals(),
                unit.nameplate.high_side_test.pascals(),
            ),
        }
    }

    /// The ticks that have passed.
    pub const fn now(&self) -> u64 {
        self.tick
    }

    /// Whether the job is over.
    pub const fn is_handed_back(&self) -> bool {
        self.handed_back
    }

    /// What the watch has noted, in the order in which each began.
    pub fn findings(&self) -> &[Finding] {
        self.watch.findings()
    }

    /// The job sheet.
    pub const fn sheet(&self) -> &JobSheet {
        &self.sheet
    }

    /// Valves, ports, joints and drier as they stand.
    pub const fn fittings(&self) -> &Fittings {
        &self.fittings
    }

    /// Thermostat, disconnect and motor as they stand.
    pub const fn electrics(&self) -> &Electrics {
        &self.electrics
    }

    /// Whether detector and vacuum pump are rated for refrigerants that burn, as their cases say.
    pub const fn tools_rated(&self) -> (bool, bool) {
        (self.rated.detector, self.rated.pump)
    }

    /// Whether doors are open and a fan changes the air.
    pub const fn is_ventilated(&self) -> bool {
        self.surroundings.fan_on
    }

    /// The kit as it stands.
    pub const fn kit(&self) -> &Kit {
        &self.kit
    }

    /// The indoor air as it goes into the unit.
    pub const fn indoor_air(&self) -> Air {
        self.climate.indoor
    }

    /// The circuit, for those who may see inside.
    pub const fn plant(&self) -> &Plant {
        &self.plant
    }
}

impl Driver for Job {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        Self::apply(self, action)
    }

    fn tick(&mut self) {
        Self::tick(self);
    }

    fn job(&self) -> &Job {
        self
    }
}

/// The open air as a boundary of the network.
fn open_air(air: Air) -> Boundary {
    let water = moist_air::vapour_pressure(air.w) / ATMOSPHERE;
    Boundary {
        pressure: ATMOSPHERE,
        temperature: air.t,
        moles: [0.0, 1.0 - water, water],
    }
}
