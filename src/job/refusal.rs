//! Why an action was not carried out, in the technician's words.

use thiserror::Error;

/// An action that cannot be done as things stand. It changed nothing.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{why}")]
pub struct Refusal {
    /// What stands in the way, and what to do first.
    pub why: String,
}

impl Refusal {
    /// A refusal with its reason.
    pub fn because(why: impl Into<String>) -> Self {
        Self { why: why.into() }
    }
}
