//! Who may watch a replay: marking, the trace, the window's time line.

use crate::job::Job;
use crate::words::Action;

/// Watches a job while it is replayed, and changes nothing.
pub trait Observer {
    /// An action was carried out, or `refused`; the job is as it stands just after it.
    fn action(&mut self, job: &Job, action: &Action, refused: bool);
    /// Another second of the job has passed.
    fn second(&mut self, job: &Job);
}
