//! Waiting for an instrument, looked at tick by tick: for a written procedure and for the window.

use crate::job::{Job, TICKS_PER_SECOND};
use crate::units::Time;
use crate::words::{Bound, Reading, Shown};

/// What is waited for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Awaited {
    /// An instrument shows a value in a bound, without a break for so long.
    Shows(Reading, Bound, Time),
    /// What an instrument shows no longer moves.
    Steady(Reading),
    /// Only that the time goes by.
    Nothing,
}

/// A wait under way. It changes nothing: whoever waits looks, and lets a tick pass if he must
/// wait on.
#[derive(Debug, Clone, PartialEq)]
pub struct Wait {
    what: Awaited,
    /// The looks after which it is given up, and those that there were.
    limit: u64,
    looks: u64,
    /// For how many looks it has been so without a break.
    held: u64,
    /// The least and the most that was shown since then, SI.
    range: Option<(f64, f64)>,
}

/// How a wait stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    /// Not yet: wait on.
    NotYet,
    /// It came true.
    Reached,
    /// It did not come true within the limit.
    GaveUp,
}

/// A reading is steady when it has stayed in its band for this long, s.
///
/// Chosen: 3 min, as one watches a unit settle before writing down (common practice, no source).
const STEADY_FOR: u64 = 180;

impl Wait {
    /// Waits for something, at most so long.
    pub fn new(what: Awaited, within: Time) -> Self {
        Self {
            what,
            limit: ticks(within),
            looks: 0,
            held: 0,
            range: None,
        }
    }

    /// What is waited for.
    pub const fn what(&self) -> Awaited {
        self.what
    }

    /// The ticks waited so far, and the most that are waited.
    pub const fn progress(&self) -> (u64, u64) {
        (self.looks, self.limit)
    }

    /// Looks at a job as it stands; to be done once before each tick.
    pub fn look(&mut self, job: &Job) -> Look {
        let is_reached = match self.what {
            Awaited::Nothing => self.looks >= self.limit,
            Awaited::Shows(reading, is, hold) => {
                let shown = job.reading(reading).quantity();
                let is_so = shown.is_some_and(|quantity| is.holds(quantity));
                self.holds(is_so, ticks(hold))
            }
            Awaited::Steady(reading) => {
                let stays = self.stays(reading, job.reading(reading));
                self.holds(stays, STEADY_FOR * TICKS_PER_SECOND)
            }
        };
        if is_reached {
            return Look::Reached;
        }
        if self.looks >= self.limit {
            return Look::GaveUp;
        }
        self.looks += 1;
        Look::NotYet
    }

    /// Whether it is so now and has been for as many looks.
    const fn holds(&mut self, is_so: bool, hold: u64) -> bool {
        let is_held = is_so && self.held >= hold;
        self.held = if is_so { self.held + 1 } else { 0 };
        is_held
    }

    /// Whether a reading is still in the band that it was in; if not, a new band begins with it.
    fn stays(&mut self, reading: Reading, shown: Shown) -> bool {
        let Some(value) = shown.quantity().map(|quantity| quantity.si) else {
            self.range = None;
            return false;
        };
        let (low, high) = self.range.unwrap_or((value, value));
        let (low, high) = (low.min(value), high.max(value));
        let stays = high - low <= reading.steady_within(value);
        self.range = Some(if stays { (low, high) } else { (value, value) });
        stays
    }
}

fn ticks(time: Time) -> u64 {
    (time.seconds() * TICKS_PER_SECOND as f64).round() as u64
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::Scenario;
    use crate::words::{Action, Level, ThermometerPlace, ThermostatCall};

    fn job() -> Job {
        Job::new(&Scenario::shipped("clogged_drier").expect("it is shipped"))
    }

    /// Waits at a job; gives how it ended.
    fn waited(job: &mut Job, what: Awaited, seconds: f64) -> Look {
        let mut wait = Wait::new(what, Time::from_seconds(seconds));
        loop {
            match wait.look(job) {
                Look::NotYet => job.tick(),
                over => return over,
            }
        }
    }

    #[test]
    fn time_that_goes_by_is_over_to_the_tick() {
        let mut job = job();
        assert_eq!(waited(&mut job, Awaited::Nothing, 7.5), Look::Reached);
        assert_eq!(job.now(), 75);
    }

    #[test]
    fn what_is_so_at_once_takes_no_time_and_what_must_hold_takes_its_time() {
        let mut job = job();
        let low = Bound::Between(Level::Psig(-1.0), Level::Psig(1.0));
        let shows = |hold| Awaited::Shows(Reading::LowGauge, low, Time::from_seconds(hold));
        assert_eq!(waited(&mut job, shows(0.0), 60.0), Look::Reached);
        assert_eq!(job.now(), 0);
        assert_eq!(waited(&mut job, shows(10.0), 60.0), Look::Reached);
        assert_eq!(job.now(), 100);
    }

    #[test]
    fn what_never_comes_true_is_given_up_at_the_limit() {
        let mut job = job();
        let high = Bound::Above(Level::Psig(900.0));
        let never = Awaited::Shows(Reading::HighGauge, high, Time::default());
        assert_eq!(waited(&mut job, never, 20.0), Look::GaveUp);
        assert_eq!(job.now(), 200);
        // What shows nothing is never steady.
        let nothing = Awaited::Steady(Reading::CompressorAmps);
        assert_eq!(waited(&mut job, nothing, 600.0), Look::GaveUp);
    }

    #[test]
    fn a_thermometer_is_steady_only_when_it_has_come_to_rest() {
        let mut job = job();
        let place = ThermometerPlace::SuctionLine;
        job.apply(Action::Clamp(place)).expect("one is free");
        let cool = Action::Thermostat(ThermostatCall::Cool);
        job.apply(cool).expect("it is never refused");
        let before = job.reading(Reading::Thermometer(place)).quantity();
        let steady = Awaited::Steady(Reading::Thermometer(place));
        assert_eq!(waited(&mut job, steady, 7_200.0), Look::Reached);
        let after = job.reading(Reading::Thermometer(place)).quantity();
        assert!(job.now() > STEADY_FOR * TICKS_PER_SECOND);
        let cooled = before.zip(after).map_or(0.0, |(b, a)| b.si - a.si);
        assert!(
            cooled > 5.0,
            "the line cooled by {cooled} K before it rested"
        );
    }
}
