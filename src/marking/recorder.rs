//! Watching a replay and keeping its course.

use super::course::{Course, Moment, Proof, Seen};
use crate::attempt::Observer;
use crate::job::Job;
use crate::plant::{Line, Spot};
use crate::words::{Action, Milestone, Reading, SheetField, Status};

/// How long the unit must run without a stop before its superheat can be judged, s.
/// Chosen: 10 min (common practice: wait 10 to 15 min after any change).
const RUN_IN: f64 = 600.0;

/// What makes an earlier run prove nothing any more: the circuit is not the one that ran.
const UNDOES_PROOF: [Milestone; 4] = [
    Milestone::BrokeAnyJoint,
    Milestone::CylinderOpened,
    Milestone::FrontSeated(Line::Liquid),
    Milestone::FrontSeated(Line::Suction),
];

/// Every status that a criterion can name.
const STATUSES: [Status; 10] = [
    Status::CompressorRuns,
    Status::Evacuating,
    Status::PumpShutOff,
    Status::GaugeAwayFromPump,
    Status::GaugeAtUnit,
    Status::NitrogenShutOff,
    Status::RegulatorFitted,
    Status::BothHandValvesOpen,
    Status::ChargeIsolated,
    Status::LockedOut,
];

/// Keeps the course of a replay that it watches.
#[derive(Debug, Default)]
pub struct CourseRecorder {
    course: Course,
}

impl CourseRecorder {
    /// The course, with what the job ended with.
    pub fn finish(self, job: &Job) -> Course {
        let mut course = self.course;
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
        if refused {
            return;
        }
        if UNDOES_PROOF.iter().any(|m| m.is_reached_by(action)) {
            self.course.proof = None;
        }
        if Milestone::HandedBack.is_reached_by(action) {
            self.course.handed_back = Some(job.now());
        }
        self.course.moments.push(Moment {
            tick: job.now(),
            action: Some(*action),
            seen: see(job),
        });
    }

    fn second(&mut self, job: &Job) {
        let (tick, truth) = (job.now(), job.truth());
        if truth.running_for >= RUN_IN {
            self.course.proof = Some(Proof { tick, truth });
        }
        self.course.moments.push(Moment {
            tick,
            action: None,
            seen: see(job),
        });
    }
}

/// Looks at everything that can be seen at a job now.
fn see(job: &Job) -> Seen {
    let spots = Spot::ALL.into_iter().map(Reading::Bubbles);
    let readings = Reading::FACES.into_iter().chain(spots);
    let seen = readings.fold(Seen::nothing(), |seen, reading| {
        seen.with(reading, job.reading(reading))
    });
    STATUSES
        .into_iter()
        .fold(seen, |seen, status| {
            seen.with_status(status, job.status(status))
        })
        .with_gauge_at(job.kit().micron_gauge.place)
}
