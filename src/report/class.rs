//! A class as a table: one line for each attempt.

use super::Page;
use super::wrap::cell;
use crate::attempt::Mode;
use crate::marking::evidence;
use std::fmt::Write;

/// The attempts of a class, one line each, in the order given, with a head and a closing line.
pub fn class_table(pages: &[Page]) -> String {
    let mut table = format!(
        "{} {} {:<8} {:>8} {:>7}  {:<11}  missed\n",
        cell("name", 22),
        cell("scenario", 16),
        "mode",
        "time",
        "score",
        "result"
    );
    for page in pages {
        let line = format!(
            "{} {} {:<8} {:>8} {:>5.1} %  {:<11}  {}",
            cell(&page.person, 22),
            cell(&page.scenario, 16),
            page.mode.map_or("", Mode::word),
            evidence::clock(page.duration),
            page.report.score_percent,
            page.result(),
            missed(page)
        );
        table.push_str(line.trim_end());
        table.push('\n');
    }
    let passed = pages.iter().filter(|p| p.result() == "passed").count();
    // Writing to a string cannot fail.
    let _ = writeln!(table, "{passed} of {} passed", pages.len());
    table
}

/// How many criteria were missed, and what still waits.
fn missed(page: &Page) -> String {
    let report = &page.report;
    let missed = report.marks.iter().filter(|mark| mark.is_missed()).count();
    let mut parts = Vec::new();
    if missed > 0 {
        parts.push(missed.to_string());
    }
    match report.critical_missed().count() {
        0 => {}
        n => parts.push(format!("({n} critical)")),
    }
    match report.left_open() {
        0 => {}
        n => parts.push(format!("{n} open")),
    }
    parts.join(" ")
}
