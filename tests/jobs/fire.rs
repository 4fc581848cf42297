//! Refrigerants that burn: what the watch notes of ignition, ventilation, purging and tools.
//!
//! Class A2L of ISO 817 and ASHRAE 34; what is asked of the work is common practice after
//! IEC 60335-2-40 and EN 378 (from memory).

use crate::bench::{Bench, microns, psig};
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::kit::vacuum_pump;
use coldbench::plant::{Fault, Joint, Spot};
use coldbench::scenario::{Scenario, Space};
use coldbench::units::{Length, Volume};
use coldbench::words::{Action, FindingKind, GaugePlace, Hose, HoseEnd, Reading, Status};

const R32: &str = "r32_2ton_txv";

/// What only a refrigerant that burns can bring about.
const OF_FIRE: [FindingKind; 5] = [
    FindingKind::IgnitionRisk,
    FindingKind::FlammableAir,
    FindingKind::OpenedUnpurged,
    FindingKind::Unventilated,
    FindingKind::ToolNotRated,
];

/// A unit alone whose indoor unit hangs in a room of so many cubic metres with no change of air.
fn in_room(unit: &str, cubic_metres: f64) -> Scenario {
    let mut scenario = Scenario::of_shipped_unit(unit).expect("it is shipped");
    scenario.file.site.indoor_space = Space::Room {
        volume: Volume::from_cubic_metres(cubic_metres),
        air_changes: 0.0,
    };
    scenario
}

/// The unit of a scenario pumped down and locked out, its hoses on.
fn pumped_down(scenario: Scenario) -> Bench {
    // The hoses are purged while nothing is live.
    Bench::of(scenario).protected().hook_up().pump_down()
}

/// The suction flare at the indoor coil apart.
fn open_indoors(bench: Bench) -> Bench {
    bench
        .act(Action::Loosen(Joint::IndoorSuction))
        .act(Action::TakeApart(Joint::IndoorSuction))
        .run(5.0)
}

/// Pulls a vacuum and breaks it with dry nitrogen to nothing: what purging comes to.
fn purged(bench: Bench) -> Bench {
    let bench = bench
        .start_pump(GaugePlace::Manifold)
        .run_until("a vacuum", 3600.0, |job| microns(job) < 3000.0)
        .end_evacuation()
        .act(Action::TakeOff(Hose::Centre));
    let bench = bench.nitrogen(10.0).hand_valves(0.0);
    bench.release().run(30.0)
}

/// Source: ISO 817 / ASHRAE 34 give the limit of R-32 as 14.4 % by volume (from memory): of an
/// ideal gas at 25 °C and one atmosphere, 24.465 L/mol, with 52.02 g/mol.
#[test]
fn the_limit_by_mass_agrees_with_the_limit_by_volume() {
    let fluid = Refrigerant::named("R-32").expect("it is known");
    let by_volume = 0.144 * 52.02 / 24.465;
    let limit = fluid.flammable_from().expect("it burns");
    assert!((limit - by_volume).abs() < 0.002, "{limit} {by_volume}");
    for name in Refrigerant::names() {
        let fluid = Refrigerant::named(name).expect("it is known");
        assert_eq!(fluid.is_flammable(), fluid.flammable_from().is_some());
        assert_eq!(
            fluid.is_flammable(),
            matches!(name, "R-32" | "R-454B" | "R-290")
        );
    }
}

#[test]
fn nothing_of_fire_is_noted_where_the_refrigerant_does_not_burn() {
    let mut scenario = in_room("r410a_3ton_txv", 10.0);
    scenario.file.cart.detector_rated = false;
    scenario.file.cart.pump_rated = false;
    let bench = open_indoors(pumped_down(scenario))
        .sniff(Spot::IndoorCoil)
        .act(Action::of(vacuum_pump::Action::Run(true)))
        .run(60.0);
    assert!(bench.found(FindingKind::Released) > 0.0);
    for kind in OF_FIRE {
        assert_eq!(bench.count(kind), 0, "{kind:?}");
    }
}

/// Purging the hoses is a release of some grams: it belongs before the power is put in.
#[test]
fn a_purge_beside_a_live_contactor_is_an_ignition_risk() {
    let safe = Bench::unit(R32).protected().hook_up();
    assert!(safe.found(FindingKind::Released) > 5e-4);
    assert_eq!(safe.count(FindingKind::IgnitionRisk), 0);
    let live = Bench::unit(R32).protected().cool_on().run(60.0).hook_up();
    assert!(live.count(FindingKind::IgnitionRisk) > 0);
}

