//! Running a unit to a steady state, to know what its instruments will read.

use super::outcome::StopLog;
use super::{Job, Outcome, Overrides, TICK, TICKS_PER_SECOND};
use crate::plant::{Section, ThermostatCall};
use crate::scenario::{IndoorAir, Scenario};
use crate::units::{ATMOSPHERE, PSI, Power, Temperature};
use crate::words::Action;
use serde::Serialize;

/// A steady state, in the units that a technician reads.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Settled {
    /// Pressure in the suction line at its service valve, psig.
    pub suction_psig: f64,
    /// Pressure in the liquid line at its service valve, psig.
    pub liquid_psig: f64,
    /// Pressure at the compressor's discharge, psig.
    pub discharge_psig: f64,
    /// Dew temperature at the suction valve's pressure, °F.
    pub evaporating_f: f64,
    /// Dew temperature at the condenser's pressure, °F.
    pub condensing_f: f64,
    /// Superheat at the suction valve, °F.
    pub superheat_f: f64,
    /// Superheat at the outlet of the indoor coil, °F.
    pub coil_superheat_f: f64,
    /// Subcooling at the liquid valve, °F.
    pub subcooling_f: f64,
    /// Discharge gas, °F.
    pub discharge_f: f64,
    /// Rise of the air through the outdoor coil, °F.
    pub condenser_air_rise_f: f64,
    /// Drop of the air through the indoor coil, °F.
    pub evaporator_air_drop_f: f64,
    /// Share of the indoor coil's work that cools the air; the rest dries it.
    pub sensible_share: f64,
    /// Cooling of the room, less the blower's heat, Btu/h.
    pub capacity_btu_h: f64,
    /// Electric power with both fans, W.
    pub power_w: f64,
    /// Electric power of the compressor, W.
    pub compressor_w: f64,
    /// Current of the compressor, A.
    pub compressor_amps: f64,
    /// Refrigerant through the compressor, kg/h.
    pub flow_kg_h: f64,
    /// Refrigerant in the unit, kg.
    pub charge_kg: f64,
    /// The time that was simulated, s.
    pub simulated_s: f64,
    /// Whether it had come to rest while it ran; otherwise this is the last moment.
    pub settled: bool,
    /// How the run came out.
    #[serde(flatten)]
    pub outcome: Outcome,
}

/// The least time a unit runs before it can be called steady, s.
const LEAST: u64 = 600;
/// The most time it is given, s.
const MOST: u64 = 3 * 3600;
/// The distance of two looks, s.
const LOOK: u64 = 60;
/// Between two looks pressures, psi, and temperatures, °F, may move so far in a steady state.
const STEADY: f64 = 0.01;
/// A stride on the way there, ticks. A steady state does not hang on the step (a test holds that).
const STRIDE: u64 = 10;
/// What is walked in strides has come near enough to go on tick by tick.
const NEAR: f64 = 5.0 * STEADY;

/// Runs a scenario's unit, with some things overridden, on cooling until nothing that can be read
/// moves any more.
///
/// Steady: over a minute pressures move less than 0.01 psi and temperatures less than 0.01 °F, tick
/// by tick. Most of the way there is gone in strides of a second.
///
/// # Panics
///
/// Never: the thermostat is never refused.
pub fn settle(scenario: &Scenario, overrides: &Overrides) -> Settled {
    let mut scenario = overrides.put_into(scenario);
    // What moves finds no rest: the air is held as it is at the start, and the thermostat calls.
    let site = &mut scenario.file.site;
    site.course.clear();
    site.indoor_air = IndoorAir::Held;
    site.thermostat.setpoint = None;
    let mut job = Job::new(&scenario);
    job.apply(Action::Thermostat(ThermostatCall::Cool))
        .expect("a thermostat is never refused");
    let mut log = StopLog::default();
    look_until_still(&mut job, NEAR, |job| {
        for _ in 0..LOOK * TICKS_PER_SECOND / STRIDE {
            job.stride(STRIDE);
            log.look(job);
        }
        !log.is_full()
    });
    let is_steady = look_until_still(&mut job, STEADY, |job| {
        for _ in 0..LOOK * TICKS_PER_SECOND {
            job.tick();
            log.look(job);
        }
        !log.is_full()
    });
    let outcome = if job.is_of_numbers() {
        log.outcome(&job, is_steady, scenario.unit.evaporator.frost_full)
    } else {
        Outcome::NotANumber
    };
    job.settled(outcome)
}

