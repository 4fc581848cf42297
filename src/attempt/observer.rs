//! Who looks on while an attempt is replayed.

use crate::job::Job;
use crate::words::Action;

/// Looks on while an attempt is replayed: marking, traces and plots are observers.
pub trait Observer {
    /// An action was done, or refused: the job is as it stands just after.
    fn action(&mut self, job: &Job, action: &Action, refused: bool);
    /// A second of simulated time went by.
    fn second(&mut self, job: &Job);
}

/// Nobody looks on.
impl Observer for () {
    fn action(&mut self, _: &Job, _: &Action, _: bool) {}
    fn second(&mut self, _: &Job) {}
}

/// Two look on, the first before the second.
#[derive(Debug)]
pub struct Both<'a, A, B>(pub &'a mut A, pub &'a mut B);

impl<A: Observer, B: Observer> Observer for Both<'_, A, B> {
    fn action(&mut self, job: &Job, action: &Action, refused: bool) {
        self.0.action(job, action, refused);
        self.1.action(job, action, refused);
    }

    fn second(&mut self, job: &Job) {
        self.0.second(job);
        self.1.second(job);
    }
}
