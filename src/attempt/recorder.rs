//! The recorder: it stands in the driver of a job and writes down what passes.

use super::chain::Chain;
use super::place::{self, DIRECTORY};
use super::replay::{Lookup, ReplayError};
use super::{CatchUp, Head, Journal, JournalEntry, JournalLine, Opening, TICKS_BETWEEN_MARKS};
use crate::job::{Driver, Job, Refusal};
use crate::scenario::Scenario;
use crate::text::Message;
use crate::words::Action;
use std::fs::File;
use std::io::{self, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A journal cannot be written.
#[derive(Debug, Error)]
#[error("{path}: cannot record here: {cause}")]
pub struct RecordError {
    /// The journal's file.
    pub path: PathBuf,
    /// What the system said.
    pub cause: io::Error,
}

/// A recording that was closed.
#[derive(Debug, Clone)]
pub struct Closed {
    /// The job as it stood.
    pub job: Job,
    /// The journal's file.
    pub path: PathBuf,
    /// The fingerprint of the attempt.
    pub fingerprint: String,
}

/// A job with its journal: every action is in the file before it takes effect.
///
/// An action is written as the very text that a replay reads, in one write, and what is applied is
/// what that text says. A refused action changes nothing and gets a second line with the reason;
/// as its replay is refused by the same job for the same reason, the two lines can only agree.
/// A write has reached the system when it returns, so that a killed program loses at most the
/// action in hand.
#[derive(Debug)]
pub struct Recorder {
    head: Head,
    job: Job,
    path: PathBuf,
    file: File,
    chain: Chain,
    trouble: Option<String>,
    /// It replays its own file, and what it does is written there.
    is_behind: bool,
}

impl Recorder {
    /// Begins an attempt in a new file; an old one is never overwritten.
    pub fn create(path: &Path, scenario: &Scenario, opening: Opening) -> Result<Self, RecordError> {
        let path = path.to_owned();
        match place::new_file(&path) {
            Ok(file) => Self::begin(path, file, scenario, opening),
            Err(cause) => Err(RecordError { path, cause }),
        }
    }

    /// Begins an attempt in the first free file for this scenario in [`DIRECTORY`], beside where
    /// the program runs.
    pub fn create_beside(scenario: &Scenario, opening: Opening) -> Result<Self, RecordError> {
        Self::create_in(Path::new(DIRECTORY), scenario, opening)
    }

    /// Begins an attempt in the first free file for this scenario in a directory.
    pub fn create_in(
        directory: &Path,
        scenario: &Scenario,
        opening: Opening,
    ) -> Result<Self, RecordError> {
        match place::first_free(directory, &scenario.name) {
            Ok((path, file)) => Self::begin(path, file, scenario, opening),
            Err(cause) => Err(RecordError {
                path: directory.to_owned(),
                cause,
            }),
        }
    }

    fn begin(
        path: PathBuf,
        mut file: File,
        scenario: &Scenario,
        opening: Opening,
    ) -> Result<Self, RecordError> {
        let mut chain = Chain::unbegun();
        let head = Head::new(scenario, opening);
        let lines = head.lines();
        let text: String = lines.iter().map(|line| chain.link(line)).collect();
        // Whoever takes it up must see that somebody works on it. Where a file system has no locks,
        // nobody sees.
        let _is_seen = place::take(&file);
        if let Err(cause) = file.write_all(text.as_bytes()) {
            return Err(RecordError { path, cause });
        }
        Ok(Self {
            head,
            job: Job::new(scenario),
            path,
            file,
            chain,
            trouble: None,
            is_behind: false,
        })
    }

    /// Behind a journal that is there already, at the start of its job: nothing is written until
    /// [`Self::go_on`], as all that is done before is in the file.
    pub(super) fn behind(journal: &Journal, path: PathBuf, file: File, job: Job) -> Self {
        Self {
            head: journal.head.clone(),
            job,
            path,
            file,
            chain: journal.chain().clone(),
            trouble: None,
            is_behind: true,
        }
    }

    /// Goes on behind the first `whole` bytes of the file; the journal says that this was done.
    pub(super) fn go_on(&mut self, whole: u64) -> io::Result<()> {
        self.file.set_len(whole)?;
        self.file.seek(SeekFrom::End(0))?;
        self.is_behind = false;
        self.write(JournalEntry::Resumed)
    }

    /// Takes up an attempt that was cut: replays it, drops a torn line and goes on in the same
    /// file.
    pub fn resume(path: &Path, lookup: Lookup<'_>) -> Result<Self, ReplayError> {
        let mut catch_up = CatchUp::with_cut(path, lookup)?;
        catch_up.advance(u64::MAX, &mut ())?;
        catch_up.finish()
    }

    /// Ends the recording with its closing line, with the time that passed since the last action.
    pub fn close(self) -> Result<Closed, RecordError> {
        self.end(JournalEntry::Closed)
    }

    /// Puts the job aside, to be gone on with: the journal keeps the time that passed since its
    /// last line, which a program that is killed loses.
    pub fn put_aside(mut self) -> Result<(), RecordError> {
        let written = match self.trouble.take() {
            Some(trouble) => Err(io::Error::other(trouble)),
            None => self.write(JournalEntry::Aside),
        };
        written.map_err(|cause| RecordError {
            path: self.path,
            cause,
        })
    }

    /// Ends the recording of a job that is left as it stands, not handed back.
    pub fn leave(self) -> Result<Closed, RecordError> {
        self.end(JournalEntry::Left)
    }

    fn end(mut self, last: JournalEntry) -> Result<Closed, RecordError> {
        let written = match self.trouble.take() {
            Some(trouble) => Err(io::Error::other(trouble)),
            None => self.write(last),
        };
        match written.and_then(|()| self.file.sync_data()) {
            Ok(()) => Ok(Closed {
                fingerprint: self.chain.as_str().to_owned(),
                job: self.job,
                path: self.path,
            }),
            Err(cause) => Err(RecordError {
                path: self.path,
                cause,
            }),
        }
    }

    /// The head of the journal.
    pub const fn head(&self) -> &Head {
        &self.head
    }

    /// The journal's file.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Why nothing can be recorded any more, if that is so: the disk is full, say. The journal
    /// holds all that was done, as no action is let through since.
    pub fn trouble(&self) -> Option<&str> {
        self.trouble.as_deref()
    }

    fn write(&mut self, entry: JournalEntry) -> io::Result<()> {
        let line = JournalLine {
            tick: self.job.now(),
            digest: self.job.digest(),
            entry,
        };
        let text = self.chain.link(&line.to_string());
        self.file.write_all(text.as_bytes())
    }

    /// Writes, and gives whether that went well; after the first failure nothing is written, for
    /// it would stand behind a torn line.
    fn note(&mut self, entry: JournalEntry) -> Result<(), Refusal> {
        if self.is_behind {
            return Ok(());
        }
        if self.trouble.is_none() {
            self.trouble = self.write(entry).err().map(|e| e.to_string());
        }
        match &self.trouble {
            Some(why) => {
                let why = Message::new("refusal-unrecordable").with("why", why.clone());
                Err(Refusal::because(why))
            }
            None => Ok(()),
        }
    }
}

impl Driver for Recorder {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        let entry = JournalEntry::Do(action);
        // What is applied is what the file says, so that a replay cannot differ by a rounding.
        let Ok(JournalEntry::Do(action)) = JournalEntry::parse(&entry.to_string()) else {
            return Err(Refusal::because(Message::new("refusal-unwritable")));
        };
        self.note(entry)?;
        let done = self.job.apply(action);
        if let Err(refusal) = &done {
            self.note(JournalEntry::Refused(refusal.why.to_string()))?;
        }
        done
    }

    fn tick(&mut self) {
        self.job.tick();
        if self.job.now().is_multiple_of(TICKS_BETWEEN_MARKS) {
            // A failure stays in `trouble` and stops the next action.
            self.note(JournalEntry::Mark).unwrap_or_default();
        }
    }

    fn job(&self) -> &Job {
        &self.job
    }
}
