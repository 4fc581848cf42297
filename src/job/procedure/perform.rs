//! Carries a procedure out, through the same driver as everybody else.

use super::course::{CourseLine, clock, key_readings, readings_text};
use super::round::as_written;
use super::wait::{Awaited, Look, Wait};
use super::{Goal, Procedure, Step};
use crate::job::{Driver, Job, Refusal, TICKS_PER_SECOND};
use crate::kit::refrigerant_cylinder;
use crate::units::{Fraction, Mass, Time};
use crate::words::{Action, Bound, Reading, SheetField};
use thiserror::Error;

/// Why a procedure did not come to its end.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{} step {step}: {text}: {why}{}", clock(*.tick), then_showed(.readings))]
pub struct Stopped {
    /// The tick at which it stopped.
    pub tick: u64,
    /// The number of the step, as in [`CourseLine::step`].
    pub step: String,
    /// What the step says.
    pub text: String,
    /// Why it could not be done.
    pub why: Box<Why>,
    /// What the instruments in use read then.
    pub readings: String,
}

/// What kept a step from being done.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum Why {
    /// The job refused the action.
    #[error("refused: {0}")]
    Refused(#[from] Refusal),
    /// What was waited for did not come true in time.
    #[error("not so within {:.1} min: it shows {shown}", within.minutes())]
    NotInTime {
        /// The limit.
        within: Time,
        /// What the instrument showed at the end.
        shown: String,
    },
    /// The steps were repeated as often as they may be.
    #[error("still not so after {rounds} rounds: {shown}")]
    NotInRounds {
        /// How often.
        rounds: u32,
        /// What the instruments gave at the end.
        shown: String,
    },
    /// No instrument gives what should be written down.
    #[error("the instruments give nothing for {}", .0.label())]
    NothingToNote(SheetField),
}

fn then_showed(readings: &str) -> String {
    if readings.is_empty() {
        String::new()
    } else {
        format!("\n  the instruments read: {readings}")
    }
}

/// A procedure being carried out. It tells its course line by line.
pub struct Performance<'a> {
    driver: &'a mut dyn Driver,
    course: &'a mut dyn FnMut(CourseLine),
}

impl std::fmt::Debug for Performance<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Performance").finish_non_exhaustive()
    }
}

impl<'a> Performance<'a> {
    /// A performance behind a driver; `course` gets a line for each step done.
    pub fn new(driver: &'a mut dyn Driver, course: &'a mut dyn FnMut(CourseLine)) -> Self {
        Self { driver, course }
    }

    /// Does the whole procedure, or stops at the first step that cannot be done.
    pub fn run(&mut self, procedure: &Procedure) -> Result<(), Stopped> {
        self.steps(&procedure.steps, "")
    }

    fn steps(&mut self, steps: &[Step], within: &str) -> Result<(), Stopped> {
        for (number, step) in steps.iter().enumerate() {
            let number = format!("{within}{}", number + 1);
            self.step(step, &number)?;
        }
        Ok(())
    }

    fn step(&mut self, step: &Step, number: &str) -> Result<(), Stopped> {
        if let Step::Repeat {
            until,
            at_most,
            steps,
        } = step
        {
            return self.repeat(step, *until, *at_most, steps, number);
        }
        let done = match step {
            Step::Say(_) | Step::Repeat { .. } => Ok(()),
            Step::Do(action) => self.apply(*action),
            Step::Wait(time) => {
                self.wait(*time);
                Ok(())
            }
            Step::Until {
                reading,
                is,
                within,
                hold,
            } => self.until(*reading, *is, *within, hold.unwrap_or_default()),
            Step::Note(field) => self.note(*field),
            Step::WeighIn {
                mass,
                opening,
                within,
            } => self.weigh_in(*mass, *opening, *within),
        };
        done.map_err(|why| self.stopped(step, number, why))?;
        let written = if let Step::Note(field) = step {
            self.driver.job().sheet().entry(*field)
        } else {
            None
        };
        let text = match written {
            Some(entry) => format!("{step}: {}", entry.value),
            None => step.to_string(),
        };
        self.tell(text, number);
        Ok(())
    }

    fn tell(&mut self, text: String, number: &str) {
        let line = CourseLine::of(number.to_owned(), text, self.driver.job());
        (self.course)(line);
    }

