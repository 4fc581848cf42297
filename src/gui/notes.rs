//! What is noted while a job goes on: its course for the marks, the strip chart, the moments to
//! which one can go back. It notes the same whether the job is worked on, waited for or replayed.

use crate::attempt::Observer;
use crate::gui::instruments::StripChart;
use crate::gui::moment::Moment;
use crate::job::Job;
use crate::marking::CourseRecorder;
use crate::words::Action;

/// What was noted so far.
#[derive(Debug, Default)]
pub struct Notes {
    /// The course, for the marks.
    pub course: CourseRecorder,
    /// What the instruments showed.
    pub chart: StripChart,
    /// Every action in its order, refused ones too: as many as the journal has.
    pub moments: Vec<Moment>,
}

impl Observer for Notes {
    fn action(&mut self, job: &Job, action: &Action, refused: bool) {
        self.course.action(job, action, refused);
        self.moments.push(Moment {
            tick: job.now(),
            action: *action,
            refused,
        });
    }

    fn second(&mut self, job: &Job) {
        self.course.second(job);
        self.chart.note(job);
    }
}
