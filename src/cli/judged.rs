//! An attempt replayed and marked: what `perform`, `replay` and `mark` have in common.

use super::find;
use super::trace::Trace;
use crate::attempt::{Both, End, ReplayError, Replayed, replay};
use crate::job::{Job, TICKS_PER_SECOND, Truth};
use crate::marking::evidence::clock;
use crate::marking::{Course, CourseRecorder, Report};
use crate::report::{Page, ReportRows};
use crate::units::{Fraction, Mass, Pressure};
use crate::words::{Level, Reading, plain};
use serde_json::{Map, Value, json};
use std::path::Path;

/// The most columns of a name from a journal.
const NAME_COLUMNS: usize = 60;

/// An attempt that is genuine, with its course and its marks.
#[derive(Debug)]
pub(super) struct Judged {
    /// The file's name.
    file: String,
    /// The replay.
    pub(super) replayed: Replayed,
    /// The marks.
    pub(super) report: Report,
    /// The course as text.
    pub(super) course: String,
}

impl Judged {
    /// Replays and marks an attempt; `given` is a scenario to use in place of the one found.
    pub(super) fn of(path: &Path, given: Option<&str>) -> Result<Self, ReplayError> {
        let (mut trace, mut recorder) = (Trace::default(), CourseRecorder::default());
        let lookup = |head: &_| find::of_attempt(head, given);
        let replayed = replay(path, &lookup, &mut Both(&mut trace, &mut recorder))?;
        let file = &replayed.scenario.file;
        let course = recorder.finish(&replayed.job);
        Ok(Self {
            file: file_name(path),
            report: Report::new(&course, &file.rubric, file.pass),
            course: trace.text(&replayed.job),
            replayed,
        })
    }

    /// Everything about it for other programs.
    pub(super) fn json(&self) -> anyhow::Result<Map<String, Value>> {
        let Replayed { job, head, .. } = &self.replayed;
        let proof = json!({
            "scenario": head.scenario,
            "who": head.who,
            "mode": head.mode.word(),
            "went_on_from": self.went_on_from(),
            "taken_up": self.replayed.taken_up,
            "genuine": true,
            "fingerprint": self.replayed.fingerprint,
            "ended": self.ended(),
            "duration_s": job.now() as f64 / TICKS_PER_SECOND as f64,
            "actions": self.replayed.done,
            "refused": self.replayed.refused,
            "readings": Value::Object(readings(job)),
            "truth": truth(&job.truth()),
        });
        let rows = serde_json::to_value(ReportRows::from(&self.report))?;
        Ok([proof, rows]
            .into_iter()
            .filter_map(object)
            .flatten()
            .collect())
    }

    /// How the journal ends, in a word.
    const fn ended(&self) -> &'static str {
        match self.replayed.end {
            End::Closed => "closed",
            End::Left => "left",
            End::Cut => "cut",
            End::Torn(_) => "torn",
        }
    }

    /// Whose it is, as far as the journal says; else its file's name.
    fn person(&self) -> String {
        let who = &self.replayed.head.who;
        if who.is_empty() {
            self.file.clone()
        } else {
            who.to_string()
        }
    }

    /// The file and the line of the attempt from which it went on, if it is a second try.
    fn went_on_from(&self) -> Option<String> {
        let branch = self.replayed.head.branch.as_ref()?;
        Some(format!(
            "{}, line {}",
            plain(&branch.attempt, NAME_COLUMNS),
            branch.line
        ))
    }

    /// Its page with marks and evidence, ready for print.
    pub(super) fn page(&self) -> Page {
        let Replayed { head, scenario, .. } = &self.replayed;
        let file = &scenario.file;
        Page {
            person: self.person(),
            scenario: plain(&head.scenario, NAME_COLUMNS),
            title: file.title.clone(),
            unit: file.unit.clone(),
            customer: format!("{}, {}", file.customer.name, file.customer.place),
            complaint: file.customer.complaint.clone(),
            program: plain(&head.program, NAME_COLUMNS),
            mode: Some(head.mode),
            went_on_from: self.went_on_from(),
            taken_up: self.replayed.taken_up,
            duration: self.replayed.job.now(),
            is_genuine: true,
            fingerprint: self.replayed.fingerprint.clone(),
            report: self.report.clone(),
        }
    }

    /// That it is genuine, and how it ends, for people.
    pub(super) fn proof(&self) -> String {
        let Replayed {
            head,
            end,
            job,
            done,
            refused,
            fingerprint,
            ..
        } = &self.replayed;
        let cut = match end {
            End::Closed => String::new(),
            End::Left => "It was left, and the job not handed back.\n".to_owned(),
            End::Cut => "It was cut: it has no closing line.\n".to_owned(),
            End::Torn(line) => format!("It was cut: line {line} is torn and does not count.\n"),
        };
        format!(
            "Genuine: {} at {}, {}, {} on the clock, {done} actions done, {refused} refused.\n\
             {cut}Fingerprint {fingerprint}\n",
            self.person(),
            plain(&head.scenario, NAME_COLUMNS),
            head.mode,
            clock(job.now()),
        )
    }
}

