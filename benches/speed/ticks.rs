//! How long ticks, whole procedures, a replay and a settling take.

use crate::clock::{Row, median, milliseconds};
use crate::work::{bare_unit, job_with_all_kit_on, perform, record, scenario};
use coldbench::attempt::replay;
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::job::procedure::Procedure;
use coldbench::job::{Job, Overrides, TICKS_PER_SECOND, settle};
use coldbench::scenario::Scenario;
use std::cell::Cell;
use std::hint::black_box;
use std::path::PathBuf;

/// How long the ticks of a round go on, s.
const STRETCH: u64 = 600;

/// A lookup, and ten minutes of ticks: without kit, and with all of it.
pub fn ticks() -> Vec<Row> {
    let fluid = Refrigerant::named("R-22").expect("R-22 is known");
    let lookups = median(
        9,
        || (),
        |()| {
            for k in 0..100_000_u32 {
                black_box(fluid.at_with_slopes(black_box(260.0 + 5e-4 * f64::from(k))));
            }
        },
    );
    let (plant, conditions) = bare_unit();
    let bare = median(
        9,
        || plant.clone(),
        |mut plant| {
            for _ in 0..STRETCH * TICKS_PER_SECOND {
                plant.tick(&conditions);
            }
        },
    );
    let job = job_with_all_kit_on();
    let all_kit = median(
        9,
        || job.clone(),
        |mut job| {
            for _ in 0..STRETCH * TICKS_PER_SECOND {
                job.tick();
            }
        },
    );
    let lookup = format!("{:.1} ns", 1e9 * lookups.as_secs_f64() / 1e5);
    let stretch = STRETCH as f64;
    vec![
        Row::new("saturation curves with slopes, one lookup", lookup, ""),
        Row::speed("bare unit", stretch, bare, 0),
        Row::speed("bench with all kit on", stretch, all_kit, 200_000),
    ]
}

/// Every shipped procedure from its beginning to its end.
pub fn procedures() -> Vec<Row> {
    Procedure::shipped_names().map(procedure).collect()
}

fn procedure(name: &'static str) -> Row {
    let procedure = Procedure::shipped(name).expect("it is on the list");
    let scenario = Scenario::shipped(&procedure.scenario).expect("it is shipped");
    let ticks = Cell::new(0);
    let took = median(
        3,
        || Job::new(&scenario),
        |mut job| {
            perform(&mut job, &procedure);
            ticks.set(job.now());
        },
    );
    let simulated = ticks.get() as f64 / TICKS_PER_SECOND as f64;
    Row::speed(format!("procedure {name}"), simulated, took, 100_000)
}

/// An attempt of an hour: chain, actions, ticks and a digest for each minute.
pub fn replay_of_an_hour() -> Vec<Row> {
    let path = temporary("hour.attempt");
    record(&path, "", 3600);
    let took = median(
        9,
        || (),
        |()| {
            replay(&path, &|_| Ok(scenario()), &mut ()).expect("it is genuine");
        },
    );
    std::fs::remove_file(&path).expect("it is there");
    let result = milliseconds(took);
    vec![Row::new("an hour replayed, all kit on", result, "")]
}

/// A unit from a standstill to its steady state.
pub fn settling() -> Vec<Row> {
    let row = |name| {
        let unit = Scenario::of_shipped_unit(name).expect("it is shipped");
        let took = median(
            21,
            || (),
            |()| {
                black_box(settle(&unit, &Overrides::default()));
            },
        );
        let goal = "at most 2 ms";
        Row::new(format!("settle {name}"), milliseconds(took), goal)
    };
    ["r22_3ton_orifice", "r410a_3ton_txv"].map(row).into()
}

/// A file of this run of the bench.
pub fn temporary(name: &str) -> PathBuf {
    let process = std::process::id();
    std::env::temp_dir().join(format!("coldbench-bench-{process}-{name}"))
}
