//! `coldbench figures`: the model beside published values.

use super::Answer;
use super::table::Table;
use crate::figures::{Asked, Figure, Source, page};
use anyhow::Context;
use serde_json::{Value, json};

/// Print every published figure with its source and ours beside it, and whether it is met.
///
/// The answer is yes when every figure is met.
#[derive(Debug, clap::Args)]
pub struct Figures {
    /// Only the figures of this source.
    #[arg(long, value_name = "SOURCE")]
    only: Option<String>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
    /// Print the page that the project keeps in `assets/figures.md`.
    #[arg(long, conflicts_with = "json")]
    markdown: bool,
}

impl Figures {
    /// Runs the model and compares.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        let sources = match &self.only {
            None => Source::ALL.to_vec(),
            Some(name) => vec![named(name)?],
        };
        let compared: Vec<_> = sources
            .into_iter()
            .map(|source| (source, source.figures()))
            .collect();
        let is_met = compared
            .iter()
            .all(|(_, figures)| figures.iter().all(Figure::is_met));
        if self.json {
            let values: Vec<Value> = compared
                .iter()
                .flat_map(|(source, figures)| figures.iter().map(|figure| value(source, figure)))
                .collect();
            return Answer::json(is_met, &values);
        }
        let text = if self.markdown {
            page(&compared)
        } else {
            text(&compared)
        };
        Ok(Answer::new(is_met, text))
    }
}

fn named(name: &str) -> anyhow::Result<Source> {
    Source::named(name).with_context(|| {
        let known = Source::ALL.map(|source| source.name).join(", ");
        format!("`{name}` is no source known here; known are {known}")
    })
}

fn value(source: &Source, figure: &Figure) -> Value {
    let mut value = json!({
        "source": source.name,
        "origin": source.origin,
        "figure": figure.what,
        "unit": figure.unit,
        "ours": figure.ours,
        "met": figure.is_met(),
        "missed_by": figure.miss(),
        "why_not": source.why_not,
    });
    match figure.asked {
        Asked::Near {
            published,
            tolerance,
        } => {
            value["published"] = json!(published);
            value["tolerance"] = json!(tolerance);
        }
        Asked::Within { least, most } => {
            value["least"] = json!(least);
            value["most"] = json!(most);
        }
        Asked::AtLeast(least) => value["least"] = json!(least),
        Asked::AtMost(most) => value["most"] = json!(most),
    }
    value
}

fn text(compared: &[(Source, Vec<Figure>)]) -> String {
    let mut text = String::new();
    let all = || compared.iter().flat_map(|(_, figures)| figures);
    for (source, figures) in compared {
        let mut table = Table::with_head(&["figure", "unit", "published", "ours", ""]);
        for figure in figures {
            table.row([
                figure.what.clone(),
                figure.unit.to_owned(),
                figure.asked_text(),
                figure.ours_text(),
                figure.verdict(),
            ]);
        }
        let why_not = if source.why_not.is_empty() {
            String::new()
        } else {
            format!("Not met: {}\n", source.why_not)
        };
        let (name, origin, table) = (source.name, source.origin, table.text());
        let head = format!("{name}\n{origin}\n{why_not}\n{table}\n");
        text.push_str(&head);
    }
    let met = all().filter(|figure| figure.is_met()).count();
    text + &format!("{met} of {} figures are met", all().count())
}
