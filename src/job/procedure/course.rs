//! The course of a procedure: what was done, when, and what the instruments showed then.

use super::{Goal, Step};
use crate::job::{Job, TICKS_PER_SECOND};
use crate::kit::tools;
use crate::units::Time;
use crate::words::{GaugePlace, Reading, Shown, Status};
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

/// What the instruments in use show, the most telling first. An instrument on the cart, a
/// cylinder that no hose is on and a motor that stands still tell nothing.
pub(super) fn key_readings(job: &Job) -> Vec<(Reading, Shown)> {
    let kit = job.kit();
    let gauge = &kit.micron_gauge;
    let key = [
        (Reading::LowGauge, true),
        (Reading::HighGauge, true),
        (
            Reading::Microns,
            gauge.place != GaugePlace::Cart && gauge.valve_open,
        ),
    ];
    let of_tools = tools::Reading::all()
        .filter(|reading| reading.face().is_key && Some(reading.tool()) == kit.tool_in_use())
        .map(|reading| (Reading::Tool(reading), true));
    let motor = (Reading::CompressorAmps, job.status(Status::CompressorRuns));
    key.into_iter()
        .chain(of_tools)
        .chain([motor])
        .filter(|(_, is_in_use)| *is_in_use)
        .map(|(reading, _)| (reading, job.reading(reading)))
        .filter(|(_, shown)| *shown != Shown::Nothing)
        .collect()
}

/// Readings in a line.
pub(super) fn readings_text(readings: &[(Reading, Shown)]) -> String {
    let words: Vec<String> = readings
        .iter()
        .map(|(reading, shown)| format!("{reading} {shown}"))
        .collect();
    words.join(", ")
}

/// The time of a tick: hours, minutes, seconds.
pub(super) fn clock(tick: u64) -> String {
    let seconds = tick / TICKS_PER_SECOND;
    let (hours, minutes) = (seconds / 3600, seconds / 60 % 60);
    format!("{hours}:{minutes:02}:{:02}", seconds % 60)
}

/// A time as a person says it: seconds up to two minutes.
fn span(time: Time) -> String {
    if time.seconds() < 120.0 {
        format!("{:.0} s", time.seconds())
    } else {
        format!("{:.0} min", time.minutes())
    }
}

impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Say(remark) => f.write_str(remark),
            Self::Do(action) => action.fmt(f),
            Self::Wait(time) => write!(f, "wait {}", span(*time)),
            Self::Until {
                reading,
                is,
                within,
                hold,
            } => {
                write!(f, "until the {reading} is {is}")?;
                if let Some(hold) = hold {
                    write!(f, " for {}", span(*hold))?;
                }
                write!(f, ", within {}", span(*within))
            }
            Self::Note(field) => write!(f, "note {}", field.label()),
            Self::WeighIn { mass, .. } => write!(f, "weigh in {:.1} oz", mass.ounces()),
            Self::Repeat { until, .. } => write!(f, "repeat until {until}"),
        }
    }
}

impl fmt::Display for Goal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Shows(reading, bound) => write!(f, "the {reading} is {bound}"),
            Self::Gives(field, bound) => write!(f, "{} is {bound}", field.label()),
            Self::Near(field, other, by) => {
                write!(
                    f,
                    "{} is within {:.1} °F of {}",
                    field.label(),
                    by.fahrenheit(),
                    other.label()
                )
            }
        }
    }
}
