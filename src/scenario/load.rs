//! Loading scenarios: from a file, or those that come with the program.

use super::check::check_scenario;
use super::document::ERRORS_MAX;
use super::units::unit_of;
use super::{Diagnostic, Document, Scenario, ScenarioFile};
use crate::files;
use sha2::{Digest, Sha256};
use std::fmt::Write;
use std::path::Path;

/// The scenarios that come with the program, in the order of the list: name and text.
const SHIPPED: [(&str, &str); 6] = [
    (
        "clogged_drier",
        include_str!("../../scenarios/clogged_drier.ron"),
    ),
    (
        "leaking_flare",
        include_str!("../../scenarios/leaking_flare.ron"),
    ),
    (
        "wet_circuit",
        include_str!("../../scenarios/wet_circuit.ron"),
    ),
    (
        "undercharge",
        include_str!("../../scenarios/undercharge.ron"),
    ),
    (
        "flammable_leak",
        include_str!("../../scenarios/flammable_leak.ron"),
    ),
    (
        "cold_room_drier",
        include_str!("../../scenarios/cold_room_drier.ron"),
    ),
];

/// The names of the scenarios that come with the program. The first is the default.
pub fn shipped_names() -> impl Iterator<Item = &'static str> {
    SHIPPED.iter().map(|(name, _)| *name)
}

impl Scenario {
    /// Loads a scenario file, or gives everything that is wrong with it.
    pub fn load(path: &Path) -> Result<Self, Vec<Diagnostic>> {
        let shown = path.display().to_string();
        let bytes = read_file(path)?;
        let name = path.file_stem().map(|stem| stem.to_string_lossy());
        Self::from_bytes(&shown, &name.unwrap_or_default(), &bytes)
    }

    /// A scenario that comes with the program; `None` when there is none of this name.
    pub fn shipped(name: &str) -> Option<Self> {
        let (name, text) = SHIPPED.iter().find(|(shipped, _)| *shipped == name)?;
        let path = format!("scenarios/{name}.ron");
        Self::from_bytes(&path, name, text.as_bytes()).ok()
    }

    /// A scenario from the bytes of its file; `path` is what the person calls the file. A unit that
    /// it names by its file is looked for beside it.
    pub fn from_bytes(path: &str, name: &str, bytes: &[u8]) -> Result<Self, Vec<Diagnostic>> {
        let document = Document::split(path, bytes).map_err(|wrong| vec![wrong])?;
        let read = document.read::<ScenarioFile>();
        let mut wrong = check_scenario(document.root());
        let unit = unit_of(document.root().field("unit"), path);
        match (read, unit) {
            (Ok(file), Ok((unit, unit_digest))) if wrong.is_empty() => Ok(Self {
                name: name.to_owned(),
                unit,
                unit_digest,
                file,
                digest: digest(bytes),
            }),
            (read, unit) => {
                wrong.extend(read.err().unwrap_or_default());
                let of_unit = unit.err().unwrap_or_default().into_iter();
                let (here, in_its_file): (Vec<_>, Vec<_>) = of_unit.partition(|w| w.path == path);
                wrong.extend(here);
                wrong = in_order(wrong);
                wrong.extend(in_its_file);
                Err(wrong)
            }
        }
    }
}

/// The bytes of a file, or why they cannot be had.
pub(crate) fn read_file(path: &Path) -> Result<Vec<u8>, Vec<Diagnostic>> {
    files::read(path, files::TEXT_MAX).map_err(|error| {
        vec![Diagnostic {
            path: path.display().to_string(),
            line: 1,
            column: 1,
            message: format!("the file cannot be read: {error}"),
            hint: None,
        }]
    })
}

/// Diagnostics in the order of the text, as many as somebody may read.
pub(crate) fn in_order(mut wrong: Vec<Diagnostic>) -> Vec<Diagnostic> {
    wrong.sort_by_key(|diagnostic| (diagnostic.line, diagnostic.column));
    wrong.truncate(ERRORS_MAX);
    wrong
}

/// SHA-256 of some bytes, hexadecimal.
pub(crate) fn digest(bytes: &[u8]) -> String {
    let mut hexadecimal = String::new();
    for byte in Sha256::digest(bytes) {
        write!(hexadecimal, "{byte:02x}").expect("a string takes all that is written to it");
    }
    hexadecimal
}
