//! Replay: runs an attempt again at full speed and proves that the physics agree.

use super::journal::{End, Journal, NotGenuine};
use super::{Head, JournalEntry, JournalLine, Observer, RecordError};
use crate::job::{Driver, Job, TICKS_PER_SECOND};
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
    /// An attempt that has ended cannot be taken up again.
    #[error("this attempt is closed")]
    Closed,
    /// An attempt of another program cannot be taken up: what came before would be its, what
    /// comes after ours.
    #[error("recorded by another program, version {program}: go on with it there")]
    OfAnotherProgram {
        /// The version of the program that recorded it.
        program: String,
    },
    /// Two cannot write one journal.
    #[error("it is being worked on in another window")]
    UnderWay,
    /// There is no such action to go back to.
    #[error("there is no action {0} to go back to")]
    NoSuchAction(usize),
    /// Who is assessed does not go back.
    #[error("in an assessment nobody goes back")]
    Assessed,
    /// The journal of what goes on cannot be written.
    #[error(transparent)]
    CannotRecord(#[from] RecordError),
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
    /// How often it was taken up again after it had been cut or put aside.
    pub taken_up: usize,
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
    let scenario = scenario_of(&journal.head, lookup)?;
    let job = Job::new(&scenario);
    let mut replaying = Replaying::through(job, journal);
    replaying.advance(u64::MAX, observer)?;
    let lines = replaying.journal.lines.iter();
    Ok(Replayed {
        taken_up: lines.filter(|l| l.entry == JournalEntry::Resumed).count(),
        fingerprint: replaying.journal.fingerprint().to_owned(),
        head: replaying.journal.head,
        end: replaying.journal.end,
        scenario,
        job: replaying.driver,
        done: replaying.done,
        refused: replaying.refused,
    })
}

/// The scenario that a head names, with its digests checked.
pub(super) fn scenario_of(head: &Head, lookup: Lookup<'_>) -> Result<Scenario, ReplayError> {
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
            line: head.length(),
            why: "unit or seed in the head are not the scenario's".to_owned(),
        }
        .into());
    }
    Ok(scenario)
}

/// A replay under way: what a journal says, done again through a driver.
#[derive(Debug)]
pub(super) struct Replaying<D> {
    /// What is replayed.
    pub(super) journal: Journal,
    /// Where it is done again.
    pub(super) driver: D,
    /// The line that comes next, and the one before which it stops, counted from 0 after the head.
    next: usize,
    stop: usize,
    done: usize,
    refused: usize,
    /// The reason of a refusal whose line is still to come.
    owed: Option<String>,
}

impl<D: Driver> Replaying<D> {
    /// The whole of a journal, through the driver of a job at its start.
    pub(super) const fn through(driver: D, journal: Journal) -> Self {
        let stop = journal.lines.len();
        Self {
            journal,
            driver,
            next: 0,
            stop,
            done: 0,
            refused: 0,
            owed: None,
        }
    }

    /// Only what comes before a line, counted from 0 after the head, and the time up to it.
    pub(super) const fn before(mut self, line: usize) -> Self {
        self.stop = line;
        self
    }

    /// The tick at which it ends.
    pub(super) fn end(&self) -> u64 {
        let last = self.journal.lines.get(self.stop);
        last.or_else(|| self.journal.lines.last())
            .map_or(0, |line| line.tick)
    }

    /// Goes on for at most so many ticks; gives whether it has come to its end.
    pub(super) fn advance(
        &mut self,
        ticks: u64,
        observer: &mut dyn Observer,
    ) -> Result<bool, ReplayError> {
        let mut left = ticks;
        loop {
            let Some(line) = self.journal.lines.get(self.next) else {
                return Ok(true);
            };
            let line = line.clone();
            while self.driver.job().now() < line.tick {
                if left == 0 {
                    return Ok(false);
                }
                left -= 1;
                self.driver.tick();
                if self.driver.job().now().is_multiple_of(TICKS_PER_SECOND) {
                    observer.second(self.driver.job());
                }
            }
            if self.next == self.stop {
                return Ok(true);
            }
            self.line(&line, observer).map_err(|why| {
                let number = self.journal.number(self.next);
                strayed(&self.journal.head, number, line.tick, why)
            })?;
            self.next += 1;
        }
    }

    /// Does what a line says; else what does not agree with it.
    fn line(&mut self, line: &JournalLine, observer: &mut dyn Observer) -> Result<(), String> {
        let digest = self.driver.job().digest();
        if digest != line.digest {
            let recorded = line.digest;
            return Err(format!(
                "the physics stand at {digest:016x}, recorded {recorded:016x}"
            ));
        }
        match (&line.entry, self.owed.take()) {
            (JournalEntry::Refused(recorded), Some(why)) if *recorded == why => Ok(()),
            (JournalEntry::Refused(_), _) => Err("the job does not refuse this so".to_owned()),
            // A program that was killed between the two lines leaves a refusal without its reason.
            (JournalEntry::Resumed, _) | (_, None) => {
                if let JournalEntry::Do(action) = &line.entry {
                    self.owed = self
                        .driver
                        .apply(*action)
                        .err()
                        .map(|refusal| refusal.to_string());
                    match self.owed {
                        Some(_) => self.refused += 1,
                        None => self.done += 1,
                    }
                    observer.action(self.driver.job(), action, self.owed.is_some());
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
