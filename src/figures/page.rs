//! The table of all figures as a page of the project.

use super::{Figure, Source};
use std::fmt::Write;

/// What stands above the tables.
const HEAD: &str = "\
# The model beside published values

Made by `coldbench figures --markdown`; do not edit it by hand. A test holds its last column to
what the model does. The published values with their sources are in `tests/published/data`.
";

/// The page: a summary, then a table for each source.
pub fn page(sources: &[(Source, Vec<Figure>)]) -> String {
    let mut page = HEAD.to_owned();
    let all = || sources.iter().flat_map(|(_, figures)| figures);
    let met = all().filter(|figure| figure.is_met()).count();
    let mut line = |text: std::fmt::Arguments<'_>| {
        // A string takes every text.
        page.write_fmt(text).unwrap_or_default();
        page.push('\n');
    };
    line(format_args!(
        "\n{met} of {} figures are met.",
        all().count()
    ));
    for (source, figures) in sources {
        line(format_args!("\n## {}\n\n{}\n", source.name, source.origin));
        if !source.why_not.is_empty() {
            line(format_args!("Not met: {}\n", source.why_not));
        }
        line(format_args!("| figure | unit | asked | ours | |"));
        line(format_args!("| --- | --- | ---: | ---: | --- |"));
        for figure in figures {
            let verdict = if figure.is_met() {
                figure.verdict()
            } else {
                format!("**{}**", figure.verdict())
            };
            let (asked, ours) = (figure.asked_text(), figure.ours_text());
            line(format_args!(
                "| {} | {} | {asked} | {ours} | {verdict} |",
                figure.what, figure.unit
            ));
        }
    }
    page
}
