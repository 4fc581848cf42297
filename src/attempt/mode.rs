//! Whether an attempt is practice or an assessment.

use serde::{Deserialize, Serialize};
use std::fmt;

/// For what an attempt was begun. It stands in the head of the journal, so that nobody can say
/// afterwards that it was the other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Mode {
    /// To learn: one may be helped, and go back to a moment to try again.
    #[default]
    Practice,
    /// To be assessed: no help, no going back, and wrong arithmetic stays on the sheet.
    Assessed,
}

impl Mode {
    /// Every mode.
    pub const ALL: [Self; 2] = [Self::Practice, Self::Assessed];

    /// In a word, for a report and for other programs.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Practice => "practice",
            Self::Assessed => "assessed",
        }
    }
}

impl fmt::Display for Mode {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.word())
    }
}
