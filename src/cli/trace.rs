//! The course of an attempt as text: what was done, what the instruments showed, what was noted.

use super::table::Table;
use crate::attempt::Observer;
use crate::job::{Job, TICKS_PER_SECOND};
use crate::marking::evidence::clock;
use crate::words::{Action, Reading};

/// Quiet time after which the instruments are read again, ticks.
const QUIET: u64 = 300 * TICKS_PER_SECOND;

/// The instruments in the trace, with the names of their columns.
const COLUMNS: [(&str, Reading); 4] = [
    ("low", Reading::LowGauge),
    ("high", Reading::HighGauge),
    ("vacuum", Reading::Microns),
    ("amps", Reading::CompressorAmps),
];

/// Writes down the course of a job that it watches.
#[derive(Debug, Default)]
pub(super) struct Trace {
    lines: Vec<(u64, Vec<String>)>,
    last: u64,
}

impl Trace {
    /// The course as a table; the findings stand where each began.
    pub(super) fn text(mut self, job: &Job) -> String {
        for finding in job.findings() {
            self.lines
                .push((finding.tick, vec![format!("! {}", finding.text())]));
        }
        // Stable: what was done stands before what it led to.
        self.lines.sort_by_key(|(tick, _)| *tick);
        let names = COLUMNS.iter().map(|(name, _)| *name);
        let head: Vec<&str> = ["time", "what"].into_iter().chain(names).collect();
        let mut table = Table::with_head(&head);
        for (tick, cells) in self.lines {
            table.row([clock(tick)].into_iter().chain(cells));
        }
        table.text()
    }

    fn note(&mut self, job: &Job, what: String) {
        let shown = COLUMNS.iter().map(|&(_, reading)| {
            job.reading(reading)
                .level()
                .map_or_else(|| "-".to_owned(), |level| level.to_string())
        });
        self.last = job.now();
        self.lines
            .push((self.last, [what].into_iter().chain(shown).collect()));
    }
}

impl Observer for Trace {
    fn action(&mut self, job: &Job, action: &Action, refused: bool) {
        let what = ron::to_string(action).unwrap_or_default();
        let what = if refused {
            format!("({what}: refused)")
        } else {
            what
        };
        self.note(job, what);
    }

    fn second(&mut self, job: &Job) {
        if job.now() >= self.last + QUIET {
            self.note(job, "...".to_owned());
        }
    }
}
