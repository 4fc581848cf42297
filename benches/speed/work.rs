//! The work that is timed: a bare unit that runs, a job with all kit on, attempts.

use coldbench::attempt::{Opening, Recorder};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Driver, Job, TICKS_PER_SECOND};
use coldbench::plant::{Air, Conditions, Plant};
use coldbench::scenario::Scenario;
use std::path::Path;

/// The scenario of the attempts.
pub fn scenario() -> Scenario {
    Scenario::shipped("clogged_drier").expect("it is shipped")
}

/// The procedure that puts everything on the cart to use.
fn all_kit() -> Procedure {
    let text = include_bytes!("all_kit.ron");
    Procedure::from_bytes("benches/speed/all_kit.ron", text).expect("it is well written")
}

/// A job with all kit on that has run for 15 min.
pub fn job_with_all_kit_on() -> Job {
    let mut job = Job::new(&scenario());
    perform(&mut job, &all_kit());
    job
}

/// Does a procedure to its end.
pub fn perform(driver: &mut dyn Driver, procedure: &Procedure) {
    let mut nobody_reads = |_| {};
    let end = Performance::new(driver, &mut nobody_reads).run(procedure);
    end.expect("the procedure goes through");
}

/// Records an attempt of so many seconds with all kit on.
pub fn record(path: &Path, who: &str, seconds: u64) {
    let opening = Opening::practice("scenarios/clogged_drier.ron", who);
    let mut recorder = Recorder::create(path, &scenario(), opening).expect("it can be written");
    perform(&mut recorder, &all_kit());
    while recorder.job().now() < seconds * TICKS_PER_SECOND {
        recorder.tick();
    }
    recorder.close().expect("it can be closed");
}

/// A unit without kit that has cooled for 15 min.
pub fn bare_unit() -> (Plant, Conditions) {
    let unit = Scenario::of_shipped_unit("r22_3ton_orifice")
        .expect("it is shipped")
        .unit;
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
