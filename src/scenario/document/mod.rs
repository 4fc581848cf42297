//! A RON file as people write it: read with every error at once, each with its place.
//!
//! The library `ron` gives the place of the first error of a file and stops there; its values carry
//! no places. So the text is split into its values ([`split`]), serde reads those ([`read`]), and
//! `ron` reads each number, text and word. When serde meets an error, it is noted and a stand-in
//! ([`stand_in`]) is put in the place of the wrong value, until serde comes through. Any type that
//! serde can read can be read so, with no code about its fields here. Checks that go beyond the
//! type find their way through the file by [`Located`]s.

mod problem;
mod read;
mod split;
mod stand_in;

use super::diagnostic::{Diagnostic, did_you_mean};
use crate::files;
use problem::{At, Failure, Problem};
use read::{Mended, ValueReader};
use serde::de::DeserializeOwned;
use split::{NodeId, Shape, Tree};
use std::collections::BTreeSet;

/// More errors of one file are not told: whoever reads them gives up earlier.
pub(crate) const ERRORS_MAX: usize = 100;

/// A file, split into its values.
#[derive(Debug)]
pub(crate) struct Document {
    path: String,
    text: String,
    tree: Tree,
}

/// A value in a document, or the place where it is missing.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Located<'d> {
    document: &'d Document,
    node: Option<NodeId>,
    at: usize,
}

impl Document {
    /// Splits a file; `path` is what the person calls it. Any bytes may come.
    pub(crate) fn split(path: &str, bytes: &[u8]) -> Result<Self, Diagnostic> {
        if bytes.len() as u64 > files::TEXT_MAX {
            let message = files::FileError::TooLong(files::TEXT_MAX).to_string();
            return Err(diagnostic(path, "", 0, message, None));
        }
        let text = files::text(bytes).map_err(|wrong| {
            let (message, hint) = (wrong.message.to_owned(), Some(wrong.hint.to_owned()));
            diagnostic(path, &wrong.before, wrong.before.len(), message, hint)
        })?;
        match split::split(&text) {
            Ok(tree) => Ok(Self {
                path: path.to_owned(),
                text,
                tree,
            }),
            Err(error) => {
                let hint = error.hint.map(str::to_owned);
                Err(diagnostic(path, &text, error.at, error.message, hint))
            }
        }
    }

    /// The value of the whole file.
    pub(crate) const fn root(&self) -> Located<'_> {
        Located {
            document: self,
            node: Some(self.tree.root),
            at: 0,
        }
    }

    /// Reads the file as a `T`, or gives everything that keeps it from being one.
    pub(crate) fn read<T: DeserializeOwned>(&self) -> Result<T, Vec<Diagnostic>> {
        let mut mended = Mended::default();
        let mut wrong = self.doubled_fields(&mut mended);
        loop {
            let failure = match self.read_at(self.tree.root, &mended) {
                Ok(value) if wrong.is_empty() => return Ok(value),
                Ok(_) => return Err(wrong),
                Err(failure) => failure,
            };
            let is_new = mended.mend(&failure);
            if is_new || wrong.is_empty() {
                wrong.push(self.explain(&failure));
            }
            if let Some((node, meant)) = self.meant_field(&failure) {
                mended.add(node, meant);
            }
            if !is_new || wrong.len() >= ERRORS_MAX {
                return Err(wrong);
            }
        }
    }

    fn read_at<T: DeserializeOwned>(&self, node: NodeId, mended: &Mended) -> Result<T, Failure> {
        T::deserialize(ValueReader {
            text: &self.text,
            tree: &self.tree,
            mended,
            node,
            word_is_spent: false,
        })
        .map_err(|failure| failure.placed(At::Node(node)))
    }

    /// The field that a misspelt one was meant to be, unless that stands there too: its absence
    /// is no error of its own.
    fn meant_field(&self, failure: &Failure) -> Option<(NodeId, &'static str)> {
        match (failure.at, &failure.problem) {
            (Some(At::Field(node, _)), Problem::NoField(found, words)) => {
                did_you_mean(found, words)
                    .filter(|meant| self.field_of(node, meant).is_none())
                    .map(|meant| (node, meant))
            }
            (_, _) => None,
        }
    }

    /// The value of a struct's field.
    fn field_of(&self, node: NodeId, name: &str) -> Option<NodeId> {
        let fields = self.tree.nodes[node].shape.fields();
        fields
            .iter()
            .find(|field| &self.text[field.name.clone()] == name)
            .map(|field| field.value)
    }

    /// Finds fields that are written twice in one struct, and passes over the second.
    fn doubled_fields(&self, mended: &mut Mended) -> Vec<Diagnostic> {
        let mut wrong = Vec::new();
        for (node, value) in self.tree.nodes.iter().enumerate() {
            if wrong.len() >= ERRORS_MAX {
                break;
            }
            let mut seen = BTreeSet::new();
            for (number, field) in value.shape.fields().iter().enumerate() {
                let name = &self.text[field.name.clone()];
                if !seen.insert(name) {
                    mended.pass_over(node, number);
                    if wrong.len() >= ERRORS_MAX {
                        continue;
                    }
                    let message = format!("the field `{name}` is written twice");
                    wrong.push(self.diagnostic(field.name.start, message, None));
                }
            }
        }
        wrong
    }

    /// Says what a failure means to the person who wrote the file.
    fn explain(&self, failure: &Failure) -> Diagnostic {
        let (at, written) = match failure.at {
            Some(At::Node(node)) => {
                let span = &self.tree.nodes[node].span;
                (span.start, &self.text[span.clone()])
            }
            Some(At::Field(node, number)) => {
                let field = self.tree.nodes[node].shape.fields().get(number);
                (field.map_or(0, |field| field.name.start), "")
            }
            None => (0, ""),
        };
        let (message, hint) = match &failure.problem {
            Problem::Other(message) => (self.of_its_field(failure.at, message), None),
            Problem::Missing(field) => (
                format!("the field `{field}` is missing"),
                Some(format!("write `{field}: …` in these parentheses")),
            ),
            Problem::NoField(found, words) => (
                format!("there is no field `{found}` here"),
                Some(choice(found, words)),
            ),
            Problem::NoVariant(found, words) => (
                format!("`{found}` is not known here"),
                Some(choice(found, words)),
            ),
            Problem::BareNumber { words, units: true } => {
                let ways: Vec<String> = words.iter().map(|w| format!("{w}({written})")).collect();
                (
                    self.of_its_field(failure.at, "must have a unit"),
                    Some(format!("write {}", ways.join(" or "))),
                )
            }
            Problem::BareNumber { words, .. } => (
                format!("expected a word, found `{written}`"),
                Some(choice("", words)),
            ),
        };
        self.diagnostic(at, message, hint)
    }

    /// A message with the name of the field whose value it is about: `opening` must lie in 0..=1.
    fn of_its_field(&self, at: Option<At>, message: &str) -> String {
        let Some(At::Node(wrong)) = at else {
            return message.to_owned();
        };
        let nodes = self.tree.nodes.iter();
        let mut fields = nodes.flat_map(|node| node.shape.fields());
        let named = fields.find(|field| field.value == wrong);
        match named {
            Some(field) if message.starts_with("must") => {
                format!("{} {message}", &self.text[field.name.clone()])
            }
            Some(field) => format!("{}: {message}", &self.text[field.name.clone()]),
            None if message.starts_with("must") => format!("it {message}"),
            None => message.to_owned(),
        }
    }

    fn diagnostic(&self, at: usize, message: String, hint: Option<String>) -> Diagnostic {
        diagnostic(&self.path, &self.text, at, message, hint)
    }
}

