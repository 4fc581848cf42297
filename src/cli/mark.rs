//! `coldbench mark ATTEMPT…`: marks of one attempt or of a class.

use super::Answer;
use super::judged::{Judged, failure};
use super::table::{Table, plain};
use crate::attempt::ReplayError;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

/// Mark one attempt or a class of attempts.
///
/// Each is replayed and proved first. One attempt is printed with every criterion and its
/// evidence, several as a table with a row each. The answer is yes when all passed.
#[derive(Debug, clap::Args)]
pub struct Mark {
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

/// The names of the columns of table and CSV.
const COLUMNS: [&str; 10] = [
    "file",
    "who",
    "scenario",
    "genuine",
    "ended",
    "duration_s",
    "score_percent",
    "left_open",
    "passed",
    "fingerprint",
];

/// An attempt with its marks, or why there are none.
type Marked<'a> = (&'a Path, Result<Judged, ReplayError>);

impl Mark {
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
            let values: Vec<Value> = marked.iter().map(json_of).collect();
            return match values.as_slice() {
                [one] => Answer::json(all_passed, one),
                several => Answer::json(all_passed, &several),
            };
        }
        Ok(Answer::new(all_passed, self.text(&marked)))
    }

    fn text(&self, marked: &[Marked<'_>]) -> String {
        if self.csv {
            let head = COLUMNS.map(str::to_owned);
            let rows = marked.iter().map(row);
            return [head].into_iter().chain(rows).map(csv_line).collect();
        }
        if let [(path, judged)] = marked {
            return match judged {
                Ok(judged) => format!("{}\n{}", judged.proof(), judged.marks()),
                Err(error) => format!("{}: {error}\n", path.display()),
            };
        }
        let mut table = Table::with_head(&COLUMNS);
        marked.iter().for_each(|one| table.row(row(one)));
        let mut text = table.text();
        for (path, judged) in marked {
            if let Err(error) = judged {
                text.push_str(&format!("{}: {error}\n", path.display()));
            }
        }
        text
    }
}

fn json_of((path, judged): &Marked<'_>) -> Value {
    let mut value = match judged {
        Ok(judged) => judged.json(),
        Err(error) => failure(error),
    };
    value["file"] = json!(path.display().to_string());
    value
}

fn row((path, judged): &Marked<'_>) -> [String; COLUMNS.len()] {
    let file = path.display().to_string();
    match judged {
        Ok(judged) => [
            file,
            plain(&judged.replayed.head.who),
            plain(&judged.replayed.head.scenario),
            "yes".to_owned(),
            judged.ended().to_owned(),
            format!("{:.0}", judged.duration()),
            format!("{:.1}", judged.report.score_percent),
            judged.report.left_open().to_string(),
            yes_or_no(judged.report.passed),
            judged.replayed.fingerprint.clone(),
        ],
        Err(error) => {
            let mut row = [const { String::new() }; COLUMNS.len()];
            row[0] = file;
            row[3] = if error.is_not_genuine() { "no" } else { "unknown" }.to_owned();
            row[8] = yes_or_no(false);
            row
        }
    }
}

fn yes_or_no(is_yes: bool) -> String {
    if is_yes { "yes" } else { "no" }.to_owned()
}

fn csv_line(cells: [String; COLUMNS.len()]) -> String {
    cells.map(csv_cell).join(",") + "\n"
}

/// A cell as RFC 4180 quotes it. One that a spreadsheet would take for a formula gets an
/// apostrophe in front: names come from apprentices.
fn csv_cell(cell: String) -> String {
    let cell = if cell.starts_with(['=', '+', '-', '@']) {
        format!("'{cell}")
    } else {
        cell
    };
    if cell.contains([',', '"', '\n', '\r']) {
        format!("\"{}\"", cell.replace('"', "\"\""))
    } else {
        cell
    }
}
