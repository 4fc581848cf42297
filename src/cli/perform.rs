//! `coldbench perform SCENARIO [SCRIPT]`: does a written procedure and records the attempt.

use super::Answer;
use super::find::{self, Found, Kind};
use super::judged::Judged;
use crate::attempt::{Opening, Recorder};
use crate::job::procedure::{CourseLine, Performance, Procedure};
use anyhow::{Context, anyhow, bail};
use serde_json::{Map, Value, json};
use std::path::{Path, PathBuf};

/// Do a written procedure without a window, record the attempt, and mark it.
///
/// Without a script it does the right procedure that comes with the scenario. The attempt goes to
/// a new file in `attempts`, or to the file given. The answer is yes when the procedure came to
/// its end and the attempt passed.
#[derive(Debug, clap::Args)]
pub struct Perform {
    /// A scenario that comes with the program, or a scenario's file.
    scenario: String,
    /// A procedure that comes with the program, such as `clogged_drier_wrong`, or its file.
    script: Option<String>,
    /// Record here; a file that exists is never overwritten.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// Whose attempt it is.
    #[arg(
        long,
        value_name = "NAME",
        default_value = "",
        allow_hyphen_values = true
    )]
    who: String,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

impl Perform {
    /// Performs it.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        let found = find::scenario(&self.scenario)?;
        let procedure = match &self.script {
            Some(script) => procedure(script)?,
            None => own_procedure(&found)?,
        };
        let recorder = self.recorder(&found)?;
        let performed = perform(recorder, &procedure, &self.scenario)?;
        if self.json {
            return Answer::json(performed.is_well(), &performed.json()?);
        }
        Ok(Answer::new(performed.is_well(), performed.text()))
    }

    fn recorder(&self, found: &Found) -> anyhow::Result<Recorder> {
        let Found {
            scenario, source, ..
        } = found;
        let opening = Opening::practice(source, &self.who);
        let recorder = match &self.out {
            Some(path) => Recorder::create(path, scenario, opening)?,
            None => Recorder::create_beside(scenario, opening)?,
        };
        Ok(recorder)
    }
}

/// A procedure that was carried out, and what came of it.
#[derive(Debug)]
pub(super) struct Performed {
    path: PathBuf,
    course: Vec<CourseLine>,
    stopped: Option<String>,
    judged: Judged,
}

/// Carries a procedure out behind a recorder, then replays what was recorded: the marks come from
/// the file and not from memory.
pub(super) fn perform(
    mut recorder: Recorder,
    procedure: &Procedure,
    scenario: &str,
) -> anyhow::Result<Performed> {
    let mut course = Vec::new();
    let mut keep = |line| course.push(line);
    let run = Performance::new(&mut recorder, &mut keep).run(procedure);
    let closed = recorder.close()?;
    let judged = Judged::of(&closed.path, Some(scenario))?;
    Ok(Performed {
        path: closed.path,
        course,
        stopped: run.err().map(|stopped| stopped.to_string()),
        judged,
    })
}

/// The right procedure that comes with a scenario.
pub(super) fn right_procedure(scenario: &str) -> anyhow::Result<Procedure> {
    let name = format!("{scenario}_right");
    Procedure::shipped(&name)
        .with_context(|| format!("no procedure comes with `{scenario}`: name a script"))
}

/// The right procedure of a scenario: of an own one the file `NAME_right.ron` beside it or in the
/// folder `procedures` there, else the shipped one of its name.
fn own_procedure(found: &Found) -> anyhow::Result<Procedure> {
    let name = &found.scenario.name;
    let folder = Path::new(&found.source).parent().unwrap_or(Path::new(""));
    let file = format!("{name}_right.ron");
    let beside = [folder.join(&file), folder.join("procedures").join(&file)];
    match beside.iter().find(|path| path.exists()) {
        Some(path) if found.is_own => {
            Procedure::load(path).map_err(|wrong| anyhow!(find::all(&wrong)))
        }
        _ => right_procedure(name),
    }
}

/// The procedure of a shipped name or of a path.
fn procedure(name: &str) -> anyhow::Result<Procedure> {
    if let Some(procedure) = Procedure::shipped(name) {
        return Ok(procedure);
    }
    if !Path::new(name).exists() {
        let known = Procedure::shipped_names().collect::<Vec<_>>().join(", ");
        bail!("`{name}` is neither a file nor a procedure that comes with the program: {known}");
    }
    find::must_be(Path::new(name), Kind::Procedure)?;
    Procedure::load(Path::new(name)).map_err(|wrong| anyhow!(find::all(&wrong)))
}

impl Performed {
    /// Whether it came to its end and passed.
    pub(super) fn is_well(&self) -> bool {
        self.stopped.is_none() && self.judged.report.passed
    }

    fn json(&self) -> anyhow::Result<Map<String, Value>> {
        let mut map = self.judged.json()?;
        let attempt = self.path.display().to_string();
        map.insert("attempt".to_owned(), json!(attempt));
        map.insert("stopped".to_owned(), json!(self.stopped));
        Ok(map)
    }

    /// Its course and the page with its marks, for people.
    pub(super) fn text(&self) -> String {
        let mut lines: Vec<String> = self.course.iter().map(ToString::to_string).collect();
        if let Some(stopped) = &self.stopped {
            lines.push(format!("stopped: {stopped}"));
        }
        lines.push(String::new());
        lines.push(self.judged.page().to_string());
        lines.push(format!("recorded in {}", self.path.display()));
        lines.join("\n")
    }
}