impl Located<'_> {
    /// The value of a field, or the place where it is missing. A variant's fields count too.
    #[must_use]
    pub(crate) fn field(self, name: &str) -> Self {
        let node = self
            .node
            .and_then(|node| self.document.field_of(node, name));
        self.inner(node)
    }

    /// The value inside `Some(…)`, or the value itself.
    #[must_use]
    pub(crate) fn inside_some(self) -> Self {
        let shape = self.node.map(|node| &self.document.tree.nodes[node].shape);
        let only = shape
            .filter(|shape| shape.word(&self.document.text) == "Some")
            .and_then(Shape::only_item);
        only.map_or(self, |only| self.inner(Some(only)))
    }

    /// Every value here, this one and all inside it, in the order in which they end.
    pub(crate) fn every_value(self) -> Vec<Self> {
        let nodes = &self.document.tree.nodes;
        let Some(outer) = self.node.map(|node| &nodes[node].span) else {
            return Vec::new();
        };
        let inside = nodes
            .iter()
            .enumerate()
            .filter(|(_, node)| outer.start <= node.span.start && node.span.end <= outer.end);
        inside.map(|(node, _)| self.inner(Some(node))).collect()
    }

    /// Whether anything stands here.
    pub(crate) const fn is_there(self) -> bool {
        self.node.is_some()
    }

    /// The values of a list, or those in parentheses after a word.
    pub(crate) fn items(self) -> Vec<Self> {
        let shape = self.node.map(|node| &self.document.tree.nodes[node].shape);
        let items = shape.and_then(Shape::items).unwrap_or_default();
        items.iter().map(|&item| self.inner(Some(item))).collect()
    }

    /// One of those, by its number from 0.
    #[must_use]
    pub(crate) fn item(self, number: usize) -> Self {
        let item = self.items().get(number).copied();
        item.unwrap_or(self.inner(None))
    }

    /// The value here as a `T`, where it is one.
    pub(crate) fn read<T: DeserializeOwned>(self) -> Option<T> {
        let node = self.node?;
        self.document.read_at(node, &Mended::default()).ok()
    }

    /// Something that is wrong here.
    pub(crate) fn error(self, message: impl Into<String>) -> Diagnostic {
        self.document.diagnostic(self.at, message.into(), None)
    }

    /// Something that is wrong here, and what would be right.
    pub(crate) fn error_with_hint(
        self,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) -> Diagnostic {
        let hint = Some(hint.into());
        self.document.diagnostic(self.at, message.into(), hint)
    }

    fn inner(self, node: Option<NodeId>) -> Self {
        let at = node.map_or(self.at, |node| self.document.tree.nodes[node].span.start);
        Self { node, at, ..self }
    }
}

/// What somebody may have meant, or all that there is to choose from.
fn choice(found: &str, words: &[&str]) -> String {
    match did_you_mean(found, words) {
        Some(word) => format!("did you mean `{word}`?"),
        None => format!("it is one of {}", words.join(", ")),
    }
}

/// A diagnostic at a byte of a text.
fn diagnostic(
    path: &str,
    text: &str,
    at: usize,
    message: String,
    hint: Option<String>,
) -> Diagnostic {
    let before = text.get(..at).unwrap_or(text);
    let line_start = before.rfind('\n').map_or(0, |end| end + 1);
    Diagnostic {
        path: path.to_owned(),
        line: before.matches('\n').count() + 1,
        column: before[line_start..].chars().count() + 1,
        message,
        hint,
    }
}
