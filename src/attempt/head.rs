//! The head of a journal: what was asked, by which program, of whom, and for what.

use super::line::in_ron;
use super::{FORMAT, Mode};
use crate::scenario::Scenario;
use crate::words::PersonName;
use serde::{Deserialize, Serialize, de::DeserializeOwned};

/// The first words of every journal; the version of the format follows.
const MAGIC: &str = "coldbench attempt";

/// The formats that are read: the first had neither mode nor branch.
const KNOWN: [u32; 2] = [1, FORMAT];

/// SHA-256 over the sources and data of this program that decide what a job does.
const PROGRAM_DIGEST: &str = env!("COLDBENCH_PROGRAM_DIGEST");

/// The head of a journal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Head {
    /// The version of the journal's format.
    pub format: u32,
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
    pub who: PersonName,
    /// For what it was begun; of the first format, which does not say: practice.
    pub mode: Mode,
    /// From where it went on, if it did not begin at the beginning.
    pub branch: Option<Branch>,
}

/// Where an attempt left another one: the lines before this one were done again, and the rest is
/// its own.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Branch {
    /// The file name of the other attempt; a hint only, the chain decides.
    pub attempt: String,
    /// The line of its journal, counted from 1, that was not done again.
    pub line: usize,
    /// Its chain on the line before that one.
    pub chain: String,
}

/// What an attempt begins with beside its scenario.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Opening {
    /// Where the scenario's file was found, a hint for the replay.
    pub source: String,
    /// Whose attempt it is.
    pub who: PersonName,
    /// For what.
    pub mode: Mode,
    /// From where it goes on.
    pub branch: Option<Branch>,
}

impl Opening {
    /// Somebody's practice from the beginning.
    pub fn practice(source: &str, who: &str) -> Self {
        Self {
            source: source.to_owned(),
            who: PersonName::of(who),
            ..Self::default()
        }
    }
}

impl Head {
    /// The head of an attempt that begins.
    pub(super) fn new(scenario: &Scenario, opening: Opening) -> Self {
        Self {
            format: FORMAT,
            program: env!("CARGO_PKG_VERSION").to_owned(),
            program_digest: PROGRAM_DIGEST.to_owned(),
            scenario: scenario.name.clone(),
            path: opening.source,
            scenario_digest: scenario.digest.clone(),
            unit: scenario.file.unit.clone(),
            unit_digest: scenario.unit_digest.clone(),
            seed: scenario.file.seed,
            who: opening.who,
            mode: opening.mode,
            branch: opening.branch,
        }
    }

    /// Whether this very program recorded it, as far as that decides what a job does.
    pub fn is_of_this_program(&self) -> bool {
        self.program_digest == PROGRAM_DIGEST
    }

    /// How many lines it has.
    pub(super) const fn length(&self) -> usize {
        if self.format == 1 { 10 } else { 12 }
    }

    /// Its lines as text, in the format of this program.
    pub(super) fn lines(&self) -> [String; 12] {
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
            field("mode", &self.mode),
            field("branch", &self.branch),
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
        let is_known = |format: &&u32| format.to_string() == version;
        let Some(&format) = KNOWN.iter().find(is_known) else {
            let why = format!("format {version} is not known here; this program knows {FORMAT}");
            return Err((1, why));
        };
        let (mode, branch) = if format == 1 {
            (Mode::default(), None)
        } else {
            (
                value(line(11)?, 11, "mode")?,
                value(line(12)?, 12, "branch")?,
            )
        };
        Ok(Self {
            format,
            program: value(line(2)?, 2, "program")?,
            program_digest: value(line(3)?, 3, "program-digest")?,
            scenario: value(line(4)?, 4, "scenario")?,
            path: value(line(5)?, 5, "path")?,
            scenario_digest: value(line(6)?, 6, "scenario-digest")?,
            unit: value(line(7)?, 7, "unit")?,
            unit_digest: value(line(8)?, 8, "unit-digest")?,
            seed: value(line(9)?, 9, "seed")?,
            who: value(line(10)?, 10, "who")?,
            mode,
            branch,
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
