//! The chain: each line's digest covers the line and everything before it.

use sha2::{Digest, Sha256};
use std::fmt::Write;

/// Bytes of a digest that are kept. 16 are far beyond what anybody can search for a twin of.
const KEPT: usize = 16;

/// What stands between a line's text and its chain.
const BETWEEN: &str = "  ";

/// A chain at some line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Chain(String);

impl Chain {
    /// Before the first line.
    pub(super) fn unbegun() -> Self {
        Self("0".repeat(2 * KEPT))
    }

    /// Adds a line of text, without its end, and gives it as the file has it, end included.
    pub(super) fn link(&mut self, text: &str) -> String {
        *self = self.after(text);
        format!("{text}{BETWEEN}{}\n", self.0)
    }

    /// Takes a line as the file has it, without its end, and gives its text when it follows.
    pub(super) fn follow<'a>(&mut self, line: &'a str) -> Option<&'a str> {
        let (text, digest) = line.rsplit_once(BETWEEN)?;
        let next = self.after(text);
        (next.0 == digest).then(|| {
            *self = next;
            text
        })
    }

    /// Whether a piece without a line's end holds a whole genuine line and more behind it.
    pub(super) fn is_overrun_by(&self, piece: &str) -> bool {
        piece.match_indices(BETWEEN).any(|(at, _)| {
            let behind = &piece[at + BETWEEN.len()..];
            behind.len() > 2 * KEPT && behind.starts_with(self.after(&piece[..at]).as_str())
        })
    }

    /// The digest in hexadecimal.
    pub(super) fn as_str(&self) -> &str {
        &self.0
    }

    fn after(&self, text: &str) -> Self {
        let digest = Sha256::new()
            .chain_update(self.0.as_bytes())
            .chain_update(text.as_bytes())
            .finalize();
        let mut hex = String::with_capacity(2 * KEPT);
        for byte in digest.iter().take(KEPT) {
            write!(hex, "{byte:02x}").expect("writing to a string cannot fail");
        }
        Self(hex)
    }
}
