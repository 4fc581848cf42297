//! A scenario under way: the clock, `apply(Action)`, `tick()`, readings, the hidden truth.

pub mod procedure;
mod refusal;
mod sheet;
mod truth;

pub use refusal::Refusal;
pub use sheet::{Entry, JobSheet};
pub use truth::Truth;

use crate::kit::Kit;
use crate::plant::{Electrics, Fittings};
use crate::scenario::Scenario;
use crate::words::{Action, Finding, Quantity, Reading, SheetField, Shown, Status};

/// The length of a tick, s.
pub const TICK: f64 = 0.1;

/// Ticks in a second.
pub const TICKS_PER_SECOND: u64 = 10;

/// The one door: whoever drives a job, from window, command line, script, replay or test, does it
/// through these. A recorder stands in the same place and writes down what passes.
pub trait Door {
    /// Does an action, or refuses it and changes nothing.
    fn apply(&mut self, action: Action) -> Result<(), Refusal>;
    /// Lets one tick pass.
    fn tick(&mut self);
    /// The job behind the door, to look at.
    fn job(&self) -> &Job;
}

/// One scenario under way.
#[derive(Debug, Clone)]
pub struct Job {
    tick: u64,
    handed_back: bool,
    fittings: Fittings,
    electrics: Electrics,
    kit: Kit,
    sheet: JobSheet,
    findings: Vec<Finding>,
}

impl Job {
    /// A job at its start: the unit rested at the weather's temperature, the kit on the cart.
    pub fn new(scenario: &Scenario) -> Self {
        Self {
            tick: 0,
            handed_back: false,
            fittings: Fittings::of_a_sound_unit(),
            electrics: Electrics::at_rest(scenario_electrics()),
            kit: Kit::on_the_cart(308.15, scenario.file.cart.thermometers, scenario.file.seed),
            sheet: JobSheet::default(),
            findings: Vec::new(),
        }
    }

    /// Does an action, or refuses it and changes nothing.
    pub fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        let _ = action;
        if self.handed_back {
            return Err(Refusal::because("The job has been handed back."));
        }
        Ok(())
    }

    /// Lets one tick pass.
    pub fn tick(&mut self) {
        self.tick += 1;
    }

    /// The ticks that have passed.
    pub const fn now(&self) -> u64 {
        self.tick
    }

    /// Whether the job is over.
    pub const fn is_handed_back(&self) -> bool {
        self.handed_back
    }

    /// What an instrument shows.
    pub fn reading(&self, reading: Reading) -> Shown {
        let _ = reading;
        Shown::Nothing
    }

    /// Whether something can be seen to be so.
    pub fn status(&self, status: Status) -> bool {
        let _ = (status, self.tick);
        false
    }

    /// What the instruments give for a blank of the job sheet now: a reading, or what is worked
    /// out from readings by the charts (superheat, subcooling, target). `None` where an instrument
    /// that it takes shows nothing.
    pub fn instruments_for(&self, field: SheetField) -> Option<Quantity> {
        let _ = (field, self.tick);
        None
    }

    /// What is true inside.
    pub fn truth(&self) -> Truth {
        let _ = self.tick;
        Truth::default()
    }

    /// What the watch has noted, in the order in which each began.
    pub fn findings(&self) -> &[Finding] {
        &self.findings
    }

    /// The job sheet.
    pub const fn sheet(&self) -> &JobSheet {
        &self.sheet
    }

    /// Valves, ports and joints as they stand.
    pub const fn fittings(&self) -> &Fittings {
        &self.fittings
    }

    /// Thermostat, disconnect and motor as they stand.
    pub const fn electrics(&self) -> &Electrics {
        &self.electrics
    }

    /// The kit as it stands.
    pub const fn kit(&self) -> &Kit {
        &self.kit
    }

    /// A digest of the whole state: equal digests mean equal bits.
    pub fn digest(&self) -> u64 {
        self.tick
    }
}

impl Door for Job {
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

fn scenario_electrics() -> crate::plant::ElectricsData {
    use crate::plant::{ElectricsData, PressureSwitch};
    use crate::units::{Current, GaugePressure, Voltage};
    ElectricsData {
        supply: Voltage::from_volts(230.0),
        power_factor: 0.95,
        rated: Current::from_amps(17.0),
        locked_rotor: Current::from_amps(85.0),
        high_switch: PressureSwitch {
            opens: GaugePressure::from_psig(400.0),
            closes: GaugePressure::from_psig(300.0),
        },
        low_switch: None,
    }
}
