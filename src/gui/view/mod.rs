//! What may be seen of a job. Panels read this and nothing else, so that none of them can show
//! what a technician at the unit could not know.

pub mod looks;
mod scene;
pub mod system;
pub mod turn;

pub use scene::{Scene, flowing};
pub use system::System;

use crate::attempt::Mode;
use crate::fluid::refrigerant::Refrigerant;
use crate::gui::settings::Settings;
use crate::job::{Glass, Job, JobSheet, PipeSurface, TICKS_PER_SECOND};
use crate::kit::{Hose, HoseEnd, HoseState, ThermometerPlace, Tools};
use crate::plant::{Arrow, FlareSize, Joint, Line, Made, Safety, Spot, ThermostatCall};
use crate::text::{Language, Message};
use crate::units::GaugePressure;
use crate::words::{Action, GaugePlace, Reading, Shown};

/// A job as the person at the unit sees it.
#[derive(Debug, Clone, Copy)]
pub struct View<'a> {
    job: &'a Job,
    /// What is known before the first look: the customer, the nameplate.
    pub scene: &'a Scene,
    /// For what the job was begun: help and going back are for practice only.
    pub mode: Mode,
    /// How the person reads: language, units, the gauges' scale.
    pub reads: Reads,
}

/// How the person chose to read.
#[derive(Debug, Clone, Copy)]
pub struct Reads {
    /// The language.
    pub language: Language,
    /// The units of measure.
    pub system: System,
    /// The refrigerant whose saturation scale is on the gauges; `None`: no scale.
    pub scale: Option<&'static Refrigerant>,
}

impl Reads {
    /// As the settings say.
    pub fn chosen(settings: &Settings) -> Self {
        Self {
            language: settings.language,
            system: settings.units,
            scale: settings.gauge_scale.map(|scale| scale.0),
        }
    }
}

/// A gauge with a needle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Needle {
    /// The low gauge of the manifold.
    Low,
    /// The high gauge of the manifold.
    High,
    /// The outlet gauge of the regulator.
    NitrogenOutlet,
    /// The cylinder gauge of the regulator.
    NitrogenCylinder,
}

/// A service valve as it looks.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a thing of its own to see"
)]
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ValveLook {
    /// The stem: 0 front-seated, 1 back-seated.
    pub open: f64,
    /// The stem's cap is on.
    pub cap_on: bool,
    /// The port's cap is on.
    pub port_cap_on: bool,
    /// The port takes a core; else the valve shuts it on its back seat.
    pub has_core: bool,
    /// The core is in its seat.
    pub core_in: bool,
    /// A core tool is on the port.
    pub tool_on: bool,
    /// The core tool's valve is open.
    pub tool_open: bool,
}

impl<'a> View<'a> {
    /// A view of a job.
    pub const fn new(job: &'a Job, scene: &'a Scene, mode: Mode, reads: Reads) -> Self {
        Self {
            job,
            scene,
            mode,
            reads,
        }
    }

    /// The units of measure chosen.
    pub const fn system(&self) -> System {
        self.reads.system
    }

    /// The text of a key, in the language chosen.
    pub fn say(&self, key: &str) -> String {
        self.reads.language.say(key)
    }

    /// A message in the language chosen.
    pub fn tell(&self, message: &Message) -> String {
        message.in_language(self.reads.language)
    }

    /// The ticks since the start.
    pub const fn now(&self) -> u64 {
        self.job.now()
    }

    /// The seconds since the start.
    pub fn seconds(&self) -> f64 {
        self.job.now() as f64 / TICKS_PER_SECOND as f64
    }

    /// What a face shows.
    pub fn reading(&self, reading: Reading) -> Shown {
        self.job.reading(reading)
    }

    /// What a face shows, in words and in the units chosen.
    pub fn shown(&self, reading: Reading) -> Message {
        self.system().shown(self.reading(reading))
    }

