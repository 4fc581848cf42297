//! A course of events told by hand, and the shorthand of the tests.

use coldbench::job::{Entry, Truth};
use coldbench::marking::{Course, Evidence, Mark, Seen, mark};
use coldbench::plant::{FaultKind, Line, Spot};
use coldbench::scenario::{Criterion, Rule};

use coldbench::units::Fraction;
use coldbench::words::{
    Action, Bound, Condition, Diagnosis, Finding, FindingKind, GaugePlace, Level, Part, Reading,
    SheetField, Shown, Status,
};

/// A course told as a story: what is seen stays so until it is said to be otherwise.
pub struct Story {
    pub course: Course,
    seen: Seen,
}

impl Story {
    pub fn new() -> Self {
        Self {
            course: Course::default(),
            seen: Seen::nothing(),
        }
    }

    pub fn shows(mut self, reading: Reading, level: Level) -> Self {
        self.seen = self.seen.with(reading, Shown::Value(level.quantity()));
        self
    }

    pub fn over_range(mut self, reading: Reading) -> Self {
        self.seen = self.seen.with(reading, Shown::OverRange);
        self
    }

    pub fn blank(mut self, reading: Reading) -> Self {
        self.seen = self.seen.with(reading, Shown::Nothing);
        self
    }

    pub fn is(mut self, status: Status) -> Self {
        self.seen = self.seen.with_status(status, true);
        self
    }

    pub fn no_longer(mut self, status: Status) -> Self {
        self.seen = self.seen.with_status(status, false);
        self
    }

    pub fn gauge_at(mut self, place: GaugePlace) -> Self {
        self.seen = self.seen.with_gauge_at(place);
        self
    }

    pub fn does(mut self, action: Action) -> Self {
        self.course.acted(self.course.end, action, self.seen);
        self
    }

    /// Lets ticks pass, with a sample at each whole second.
    pub fn ticks(mut self, ticks: u64) -> Self {
        for _ in 0..ticks {
            self.course.end += 1;
            if self.course.end.is_multiple_of(10) {
                let (tick, truth) = (self.course.end, self.course.truth);
                self.course.passed(tick, self.seen, &truth);
            }
        }
        self
    }

    pub fn seconds(self, seconds: u64) -> Self {
        self.ticks(10 * seconds)
    }

    /// Something found at the compressor.
    pub fn finds(mut self, kind: FindingKind, size: f64) -> Self {
        self.course.findings.push(Finding {
            tick: self.course.end,
            kind,
            size,
            at: Part::Compressor.into(),
        });
        self
    }

    pub fn writes(mut self, field: SheetField, value: Level, instruments: Option<Level>) -> Self {
        let entry = Entry {
            tick: self.course.end,
            value,
            instruments: instruments.map(Level::quantity),
        };
        self.course.entries.insert(field, entry);
        self
    }

    pub fn diagnoses(mut self, fault: Option<FaultKind>, at: Option<Spot>) -> Self {
        self.course.diagnosis = Some((self.course.end, Diagnosis { fault, at }));
        self
    }

    pub fn truth(mut self, change: impl FnOnce(&mut Truth)) -> Self {
        change(&mut self.course.truth);
        self
    }

    /// Runs for so many seconds with what is true then, and stops.
    pub fn runs(mut self, seconds: u64, change: impl FnOnce(&mut Truth)) -> Self {
        change(&mut self.course.truth);
        for _ in 0..seconds {
            self.course.truth.running_for += 1.0;
            self = self.seconds(1);
        }
        self.course.truth.running_for = 0.0;
        self
    }

    pub fn marked(&self, rule: Rule) -> Mark {
        let mut marks = mark(&self.course, &[criterion(4, rule)]);
        marks.remove(0)
    }

    #[track_caller]
    pub fn expect(&self, rule: Rule, points: u32, evidence: &[(u64, &str)]) {
        let mark = self.marked(rule);
        let said: Vec<(u64, String)> = mark
            .evidence
            .iter()
            .map(|Evidence { at, text }| (*at, text.to_string()))
            .collect();
        let said: Vec<(u64, &str)> = said.iter().map(|(at, text)| (*at, text.as_str())).collect();
        assert_eq!((mark.points, said.as_slice()), (points, evidence));
    }
}

pub fn criterion(points: u32, rule: Rule) -> Criterion {
    Criterion {
        text: "asked".to_owned(),
        points,
        critical: false,
        skill: Some("EU 2015/2067 Annex I 5.01".to_owned()),
        rule,
    }
}

pub fn front_seat(line: Line) -> Action {
    let open = Fraction::ZERO;
    Action::Stem { line, open }
}

pub fn open(line: Line) -> Action {
    let open = Fraction::clamped(0.05);
    Action::Stem { line, open }
}

pub fn low_below(psig: f64) -> Condition {
    Condition::Shows(Reading::LowGauge, Bound::Below(Level::Psig(psig)))
}

pub fn microns_below(microns: f64) -> Condition {
    Condition::Shows(Reading::Microns, Bound::Below(Level::Microns(microns)))
}
