//! What a replay yields for marking: what could be seen, second by second and at each action.

use crate::job::{Entry, TICKS_PER_SECOND, Truth};
use crate::kit::refrigerant_cylinder::Milestone::Opened as CylinderOpened;
use crate::kit::tools;
use crate::plant::Line;
use crate::words::{
    Action, Diagnosis, Finding, GaugePlace, Milestone, Quantity, Reading, SheetField, Shown, Status,
};
use std::collections::BTreeMap;

/// How long the unit must run without a stop before its superheat can be judged, s.
/// Chosen: 10 min (common practice: wait 10 to 15 min after any change).
const RUN_IN: f64 = 600.0;

/// What makes an earlier run prove nothing any more: the circuit is not the one that ran.
const UNDOES_PROOF: [Milestone; 4] = [
    Milestone::BrokeAnyJoint,
    Milestone::Tool(tools::Milestone::RefrigerantCylinder(CylinderOpened)),
    Milestone::FrontSeated(Line::Liquid),
    Milestone::FrontSeated(Line::Suction),
];

/// Everything of a replay that a criterion can ask about.
#[derive(Debug, Clone, Default)]
pub struct Course {
    /// One moment a second and one at each action that was carried out, in the order of events.
    pub moments: Vec<Sample>,
    /// What the watch had noted at the end.
    pub findings: Vec<Finding>,
    /// What stood on the job sheet at the end.
    pub entries: BTreeMap<SheetField, Entry>,
    /// The diagnosis at the end, and the tick at which it was written.
    pub diagnosis: Option<(u64, Diagnosis)>,
    /// What was true inside at the end.
    pub truth: Truth,
    /// What was true while the unit last ran long enough to be judged.
    pub proof: Option<Proof>,
    /// The tick of the hand-back, if there was one.
    pub handed_back: Option<u64>,
    /// The last tick of the course.
    pub end: u64,
}

/// What was true at the end of the last long stretch of running.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proof {
    /// The last tick of the stretch.
    pub tick: u64,
    /// What was true then.
    pub truth: Truth,
}

/// One moment of a course.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// When.
    pub tick: u64,
    /// What was done, if this is the moment of an action.
    pub action: Option<Action>,
    /// What could be seen; at an action, just after it.
    pub seen: Seen,
}

/// What could be seen at a moment: every reading, every status, the place of the micron gauge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seen {
    /// In SI by [`Reading::index`]; not a number shows nothing, infinity is over range.
    readings: [f64; Reading::COUNT],
    /// One bit for each status.
    statuses: u32,
    /// Where the micron gauge is.
    gauge: GaugePlace,
}

impl Seen {
    /// Every instrument put away and nothing so.
    pub const fn nothing() -> Self {
        Self {
            readings: [f64::NAN; Reading::COUNT],
            statuses: 0,
            gauge: GaugePlace::Cart,
        }
    }

    /// The same with a reading.
    #[must_use]
    pub fn with(mut self, reading: Reading, shown: Shown) -> Self {
        self.readings[reading.index()] = match shown {
            Shown::Value(quantity) => quantity.si,
            Shown::OverRange => f64::INFINITY,
            Shown::Nothing => f64::NAN,
        };
        self
    }

    /// The same with a status that is so, or is not.
    #[must_use]
    pub fn with_status(mut self, status: Status, is_so: bool) -> Self {
        let bit = 1 << status.index();
        if is_so {
            self.statuses |= bit;
        } else {
            self.statuses &= !bit;
        }
        self
    }

    /// The same with the micron gauge somewhere.
    #[must_use]
    pub const fn with_gauge_at(mut self, place: GaugePlace) -> Self {
        self.gauge = place;
        self
    }

    /// What an instrument showed.
    pub fn shown(&self, reading: Reading) -> Shown {
        let si = self.readings[reading.index()];
        if si.is_nan() {
            Shown::Nothing
        } else if si == f64::INFINITY {
            Shown::OverRange
        } else {
            let dimension = reading.dimension();
            Shown::Value(Quantity { si, dimension })
        }
    }

    /// Whether something could be seen to be so.
    pub fn is(&self, status: Status) -> bool {
        self.statuses & (1 << status.index()) != 0
    }

    /// Where the micron gauge was.
    pub const fn gauge(&self) -> GaugePlace {
        self.gauge
    }
}

impl Course {
    /// Takes in an action that was carried out; `seen` is as things stood just after it.
    pub fn acted(&mut self, tick: u64, action: Action, seen: Seen) {
        if UNDOES_PROOF.iter().any(|m| m.is_reached_by(&action)) {
            self.proof = None;
        }
        if Milestone::HandedBack.is_reached_by(&action) {
            self.handed_back = Some(tick);
        }
        let action = Some(action);
        self.moments.push(Sample { tick, action, seen });
        self.end = tick;
    }

    /// Takes in that another second passed, and what is true inside then.
    pub fn passed(&mut self, tick: u64, seen: Seen, truth: &Truth) {
        if truth.running_for >= RUN_IN {
            let truth = *truth;
            self.proof = Some(Proof { tick, truth });
        }
        let action = None;
        self.moments.push(Sample { tick, action, seen });
        self.end = tick;
    }

    /// The moments at which a milestone was reached, in order, each with its place in the course.
    pub fn reached(&self, milestone: Milestone) -> impl Iterator<Item = (usize, &Sample)> {
        self.moments.iter().enumerate().filter(move |(_, moment)| {
            moment
                .action
                .as_ref()
                .is_some_and(|action| milestone.is_reached_by(action))
        })
    }

    /// The length of the course, s.
    pub const fn duration(&self) -> f64 {
        self.end as f64 / TICKS_PER_SECOND as f64
    }
}
