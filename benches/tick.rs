//! How long a lookup, a tick, a replay and a settling take.
//!
//! `cargo bench --no-default-features --bench tick`.

use coldbench::attempt::{Opening, Recorder, replay};
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::job::{Driver, Job, Overrides, TICKS_PER_SECOND, settle};
use coldbench::plant::{Air, Conditions, Plant, Unit};
use coldbench::scenario::Scenario;
use coldbench::units::Fraction;
use coldbench::words::{
    Action, GaugePlace, Hose, HoseEnd, Joint, Line, Spot, ThermometerPlace, ThermostatCall,
};
use divan::{Bencher, black_box};

const R22: &str = include_str!("../assets/units/r22_3ton_orifice.ron");

fn main() {
    divan::main();
}

fn running() -> (Plant, Conditions) {
    let unit = Unit::from_ron(R22).expect("the shipped unit reads");
    let conditions = Conditions {
        compressor_powered: true,
        condenser_fan: 1.0,
        blower: 1.0,
        sun: 0.0,
        outdoor: Air {
            t: 308.15,
            w: 0.012,
        },
        indoor: Air {
            t: 299.82,
            w: 0.0112,
        },
    };
    let mut plant = Plant::new(&unit, &conditions, unit.nameplate.charge);
    for _ in 0..9000 {
        plant.tick(&conditions);
    }
    (plant, conditions)
}

#[divan::bench]
fn saturation_curves(bencher: Bencher) {
    let fluid = Refrigerant::named("R-22").expect("R-22 is known");
    bencher.bench(|| fluid.at_with_slopes(black_box(290.3)));
}

/// A minute of the bare unit: 600 ticks, each time from the same state.
#[divan::bench]
fn minute_of_the_bare_unit(bencher: Bencher) {
    let (plant, conditions) = running();
    bencher
        .with_inputs(|| plant.clone())
        .bench_local_refs(|plant| {
            for _ in 0..60 * TICKS_PER_SECOND {
                plant.tick(&conditions);
            }
        });
}

/// A job of the default scenario: hooked up, running, everything on the cart in use.
fn at_work(door: &mut dyn Driver, minutes: u64) {
    let actions = [
        Action::Protect(true),
        Action::PortCap {
            line: Line::Suction,
            on: false,
        },
        Action::PortCap {
            line: Line::Liquid,
            on: false,
        },
        Action::Connect {
            hose: Hose::Low,
            to: HoseEnd::SuctionPort,
        },
        Action::Connect {
            hose: Hose::High,
            to: HoseEnd::LiquidPort,
        },
        Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::RefrigerantCylinder,
        },
        Action::CylinderValve(Fraction::ONE),
        Action::Purge(Hose::Low),
        Action::Purge(Hose::High),
        Action::MicronGauge(GaugePlace::Manifold),
        Action::ClampMeter(true),
        Action::Sniff(Spot::Joint(Joint::DrierInlet)),
        Action::Wet(Spot::Joint(Joint::DrierOutlet)),
        Action::Clamp(ThermometerPlace::SuctionLine),
        Action::Clamp(ThermometerPlace::LiquidLine),
        Action::Thermostat(ThermostatCall::Cool),
    ];
    for action in actions {
        door.apply(action).expect("nothing of it is refused");
    }
    for _ in 0..minutes * 60 * TICKS_PER_SECOND {
        door.tick();
    }
}

fn drier() -> Scenario {
    Scenario::shipped("clogged_drier").expect("it is shipped")
}

/// A minute of the whole job with 12 nodes, instruments and watch: 600 ticks, each time from the
/// same state. Twenty thousand times real time is 3 ms.
#[divan::bench]
fn minute_with_all_kit_on(bencher: Bencher) {
    let mut job = Job::new(&drier());
    at_work(&mut job, 15);
    bencher.with_inputs(|| job.clone()).bench_local_refs(|job| {
        for _ in 0..60 * TICKS_PER_SECOND {
            job.tick();
        }
    });
}

/// An attempt of 60 min: chain, actions, 36,000 ticks and a digest for each minute.
#[divan::bench(sample_count = 10)]
fn replay_of_an_hour(bencher: Bencher) {
    let path = std::env::temp_dir().join(format!("coldbench-hour-{}.attempt", std::process::id()));
    let scenario = drier();
    let source = "scenarios/clogged_drier.ron";
    let opening = Opening::practice(source, "");
    let mut recorder = Recorder::create(&path, &scenario, opening).expect("it can be written");
    at_work(&mut recorder, 60);
    recorder.close().expect("it can be closed");
    bencher.bench_local(|| replay(&path, &|_| Ok(drier()), &mut ()).expect("it is genuine"));
    std::fs::remove_file(&path).expect("it is there");
}

#[divan::bench(sample_count = 10)]
fn settle_an_operating_point(bencher: Bencher) {
    let unit = Scenario::of_shipped_unit("r22_3ton_orifice").expect("it is shipped");
    bencher.bench_local(|| settle(&unit, &Overrides::default()));
}
