//! The course of a procedure: what was done, when, and what the instruments showed then.

use super::{Goal, Step};
use crate::job::{Job, TICKS_PER_SECOND};
use crate::words::{Reading, Shown};
use std::fmt;

/// One step as it was carried out.
#[derive(Debug, Clone, PartialEq)]
pub struct CourseLine {
    /// The tick at which the step was done.
    pub tick: u64,
    /// Its number in the file, from 1; in a repetition with the number of the step in it: `12.3`.
    pub step: String,
    /// What it says.
    pub text: String,
    /// What the instruments that are in use showed afterwards.
    pub readings: Vec<(Reading, Shown)>,
}

impl CourseLine {
    /// The line of a step that was just done.
    pub(super) fn of(step: String, text: String, job: &Job) -> Self {
        Self {
            tick: job.now(),
            step,
            text,
            readings: key_readings(job),
        }
    }
}

impl fmt::Display for CourseLine {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (time, step) = (clock(self.tick), &self.step);
        write!(f, "{time} {step:>6}  {:<60}", self.text)?;
        if !self.readings.is_empty() {
            write!(f, "  {}", readings_text(&self.readings))?;
        }
        Ok(())
    }
}

/// What the instruments in use show, the most telling first.
pub(super) fn key_readings(job: &Job) -> Vec<(Reading, Shown)> {
    const KEY: [Reading; 6] = [
        Reading::LowGauge,
        Reading::HighGauge,
        Reading::Microns,
        Reading::NitrogenOutlet,
        Reading::Scale,
        Reading::CompressorAmps,
    ];
    KEY.into_iter()
        .map(|reading| (reading, job.reading(reading)))
        .filter(|(_, shown)| *shown != Shown::Nothing)
        .collect()
}

/// Readings in a line.
pub(super) fn readings_text(readings: &[(Reading, Shown)]) -> String {
    let words: Vec<String> = readings
        .iter()
        .map(|(reading, shown)| format!("{reading:?} {shown}"))
        .collect();
    words.join(", ")
}

/// The time of a tick: hours, minutes, seconds.
pub(super) fn clock(tick: u64) -> String {
    let seconds = tick / TICKS_PER_SECOND;
    let (hours, minutes) = (seconds / 3600, seconds / 60 % 60);
    format!("{hours}:{minutes:02}:{:02}", seconds % 60)
}

impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Say(remark) => f.write_str(remark),
            // The words of the file, so that a line of the course is found there.
            Self::Do(action) => match ron::to_string(action) {
                Ok(text) => f.write_str(&text),
                Err(_) => write!(f, "{action:?}"),
            },
            Self::Wait(time) => write!(f, "wait {:.1} min", time.minutes()),
            Self::Until {
                reading,
                is,
                within,
                hold,
            } => {
                write!(f, "until {reading:?} is {is}")?;
                if let Some(hold) = hold {
                    write!(f, " for {:.1} min", hold.minutes())?;
                }
                write!(f, ", within {:.1} min", within.minutes())
            }
            Self::Note(field) => write!(f, "note {field:?}"),
            Self::WeighIn { mass, .. } => write!(f, "weigh in {:.1} oz", mass.ounces()),
            Self::Repeat { until, .. } => write!(f, "repeat until {until}"),
        }
    }
}

impl fmt::Display for Goal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Shows(reading, bound) => write!(f, "{reading:?} is {bound}"),
            Self::Gives(field, bound) => write!(f, "{field:?} is {bound}"),
            Self::Near(field, other, by) => {
                write!(
                    f,
                    "{field:?} is within {:.1} °F of {other:?}",
                    by.fahrenheit()
                )
            }
        }
    }
}
