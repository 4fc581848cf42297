//! The same job gives the same bits in every build and on every machine.
//!
//! `tests/data/digest.txt` keeps the digest of the state at the end of whole jobs. Run this in
//! debug, in release, on another processor: it must find the same. After a change of the physics
//! the digest is another; `COLDBENCH_BLESS=1 cargo test --test digest` writes it down anew. The
//! program digest beside it tells a change of the program, which may change the bits, from a
//! build or a machine that does, which nothing may.

use std::fmt::Write;
use std::path::Path;

use coldbench::job::Job;
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::scenario::Scenario;

/// The right way through a scenario, to the digest of its last state.
fn digest(name: &str) -> u64 {
    let scenario = Scenario::shipped(name).expect("it is shipped");
    let procedure = Procedure::shipped(&format!("{name}_right")).expect("it is shipped");
    let mut job = Job::new(&scenario);
    let done = Performance::new(&mut job, &mut |_| {}).run(&procedure);
    done.unwrap_or_else(|stopped| panic!("{name} stopped: {stopped}"));
    job.digest()
}

/// What the file keeps: a line for the program, then one for each job.
fn found() -> String {
    let mut text = format!("program {}\n", env!("COLDBENCH_PROGRAM_DIGEST"));
    for name in ["clogged_drier", "undercharge"] {
        let digest = digest(name);
        writeln!(text, "{name} {digest:016x}").expect("a string takes it");
    }
    text
}

#[test]
fn a_whole_job_has_the_same_bits_in_every_build() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/digest.txt");
    let found = found();
    if std::env::var_os("COLDBENCH_BLESS").is_some() {
        std::fs::write(&path, &found).expect("the file can be written");
    }
    let kept = std::fs::read_to_string(&path).expect("the file is there");
    let jobs = |text: &str| text.lines().skip(1).map(str::to_owned).collect::<Vec<_>>();
    let why = if kept.lines().next() == found.lines().next() {
        "the program is the same: this build or machine computes otherwise"
    } else {
        "the program is another: bless it if the physics was meant to change"
    };
    assert_eq!(jobs(&found), jobs(&kept), "{why}");
}
