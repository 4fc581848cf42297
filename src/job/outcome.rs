//! How a run to a steady state came out.

use super::{Job, TICKS_PER_SECOND};
use crate::plant::Safety;
use crate::units::Mass;
use serde::Serialize;
use std::fmt;

/// A metering device of whose throat ice has shut this share is frozen. Chosen: half.
const THROAT_SHUT: f64 = 0.5;

/// How long after ice has shut the throat it counts, s: a plug lets go and comes again. Chosen: an
/// hour.
const FREEZES_AGAIN: u64 = 3600;

/// A coil with this share of the frost that leaves it a tenth of its air is frozen. Chosen.
const FROST_SHARE: f64 = 0.5;

/// From so many stops of the compressor on a run counts as cycling. Chosen.
const STOPS_CYCLING: usize = 3;

/// After so many stops nothing new is to be expected. Chosen.
const STOPS_MOST: usize = 8;

/// How a run to a steady state came out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(tag = "outcome", rename_all = "snake_case")]
pub enum Outcome {
    /// It runs, and nothing that can be read moves any more.
    AtRest,
    /// A safety stops the compressor and lets it start again and again.
    Cycling {
        /// Which stopped it last.
        by: Stop,
        /// How often the compressor was stopped.
        stops: usize,
    },
    /// The compressor stands, and something keeps it from starting.
    Tripped {
        /// What.
        by: Stop,
    },
    /// Ice or frost shuts the way.
    Frozen {
        /// Where.
        at: Frozen,
    },
    /// It runs and still moves after the longest time that it is given.
    NotSettled,
    /// The model gave something that is no number: an error of the program.
    NotANumber,
}

/// What stopped the compressor.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Stop {
    /// The high-pressure switch.
    HighPressureSwitch,
    /// The low-pressure switch.
    LowPressureSwitch,
    /// The overload in the motor.
    Overload,
    /// Its motor is ruined.
    Motor,
}

/// What is frozen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Frozen {
    /// The throat of the metering device.
    Metering,
    /// The fins of the indoor coil.
    IndoorCoil,
}

/// The compressor's stops and the ice over a run.
#[derive(Debug, Default)]
pub(super) struct StopLog {
    ran: bool,
    stops: usize,
    last: Option<Stop>,
    /// When ice last shut the throat, ticks.
    frozen: Option<u64>,
}

impl StopLog {
    /// Looks at a job; to be done after each step.
    pub(super) fn look(&mut self, job: &Job) {
        let runs = job.electrics.compressor_runs();
        if !runs {
            self.last = stop(job).or(self.last);
            self.stops += usize::from(self.ran);
        }
        self.ran = runs;
        if job.plant.operating().throat_ice >= THROAT_SHUT {
            self.frozen = Some(job.now());
        }
    }

    /// Whether the compressor was stopped so often that waiting on brings nothing new.
    pub(super) const fn is_full(&self) -> bool {
        self.stops >= STOPS_MOST
    }

    /// How the run came out; `is_steady`: nothing moved any more at its end.
    pub(super) fn outcome(&self, job: &Job, is_steady: bool, frost_full: Mass) -> Outcome {
        if self.stops >= STOPS_CYCLING
            && let Some(by) = self.last
        {
            let stops = self.stops;
            return Outcome::Cycling { by, stops };
        }
        if !self.ran
            && let Some(by) = self.last
        {
            return Outcome::Tripped { by };
        }
        let operating = job.plant.operating();
        let since = self.frozen.map(|at| job.now() - at);
        if !is_steady && since.is_some_and(|since| since < FREEZES_AGAIN * TICKS_PER_SECOND) {
            return Outcome::Frozen {
                at: Frozen::Metering,
            };
        }
        if operating.frost >= FROST_SHARE * frost_full.kilograms() {
            return Outcome::Frozen {
                at: Frozen::IndoorCoil,
            };
        }
        if is_steady {
            Outcome::AtRest
        } else {
            Outcome::NotSettled
        }
    }
}

/// What keeps the compressor from running now.
fn stop(job: &Job) -> Option<Stop> {
    if job.electrics.motor_ruined {
        return Some(Stop::Motor);
    }
    Some(match job.electrics.open_safety()? {
        Safety::HighPressureSwitch => Stop::HighPressureSwitch,
        Safety::LowPressureSwitch => Stop::LowPressureSwitch,
        Safety::Overload => Stop::Overload,
    })
}

impl Outcome {
    /// Whether the unit runs at rest.
    pub const fn is_at_rest(self) -> bool {
        matches!(self, Self::AtRest)
    }

    /// It in a sentence, after so many seconds.
    pub fn sentence(self, seconds: f64) -> String {
        let minutes = (seconds / 60.0).round();
        match self {
            Self::AtRest => format!("at rest after {minutes} min of running"),
            Self::Cycling { by, stops } => {
                format!("cycling: {by} stopped the compressor {stops} times in {minutes} min")
            }
            Self::Tripped { by } => {
                format!("tripped: after {minutes} min {by} keeps the compressor from running")
            }
            Self::Frozen {
                at: Frozen::Metering,
            } => {
                format!("frozen: ice shut the metering device in the last hour of {minutes} min")
            }
            Self::Frozen {
                at: Frozen::IndoorCoil,
            } => {
                format!("frozen: after {minutes} min frost blocks the indoor coil")
            }
            Self::NotSettled => format!("not settled: readings still move after {minutes} min"),
            Self::NotANumber => "not a number: the model gave no number; this is an error of the \
                                 program, please report it with the scenario"
                .to_owned(),
        }
    }
}

impl fmt::Display for Stop {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::HighPressureSwitch => "the high-pressure switch",
            Self::LowPressureSwitch => "the low-pressure switch",
            Self::Overload => "the motor's overload",
            Self::Motor => "its ruined motor",
        })
    }
}
