//! The command line: one file per subcommand.
//!
//! Every command reads and writes plain files, prints for people, prints JSON with `--json`, and
//! exits 0 when all is well, 1 when the answer is no, 2 when it was used wrongly.

mod answer;
mod chart;
mod check;
mod demonstration;
mod find;
mod judged;
mod mark;
mod perform;
mod rated;
mod replay;
mod settle;
mod table;
mod trace;

pub use answer::Answer;
pub use demonstration::demonstrate;

use clap::{Parser, Subcommand};

/// A training simulator of a split air-conditioning system under repair.
///
/// Without a command it opens the window.
#[derive(Debug, Parser)]
#[command(
    version,
    after_help = "Exit codes: 0 all is well, 1 the answer is no, 2 used wrongly.\n\
        This is practice. On a real system local codes and licensed practice decide."
)]
pub struct Arguments {
    /// What to do.
    #[command(subcommand)]
    pub command: Option<Command>,
}

/// A subcommand.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Check scenarios, procedures, units and attempts: every error with its line and a hint.
    Check(check::Check),
    /// Run a unit to a steady state and print what the instruments will read and what is true.
    Settle(settle::Settle),
    /// Do a written procedure without a window, record the attempt, and mark it.
    Perform(perform::Perform),
    /// Prove that an attempt is genuine, and print its course.
    Replay(replay::Replay),
    /// Mark one attempt or a class of attempts.
    Mark(mark::MarkCommand),
    /// Print the pressure-temperature chart of a refrigerant.
    Chart(chart::Chart),
}

impl Command {
    /// Runs it. An error says how it was used wrongly.
    pub fn run(&self) -> anyhow::Result<Answer> {
        match self {
            Self::Check(check) => check.run(),
            Self::Settle(settle) => settle.run(),
            Self::Perform(perform) => perform.run(),
            Self::Replay(replay) => replay.run(),
            Self::Mark(mark) => mark.run(),
            Self::Chart(chart) => chart.run(),
        }
    }
}
