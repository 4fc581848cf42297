//! `coldbench check FILE…`: every error of a file with its line and a hint.

use super::Answer;
use super::find::{self, Kind};
use crate::attempt::{End, replay};
use crate::files;
use crate::job::procedure::Procedure;
use crate::scenario::{Diagnostic, Scenario};
use anyhow::Context;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

/// Check scenarios, procedures, units and attempts: every error with its line and a hint.
///
/// What a file is shows in what stands in it. An attempt is proved by its chain and by a replay.
#[derive(Debug, clap::Args)]
pub struct Check {
    /// The files.
    #[arg(required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// What was found in one file.
#[derive(Debug)]
struct Found {
    path: String,
    kind: &'static str,
    /// What is in it, when all is well.
    title: String,
    wrong: Vec<Diagnostic>,
}

impl Check {
    /// Checks them all.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        let found = self.files.iter().map(|path| look_at(path));
        let found = found.collect::<anyhow::Result<Vec<_>>>()?;
        let all_well = found.iter().all(|file| file.wrong.is_empty());
        if self.json {
            let files: Vec<Value> = found.iter().map(Found::json).collect();
            return Answer::json(all_well, &json!({ "ok": all_well, "files": files }));
        }
        let lines: Vec<String> = found.iter().map(Found::text).collect();
        Ok(Answer::new(all_well, lines.join("\n")))
    }
}

impl Found {
    fn json(&self) -> Value {
        let errors = self.wrong.iter().map(|wrong| {
            json!({
                "line": wrong.line,
                "column": wrong.column,
                "message": wrong.message,
                "hint": wrong.hint,
            })
        });
        json!({
            "path": self.path,
            "kind": self.kind,
            "ok": self.wrong.is_empty(),
            "errors": errors.collect::<Vec<_>>(),
        })
    }

    fn text(&self) -> String {
        if self.wrong.is_empty() {
            format!("{}: {}: {}", self.path, self.kind, self.title)
        } else {
            find::all(&self.wrong)
        }
    }
}

/// Checks a file as what it is. A file that cannot be read is no answer.
fn look_at(path: &Path) -> anyhow::Result<Found> {
    let shown = path.display().to_string();
    let bytes = files::read(path, files::ATTEMPT_MAX).with_context(|| shown.clone())?;
    let (kind, title) = match Kind::of(path, &bytes) {
        Kind::Attempt => ("attempt", attempt(path)),
        Kind::Procedure => {
            let procedure = Procedure::from_bytes(&shown, &bytes);
            ("procedure", procedure.map(|procedure| procedure.title))
        }
        Kind::Unit => {
            let unit = Scenario::of_unit_file(path);
            ("unit", unit.map(|alone| alone.file.title))
        }
        Kind::Scenario => {
            let name = path.file_stem().unwrap_or_default().to_string_lossy();
            let scenario = Scenario::from_bytes(&shown, &name, &bytes);
            ("scenario", scenario.map(|scenario| scenario.file.title))
        }
    };
    let (title, wrong) = match title {
        Ok(title) => (title, Vec::new()),
        Err(wrong) => (String::new(), wrong),
    };
    Ok(Found {
        path: shown,
        kind,
        title,
        wrong,
    })
}

fn attempt(path: &Path) -> Result<String, Vec<Diagnostic>> {
    let lookup = |head: &_| find::of_attempt(head, None);
    match replay(path, &lookup, &mut ()) {
        Ok(replayed) => Ok(match replayed.end {
            End::Closed => "genuine".to_owned(),
            End::Left => "genuine, left before its end".to_owned(),
            End::Cut | End::Torn(_) => "genuine, cut before its end".to_owned(),
        }),
        Err(error) => Err(vec![Diagnostic {
            path: path.display().to_string(),
            line: error.line().unwrap_or(1),
            column: 1,
            message: error.to_string(),
            hint: None,
        }]),
    }
}
