//! The head of a journal: what was asked, by which program, of whom.

use super::FORMAT;
use super::line::in_ron;
use crate::scenario::Scenario;
use serde::{Serialize, de::DeserializeOwned};

/// The first words of every journal; the version of the format follows.
const MAGIC: &str = "coldbench attempt";

/// SHA-256 over the sources and data of this program that decide what a job does.
const PROGRAM_DIGEST: &str = env!("COLDBENCH_PROGRAM_DIGEST");

/// The head of a journal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Head {
    /// The version of the program that recorded it.
    pub program: String,
    /// SHA-256 over the sources and data of that program that decide what a job does.
    pub program_digest: String,
    /// The short name of the scenario.
    pub scenario: String,
    /// Where the scenario's file was found; a hint only, the digest decides.
    pub path: String,
    /// SHA-256 of the scenario file.
    pub scenario_digest: String,
    /// The name of the unit.
    pub unit: String,
    /// SHA-256 of the unit file.
    pub unit_digest: String,
    /// The seed of the instruments' noise.
    pub seed: u64,
    /// Whose attempt it is.
    pub who: String,
}

impl Head {
    /// The lines of a head.
    pub(super) const LINES: usize = 10;

    /// The head of an attempt that begins.
    pub(super) fn new(scenario: &Scenario, path: &str, who: &str) -> Self {
        Self {
            program: env!("CARGO_PKG_VERSION").to_owned(),
            program_digest: PROGRAM_DIGEST.to_owned(),
            scenario: scenario.name.clone(),
            path: path.to_owned(),
            scenario_digest: scenario.digest.clone(),
            unit: scenario.file.unit.clone(),
            unit_digest: scenario.unit_digest.clone(),
            seed: scenario.file.seed,
            who: who.to_owned(),
        }
    }

    /// Whether this very program recorded it, as far as that decides what a job does.
    pub fn is_of_this_program(&self) -> bool {
        self.program_digest == PROGRAM_DIGEST
    }

    /// Its lines as text.
    pub(super) fn lines(&self) -> [String; Self::LINES] {
        [
            format!("{MAGIC} {FORMAT}"),
            field("program", &self.program),
            field("program-digest", &self.program_digest),
            field("scenario", &self.scenario),
            field("path", &self.path),
            field("scenario-digest", &self.scenario_digest),
            field("unit", &self.unit),
            field("unit-digest", &self.unit_digest),
            field("seed", &self.seed),
            field("who", &self.who),
        ]
    }

    /// From its lines; else the line, counted from 1, and what is wrong with it.
    pub(super) fn parse(lines: &[&str]) -> Result<Self, (usize, String)> {
        let line = |n: usize| {
            let missing = || (n, "the head of the journal ends too early".to_owned());
            lines.get(n - 1).copied().ok_or_else(missing)
        };
        let version = line(1)?
            .strip_prefix(MAGIC)
            .ok_or_else(|| (1, "this is no attempt".to_owned()))?
            .trim();
        if version != FORMAT.to_string() {
            let why = format!("format {version} is not known here; this program knows {FORMAT}");
            return Err((1, why));
        }
        Ok(Self {
            program: value(line(2)?, 2, "program")?,
            program_digest: value(line(3)?, 3, "program-digest")?,
            scenario: value(line(4)?, 4, "scenario")?,
            path: value(line(5)?, 5, "path")?,
            scenario_digest: value(line(6)?, 6, "scenario-digest")?,
            unit: value(line(7)?, 7, "unit")?,
            unit_digest: value(line(8)?, 8, "unit-digest")?,
            seed: value(line(9)?, 9, "seed")?,
            who: value(line(10)?, 10, "who")?,
        })
    }
}

fn field<T: Serialize + ?Sized>(key: &str, value: &T) -> String {
    format!("{key} {}", in_ron(value))
}

fn value<T: DeserializeOwned>(line: &str, number: usize, key: &str) -> Result<T, (usize, String)> {
    line.strip_prefix(key)
        .and_then(|value| ron::from_str(value.strip_prefix(' ')?).ok())
        .ok_or_else(|| (number, format!("here must stand `{key}` with its value")))
}
