//! Reading a journal and proving its chain, before anything in it is believed.

use super::chain::Chain;
use super::{Head, JournalEntry, JournalLine, TICKS_BETWEEN_MARKS};
use crate::files;
use std::fs::File;
use std::io;
use std::path::Path;
use thiserror::Error;

/// A journal is not what a recorder wrote.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("line {line}: not genuine: {why}")]
pub struct NotGenuine {
    /// The first line that is wrong, counted from 1.
    pub line: usize,
    /// What is wrong with it.
    pub why: String,
}

/// How a journal ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// With its closing line.
    Closed,
    /// With the line that says that it was left, not handed back.
    Left,
    /// Without one: the program was killed, or still runs.
    Cut,
    /// In the middle of this line, counted from 1, which does not count.
    Torn(usize),
}

/// A journal with its chain proved. Whether the physics agree, only a replay can tell.
#[derive(Debug, Clone, PartialEq)]
pub struct Journal {
    /// Its head.
    pub head: Head,
    /// Its lines after the head.
    pub lines: Vec<JournalLine>,
    /// How it ends.
    pub end: End,
    /// The bytes of its whole lines.
    pub(super) whole: u64,
    /// The chain of each line from the last of the head on.
    chains: Vec<Chain>,
}

impl Journal {
    /// Reads a journal from a file.
    pub fn read(path: &Path) -> io::Result<Result<Self, NotGenuine>> {
        Self::read_from(&files::open(path)?)
    }

    /// Reads a journal from an open file, from where that stands.
    pub(super) fn read_from(file: &File) -> io::Result<Result<Self, NotGenuine>> {
        let bytes = files::read_open(file, files::ATTEMPT_MAX)?;
        Ok(Self::from_bytes(&bytes))
    }

    /// Reads a journal from its bytes.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, NotGenuine> {
        let (texts, mut chains, torn) = prove(bytes)?;
        let whole = bytes.len() - torn.map_or(0, <[u8]>::len);
        let head = Head::parse(&texts).map_err(|(line, why)| NotGenuine { line, why })?;
        let mut lines = Vec::with_capacity(texts.len().saturating_sub(head.length()));
        for (i, text) in texts.iter().enumerate().skip(head.length()) {
            let line = JournalLine::parse(text)
                .and_then(|line| fits(&lines, &line).map(|()| line))
                .map_err(|why| NotGenuine { line: i + 1, why })?;
            lines.push(line);
        }
        let end = match torn {
            Some(_) => End::Torn(texts.len() + 1),
            None => match lines.last().map(|line| &line.entry) {
                Some(JournalEntry::Closed) => End::Closed,
                Some(JournalEntry::Left) => End::Left,
                _ => End::Cut,
            },
        };
        Ok(Self {
            lines,
            end,
            whole: whole as u64,
            chains: chains.split_off(head.length() - 1),
            head,
        })
    }

    /// The fingerprint of the attempt: the chain of its last whole line.
    pub fn fingerprint(&self) -> &str {
        self.chain().as_str()
    }

    /// The chain of its last whole line.
    pub(super) fn chain(&self) -> &Chain {
        self.chains.last().expect("a journal has its head")
    }

    /// The chain on which a line after the head, counted from 0, stands.
    pub(super) fn chain_before(&self, index: usize) -> &str {
        self.chains.get(index).map_or("", Chain::as_str)
    }

    /// The number in the file, counted from 1, of a line after the head.
    pub const fn number(&self, index: usize) -> usize {
        self.head.length() + index + 1
    }
}

/// The texts of the whole lines, their chains, and the torn rest.
type Proved<'a> = (Vec<&'a str>, Vec<Chain>, Option<&'a [u8]>);

fn prove(bytes: &[u8]) -> Result<Proved<'_>, NotGenuine> {
    let mut chain = Chain::unbegun();
    let (mut texts, mut chains) = (Vec::new(), Vec::new());
    for piece in bytes.split_inclusive(|&byte| byte == b'\n') {
        let not_genuine = |why: &str| NotGenuine {
            line: texts.len() + 1,
            why: why.to_owned(),
        };
        let Some(line) = piece.strip_suffix(b"\n") else {
            // A write that was cut leaves the beginning of a line, never more than all of it.
            return if chain.is_overrun_by(&String::from_utf8_lossy(piece)) {
                Err(not_genuine("it goes on behind its end"))
            } else {
                Ok((texts, chains, Some(piece)))
            };
        };
        let line = str::from_utf8(line).map_err(|e| not_genuine(&format!("not text: {e}")))?;
        let text = chain.follow(line).ok_or_else(|| {
            not_genuine("it does not follow from the lines before it; one of them was changed")
        })?;
        texts.push(text);
        chains.push(chain.clone());
    }
    Ok((texts, chains, None))
}

/// Whether a line can stand after the lines before it.
fn fits(before: &[JournalLine], line: &JournalLine) -> Result<(), String> {
    let last = before.last();
    let (tick, entry) = last.map_or((0, None), |last| (last.tick, Some(&last.entry)));
    if line.tick < tick {
        return Err(format!("tick {} comes before tick {tick}", line.tick));
    }
    // Each minute has its mark, and a mark stands nowhere else.
    let (minute, minute_before) = (line.tick / TICKS_BETWEEN_MARKS, tick / TICKS_BETWEEN_MARKS);
    let fits_the_marks = if line.entry == JournalEntry::Mark {
        line.tick == (minute_before + 1) * TICKS_BETWEEN_MARKS
    } else {
        minute == minute_before
    };
    if !fits_the_marks {
        return Err(format!("the marks do not fit tick {}", line.tick));
    }
    if entry.is_some_and(JournalEntry::is_last) {
        return Err("something stands behind the closing line".to_owned());
    }
    let follows_action = matches!(entry, Some(JournalEntry::Do(_))) && line.tick == tick;
    if matches!(line.entry, JournalEntry::Refused(_)) && !follows_action {
        return Err("a refusal without its action".to_owned());
    }
    Ok(())
}