    fn stopped(&self, step: &Step, number: &str, why: Why) -> Stopped {
        let job = self.driver.job();
        Stopped {
            tick: job.now(),
            step: number.to_owned(),
            text: step.to_string(),
            why: Box::new(why),
            readings: readings_text(&key_readings(job)),
        }
    }

    fn apply(&mut self, action: Action) -> Result<(), Why> {
        Ok(self.driver.apply(action)?)
    }

    fn wait(&mut self, time: Time) {
        for _ in 0..ticks(time) {
            self.driver.tick();
        }
    }

    fn until(&mut self, reading: Reading, is: Bound, within: Time, hold: Time) -> Result<(), Why> {
        let mut wait = Wait::new(Awaited::Shows(reading, is, hold), within);
        loop {
            match wait.look(self.driver.job()) {
                Look::NotYet => self.driver.tick(),
                Look::Reached => return Ok(()),
                Look::GaveUp => {
                    let shown = self.driver.job().reading(reading).to_string();
                    return Err(Why::NotInTime { within, shown });
                }
            }
        }
    }

    fn note(&mut self, field: SheetField) -> Result<(), Why> {
        let given = self.driver.job().instruments_for(field);
        let value = as_written(given.ok_or(Why::NothingToNote(field))?);
        self.apply(Action::Write { field, value })
    }

    fn weigh_in(&mut self, mass: Mass, opening: Fraction, within: Time) -> Result<(), Why> {
        let scale_face = Reading::of(refrigerant_cylinder::Reading::Scale);
        let scale = |job: &Job| job.reading(scale_face).quantity();
        let start = scale(self.driver.job()).map(|quantity| quantity.si);
        self.apply(Action::of(refrigerant_cylinder::Action::Valve(opening)))?;
        let mut is_weighed = false;
        for _ in 0..ticks(within) {
            self.driver.tick();
            let now = scale(self.driver.job()).map(|quantity| quantity.si);
            is_weighed = start
                .zip(now)
                .is_some_and(|(s, n)| s - n >= mass.kilograms());
            if is_weighed {
                break;
            }
        }
        // The valve is shut in any case: nobody walks away from an open cylinder.
        self.apply(Action::of(refrigerant_cylinder::Action::Valve(
            Fraction::ZERO,
        )))?;
        if is_weighed {
            Ok(())
        } else {
            let shown = self.driver.job().reading(scale_face).to_string();
            Err(Why::NotInTime { within, shown })
        }
    }

    fn repeat(
        &mut self,
        step: &Step,
        until: Goal,
        at_most: u32,
        steps: &[Step],
        number: &str,
    ) -> Result<(), Stopped> {
        let mut rounds = 0;
        while !until.is_reached(self.driver.job()) {
            if rounds == at_most {
                let shown = until.given(self.driver.job());
                return Err(self.stopped(step, number, Why::NotInRounds { rounds, shown }));
            }
            rounds += 1;
            self.steps(steps, &format!("{number}."))?;
        }
        self.tell(
            format!(
                "{until}: {}, {rounds} rounds",
                until.given(self.driver.job())
            ),
            number,
        );
        Ok(())
    }
}

impl Goal {
    fn is_reached(self, job: &Job) -> bool {
        match self {
            Self::Shows(reading, bound) => {
                let shown = job.reading(reading).quantity();
                shown.is_some_and(|quantity| bound.holds(quantity))
            }
            Self::Gives(field, bound) => {
                let given = job.instruments_for(field);
                given.is_some_and(|quantity| bound.holds(quantity))
            }
            Self::Near(field, other, by) => job
                .instruments_for(field)
                .zip(job.instruments_for(other))
                .is_some_and(|(a, b)| {
                    a.dimension == b.dimension && (a.si - b.si).abs() <= by.kelvins()
                }),
        }
    }

    /// What the instruments give for it now.
    fn given(self, job: &Job) -> String {
        let blank = |field: SheetField| match job.instruments_for(field) {
            Some(quantity) => format!("{} {}", field.label(), quantity.inch_pound()),
            None => format!("{} not known", field.label()),
        };
        match self {
            Self::Shows(reading, _) => format!("{reading} {}", job.reading(reading)),
            Self::Gives(field, _) => blank(field),
            Self::Near(field, other, _) => format!("{}, {}", blank(field), blank(other)),
        }
    }
}

fn ticks(time: Time) -> u64 {
    (time.seconds() * TICKS_PER_SECOND as f64).round() as u64
}
