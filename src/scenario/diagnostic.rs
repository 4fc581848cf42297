//! What is wrong with a file, and where.

use std::fmt;

/// One thing that is wrong with a file.
///
/// ```text
/// scenarios/x.ron:5:25: error: `opening` must lie in 0..=1, found 1.5
///   hint: it is a share of the whole
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Diagnostic {
    /// The file, as the person named it.
    pub path: String,
    /// The line, counted from 1.
    pub line: usize,
    /// The column, counted in characters from 1.
    pub column: usize,
    /// What is wrong.
    pub message: String,
    /// What would be right, where that can be said.
    pub hint: Option<String>,
}

impl fmt::Display for Diagnostic {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self {
            path,
            line,
            column,
            message,
            hint,
        } = self;
        write!(f, "{path}:{line}:{column}: error: {message}")?;
        match hint {
            Some(hint) => write!(f, "\n  hint: {hint}"),
            None => Ok(()),
        }
    }
}

/// The word of a list that somebody most likely meant: at most a third of its letters differ. Two
/// letters in the wrong order count as one.
pub(super) fn did_you_mean<'w>(found: &str, words: &[&'w str]) -> Option<&'w str> {
    // A limit on the work: no word of ours is longer.
    if found.len() > 64 {
        return None;
    }
    let lower = found.to_lowercase();
    words
        .iter()
        .map(|word| (strsim::osa_distance(&lower, &word.to_lowercase()), *word))
        .filter(|(edits, word)| 3 * edits <= word.len().max(3))
        .min_by_key(|(edits, _)| *edits)
        .map(|(_, word)| word)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slip_of_the_pen_is_understood() {
        let words = ["outdoor", "indoor", "indoor_wet_bulb"];
        assert_eq!(did_you_mean("outdor", &words), Some("outdoor"));
        assert_eq!(did_you_mean("Indoor", &words), Some("indoor"));
        assert_eq!(did_you_mean("oudtoor", &words), Some("outdoor"));
        assert_eq!(did_you_mean("banana", &words), None);
    }
}
