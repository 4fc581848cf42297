//! Marking: findings and a course of events against a rubric; a pure function of the replay.
//!
//! A [`CourseRecorder`] watches a replay and keeps its [`Course`]: once a second and at every
//! action, what could be seen. [`mark`] holds the course against a rubric. There is one file for
//! each kind of rule. The same course always gets the same marks.
//!
//! A criterion gives all of its points or none. The one exception is a diagnosis with the right
//! fault at the wrong place, which gives half of them, rounded down.

mod conditions;
mod course;
mod diagnosis;
mod done;
mod end_state;
pub mod evidence;
mod hold;
mod in_time;
mod judgement;
mod mark;
mod never;
mod order;
mod recorder;
mod report;
mod sheet_rule;
mod window;

pub use conditions::holds;
pub use course::{Course, Proof, Sample, Seen};
pub use mark::{AssessorMark, Evidence, Mark, mark, meets};
pub use recorder::CourseRecorder;
pub use report::{NotAMark, Report};