/// A page for an attempt that was tampered with: it has no marks.
pub(super) fn page_without_marks(path: &Path) -> Page {
    let nothing = String::new;
    Page {
        person: file_name(path),
        scenario: nothing(),
        title: nothing(),
        unit: nothing(),
        customer: nothing(),
        complaint: nothing(),
        program: nothing(),
        mode: None,
        went_on_from: None,
        taken_up: 0,
        duration: 0,
        is_genuine: false,
        fingerprint: nothing(),
        report: Report::new(&Course::default(), &[], Fraction::ONE),
    }
}

/// The last part of a path.
fn file_name(path: &Path) -> String {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    plain(&name, NAME_COLUMNS)
}

fn object(value: Value) -> Option<Map<String, Value>> {
    match value {
        Value::Object(map) => Some(map),
        _ => None,
    }
}

/// Why an attempt cannot be judged, for other programs.
pub(super) fn failure(error: &ReplayError) -> Map<String, Value> {
    let is_genuine = error.is_not_genuine().then_some(false);
    [
        ("genuine".to_owned(), json!(is_genuine)),
        ("line".to_owned(), json!(error.line())),
        ("why".to_owned(), json!(error.to_string())),
        ("passed".to_owned(), json!(false)),
    ]
    .into_iter()
    .collect()
}

fn truth(truth: &Truth) -> Value {
    let grams = |kilograms| Mass::from_kilograms(kilograms).grams();
    json!({
        "refrigerant_released_g": grams(truth.refrigerant_released),
        "air_inside_g": grams(truth.air),
        "permanent_gas_inside_g": grams(truth.permanent_gas),
        "water_inside_g": grams(truth.water),
        "drier_water_g": grams(truth.drier_water),
        "charge_kg": truth.charge,
        "nominal_charge_kg": truth.nominal_charge,
        "microns": Pressure::from_pascals(truth.line_set_pressure).microns(),
    })
}

/// What every face shows at the end: inch-pound, with the unit in the key; null shows nothing.
fn readings(job: &Job) -> Map<String, Value> {
    let faces = Reading::faces().filter(|&reading| is_on_cart(job, reading));
    faces
        .map(|reading| {
            let value = job.reading(reading).level().map(|level| match level {
                Level::Psig(v)
                | Level::Microns(v)
                | Level::Ounces(v)
                | Level::Amps(v)
                | Level::Fahrenheit(v)
                | Level::Plain(v) => v,
                other => other.quantity().si,
            });
            (reading.key(), json!(value))
        })
        .collect()
}

/// Whether a face can be read at all: a tool must have been brought.
fn is_on_cart(job: &Job, reading: Reading) -> bool {
    if let Reading::Tool(reading) = reading {
        job.kit().tools.has(reading.tool())
    } else {
        true
    }
}