#[test]
fn a_joint_is_opened_purged_and_ventilated_or_it_is_noted() {
    let wrong = open_indoors(pumped_down(in_room(R32, 30.0)));
    assert_eq!(wrong.count(FindingKind::OpenedUnpurged), 1);
    assert_eq!(wrong.count(FindingKind::Unventilated), 1);
    let right = pumped_down(in_room(R32, 30.0)).act(Action::Ventilate(true));
    assert!(right.job.status(Status::Ventilated));
    let right = open_indoors(purged(right));
    assert_eq!(right.count(FindingKind::OpenedUnpurged), 0);
    assert_eq!(right.count(FindingKind::Unventilated), 0);
}

/// The whole charge in a shut room stands at mass by volume; 0.306 kg/m³ is the limit of R-32
/// (ASHRAE 34, from memory).
#[test]
fn a_leak_fills_a_shut_room_by_mass_and_volume_and_a_fan_clears_it() {
    let leaking = || {
        let mut scenario = in_room(R32, 15.0);
        scenario.file.faults.push(Fault::Leak {
            at: Spot::IndoorCoil,
            hole: Length::from_millimetres(2.0),
        });
        Bench::of(scenario)
    };
    let shut = leaking().run(1800.0);
    let lost = shut.truth().refrigerant_released;
    assert!(lost > 1.3, "{lost} kg");
    let share = shut.found(FindingKind::FlammableAir);
    let expected = lost / 15.0 / 0.306;
    assert!((share - expected).abs() < 0.02, "{share} {expected}");
    let aired = leaking().act(Action::Ventilate(true)).run(1800.0);
    let share_aired = aired.found(FindingKind::FlammableAir);
    assert!(share_aired < 0.8 * share, "{share_aired} {share}");
}

#[test]
fn a_tool_that_is_not_rated_is_noted_and_can_light_what_it_finds() {
    let mut scenario = in_room(R32, 30.0);
    scenario.file.cart.detector_rated = false;
    scenario.file.cart.pump_rated = false;
    scenario.file.faults.push(Fault::Leak {
        at: Spot::IndoorCoil,
        hole: Length::from_millimetres(0.5),
    });
    let bench = Bench::of(scenario.clone()).sniff(Spot::IndoorCoil);
    assert_eq!(bench.count(FindingKind::ToolNotRated), 1);
    assert!(bench.run(60.0).count(FindingKind::IgnitionRisk) > 0);
    scenario.file.cart.detector_rated = true;
    let bench = Bench::of(scenario).sniff(Spot::IndoorCoil);
    assert_eq!(bench.count(FindingKind::ToolNotRated), 0);
    let bench = bench.run(60.0);
    assert_eq!(bench.count(FindingKind::IgnitionRisk), 0);
    let bench = bench.act(Action::of(vacuum_pump::Action::Run(true)));
    assert_eq!(bench.count(FindingKind::ToolNotRated), 1);
}

/// A room that has filled up to the limit is a risk however little still comes out.
#[test]
fn what_has_gathered_can_go_up_as_a_whole() {
    let mut scenario = in_room(R32, 3.0);
    scenario.file.cart.detector_rated = false;
    scenario.file.faults.push(Fault::Leak {
        at: Spot::IndoorCoil,
        hole: Length::from_millimetres(2.0),
    });
    let bench = Bench::of(scenario).run(1800.0);
    assert_eq!(bench.count(FindingKind::IgnitionRisk), 0);
    let bench = bench.sniff(Spot::Joint(Joint::IndoorLiquid));
    let (risk, lost) = (
        bench.found(FindingKind::IgnitionRisk),
        bench.truth().refrigerant_released,
    );
    assert!((risk - lost).abs() < 0.02 * lost, "{risk} of {lost} kg");
}

/// Letting a charge go through the centre hose outdoors, the unit dead: released, and no fire.
#[test]
fn a_release_in_the_open_air_away_from_what_is_live_gathers_nowhere() {
    let bench = Bench::unit(R32)
        .protected()
        .hook_up()
        .lock_out()
        .act(Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::OpenAir,
        })
        .hand_valves(1.0)
        .run(30.0);
    assert!(bench.found(FindingKind::Released) > 0.1);
    assert!(psig(&bench.job, Reading::LowGauge) < 300.0);
    for kind in [FindingKind::IgnitionRisk, FindingKind::FlammableAir] {
        assert_eq!(bench.count(kind), 0, "{kind:?}");
    }
}
