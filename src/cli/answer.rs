//! What a command answers, and how it leaves the program.

use serde::Serialize;
use std::io::{self, Write};
use std::process::ExitCode;

/// What a command answers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// What is printed.
    pub text: String,
    /// Whether all is well; else the answer is no.
    pub is_yes: bool,
}

impl Answer {
    /// An answer in text.
    pub fn new(is_yes: bool, text: impl Into<String>) -> Self {
        let text = text.into();
        Self { text, is_yes }
    }

    /// An answer in JSON.
    pub fn json<T: Serialize>(is_yes: bool, value: &T) -> anyhow::Result<Self> {
        Ok(Self::new(is_yes, serde_json::to_string_pretty(value)?))
    }

    /// Prints the answer of a command, or how it was used wrongly; gives the exit code.
    ///
    /// A reader that goes away, as `head` does, is no error.
    pub fn print(answer: anyhow::Result<Self>) -> ExitCode {
        match answer {
            Ok(Self { text, is_yes }) => {
                let written = writeln!(io::stdout(), "{}", text.trim_end());
                match written {
                    Err(e) if e.kind() != io::ErrorKind::BrokenPipe => ExitCode::from(2),
                    _ => ExitCode::from(u8::from(!is_yes)),
                }
            }
            Err(wrong) => {
                // With no place left to complain, the exit code has to do.
                writeln!(io::stderr(), "error: {wrong:#}").unwrap_or_default();
                ExitCode::from(2)
            }
        }
    }
}
