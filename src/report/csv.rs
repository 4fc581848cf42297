//! A class for the gradebook: comma-separated values by RFC 4180.

use super::Page;
use crate::attempt::Mode;
use crate::job::TICKS_PER_SECOND;

/// One line for each attempt, after a line with the names of the columns.
pub fn class_csv(pages: &[Page]) -> String {
    let mut text = String::from(
        "name,scenario,duration_s,genuine,points,of,score_percent,passed,critical_missed,\
         left_open,findings,fingerprint,mode\r\n",
    );
    for page in pages {
        let report = &page.report;
        let (points, of) = report.points();
        let cells = [
            quoted(&page.person),
            quoted(&page.scenario),
            format!("{:.1}", page.duration as f64 / TICKS_PER_SECOND as f64),
            page.is_genuine.to_string(),
            points.to_string(),
            of.to_string(),
            format!("{:.1}", report.score_percent),
            (page.is_genuine && report.passed).to_string(),
            report.critical_missed().count().to_string(),
            report.left_open().to_string(),
            report.findings.len().to_string(),
            quoted(&page.fingerprint),
            page.mode.map_or("", Mode::word).to_owned(),
        ];
        text.push_str(&cells.join(","));
        text.push_str("\r\n");
    }
    text
}

/// A text as a cell. One that a spreadsheet would take for a formula gets an apostrophe before
/// it, so that a name cannot reckon in somebody's gradebook.
fn quoted(text: &str) -> String {
    let is_formula = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let text = if is_formula {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if text.contains(['"', ',', '\n', '\r']) {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text
    }
}