/// Lets time pass from look to look until no sign has moved by `most`; false when it never was so,
/// when `pass` says that waiting on is of no use, and when the state is no number.
fn look_until_still(job: &mut Job, most: f64, mut pass: impl FnMut(&mut Job) -> bool) -> bool {
    let mut before = signs(job);
    while job.now() < MOST * TICKS_PER_SECOND {
        let goes_on = pass(job);
        let now = signs(job);
        if !goes_on || !job.is_of_numbers() {
            return false;
        }
        let moved = before.iter().zip(now).any(|(b, n)| (n - b).abs() > most);
        if !moved && job.now() >= LEAST * TICKS_PER_SECOND {
            return true;
        }
        before = now;
    }
    false
}

/// What must stand still: pressures in psi, temperatures in °F.
fn signs(job: &Job) -> [f64; 5] {
    let pressure = |place: Section| job.plant.pressure(place) / PSI;
    let temperature = |place: Section| job.plant.temperature(place) * 1.8;
    [
        pressure(Section::SuctionLine),
        pressure(Section::LiquidLine),
        temperature(Section::SuctionLine),
        temperature(Section::LiquidLine),
        temperature(Section::Discharge),
    ]
}

impl Job {
    /// Goes on by several ticks in one step of circuit and electric side. Instruments and watch are
    /// left behind: this is no work on a job, only a way to a steady state.
    fn stride(&mut self, ticks: u64) {
        let dt = ticks as f64 * TICK;
        self.set_openings();
        self.plant.advance(&self.conditions(), dt);
        self.tick += ticks;
        self.follow_electrics(dt);
    }

    /// What is true now, in the units that a technician reads.
    pub fn settled(&self, outcome: Outcome) -> Settled {
        let plant = &self.plant;
        let refrigerant = plant.refrigerant();
        let operating = plant.operating();
        let truth = self.truth();
        let psig = |place: Section| (plant.pressure(place) - ATMOSPHERE) / PSI;
        let dew = |place: Section| {
            let dew = refrigerant.dew_temperature(plant.pressure(place));
            Temperature::from_kelvin(dew).fahrenheit()
        };
        Settled {
            suction_psig: psig(Section::SuctionLine),
            liquid_psig: psig(Section::LiquidLine),
            discharge_psig: psig(Section::Discharge),
            evaporating_f: dew(Section::SuctionLine),
            condensing_f: dew(Section::Condenser),
            superheat_f: truth.superheat * 1.8,
            coil_superheat_f: operating.coil_superheat * 1.8,
            subcooling_f: truth.subcooling * 1.8,
            discharge_f: Temperature::from_kelvin(plant.temperature(Section::Discharge))
                .fahrenheit(),
            condenser_air_rise_f: (operating.outdoor_air_out - self.climate.outdoor.t) * 1.8,
            evaporator_air_drop_f: (self.climate.indoor.t - operating.indoor_air_out) * 1.8,
            sensible_share: operating.sensible / operating.capacity.max(1.0),
            capacity_btu_h: Power::from_watts(operating.net_capacity).btu_per_hour(),
            power_w: operating.power,
            compressor_w: operating.compressor_power,
            compressor_amps: self.electrics.amps(operating.compressor_power),
            flow_kg_h: operating.compressor_flow * 3600.0,
            charge_kg: truth.charge,
            simulated_s: self.tick as f64 * TICK,
            settled: outcome.is_at_rest(),
            outcome,
        }
    }
}
