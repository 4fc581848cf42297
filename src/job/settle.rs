//! Running a unit to a steady state, to know what its instruments will read.

use super::{Job, TICK, TICKS_PER_SECOND};
use crate::plant::{Place, ThermostatCall};
use crate::scenario::Scenario;
use crate::units::{ATMOSPHERE, Fraction, PSI, Power, Temperature};
use crate::words::Action;
use serde::Serialize;

/// What can be set otherwise than the scenario says.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Weather {
    /// Outdoor air.
    pub outdoor: Option<Temperature>,
    /// Return air, dry bulb.
    pub indoor: Option<Temperature>,
    /// Return air, wet bulb.
    pub indoor_wet_bulb: Option<Temperature>,
}

impl Weather {
    /// Puts it in a scenario's place.
    pub fn put_in(self, scenario: &mut Scenario) {
        let site = &mut scenario.file.site;
        site.outdoor = self.outdoor.unwrap_or(site.outdoor);
        site.indoor = self.indoor.unwrap_or(site.indoor);
        site.indoor_wet_bulb = self.indoor_wet_bulb.unwrap_or(site.indoor_wet_bulb);
    }
}

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
    /// Whether it had become steady; otherwise this is the last moment.
    pub settled: bool,
}

/// The least time a unit runs before it can be called steady, s.
const LEAST: u64 = 600;
/// The most time it is given, s.
const MOST: u64 = 3 * 3600;
/// The distance of two looks, s.
const LOOK: u64 = 60;

/// Runs a scenario's unit on cooling until nothing that can be read moves any more.
///
/// Steady: over a minute pressures move less than 0.01 psi and temperatures less than 0.01 °F.
pub fn settle(scenario: &Scenario) -> Settled {
    let mut job = Job::new(scenario);
    job.apply(Action::Thermostat(ThermostatCall::Cool)).expect("a thermostat is never refused");
    let mut before = signs(&job);
    let mut steady = false;
    while !steady && job.now() < MOST * TICKS_PER_SECOND {
        for _ in 0..LOOK * TICKS_PER_SECOND {
            job.tick();
        }
        let now = signs(&job);
        let moved = before.iter().zip(now).any(|(b, n)| (n - b).abs() > 0.01);
        steady = !moved && job.now() >= LEAST * TICKS_PER_SECOND;
        before = now;
    }
    job.settled(steady)
}

/// What must stand still: pressures in psi, temperatures in °F.
fn signs(job: &Job) -> [f64; 5] {
    let pressure = |place: Place| job.plant.pressure(place) / PSI;
    let temperature = |place: Place| job.plant.temperature(place) * 1.8;
    [
        pressure(Place::SuctionLine),
        pressure(Place::LiquidLine),
        temperature(Place::SuctionLine),
        temperature(Place::LiquidLine),
        temperature(Place::Discharge),
    ]
}

impl Job {
    /// What is true now, in the units that a technician reads.
    pub fn settled(&self, settled: bool) -> Settled {
        let plant = &self.plant;
        let refrigerant = plant.refrigerant();
        let operating = plant.operating();
        let truth = self.truth();
        let psig = |place: Place| (plant.pressure(place) - ATMOSPHERE) / PSI;
        let dew = |place: Place| {
            let dew = refrigerant.dew_temperature(plant.pressure(place));
            Temperature::from_kelvin(dew).fahrenheit()
        };
        let power = operating.compressor_power
            + if self.electrics.outdoor_fan_runs() { operating.outdoor_fan_power } else { 0.0 }
            + if self.electrics.blower_runs() { operating.blower_power } else { 0.0 };
        Settled {
            suction_psig: psig(Place::SuctionLine),
            liquid_psig: psig(Place::LiquidLine),
            discharge_psig: psig(Place::Discharge),
            evaporating_f: dew(Place::SuctionLine),
            condensing_f: dew(Place::Condenser),
            superheat_f: truth.superheat * 1.8,
            coil_superheat_f: operating.coil_superheat * 1.8,
            subcooling_f: truth.subcooling * 1.8,
            discharge_f: Temperature::from_kelvin(plant.temperature(Place::Discharge)).fahrenheit(),
            condenser_air_rise_f: (operating.condenser_air.t - self.outdoor.t) * 1.8,
            evaporator_air_drop_f: (self.indoor.t - operating.supply_air.t) * 1.8,
            capacity_btu_h: Power::from_watts(operating.capacity).btu_per_hour(),
            power_w: power,
            compressor_w: operating.compressor_power,
            compressor_amps: self.electrics.amps(operating.compressor_power),
            flow_kg_h: operating.compressor_flow * 3600.0,
            charge_kg: truth.charge,
            simulated_s: self.tick as f64 * TICK,
            settled,
        }
    }
}

/// A share of the nominal charge other than the scenario's.
pub fn with_charge(scenario: &mut Scenario, share: f64) {
    use crate::plant::Fault;
    let faults = &mut scenario.file.faults;
    faults.retain(|fault| fault.charge_share() == 0.0);
    if share < 1.0 {
        faults.push(Fault::Undercharge(Fraction::clamped(1.0 - share)));
    } else if share > 1.0 {
        faults.push(Fault::Overcharge(Fraction::clamped(share - 1.0)));
    }
}
