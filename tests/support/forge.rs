//! Links the lines of a journal into a new chain, as a forger would.

use sha2::{Digest as _, Sha256};
use std::fmt::Write as _;

/// The lines with a change made to each, in a chain of their own.
pub fn linked(journal: &str, change: impl Fn(&str) -> String) -> String {
    let mut chain = "0".repeat(32);
    let mut linked = String::new();
    for line in journal.lines() {
        let text = change(line.rsplit_once("  ").map_or(line, |(text, _)| text));
        let digest = Sha256::digest(format!("{chain}{text}"));
        chain.clear();
        for byte in &digest[..16] {
            write!(chain, "{byte:02x}").expect("writing to a string cannot fail");
        }
        writeln!(linked, "{text}  {chain}").expect("writing to a string cannot fail");
    }
    linked
}
