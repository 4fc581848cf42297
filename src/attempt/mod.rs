//! The recording of one person's actions in one job.

mod observer;

pub use observer::Observer;
