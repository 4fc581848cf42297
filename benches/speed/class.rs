//! A class of attempts marked by the program as a teacher starts it: time and peak memory.

use crate::clock::{Row, time};
use crate::ticks::temporary;
use crate::work::record;
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

/// The shortest attempt, s; each further one is a second longer, so that no two are the same.
const SHORTEST: u64 = 45 * 60;
/// After so many attempts the lengths begin again, s.
const SPREAD: u64 = 60;

/// Records so many attempts and marks them.
pub fn class(attempts: usize) -> Vec<Row> {
    let folder = temporary("class");
    std::fs::create_dir(&folder).expect("a folder of its own");
    let paths: Vec<PathBuf> = (0..attempts)
        .map(|k| folder.join(format!("{k:05}.attempt")))
        .collect();
    for (k, path) in paths.iter().enumerate() {
        record(
            path,
            &format!("apprentice {k}"),
            SHORTEST + k as u64 % SPREAD,
        );
    }
    let mut peak = None;
    let took = time(|| peak = mark(&paths));
    std::fs::remove_dir_all(&folder).expect("it is there");
    let memory = peak.map_or("not known here".to_owned(), |kilobytes| {
        format!("{:.0} MB", kilobytes as f64 / 1024.0)
    });
    // The goals are those of a thousand attempts on two cores.
    let goals = if attempts == 1000 {
        ["at most 15 s", "at most 300 MB"]
    } else {
        ["", ""]
    };
    let what = format!("{attempts} attempts of 45 min marked");
    let seconds = format!("{:.2} s", took.as_secs_f64());
    vec![
        Row::new(what.clone(), seconds, goals[0]),
        Row::new(format!("{what}: peak memory"), memory, goals[1]),
    ]
}

/// Marks them as one class; gives the most memory that the program held, kB.
fn mark(paths: &[PathBuf]) -> Option<u64> {
    let mut program = Command::new(env!("CARGO_BIN_EXE_coldbench"));
    program.args(["mark", "--csv"]).args(paths);
    let child = program.stdout(Stdio::null()).stderr(Stdio::null()).spawn();
    let mut child = child.expect("the program starts");
    let mut peak = None;
    loop {
        peak = peak.max(peak_of(&child));
        let ended = child.try_wait().expect("it can be waited for");
        if let Some(ended) = ended {
            // 0: all passed; 1: some did not. 2 would be a wrong use.
            assert!(matches!(ended.code(), Some(0 | 1)), "{ended}");
            return peak;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
}

/// The most memory that a process has held, kB, where the system tells.
fn peak_of(child: &Child) -> Option<u64> {
    let status = std::fs::read_to_string(format!("/proc/{}/status", child.id())).ok()?;
    let line = status
        .lines()
        .find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.split_whitespace().next()?.parse().ok()
}
