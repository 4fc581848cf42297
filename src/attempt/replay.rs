//! Replay: runs an attempt again at full speed and proves that the physics agree.

use super::journal::{End, Journal, NotGenuine};
use super::{Entry, Head, Line, Observer};
use crate::job::{Job, TICKS_PER_SECOND};
use crate::scenario::Scenario;
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Finds the scenario that a head names; else says why it cannot. Its digests are checked after.
pub type Lookup<'a> = &'a dyn Fn(&Head) -> Result<Scenario, String>;

/// An attempt cannot be replayed.
#[derive(Debug, Error)]
pub enum ReplayError {
    /// The file cannot be read.
    #[error("{path}: {cause}")]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        cause: io::Error,
    },
    /// The journal was changed after it was recorded.
    #[error(transparent)]
    NotGenuine(#[from] NotGenuine),
    /// The scenario cannot be found.
    #[error("the scenario `{name}` of this attempt cannot be found: {why}")]
    NoScenario {
        /// Its name.
        name: String,
        /// Why not.
        why: String,
    },
    /// A file is not the one that was used.
    #[error(
        "the {what} `{name}` is not as it was when this was recorded: its digest is {found}, \
         recorded {recorded}"
    )]
    Changed {
        /// Scenario or unit.
        what: &'static str,
        /// Its name.
        name: String,
        /// The digest of the file that was found.
        found: String,
        /// The digest in the head.
        recorded: String,
    },
    /// The chain is whole, and the physics go another way.
    #[error("line {line}: not genuine: at tick {tick} {why}")]
    Diverged {
        /// The line of the journal, counted from 1.
        line: usize,
        /// The tick.
        tick: u64,
        /// What does not agree.
        why: String,
    },
    /// The chain is whole, and the physics of this program go another way than those of the
    /// program that recorded it. Only that program can tell whether it is genuine.
    #[error(
        "line {line}: recorded by another program, version {program}: at tick {tick} {why}; \
         replay it with the program that recorded it"
    )]
    OtherProgram {
        /// The line of the journal, counted from 1.
        line: usize,
        /// The tick.
        tick: u64,
        /// What does not agree.
        why: String,
        /// The version of the program that recorded it.
        program: String,
    },
    /// A closed attempt cannot be taken up again.
    #[error("this attempt is closed")]
    Closed,
}

impl ReplayError {
    /// Whether it says that the attempt was tampered with, and not that it cannot be judged here.
    pub const fn is_not_genuine(&self) -> bool {
        matches!(self, Self::NotGenuine(_) | Self::Diverged { .. })
    }

    /// The line of the journal that is wrong, counted from 1.
    pub const fn line(&self) -> Option<usize> {
        match self {
            Self::NotGenuine(NotGenuine { line, .. })
            | Self::Diverged { line, .. }
            | Self::OtherProgram { line, .. } => Some(*line),
            _ => None,
        }
    }
}

/// An attempt that was replayed to its end and is genuine.
#[derive(Debug, Clone)]
pub struct Replayed {
    /// The head of its journal.
    pub head: Head,
    /// The scenario that it was an attempt at.
    pub scenario: Scenario,
    /// The job as it stood at the end.
    pub job: Job,
    /// How the journal ends.
    pub end: End,
    /// The fingerprint of the attempt.
    pub fingerprint: String,
    /// The actions that were done.
    pub done: usize,
    /// The actions that were refused.
    pub refused: usize,
}

/// Replays an attempt: proves its chain, checks scenario and unit against the head, runs the job
/// again and compares its digest at every line. The observer sees each action and each second.
pub fn replay(
    path: &Path,
    lookup: Lookup<'_>,
    observer: &mut dyn Observer,
) -> Result<Replayed, ReplayError> {
    let journal = Journal::read(path).map_err(|cause| ReplayError::Unreadable {
        path: path.to_owned(),
        cause,
    })??;
    let mut run = Run::new(&journal, lookup)?;
    run.run_through(&journal, observer)?;
    Ok(Replayed {
        fingerprint: journal.fingerprint().to_owned(),
        head: journal.head,
        end: journal.end,
        scenario: run.scenario,
        job: run.job,
        done: run.done,
        refused: run.refused,
    })
}

