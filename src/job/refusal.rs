//! Why an action was not carried out, in the technician's words.

use crate::text::Message;
use thiserror::Error;

/// An action that cannot be done as things stand. It changed nothing.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{why}")]
pub struct Refusal {
    /// What stands in the way, and what to do first.
    pub why: Message,
}

impl Refusal {
    /// A refusal with its reason.
    pub const fn because(why: Message) -> Self {
        Self { why }
    }
}
