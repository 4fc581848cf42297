//! The model beside values from outside the project: `cargo run --release --example figures`.
//!
//! Every figure is printed with its source, its class and what the model gives, met or not. With
//! `--write` the page `assets/figures.md` is made anew.

#![expect(clippy::print_stdout, reason = "it prints the figures")]

#[path = "../tests/figures/sources/mod.rs"]
mod sources;

use anyhow::Context;
use clap::Parser;
use comfy_table::{Table, presets};
use rayon::prelude::*;
use serde_json::{Value, json};
use sources::{Asked, Class, Figure, Source, count, page};
use std::path::Path;
use std::process::ExitCode;

/// Print every figure with its source and ours beside it, and whether it is met.
///
/// The exit code is 0 when every figure is met, 1 when one is not.
#[derive(Debug, Parser)]
#[command(name = "figures")]
struct Arguments {
    /// Only the figures of this source.
    #[arg(long, value_name = "SOURCE", conflicts_with = "write")]
    only: Option<String>,
    /// Only what is not met.
    #[arg(long, conflicts_with = "write")]
    missed: bool,
    /// Print JSON.
    #[arg(long, conflicts_with = "write")]
    json: bool,
    /// Make the page `assets/figures.md` anew.
    #[arg(long)]
    write: bool,
}

fn main() -> anyhow::Result<ExitCode> {
    let arguments = Arguments::parse();
    let sources = match &arguments.only {
        None => Source::ALL.to_vec(),
        Some(name) => vec![named(name)?],
    };
    let mut compared: Vec<_> = sources
        .into_par_iter()
        .map(|source| (source, source.figures()))
        .collect();
    let is_met = compared
        .iter()
        .all(|(_, figures)| figures.iter().all(Figure::is_met));
    if arguments.write {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/figures.md");
        std::fs::write(&path, page(&compared)).context("the page cannot be written")?;
    }
    let counts = counts(&compared);
    if arguments.missed {
        for (_, figures) in &mut compared {
            figures.retain(|figure| !figure.is_met());
        }
        compared.retain(|(_, figures)| !figures.is_empty());
    }
    if arguments.json {
        let values: Vec<Value> = compared
            .iter()
            .flat_map(|(source, figures)| figures.iter().map(|figure| value(source, figure)))
            .collect();
        println!("{}", serde_json::to_string_pretty(&values)?);
    } else if !arguments.write {
        print(&compared);
        println!("{counts}");
    } else {
        println!("{counts}");
    }
    Ok(ExitCode::from(u8::from(!is_met)))
}

fn named(name: &str) -> anyhow::Result<Source> {
    Source::named(name).with_context(|| {
        let known = Source::ALL.map(|source| source.name).join(", ");
        format!("`{name}` is no source known here; known are {known}")
    })
}

/// A line for each class.
fn counts(compared: &[(Source, Vec<Figure>)]) -> String {
    let lines = Class::ALL.map(|class| {
        let (met, all) = count(compared, class);
        let (name, meaning) = (class.name(), class.meaning());
        format!("{name:<16} {met:>4} of {all:>4} are met: {meaning}")
    });
    lines.join("\n")
}

fn print(compared: &[(Source, Vec<Figure>)]) {
    for (source, figures) in compared {
        let mut table = Table::new();
        table.load_style(presets::NOTHING);
        table.set_header(["figure", "class", "unit", "asked", "ours", ""]);
        for figure in figures {
            table.add_row([
                figure.what.clone(),
                figure.class.unwrap_or(source.class).name().to_owned(),
                figure.unit.to_owned(),
                figure.asked_text(),
                figure.ours_text(),
                figure.verdict(),
            ]);
        }
        println!("{}\n{}", source.name, source.origin);
        if !source.why_not.is_empty() {
            println!("Not met: {}", source.why_not);
        }
        println!("\n{table}\n");
    }
}

fn value(source: &Source, figure: &Figure) -> Value {
    let mut value = json!({
        "source": source.name,
        "origin": source.origin,
        "class": figure.class.unwrap_or(source.class).name(),
        "figure": figure.what,
        "unit": figure.unit,
        "ours": figure.ours,
        "met": figure.is_met(),
        "missed_by": figure.miss(),
        "missed_before": source.missed,
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
