//! `coldbench replay ATTEMPT`: proves that it is genuine, and prints its course.

use super::Answer;
use super::judged::{Judged, failure};
use crate::attempt::ReplayError;
use std::path::PathBuf;

/// Prove that an attempt is genuine, and print its course.
///
/// The chain of the journal is proved first, then the job is run again at full speed and its
/// physics compared at every line. A journal with a byte changed is reported with its line.
#[derive(Debug, clap::Args)]
pub struct Replay {
    /// The attempt's file.
    attempt: PathBuf,
    /// The scenario's file, where it is not the one that the attempt names.
    #[arg(long, value_name = "SCENARIO")]
    scenario: Option<String>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

impl Replay {
    /// Replays it.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        match Judged::of(&self.attempt, self.scenario.as_deref()) {
            Ok(judged) if self.json => Answer::json(true, &judged.json()?),
            Ok(judged) => {
                let text = format!("{}\n{}", judged.course, judged.proof());
                Ok(Answer::new(true, text))
            }
            Err(error @ ReplayError::Unreadable { .. }) => Err(error.into()),
            Err(error) if self.json => Answer::json(false, &failure(&error)),
            Err(error) => {
                let text = format!("{}: {error}", self.attempt.display());
                Ok(Answer::new(false, text))
            }
        }
    }
}
