//! The units that the published values are about, run to a steady state.

use super::Figure;
use super::data::Row;
use coldbench::job::{Job, Overrides, Settled, settle};
use coldbench::plant::{Fault, Unit};
use coldbench::scenario::Scenario;
use coldbench::units::Temperature;

/// A unit with its scenario: sound, at 95 °F outdoors and 80/67 °F indoors.
#[derive(Debug, Clone)]
pub(super) struct Rated {
    scenario: Scenario,
}

impl Rated {
    /// The R-22 unit of 3 tons with a fixed orifice.
    pub fn orifice() -> Self {
        Self::shipped("r22_3ton_orifice")
    }

    /// The R-410A unit of 3 tons with an expansion valve.
    pub fn valve() -> Self {
        Self::shipped("r410a_3ton_txv")
    }

    /// A shipped unit by its name.
    pub fn shipped(name: &str) -> Self {
        let scenario = Scenario::of_shipped_unit(name);
        Self {
            scenario: scenario.expect("both names are on the list of shipped units"),
        }
    }

    /// The unit itself.
    pub const fn unit(&self) -> &Unit {
        &self.scenario.unit
    }

    /// The same with something changed about the unit.
    pub fn with(mut self, change: impl FnOnce(&mut Unit)) -> Self {
        change(&mut self.scenario.unit);
        self
    }

    /// How it stands with nothing overridden.
    pub fn at_rating(&self) -> Settled {
        self.settle(&Overrides::default())
    }

    /// How it stands at an outdoor temperature, °F.
    pub fn at_outdoor(&self, fahrenheit: f64) -> Settled {
        self.settle(&Overrides {
            outdoor: Some(Temperature::from_fahrenheit(fahrenheit)),
            ..Overrides::default()
        })
    }

    /// How it stands with a fault.
    pub fn with_fault(&self, fault: Fault) -> Settled {
        self.settle(&Overrides {
            faults: vec![fault],
            ..Overrides::default()
        })
    }

    /// A job on it with these faults.
    pub fn job(&self, faults: &[Fault]) -> Job {
        let overrides = Overrides {
            faults: faults.to_vec(),
            ..Overrides::default()
        };
        self.job_with(&overrides)
    }

    /// A job on it with these overrides.
    pub fn job_with(&self, overrides: &Overrides) -> Job {
        Job::new(&overrides.put_into(&self.scenario))
    }

    /// How it stands with these overrides.
    pub fn settle(&self, overrides: &Overrides) -> Settled {
        settle(&self.scenario, overrides)
    }
}

/// The figures of the two units that most published values are about.
pub(super) fn of_both(of_unit: impl Fn(&str, &Rated) -> Vec<Figure>) -> Vec<Figure> {
    [
        ("R-22 orifice", Rated::orifice()),
        ("R-410A valve", Rated::valve()),
    ]
    .iter()
    .flat_map(|(name, unit)| of_unit(name, unit))
    .collect()
}

/// Capacity and power per capacity as a share of the rating, beside a published `row` of both.
///
/// Chosen: every row is held to the tolerances of test B against test A.
pub(super) fn response(what: &str, row: &Row, rated: &Settled, stands: &Settled) -> [Figure; 2] {
    let per_capacity = |s: &Settled| s.power_w / s.capacity_btu_h;
    [
        (
            "capacity",
            "capacity",
            0.02,
            stands.capacity_btu_h / rated.capacity_btu_h,
        ),
        (
            "power per capacity",
            "power_per_capacity",
            0.03,
            per_capacity(stands) / per_capacity(rated),
        ),
    ]
    .map(|(name, column, by, ours)| {
        Figure::near(
            format!("{what}: {name}"),
            "ratio",
            row.number(column),
            by,
            ours,
        )
    })
}
