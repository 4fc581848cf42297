//! `coldbench mark ATTEMPT…`: marks of one attempt or of a class.

use super::Answer;
use super::judged::{Judged, failure, page_without_marks};
use crate::attempt::ReplayError;
use crate::report::{Page, class_csv, class_table};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

/// Mark one attempt or a class of attempts.
///
/// Each is replayed and proved first. One attempt is printed with every criterion and its
/// evidence, several as a table with a row each. The answer is yes when all passed.
#[derive(Debug, clap::Args)]
pub struct MarkCommand {
    /// The attempts' files.
    #[arg(required = true, value_name = "ATTEMPT")]
    attempts: Vec<PathBuf>,
    /// The scenario's file, where it is not the one that the attempts name.
    #[arg(long, value_name = "SCENARIO")]
    scenario: Option<String>,
    /// Print JSON: an object for one attempt, a list for several.
    #[arg(long, conflicts_with = "csv")]
    json: bool,
    /// Print a row for each attempt, for a gradebook.
    #[arg(long)]
    csv: bool,
}

/// An attempt with its marks, or why there are none.
type Marked<'a> = (&'a Path, Result<Judged, ReplayError>);

impl MarkCommand {
    /// Marks them.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        let mut marked: Vec<Marked<'_>> = Vec::with_capacity(self.attempts.len());
        for path in &self.attempts {
            match Judged::of(path, self.scenario.as_deref()) {
                // A wrong name is no answer about an attempt.
                Err(error @ ReplayError::Unreadable { .. }) => return Err(error.into()),
                judged => marked.push((path, judged)),
            }
        }
        let all_passed = marked
            .iter()
            .all(|(_, judged)| judged.as_ref().is_ok_and(|j| j.report.passed));
        if self.json {
            let values = marked.iter().map(json_of).collect::<Result<Vec<_>, _>>()?;
            return match values.as_slice() {
                [one] => Answer::json(all_passed, one),
                several => Answer::json(all_passed, &several),
            };
        }
        Ok(Answer::new(all_passed, self.text(&marked)))
    }

    fn text(&self, marked: &[Marked<'_>]) -> String {
        let pages: Vec<Page> = marked.iter().filter_map(page_of).collect();
        let mut text = match (self.csv, marked) {
            (true, _) => return class_csv(&pages),
            (false, [(_, Ok(judged))]) => judged.page().to_string(),
            (false, [(_, Err(_))]) => String::new(),
            (false, _) => class_table(&pages),
        };
        for (path, judged) in marked {
            if let Err(error) = judged {
                let line = format!("{}: {error}\n", path.display());
                text.push_str(&line);
            }
        }
        text
    }
}

fn json_of((path, judged): &Marked<'_>) -> anyhow::Result<Value> {
    let mut map = match judged {
        Ok(judged) => judged.json()?,
        Err(error) => failure(error),
    };
    map.insert("file".to_owned(), json!(path.display().to_string()));
    Ok(Value::Object(map))
}

/// Its line in a class. What cannot be judged here, for want of its scenario, has none.
fn page_of((path, judged): &Marked<'_>) -> Option<Page> {
    match judged {
        Ok(judged) => Some(judged.page()),
        Err(error) => error.is_not_genuine().then(|| page_without_marks(path)),
    }
}
