//! What can be wrong with a value that serde reads.

use super::split::NodeId;
use serde::de::{self, Expected, Unexpected};
use std::fmt;

/// Where an error arose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum At {
    /// At a value.
    Node(NodeId),
    /// At the name of a field: the struct and the number of the field in it.
    Field(NodeId, usize),
}

/// The first error of one reading; `at` is filled in by the innermost value it passes through.
#[derive(Debug)]
pub(super) struct Failure {
    pub(super) at: Option<At>,
    pub(super) problem: Problem,
}

/// What is wrong.
#[derive(Debug)]
pub(super) enum Problem {
    /// Anything that has no kind of its own.
    Other(String),
    /// A struct lacks a field.
    Missing(&'static str),
    /// A struct has no such field.
    NoField(String, &'static [&'static str]),
    /// An enum has no such variant.
    NoVariant(String, &'static [&'static str]),
    /// A number stands where a word with its value belongs.
    BareNumber {
        /// The words.
        words: &'static [&'static str],
        /// They are units.
        units: bool,
    },
}

impl Failure {
    pub(super) fn new(problem: Problem) -> Self {
        Self { at: None, problem }
    }

    /// The same, placed unless it has a place already.
    pub(super) fn placed(mut self, at: At) -> Self {
        self.at.get_or_insert(at);
        self
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:?}", self.problem)
    }
}

impl std::error::Error for Failure {}

impl de::Error for Failure {
    fn custom<T: fmt::Display>(message: T) -> Self {
        Self::new(Problem::Other(message.to_string()))
    }

    fn invalid_type(_: Unexpected<'_>, expected: &dyn Expected) -> Self {
        Self::custom(format_args!("expected {expected}"))
    }

    fn invalid_length(length: usize, expected: &dyn Expected) -> Self {
        Self::custom(format_args!("expected {expected}, found {length} values"))
    }

    fn unknown_field(found: &str, expected: &'static [&'static str]) -> Self {
        Self::new(Problem::NoField(found.to_owned(), expected))
    }

    fn unknown_variant(found: &str, expected: &'static [&'static str]) -> Self {
        Self::new(Problem::NoVariant(found.to_owned(), expected))
    }

    fn missing_field(field: &'static str) -> Self {
        Self::new(Problem::Missing(field))
    }
}
