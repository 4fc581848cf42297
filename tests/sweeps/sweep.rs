//! A unit settled at every size of a fault, in steps: what the instruments read, where it jumps.

use coldbench::job::{Overrides, Settled, settle};
use coldbench::plant::FaultKind;
use coldbench::scenario::Scenario;
use coldbench::units::Temperature;

/// The weathers of a sweep, °F outdoors: a mild day, the rating point, a heat wave.
pub const WEATHERS: [f64; 3] = [75.0, 95.0, 115.0];

/// What is varied.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Axis {
    /// The charge, from 40 to 140 % of the nameplate.
    Charge,
    /// A fault, over its range.
    Fault(FaultKind),
}

impl Axis {
    /// Everything whose size can be read off a running unit.
    pub const ALL: [Self; 7] = [
        Self::Charge,
        Self::Fault(FaultKind::CloggedDrier),
        Self::Fault(FaultKind::BlockedMetering),
        Self::Fault(FaultKind::FouledCondenser),
        Self::Fault(FaultKind::DirtyFilter),
        Self::Fault(FaultKind::WeakCompressorValves),
        Self::Fault(FaultKind::AirInside),
    ];

    /// The name on the command line.
    pub fn name(self) -> &'static str {
        match self {
            Self::Charge => "charge",
            Self::Fault(kind) => kind.sheet().name,
        }
    }

    /// Its sizes, in `steps` equal steps.
    pub fn sizes(self, steps: usize) -> Vec<f64> {
        let (least, most) = match self {
            Self::Charge => (0.4, 1.4),
            Self::Fault(kind) => kind.sheet().range,
        };
        let size = |i| least + (most - least) * i as f64 / steps as f64;
        (0..=steps).map(size).collect()
    }

    fn overrides(self, size: f64, outdoor: f64) -> Overrides {
        let mut overrides = Overrides {
            outdoor: Some(Temperature::from_fahrenheit(outdoor)),
            ..Overrides::default()
        };
        match self {
            Self::Charge => overrides.charge = Some(size),
            Self::Fault(kind) => overrides.faults = vec![(kind.sheet().of_size)(size)],
        }
        overrides
    }
}

/// A reading: its name, how to get it, and the step below which nobody looks.
pub type Read = (&'static str, fn(&Settled) -> f64, f64);

/// What is read off a settled unit; the step is about a digit or two of the instrument.
pub const READINGS: [Read; 9] = [
    ("suction, psig", |s| s.suction_psig, 0.6),
    ("liquid line, psig", |s| s.liquid_psig, 1.5),
    ("superheat, °F", |s| s.superheat_f, 0.6),
    ("subcooling, °F", |s| s.subcooling_f, 0.6),
    ("discharge, °F", |s| s.discharge_f, 1.5),
    ("air drop, °F", |s| s.evaporator_air_drop_f, 0.5),
    ("compressor, A", |s| s.compressor_amps, 0.15),
    ("capacity, kBtu/h", |s| s.capacity_btu_h / 1e3, 0.3),
    ("sensible share", |s| s.sensible_share, 0.02),
];

/// A unit settled along an axis.
pub struct Sweep {
    /// Unit, axis and weather.
    pub name: String,
    /// Size and what was read there.
    pub points: Vec<(f64, Settled)>,
}

impl Sweep {
    /// Settles a shipped unit along an axis at an outdoor temperature, °F.
    pub fn of(unit: &str, axis: Axis, outdoor: f64, steps: usize) -> Self {
        let scenario = Scenario::of_shipped_unit(unit).expect("a shipped unit");
        let points = axis.sizes(steps);
        let points = points
            .into_iter()
            .map(|size| (size, settle(&scenario, &axis.overrides(size, outdoor))));
        Self {
            name: format!("{unit}, {}, {outdoor} °F", axis.name()),
            points: points.collect(),
        }
    }

    /// Everything along it that a technician would not believe.
    pub fn wrong(&self) -> Vec<String> {
        let mut wrong = Vec::new();
        for (reading, of, floor) in READINGS {
            let values: Vec<f64> = self.points.iter().map(|(_, s)| of(s)).collect();
            if let Some(i) = values.iter().position(|value| !value.is_finite()) {
                let size = self.points[i].0;
                wrong.push(format!(
                    "{}: {reading} at {size:.3} is no number",
                    self.name
                ));
                continue;
            }
            for i in jumps(&values, floor) {
                if !self.is_event(i) {
                    let sizes = (self.points[i].0, self.points[i + 1].0);
                    wrong.push(format!(
                        "{}: {reading} jumps from {:.2} at {:.3} to {:.2} at {:.3}",
                        self.name,
                        values[i],
                        sizes.0,
                        values[i + 1],
                        sizes.1
                    ));
                }
            }
        }
        wrong
    }

    /// Whether something happens between a point and the next that a technician would name: the
    /// unit stops, or finds no rest.
    fn is_event(&self, i: usize) -> bool {
        let (a, b) = (&self.points[i].1, &self.points[i + 1].1);
        let stands = |s: &Settled| s.compressor_w == 0.0;
        !a.settled || !b.settled || stands(a) != stands(b)
    }
}

/// The steps that move a value by more than `floor` and by more than five times what the two
/// steps on either side do.
fn jumps(values: &[f64], floor: f64) -> Vec<usize> {
    let steps: Vec<f64> = values.windows(2).map(|w| (w[1] - w[0]).abs()).collect();
    let is_jump = |&i: &usize| {
        let around = [i.checked_sub(2), i.checked_sub(1), Some(i + 1), Some(i + 2)];
        let around = around.into_iter().flatten().filter_map(|j| steps.get(j));
        steps[i] > floor && steps[i] > 5.0 * around.fold(0.0, |most: f64, step| most.max(*step))
    };
    (0..steps.len()).filter(is_jump).collect()
}
