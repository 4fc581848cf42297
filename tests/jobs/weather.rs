//! Weather and room that live, over a whole job.

use crate::bench::Bench;
use coldbench::plant::ThermostatCall;
use coldbench::scenario::{IndoorAir, RoomLoad, Scenario, Space, WeatherPoint};
use coldbench::units::{
    Conductance, Fraction, HeatCapacity, Irradiance, MassFlow, Power, Temperature, Time, Volume,
};
use coldbench::words::Action;

/// A sound unit on a room with a load, its thermostat at 76 °F.
fn living_room(gains: f64) -> Scenario {
    let mut scenario = Scenario::of_shipped_unit("r410a_2ton_orifice").expect("a shipped unit");
    let site = &mut scenario.file.site;
    site.indoor_space = Space::Room {
        volume: Volume::from_cubic_metres(120.0),
        air_changes: 0.5,
    };
    site.indoor = Temperature::from_fahrenheit(77.0);
    site.indoor_wet_bulb = Temperature::from_fahrenheit(64.0);
    site.indoor_air = IndoorAir::Drifts(RoomLoad {
        walls: Conductance::from_watts_per_kelvin(150.0),
        gains: Power::from_watts(gains),
        capacity: HeatCapacity::from_kilojoules_per_kelvin(1_500.0),
        moisture: MassFlow::from_grams_per_hour(300.0),
    });
    site.thermostat.setpoint = Some(Temperature::from_fahrenheit(76.0));
    scenario
}

/// Common practice, no source: a unit of the right size cycles on its thermostat and keeps the
/// room about its differential; and by the balance of energy it runs the share of the time that
/// the load is of what it takes.
#[test]
fn a_thermostat_cycles_and_the_unit_runs_as_much_as_the_load_asks() {
    let mut bench = Bench::of(living_room(1_500.0)).act(Action::Thermostat(ThermostatCall::Cool));
    let (mut starts, mut running, mut taken, mut ran) = (0, 0.0, 0.0, false);
    bench = bench.run(3_600.0);
    let hours = 3.0;
    for _ in 0..(hours * 3_600.0) as usize {
        bench = bench.run(1.0);
        let runs = bench.job.electrics().compressor_runs();
        starts += usize::from(runs && !ran);
        ran = runs;
        let operating = bench.job.plant().operating();
        let blower = operating.capacity - operating.net_capacity;
        taken += operating.sensible - blower;
        running += f64::from(u8::from(runs));
        let room = Temperature::from_kelvin(bench.job.indoor_air().t).fahrenheit();
        assert!((75.0..77.0).contains(&room), "the room is at {room} °F");
    }
    assert!((2..=20).contains(&starts), "{starts} starts in {hours} h");
    let share = running / (hours * 3_600.0);
    assert!((0.2..0.9).contains(&share), "it runs {share} of the time");
    // Balance over whole cycles: what it took is what came in. One cycle may be open at the end.
    let outdoor = Temperature::from_fahrenheit(95.0).kelvin();
    let room = Temperature::from_fahrenheit(76.0).kelvin();
    let infiltration = 120.0 * 1.2 * 0.5 / 3_600.0 * 1_006.0;
    let load = 1_500.0 + (150.0 + infiltration) * (outdoor - room);
    let mean = taken / (hours * 3_600.0);
    assert!((mean / load - 1.0).abs() < 0.1, "{mean} W for {load} W");
}

/// Common practice, no source: a room that people wet is dried by the unit as well as cooled.
#[test]
fn a_running_unit_dries_the_room() {
    let mut scenario = living_room(2_500.0);
    scenario.file.site.thermostat.setpoint = None;
    let bench = Bench::of(scenario).act(Action::Thermostat(ThermostatCall::Cool));
    let before = bench.job.indoor_air();
    let bench = bench.run(3_600.0);
    let after = bench.job.indoor_air();
    assert!(
        after.t < before.t && after.w < before.w,
        "{before:?} {after:?}"
    );
}

/// A standing unit follows the day: its gauges stand at the saturation of the air around it.
///
/// Source: the saturation table of R-410A as `CoolProp` gives it, 201.0 psig (bubble) at 70 °F and
/// 274.9 psig at 90 °F, from memory within 2 psi.
#[test]
fn a_standing_unit_follows_the_day() {
    let mut scenario = Scenario::of_shipped_unit("r410a_2ton_orifice").expect("a shipped unit");
    let site = &mut scenario.file.site;
    site.outdoor = Temperature::from_fahrenheit(70.0);
    site.indoor = Temperature::from_fahrenheit(90.0);
    site.course = vec![WeatherPoint {
        after: Time::from_minutes(60.0),
        outdoor: Temperature::from_fahrenheit(90.0),
        humidity: Fraction::clamped(0.3),
        sun: Irradiance::default(),
    }];
    let bench = Bench::of(scenario);
    let psig = |bench: &Bench| {
        use coldbench::plant::Section;
        bench.job.true_pressure(Section::LiquidLine).psig()
    };
    let start = psig(&bench);
    let bench = bench.run(6.0 * 3_600.0);
    assert!((start - 201.0).abs() < 4.0, "{start} psig at 70 °F");
    let end = psig(&bench);
    assert!((end - 274.9).abs() < 4.0, "{end} psig at 90 °F");
}