/// A replay under way.
#[derive(Debug)]
pub(super) struct Run {
    scenario: Scenario,
    job: Job,
    done: usize,
    refused: usize,
    /// The reason of a refusal whose line is still to come.
    owed: Option<String>,
}

impl Run {
    /// At the start of the job that the journal's head names.
    pub(super) fn new(journal: &Journal, lookup: Lookup<'_>) -> Result<Self, ReplayError> {
        let head = &journal.head;
        let scenario = lookup(head).map_err(|why| ReplayError::NoScenario {
            name: head.scenario.clone(),
            why,
        })?;
        let files = [
            (
                "scenario",
                &head.scenario,
                &scenario.digest,
                &head.scenario_digest,
            ),
            ("unit", &head.unit, &scenario.unit_digest, &head.unit_digest),
        ];
        for (what, name, found, recorded) in files {
            if found != recorded {
                return Err(ReplayError::Changed {
                    what,
                    name: name.clone(),
                    found: found.clone(),
                    recorded: recorded.clone(),
                });
            }
        }
        // Both stand in the scenario as well, so they can only agree.
        if head.unit != scenario.file.unit || head.seed != scenario.file.seed {
            return Err(NotGenuine {
                line: Head::LINES,
                why: "unit or seed in the head are not the scenario's".to_owned(),
            }
            .into());
        }
        Ok(Self {
            job: Job::new(&scenario),
            scenario,
            done: 0,
            refused: 0,
            owed: None,
        })
    }

    /// Goes through every line.
    pub(super) fn run_through(
        &mut self,
        journal: &Journal,
        observer: &mut dyn Observer,
    ) -> Result<(), ReplayError> {
        for (index, line) in journal.lines.iter().enumerate() {
            self.line(line, observer)
                .map_err(|why| strayed(&journal.head, Journal::number(index), line.tick, why))?;
        }
        Ok(())
    }

    /// The job as it stands.
    pub(super) fn into_job(self) -> Job {
        self.job
    }

    /// Lets time pass up to a line and does what it says; else what does not agree with it.
    fn line(&mut self, line: &Line, observer: &mut dyn Observer) -> Result<(), String> {
        while self.job.now() < line.tick {
            self.job.tick();
            if self.job.now().is_multiple_of(TICKS_PER_SECOND) {
                observer.second(&self.job);
            }
        }
        let digest = self.job.digest();
        if digest != line.digest {
            let recorded = line.digest;
            return Err(format!(
                "the physics stand at {digest:016x}, recorded {recorded:016x}"
            ));
        }
        match (&line.entry, self.owed.take()) {
            (Entry::Refused(recorded), Some(why)) if *recorded == why => Ok(()),
            (Entry::Refused(_), _) => Err("the job does not refuse this so".to_owned()),
            // A program that was killed between the two lines leaves a refusal without its reason.
            (Entry::Resumed, _) | (_, None) => {
                if let Entry::Do(action) = &line.entry {
                    self.owed = self
                        .job
                        .apply(*action)
                        .err()
                        .map(|refusal| refusal.to_string());
                    match self.owed {
                        Some(_) => self.refused += 1,
                        None => self.done += 1,
                    }
                    observer.action(&self.job, action, self.owed.is_some());
                }
                Ok(())
            }
            (_, Some(why)) => Err(format!("the job refused what was done before: {why}")),
        }
    }
}

/// What it means that a replay strayed from its journal.
fn strayed(head: &Head, line: usize, tick: u64, why: String) -> ReplayError {
    if head.is_of_this_program() {
        ReplayError::Diverged { line, tick, why }
    } else {
        ReplayError::OtherProgram {
            line,
            tick,
            why,
            program: head.program.clone(),
        }
    }
}
