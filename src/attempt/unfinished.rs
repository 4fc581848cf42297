//! The attempts in a folder that were never ended: the program was killed, or the power went.

use super::catch_up::fit_to_go_on;
use super::place::{self, ENDING};
use super::{Head, Journal, JournalEntry, Lookup, ReplayError};
use crate::files;
use crate::words::Action;
use std::fs;
use std::io::{self, Read, Seek, SeekFrom};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// An attempt that was never ended.
#[derive(Debug)]
pub struct Unfinished {
    /// Its file.
    pub path: PathBuf,
    /// Its head, as far as it can be read.
    pub head: Option<Head>,
    /// The tick of its last line.
    pub tick: u64,
    /// Why it cannot be gone on with, if so.
    pub obstacle: Option<ReplayError>,
}

/// The attempts in a folder that were not ended, the last written first. One whose job was handed
/// back is none of them. Files are only read.
pub fn unfinished(folder: &Path, lookup: Lookup<'_>) -> Vec<Unfinished> {
    let Ok(entries) = fs::read_dir(folder) else {
        return Vec::new();
    };
    let mut paths: Vec<(SystemTime, PathBuf)> = entries
        .flatten()
        .map(|entry| entry.path())
        .filter(|path| path.extension().is_some_and(|ending| ending == ENDING))
        .filter(|path| !ends_ended(path).unwrap_or(false))
        .map(|path| (written(&path), path))
        .collect();
    paths.sort();
    let paths = paths.into_iter().rev();
    paths.filter_map(|(_, path)| look(path, lookup)).collect()
}

fn written(path: &Path) -> SystemTime {
    let data = fs::metadata(path).and_then(|data| data.modified());
    data.unwrap_or(SystemTime::UNIX_EPOCH)
}

/// `None`: its job was handed back, and only the closing line is missing.
fn look(path: PathBuf, lookup: Lookup<'_>) -> Option<Unfinished> {
    let read = files::open(&path)
        .map_err(io::Error::from)
        .and_then(|file| {
            let is_free = place::take(&file);
            Journal::read_from(&file).map(|journal| (is_free, journal))
        });
    let (head, tick, obstacle) = match read {
        Err(cause) => {
            let path = path.clone();
            (None, 0, Some(ReplayError::Unreadable { path, cause }))
        }
        Ok((_, Err(not_genuine))) => (None, 0, Some(not_genuine.into())),
        Ok((is_free, Ok(journal))) => {
            if is_handed_back(&journal) {
                return None;
            }
            let tick = journal.lines.last().map_or(0, |line| line.tick);
            let obstacle = if is_free {
                fit_to_go_on(&journal, lookup).err()
            } else {
                Some(ReplayError::UnderWay)
            };
            (Some(journal.head), tick, obstacle)
        }
    };
    Some(Unfinished {
        path,
        head,
        tick,
        obstacle,
    })
}

fn is_handed_back(journal: &Journal) -> bool {
    let lines = journal.lines.iter();
    // Handing back is never refused.
    lines
        .rev()
        .any(|line| line.entry == JournalEntry::Do(Action::HandBack))
}

/// Whether a file's last line is one that ends an attempt. It is not proved, only looked at, so
/// that a folder with a class of attempts is gone through in no time.
fn ends_ended(path: &Path) -> io::Result<bool> {
    /// More than the last line of an ended attempt.
    const TAIL: u64 = 128;
    let mut file = files::open(path)?;
    let length = file.seek(SeekFrom::End(0))?;
    file.seek(SeekFrom::Start(length.saturating_sub(TAIL)))?;
    let mut tail = Vec::new();
    file.take(TAIL).read_to_end(&mut tail)?;
    let tail = String::from_utf8_lossy(&tail);
    let Some(last) = tail.strip_suffix('\n').and_then(|t| t.lines().last()) else {
        return Ok(false);
    };
    let entry = last
        .rsplit("  ")
        .nth(1)
        .and_then(|e| JournalEntry::parse(e).ok());
    Ok(entry.is_some_and(|entry| entry.is_last()))
}
