//! The events of the watch that can be kept off by looking in time, and whether all is well now.

use super::Stage;
use crate::job::Job;
use crate::kit::vacuum_pump::Finding::UnderPressure;
use crate::kit::{GaugePlace, nitrogen, tools};
use crate::marking::Course;
use crate::plant::{Arrow, Joint, Line, Made};
use crate::scenario::{Criterion, Rule};
use crate::units::PSI;
use crate::words::{FindingKind, Hose, HoseEnd, Level, Milestone, Reading, Status};

/// A pressure that a gauge can still tell from none, Pa gauge. Chosen: 2 psi.
const TELLS: f64 = 2.0 * PSI;

/// Where in the work a kind of finding is to be thought of; `None` for those that nothing to be
/// seen announces: of them the coach speaks when they have happened.
pub(super) fn stage(kind: FindingKind, job: &Job) -> Option<Stage> {
    // Once both valves are shut, what is still inside is a matter of pumping down.
    if kind == FindingKind::OpenedUnderPressure && job.status(Status::ChargeIsolated) {
        return Some(Stage::PumpDown);
    }
    kind.row().stage
}

/// Whether it is time to think of it: as things can be seen now, the event could come.
pub(super) fn looms(
    kind: FindingKind,
    up_to: Option<Level>,
    course: &Course,
    rubric: &[Criterion],
    job: &Job,
) -> bool {
    let done = |milestone| course.reached(milestone).next().is_some();
    let is_to_be_opened = || opens(rubric) && !done(Milestone::BrokeAnyJoint);
    let (fittings, kit) = (job.fittings(), job.kit());
    let joints = |so: fn(&crate::plant::JointState) -> bool| {
        Joint::ALL
            .into_iter()
            .any(|joint| touched(course, joint) && so(fittings.joint(joint)))
    };
    match kind {
        FindingKind::Unprotected => !kit.protection_on,
        FindingKind::Unventilated => is_to_be_opened() && !job.status(Status::Ventilated),
        FindingKind::WorkedLive => is_to_be_opened() && !job.status(Status::LockedOut),
        FindingKind::OpenedUnderPressure => {
            let most = up_to.map_or(TELLS, |level| level.quantity().si);
            is_to_be_opened() && low_gauge(job).is_none_or(|pascals| pascals > most)
        }
        FindingKind::DrierBackwards => fittings.drier.fitted == Some(Arrow::TowardOutdoor),
        FindingKind::StoodOpen => joints(|joint| joint.made == Made::Apart),
        FindingKind::JointLeftLoose => joints(|joint| joint.shortfall() > 0.0),
        FindingKind::Tool(tools::Finding::VacuumPump(UnderPressure)) => {
            let nitrogen = Milestone::of(nitrogen::Milestone::Opened);
            let has_nitrogen = done(nitrogen) && job.status(Status::ChargeIsolated);
            has_nitrogen && low_gauge(job).is_some_and(|pascals| pascals > TELLS)
        }
        FindingKind::MicronGaugeOverPressured => {
            let gauge = &kit.micron_gauge;
            gauge.place != GaugePlace::Cart && gauge.valve_open && !gauge.ruined
        }
        FindingKind::CapLeftOff => Line::ALL.into_iter().any(|line| {
            let valve = fittings.valve(line);
            !valve.cap_on || !valve.port.cap_on
        }),
        FindingKind::KitLeftOn => {
            let on_port = |hose| {
                kit.manifold
                    .hose(hose)
                    .end
                    .and_then(HoseEnd::port)
                    .is_some()
            };
            let tool = Line::ALL
                .into_iter()
                .any(|l| fittings.valve(l).port.tool_on);
            on_port(Hose::Low) || on_port(Hose::High) || tool || job.status(Status::GaugeAtUnit)
        }
        FindingKind::ValveLeftShut => {
            let valves = Line::ALL.into_iter();
            valves
                .map(|line| fittings.valve(line))
                .any(|v| v.open.get() < 1.0)
        }
        FindingKind::Tool(finding) => kit.tools.looms(finding),
        _ => false,
    }
}

/// Whether the rubric asks for something that takes the circuit apart.
pub(super) fn opens(rubric: &[Criterion]) -> bool {
    let takes_apart = |milestone: &Milestone| {
        matches!(
            Stage::of(*milestone),
            Stage::Open | Stage::Part | Stage::Close
        ) && *milestone != Milestone::ChangedFilter
    };
    rubric.iter().any(|criterion| {
        let named = match criterion.rule {
            Rule::Order { first, then } => [Some(first), Some(then), None],
            Rule::Done {
                what,
                after,
                before,
                ..
            } => [Some(what), after, before],
            Rule::Hold { after, before, .. } => [after, before, None],
            _ => [None; 3],
        };
        named.iter().flatten().any(takes_apart)
    })
}

/// Whether somebody has had a wrench on this joint.
pub(super) fn touched(course: &Course, joint: Joint) -> bool {
    let at_drier = |milestone| joint.is_at_drier() && course.reached(milestone).next().is_some();
    [Milestone::Broke(joint), Milestone::MadeUp(joint)]
        .into_iter()
        .any(|milestone| course.reached(milestone).next().is_some())
        || at_drier(Milestone::DrierIn)
}

fn low_gauge(job: &Job) -> Option<f64> {
    job.reading(Reading::LowGauge).quantity().map(|q| q.si)
}