    /// The same in the language chosen.
    pub fn text(&self, reading: Reading) -> String {
        self.tell(&self.shown(reading))
    }

    /// How a service valve looks.
    pub fn valve(&self, line: Line) -> ValveLook {
        let valve = self.job.fittings().valve(line);
        ValveLook {
            open: valve.open.get(),
            cap_on: valve.cap_on,
            port_cap_on: valve.port.cap_on,
            has_core: valve.has_core(),
            core_in: valve.port.core_in,
            tool_on: valve.port.tool_on,
            tool_open: valve.port.tool_open,
        }
    }

    /// How far a joint is made.
    pub const fn made(&self, joint: Joint) -> Made {
        self.job.fittings().joint(joint).made
    }

    /// The tube's size at a joint.
    pub const fn flare(&self, joint: Joint) -> FlareSize {
        self.job.fittings().joint(joint).size
    }

    /// A hose.
    pub const fn hose(&self, hose: Hose) -> &'a HoseState {
        self.job.kit().manifold.hose(hose)
    }

    /// How far a hand valve of the manifold is open; the centre has none.
    pub const fn hand_valve(&self, hose: Hose) -> Option<f64> {
        let manifold = &self.job.kit().manifold;
        match hose {
            Hose::Low => Some(manifold.low_valve.get()),
            Hose::High => Some(manifold.high_valve.get()),
            Hose::Centre => None,
        }
    }

    /// Where the needle of a gauge stands, 0 to 1 of its scale, and the ends of that scale, Pa
    /// gauge.
    pub fn needle(&self, needle: Needle) -> (f64, f64, f64) {
        let kit = self.job.kit();
        let gauge = match needle {
            Needle::Low => &kit.manifold.low_gauge,
            Needle::High => &kit.manifold.high_gauge,
            Needle::NitrogenOutlet => &kit.tools.nitrogen.outlet_gauge,
            Needle::NitrogenCylinder => &kit.tools.nitrogen.cylinder_gauge,
        };
        (gauge.needle(), gauge.least, gauge.most)
    }

    /// What the centre hose can be put on.
    pub const fn tools(&self) -> &'a Tools {
        &self.job.kit().tools
    }

    /// Whether a hose can be put on something: a tool must have been brought.
    pub fn has(&self, end: HoseEnd) -> bool {
        end.tool().is_none_or(|tool| self.job.kit().tools.has(tool))
    }

    /// Nitrogen: cylinder valve open, regulator fitted, its setting in psig.
    pub const fn nitrogen(&self) -> (bool, bool, f64) {
        let set = &self.job.kit().tools.nitrogen;
        (set.valve_open, set.regulator_fitted, set.setting.psig())
    }

    /// What the regulator's screw is set to.
    pub const fn regulator(&self) -> GaugePressure {
        self.job.kit().tools.nitrogen.setting
    }

    /// Refrigerant cylinder: how far its valve is open, and whether it stands on its head.
    pub const fn cylinder(&self) -> (f64, bool) {
        let cylinder = &self.job.kit().tools.refrigerant_cylinder;
        (cylinder.valve.get(), cylinder.inverted)
    }

    /// The vacuum pump as it looks.
    pub fn pump(&self) -> PumpLook {
        let pump = &self.job.kit().tools.vacuum_pump;
        PumpLook {
            running: pump.running,
            inlet_open: pump.inlet_open,
            ballast_open: pump.ballast_open,
            oil_is_milky: pump.oil_is_milky(),
        }
    }

    /// The micron gauge: where it is, whether its valve is open, whether it is ruined.
    pub const fn micron_gauge(&self) -> (GaugePlace, bool, bool) {
        let gauge = &self.job.kit().micron_gauge;
        (gauge.place, gauge.valve_open, gauge.ruined)
    }

    /// Where the detector's tip is held.
    pub const fn detector_at(&self) -> Option<Spot> {
        self.job.kit().detector.at
    }

    /// How it bubbles at a spot; `None` where it is dry.
    pub fn bubbles(&self, spot: Spot) -> Option<f64> {
        self.job.kit().bubbles.shown(spot)
    }

    /// Whether a thermometer is at a place.
    pub const fn thermometer_at(&self, place: ThermometerPlace) -> bool {
        self.job.kit().thermometers.is_at(place)
    }

    /// How many thermometers are still free.
    pub fn thermometers_free(&self) -> usize {
        self.job.kit().thermometers.free()
    }

    /// Whether the clamp meter is on the compressor's lead.
    pub const fn clamp_meter_on(&self) -> bool {
        self.job.kit().clamp_meter.on
    }

    /// Whether glasses and gloves are on.
    pub const fn is_protected(&self) -> bool {
        self.job.kit().protection_on
    }

    /// Whether the refrigerant on the nameplate burns.
    pub fn refrigerant_burns(&self) -> bool {
        self.job.plant().refrigerant().is_flammable()
    }

    /// Whether the cases of detector and vacuum pump say that they are rated for what burns.
    pub const fn tools_rated(&self) -> (bool, bool) {
        self.job.tools_rated()
    }

    /// Whether doors are open and a fan changes the air.
    pub const fn is_ventilated(&self) -> bool {
        self.job.is_ventilated()
    }

    /// What the thermostat calls for.
    pub const fn call(&self) -> ThermostatCall {
        self.job.electrics().call
    }

    /// The electric side as it looks and sounds.
    pub fn electrics(&self) -> ElectricsLook {
        let e = self.job.electrics();
        ElectricsLook {
            disconnect_in: e.disconnect_in,
            locked: e.locked,
            held_in: e.held_in,
            compressor_runs: e.compressor_runs(),
            outdoor_fan_runs: e.outdoor_fan_runs(),
            blower_runs: e.blower_runs(),
            open_safety: e.open_safety().map(Safety::label),
        }
    }

    /// The arrow of the drier in the line; `None` while it is out.
    pub const fn drier(&self) -> Option<Arrow> {
        self.job.fittings().drier.fitted
    }

    /// What covers a pipe.
    pub fn coat(&self, place: ThermometerPlace) -> PipeSurface {
        self.job.coat(place)
    }

    /// What covers the fins of the indoor coil.
    pub fn indoor_coil_coat(&self) -> PipeSurface {
        self.job.indoor_coil_coat()
    }

    /// What shows in the sight glass after the drier.
    pub fn sight_glass(&self) -> Glass {
        self.job.sight_glass()
    }

    /// Whether actions, one after another, would be done as things stand: tried on a copy.
    pub fn would_do(&self, actions: &[Action]) -> bool {
        let mut copy = self.job.clone();
        actions.iter().all(|&action| copy.apply(action).is_ok())
    }

    /// The job sheet.
    pub const fn sheet(&self) -> &'a JobSheet {
        self.job.sheet()
    }
}

/// The vacuum pump as it looks.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a thing of its own to see"
)]
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PumpLook {
    /// It runs.
    pub running: bool,
    /// The valve at its inlet is open.
    pub inlet_open: bool,
    /// The gas ballast is open.
    pub ballast_open: bool,
    /// The oil in the sight glass looks milky.
    pub oil_is_milky: bool,
}

/// The electric side as it looks and sounds.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a thing of its own to see"
)]
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ElectricsLook {
    /// The disconnect is in.
    pub disconnect_in: bool,
    /// Lock and tag are on it.
    pub locked: bool,
    /// The contactor is held in by hand.
    pub held_in: bool,
    /// The compressor is heard to run.
    pub compressor_runs: bool,
    /// The outdoor fan turns.
    pub outdoor_fan_runs: bool,
    /// The indoor blower turns.
    pub blower_runs: bool,
    /// Which safety a meter finds open.
    pub open_safety: Option<Message>,
}
