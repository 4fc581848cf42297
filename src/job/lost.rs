//! A state that is no number: an error of the program. The job stops there and says so.

use super::{Job, TICKS_PER_SECOND};

impl Job {
    /// The tick at which the state was found to be no number. From then on the clock goes, nothing
    /// else moves, and every action is refused.
    pub const fn lost_at(&self) -> Option<u64> {
        self.lost_at
    }

    /// Looks once a second whether the state of the unit is still a number.
    pub(super) fn look_for_numbers(&mut self) {
        if self.tick.is_multiple_of(TICKS_PER_SECOND) && !self.is_of_numbers() {
            self.lost_at = Some(self.tick);
        }
    }

    /// Whether the state of the unit is a number everywhere.
    pub(super) fn is_of_numbers(&self) -> bool {
        let plant = &self.plant;
        let operating = plant.operating();
        let sections = plant.places();
        let sum: f64 = sections
            .map(|place| plant.pressure(place) + plant.temperature(place))
            .sum();
        (sum + operating.net_capacity + operating.power).is_finite()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::Scenario;
    use crate::words::{Action, ThermostatCall};

    #[test]
    fn a_state_that_is_no_number_stops_the_job_and_says_so() {
        let scenario = Scenario::shipped("clogged_drier").expect("it is shipped");
        let mut job = Job::new(&scenario);
        let cool = Action::Thermostat(ThermostatCall::Cool);
        job.apply(cool).expect("a thermostat is never refused");
        (0..100).for_each(|_| job.tick());
        assert_eq!(job.lost_at(), None);
        // No file and no action can do this; an error of the program can.
        job.climate.outdoor.t = f64::NAN;
        (0..100).for_each(|_| job.tick());
        assert_eq!(job.lost_at(), Some(110));
        assert_eq!(job.now(), 200);
        let refused = job.apply(Action::Protect(true)).expect_err("it is lost");
        assert!(
            refused.to_string().contains("no longer a number"),
            "{refused}"
        );
        let shown = job.findings().len();
        (0..1_000).for_each(|_| job.tick());
        assert_eq!(job.findings().len(), shown);
    }
}
