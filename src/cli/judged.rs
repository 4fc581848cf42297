//! An attempt replayed and marked: what `perform`, `replay` and `mark` have in common.

use super::find;
use super::table::plain;
use super::trace::Trace;
use crate::attempt::{Both, End, ReplayError, Replayed, replay};
use crate::job::{TICKS_PER_SECOND, Truth};
use crate::marking::phrases::clock;
use crate::marking::{CourseRecorder, Evidence, Mark, Report};
use crate::units::{Mass, Pressure};
use crate::words::{Dimension, Finding, Level, Reading, ThermometerPlace};
use serde_json::{Map, Value, json};
use std::fmt::Write;
use std::path::Path;

/// An attempt that is genuine, with its course and its marks.
#[derive(Debug)]
pub(super) struct Judged {
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
            report: Report::new(&course, &file.rubric, file.pass),
            course: trace.text(&replayed.job),
            replayed,
        })
    }

    /// How long it took in simulated time, s.
    pub(super) fn duration(&self) -> f64 {
        seconds(self.replayed.job.now())
    }

    /// Everything about it for other programs.
    pub(super) fn json(&self) -> Value {
        let Replayed { job, head, .. } = &self.replayed;
        json!({
            "scenario": head.scenario,
            "who": head.who,
            "genuine": true,
            "fingerprint": self.replayed.fingerprint,
            "ended": self.ended(),
            "duration_s": self.duration(),
            "actions": self.replayed.done,
            "refused": self.replayed.refused,
            "readings": Value::Object(readings(job)),
            "truth": truth(&job.truth()),
            "findings": job.findings().iter().map(finding).collect::<Vec<_>>(),
            "marks": self.report.marks.iter().map(mark).collect::<Vec<_>>(),
            "score_percent": self.report.score_percent,
            "left_open": self.report.left_open(),
            "passed": self.report.passed,
        })
    }

    /// How the journal ends, in a word.
    pub(super) const fn ended(&self) -> &'static str {
        match self.replayed.end {
            End::Closed => "closed",
            End::Cut => "cut",
            End::Torn(_) => "torn",
        }
    }

    /// The head, the proof and the end, for people.
    pub(super) fn proof(&self) -> String {
        let Replayed { head, end, .. } = &self.replayed;
        let mut text = format!(
            "genuine: {} by {}, {} of simulated time, {} actions ({} refused)\nfingerprint {}\n",
            plain(&head.scenario),
            if head.who.is_empty() { "nobody named".to_owned() } else { plain(&head.who) },
            clock(self.replayed.job.now()),
            self.replayed.done + self.replayed.refused,
            self.replayed.refused,
            self.replayed.fingerprint,
        );
        match end {
            End::Closed => {}
            End::Cut => text.push_str("It was cut: it has no closing line.\n"),
            End::Torn(line) => {
                write!(text, "It was cut: line {line} is torn, all before it counts.\n")
                    .unwrap_or_default();
            }
        }
        text
    }

    /// What the watch noted, for people.
    pub(super) fn findings(&self) -> String {
        let findings = self.replayed.job.findings().iter();
        findings
            .map(|finding| format!("! {}  {}\n", clock(finding.tick), finding.text))
            .collect()
    }

    /// The marks with their evidence, for people.
    pub(super) fn marks(&self) -> String {
        let mut text = String::new();
        for mark in &self.report.marks {
            let points = match mark.counted() {
                Some(points) => format!("{points}/{}", mark.of),
                None => format!("?/{}", mark.of),
            };
            let critical = if mark.critical { " (critical)" } else { "" };
            text.push_str(&format!("{points:>7}  {}{critical}\n", mark.criterion));
            for Evidence { at, text: seen } in &mark.evidence {
                text.push_str(&format!("         {}  {seen}\n", clock(*at)));
            }
        }
        let result = if self.report.passed { "passed" } else { "not passed" };
        text.push_str(&format!("{:.0} %, {result}", self.report.score_percent));
        match self.report.left_open() {
            0 => text.push('\n'),
            open => text.push_str(&format!("; {open} left to the assessor\n")),
        }
        text
    }
}

/// Why an attempt cannot be judged, for other programs.
pub(super) fn failure(error: &ReplayError) -> Value {
    json!({
        "genuine": if error.is_not_genuine() { Value::Bool(false) } else { Value::Null },
        "line": error.line(),
        "why": error.to_string(),
    })
}

fn seconds(tick: u64) -> f64 {
    tick as f64 / TICKS_PER_SECOND as f64
}

fn mark(mark: &Mark) -> Value {
    let evidence = |e: &Evidence| json!({ "at_s": seconds(e.at), "text": e.text });
    json!({
        "criterion": mark.criterion,
        "points": mark.counted(),
        "of": mark.of,
        "critical": mark.critical,
        "skill": mark.skill,
        "evidence": mark.evidence.iter().map(evidence).collect::<Vec<_>>(),
    })
}

fn finding(finding: &Finding) -> Value {
    let unit = match finding.kind.dimension() {
        Dimension::GaugePressure => "Pa gauge",
        Dimension::Vacuum | Dimension::PressureDifference => "Pa",
        Dimension::Temperature | Dimension::TemperatureDifference => "K",
        Dimension::Current => "A",
        Dimension::Mass => "kg",
        Dimension::Time => "s",
        Dimension::Plain => "1",
    };
    json!({
        "at_s": seconds(finding.tick),
        "kind": finding.kind,
        "text": finding.text,
        "size": finding.size,
        "unit": unit,
    })
}

fn truth(truth: &Truth) -> Value {
    let grams = |kilograms| Mass::from_kilograms(kilograms).grams();
    json!({
        "refrigerant_released_g": grams(truth.refrigerant_released),
        "air_inside_g": grams(truth.air),
        "permanent_gas_inside_g": grams(truth.permanent_gas),
        "water_inside_g": grams(truth.water),
        "charge_kg": truth.charge,
        "nominal_charge_kg": truth.nominal_charge,
        "microns": Pressure::from_pascals(truth.line_set_pressure).microns(),
    })
}

/// What every face shows at the end: inch-pound, with the unit in the key; null shows nothing.
fn readings(job: &crate::job::Job) -> Map<String, Value> {
    let faces = Reading::FACES.into_iter();
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
            (key(reading).to_owned(), json!(value))
        })
        .collect()
}

const fn key(reading: Reading) -> &'static str {
    match reading {
        Reading::LowGauge => "low_gauge_psig",
        Reading::HighGauge => "high_gauge_psig",
        Reading::Microns => "microns",
        Reading::NitrogenOutlet => "nitrogen_outlet_psig",
        Reading::NitrogenCylinder => "nitrogen_cylinder_psig",
        Reading::Scale => "scale_oz",
        Reading::CompressorAmps => "compressor_amps",
        Reading::Detector => "detector",
        Reading::Bubbles(_) => "bubbles",
        Reading::Thermometer(place) => match place {
            ThermometerPlace::SuctionLine => "suction_line_f",
            ThermometerPlace::LiquidLine => "liquid_line_f",
            ThermometerPlace::AfterDrier => "after_drier_f",
            ThermometerPlace::DischargeLine => "discharge_line_f",
            ThermometerPlace::OutdoorAir => "outdoor_air_f",
            ThermometerPlace::ReturnAir => "return_air_f",
            ThermometerPlace::ReturnWetBulb => "return_wet_bulb_f",
            ThermometerPlace::SupplyAir => "supply_air_f",
        },
    }
}
