//! The table of all figures as a page of the project.

use super::{Class, Figure, Source};
use std::fmt::Write;

/// What stands above the tables.
const HEAD: &str = "\
# The model beside values from outside

Made by `cargo run --example figures -- --write`; do not edit it by hand. A test holds it to what
the model does. The values with their sources are in `tests/figures/data`.

Only the first class counts as published. A figure that is not met stays here with its miss.
";

/// Sources with their figures.
pub type Compared = [(Source, Vec<Figure>)];

/// How many figures of a class are met, and of how many.
pub fn count(compared: &Compared, class: Class) -> (usize, usize) {
    let all = compared.iter().flat_map(|(_, figures)| figures);
    let of_class = all.filter(|figure| figure.class == Some(class));
    of_class.fold((0, 0), |(met, all), figure| {
        (met + usize::from(figure.is_met()), all + 1)
    })
}

/// The page: a summary by class, then a table for each source.
pub fn page(compared: &Compared) -> String {
    let mut page = HEAD.to_owned();
    let mut line = |text: std::fmt::Arguments<'_>| {
        // A string takes every text.
        page.write_fmt(text).unwrap_or_default();
        page.push('\n');
    };
    line(format_args!("\n| class | met | of | what it says |"));
    line(format_args!("| --- | ---: | ---: | --- |"));
    for class in Class::ALL {
        let (met, all) = count(compared, class);
        let (name, meaning) = (class.name(), class.meaning());
        line(format_args!("| {name} | {met} | {all} | {meaning} |"));
    }
    for (source, figures) in compared {
        line(format_args!("\n## {}\n\n{}\n", source.name, source.origin));
        if !source.why_not.is_empty() {
            line(format_args!("Not met: {}\n", source.why_not));
        }
        line(format_args!("| figure | class | unit | asked | ours | |"));
        line(format_args!("| --- | --- | --- | ---: | ---: | --- |"));
        for figure in figures {
            let verdict = if figure.is_met() {
                figure.verdict()
            } else {
                format!("**{}**", figure.verdict())
            };
            let (what, unit) = (&figure.what, figure.unit);
            let class = figure.class.unwrap_or(source.class).name();
            let (asked, ours) = (figure.asked_text(), figure.ours_text());
            line(format_args!(
                "| {what} | {class} | {unit} | {asked} | {ours} | {verdict} |"
            ));
        }
    }
    page
}
