//! Watching a replay and keeping its course.

use super::course::{Course, Seen};
use crate::attempt::Observer;
use crate::job::Job;
use crate::words::{Action, Reading, SheetField, Status};

/// Keeps the course of a replay that it watches.
#[derive(Debug, Default)]
pub struct CourseRecorder {
    course: Course,
}

impl CourseRecorder {
    /// The course, with what the job ended with.
    pub fn finish(mut self, job: &Job) -> Course {
        self.so_far(job);
        self.course
    }

    /// The course up to now, as if the job ended here.
    pub fn so_far(&mut self, job: &Job) -> &Course {
        let course = &mut self.course;
        let sheet = job.sheet();
        course.findings = job.findings().to_vec();
        course.entries = SheetField::ALL
            .into_iter()
            .filter_map(|field| sheet.entry(field).map(|entry| (field, *entry)))
            .collect();
        course.diagnosis = sheet.diagnosis();
        course.truth = job.truth();
        course.end = job.now();
        course
    }
}

impl Observer for CourseRecorder {
    fn action(&mut self, job: &Job, action: &Action, refused: bool) {
        if !refused {
            self.course.acted(job.now(), *action, see(job));
        }
    }

    fn second(&mut self, job: &Job) {
        self.course.passed(job.now(), see(job), &job.truth());
    }
}

/// Looks at everything that can be seen at a job now.
fn see(job: &Job) -> Seen {
    let seen = Reading::all().fold(Seen::nothing(), |seen, reading| {
        seen.with(reading, job.reading(reading))
    });
    Status::all()
        .fold(seen, |seen, status| {
            seen.with_status(status, job.status(status))
        })
        .with_gauge_at(job.kit().micron_gauge.place)
}
