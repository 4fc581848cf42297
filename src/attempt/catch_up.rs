//! On the way to the moment at which an attempt goes on: one that was cut is taken up again in its
//! file, one that went wrong is tried again from an earlier moment in a file of its own.

use super::place::{self, DIRECTORY};
use super::replay::{Replaying, scenario_of};
use super::{
    Branch, End, Journal, JournalEntry, Lookup, Observer, Opening, RecordError, Recorder,
    ReplayError,
};
use super::{Head, Mode};
use crate::files;
use crate::job::{Driver as _, Job};
use crate::scenario::Scenario;
use std::fs::OpenOptions;
use std::path::Path;

/// A recorder that does again what a journal says. It can be done in pieces, as two hours of a job
/// take some seconds.
#[derive(Debug)]
pub struct CatchUp {
    replaying: Replaying<Recorder>,
    scenario: Scenario,
    way: Way,
}

/// Which way it goes on.
#[derive(Debug)]
enum Way {
    /// In the same file, behind so many bytes.
    Same(u64),
    /// In a new file, which has been written on the way.
    New,
}

impl CatchUp {
    /// With an attempt that was cut. Nothing is written before it has come to its end.
    pub fn with_cut(path: &Path, lookup: Lookup<'_>) -> Result<Self, ReplayError> {
        let unreadable = |cause| ReplayError::Unreadable {
            path: path.to_owned(),
            cause,
        };
        let file = files::open_with(path, OpenOptions::new().read(true).write(true))
            .map_err(|error| unreadable(error.into()))?;
        if !place::take(&file) {
            return Err(ReplayError::UnderWay);
        }
        let journal = Journal::read_from(&file).map_err(unreadable)??;
        let scenario = fit_to_go_on(&journal, lookup)?;
        let whole = journal.whole;
        let job = Job::new(&scenario);
        let recorder = Recorder::behind(&journal, path.to_owned(), file, job);
        Ok(Self {
            replaying: Replaying::through(recorder, journal),
            scenario,
            way: Way::Same(whole),
        })
    }

    /// With the moment before an action of an attempt, counted from 0, in a new attempt beside it.
    /// Practice only.
    pub fn with_moment(
        path: &Path,
        lookup: Lookup<'_>,
        action: usize,
    ) -> Result<Self, ReplayError> {
        let journal = Journal::read(path).map_err(|cause| ReplayError::Unreadable {
            path: path.to_owned(),
            cause,
        })??;
        if journal.head.mode == Mode::Assessed {
            return Err(ReplayError::Assessed);
        }
        let scenario = scenario_of(&journal.head, lookup)?;
        let mut lines = journal.lines.iter().enumerate();
        let stop = lines
            .by_ref()
            .filter(|(_, line)| matches!(line.entry, JournalEntry::Do(_)))
            .nth(action)
            .map(|(index, _)| index)
            .ok_or(ReplayError::NoSuchAction(action))?;
        let opening = Opening {
            source: journal.head.path.clone(),
            who: journal.head.who.clone(),
            mode: journal.head.mode,
            branch: Some(Branch {
                attempt: place::file_name(path),
                line: journal.number(stop),
                chain: journal.chain_before(stop).to_owned(),
            }),
        };
        let directory = path.parent().unwrap_or(Path::new(DIRECTORY));
        let recorder = Recorder::create_in(directory, &scenario, opening)?;
        Ok(Self {
            replaying: Replaying::through(recorder, journal).before(stop),
            scenario,
            way: Way::New,
        })
    }

    /// Goes on for at most so many ticks; gives whether it has come to its end.
    pub fn advance(
        &mut self,
        ticks: u64,
        observer: &mut dyn Observer,
    ) -> Result<bool, ReplayError> {
        self.replaying.advance(ticks, observer)
    }

    /// The scenario of the attempt.
    pub const fn scenario(&self) -> &Scenario {
        &self.scenario
    }

    /// The tick that it has come to, and the one that it goes to.
    pub fn progress(&self) -> (u64, u64) {
        (self.replaying.driver.job().now(), self.replaying.end())
    }

    /// The recorder, to go on with from here.
    pub fn finish(self) -> Result<Recorder, ReplayError> {
        let mut recorder = self.replaying.driver;
        if let Way::Same(whole) = self.way {
            let went_on = recorder.go_on(whole);
            went_on.map_err(|cause| ReplayError::Unreadable {
                path: recorder.path().to_owned(),
                cause,
            })?;
        }
        Ok(recorder)
    }

    /// Stops on the way. An attempt that was cut stays as it was; a new one is ended as left.
    pub fn give_up(self) -> Result<(), RecordError> {
        match self.way {
            Way::Same(_) => Ok(()),
            Way::New => self.replaying.driver.leave().map(|_| ()),
        }
    }
}

/// The scenario of an attempt that can be gone on with; else why it cannot.
pub(super) fn fit_to_go_on(journal: &Journal, lookup: Lookup<'_>) -> Result<Scenario, ReplayError> {
    if matches!(journal.end, End::Closed | End::Left) {
        return Err(ReplayError::Closed);
    }
    of_this_program(&journal.head)?;
    scenario_of(&journal.head, lookup)
}

fn of_this_program(head: &Head) -> Result<(), ReplayError> {
    if head.is_of_this_program() {
        return Ok(());
    }
    let program = head.program.clone();
    Err(ReplayError::OfAnotherProgram { program })
}
