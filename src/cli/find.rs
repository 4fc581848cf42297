//! Scenarios and procedures by the name of a shipped one or by a path.

use crate::attempt::{ENDING, Head};
use crate::files;
use crate::scenario::{Diagnostic, Document, Scenario, shipped_names, unit_names};
use anyhow::{anyhow, bail, ensure};
use std::path::Path;

/// A scenario with where it was found.
#[derive(Debug)]
pub(super) struct Found {
    /// The scenario.
    pub(super) scenario: Scenario,
    /// The path of its file, or its path in the program.
    pub(super) source: String,
    /// It does not come with the program.
    pub(super) is_own: bool,
}

/// The scenario of a shipped name or of a path.
pub(super) fn scenario(name: &str) -> anyhow::Result<Found> {
    if let Some(scenario) = Scenario::shipped(name) {
        let source = format!("scenarios/{name}.ron");
        return Ok(Found {
            scenario,
            source,
            is_own: false,
        });
    }
    if !Path::new(name).exists() {
        let known = shipped_names().collect::<Vec<_>>().join(", ");
        bail!("`{name}` is neither a file nor a scenario that comes with the program: {known}");
    }
    let path = Path::new(name);
    must_be(path, Kind::Scenario)?;
    let scenario = Scenario::load(path).map_err(|wrong| anyhow!(all(&wrong)))?;
    let source = name.to_owned();
    Ok(Found {
        scenario,
        source,
        is_own: true,
    })
}

/// The scenario of a shipped name or of a path; or a unit alone, sound, in standard weather.
pub(super) fn scenario_or_unit(name: &str) -> anyhow::Result<Scenario> {
    if let Some(unit) = Scenario::of_shipped_unit(name) {
        return Ok(unit);
    }
    let path = Path::new(name);
    let is_unit =
        files::read(path, files::TEXT_MAX).is_ok_and(|bytes| Kind::of(path, &bytes) == Kind::Unit);
    if is_unit {
        return Scenario::of_unit_file(path).map_err(|wrong| anyhow!(all(&wrong)));
    }
    if !path.exists() && Scenario::shipped(name).is_none() {
        let scenarios = shipped_names().collect::<Vec<_>>().join(", ");
        let units = unit_names().join(", ");
        bail!(
            "`{name}` is neither a file nor comes with the program; \
             scenarios: {scenarios}; units: {units}"
        );
    }
    scenario(name).map(|found| found.scenario)
}

/// Says plainly when a file is of another kind than is asked for. What cannot be read is left to
/// the reader.
pub(super) fn must_be(path: &Path, wanted: Kind) -> anyhow::Result<()> {
    let Ok(bytes) = files::read(path, files::ATTEMPT_MAX) else {
        return Ok(());
    };
    let found = Kind::of(path, &bytes);
    let (path, found_word, wanted_word) = (path.display(), found.word(), wanted.word());
    ensure!(
        found == wanted,
        "{path}: this is {found_word}, and {wanted_word} is asked for"
    );
    Ok(())
}

/// What a file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// A recorded attempt.
    Attempt,
    /// A written procedure.
    Procedure,
    /// A unit.
    Unit,
    /// A scenario; also what cannot be told.
    Scenario,
}

impl Kind {
    /// What a file is: an attempt by its ending or its beginning, else by the field that only one
    /// kind has.
    ///
    /// In a file that is no RON the fields are looked for at the beginnings of its lines.
    pub(super) fn of(path: &Path, bytes: &[u8]) -> Self {
        let document = Document::split("", bytes).ok();
        let text =
            files::text(bytes).unwrap_or_else(|_| String::from_utf8_lossy(bytes).into_owned());
        let has = |field: &str| match &document {
            Some(document) => document.root().field(field).is_there(),
            None => text.lines().any(|line| {
                let line = line.trim_start().strip_prefix(field);
                line.is_some_and(|rest| rest.trim_start().starts_with(':'))
            }),
        };
        let is_named_so = path.extension().is_some_and(|ending| ending == ENDING);
        if is_named_so || text.starts_with("coldbench attempt") {
            Self::Attempt
        } else if has("steps") {
            Self::Procedure
        } else if has("compressor") {
            Self::Unit
        } else {
            Self::Scenario
        }
    }

    /// What it is called.
    pub(super) const fn word(self) -> &'static str {
        match self {
            Self::Attempt => "an attempt",
            Self::Procedure => "a procedure",
            Self::Unit => "a unit",
            Self::Scenario => "a scenario",
        }
    }
}

/// The scenario of an attempt: the one given, else the shipped one that was used, else the file
/// that its head names.
pub(super) fn of_attempt(head: &Head, given: Option<&str>) -> Result<Scenario, String> {
    if let Some(name) = given {
        return scenario(name)
            .map(|found| found.scenario)
            .map_err(|wrong| format!("{wrong:#}"));
    }
    let shipped = Scenario::shipped(&head.scenario);
    match shipped {
        Some(scenario) if scenario.digest == head.scenario_digest => Ok(scenario),
        // A file of the same name may be the author's own; only without one is it the shipped one
        // that has changed.
        _ => match (Scenario::load(Path::new(&head.path)), shipped) {
            (Ok(scenario), _) | (Err(_), Some(scenario)) => Ok(scenario),
            (Err(wrong), None) => Err(all(&wrong)),
        },
    }
}

/// Every diagnostic, a line each.
pub(super) fn all(wrong: &[Diagnostic]) -> String {
    let lines: Vec<_> = wrong.iter().map(ToString::to_string).collect();
    lines.join("\n")
}
