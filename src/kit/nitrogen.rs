//! Nitrogen cylinder, regulator and its relief.

use super::tool::{After, Before, Bench, Blank, Face, Follow, Refused, Size, Tool, keyed, require};
use super::{FindingRow, PressureGauge, RowPrice, Stage};
use crate::fluid::gas::R_UNIVERSAL;
use crate::plant::network::{
    Boundary, BoundaryId, Direction, ElementId, End, Law, Path, Restriction,
};
use crate::units::quantity::{Dimension, Quantity, Shown};
use crate::units::{ATMOSPHERE, GaugePressure, PSI};
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoStaticStr};

/// The water volume of the cylinder, m³. Chosen: a 40 cubic foot cylinder (common practice).
const VOLUME: f64 = 8.0e-3;

/// The relief of the regulator opens here, Pa gauge. Chosen (common practice, no source).
const RELIEF: f64 = 600.0 * PSI;

/// The end of the regulator's screw. Chosen: a regulator for refrigeration goes to 800 psig.
const SCREW_END: GaugePressure = GaugePressure::from_psig(800.0);

/// The area of the seat of a regulator, m². Chosen: 100 psig within half a minute.
const SEAT: f64 = 5.0e-6;

/// What can be done with it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, IntoStaticStr, EnumIter)]
#[strum(serialize_all = "kebab-case", prefix = "nitrogen-do-")]
pub enum Action {
    /// Open or shut the valve of the cylinder.
    Valve(bool),
    /// Fit the regulator to the cylinder, or take it off.
    Regulator(bool),
    /// Turn the regulator's screw to this outlet pressure; 0 is backed off.
    SetRegulator(GaugePressure),
}

impl Action {
    /// What fills the blank of its text.
    pub const fn blank(self) -> Option<Blank> {
        match self {
            Self::Valve(on) | Self::Regulator(on) => Some(Blank::Flag(on)),
            Self::SetRegulator(to) => Some(Blank::Pressure(to)),
        }
    }
}

keyed! { Nitrogen "nitrogen-shows-":
    /// What can be read on it.
    pub enum Reading {
        /// The outlet gauge of the regulator.
        Outlet,
        /// The cylinder gauge of the regulator.
        Cylinder,
    }
}

keyed! { Nitrogen "nitrogen-done-":
    /// What done with it a rubric can ask for.
    pub enum Milestone {
        /// The cylinder was opened.
        Opened,
    }
}

keyed! { Nitrogen "nitrogen-is-":
    /// What anybody can see of it.
    pub enum Status {
        /// The cylinder or its regulator is shut off.
        ShutOff,
        /// The regulator is fitted.
        RegulatorFitted,
    }
}

keyed! { Nitrogen "nitrogen-found-":
    /// What the watch can note of it.
    pub enum Finding {
        /// Nitrogen was let in without a regulator.
        NoRegulator,
    }
}

/// Nitrogen cylinder and regulator as they stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NitrogenSet {
    /// The cylinder's valve is open.
    pub valve_open: bool,
    /// The regulator is on the cylinder.
    pub regulator_fitted: bool,
    /// What the regulator's screw is set to; 0 is backed off.
    pub setting: GaugePressure,
    /// What is left in the cylinder, mol.
    content: f64,
    /// The outlet gauge.
    pub outlet_gauge: PressureGauge,
    /// The cylinder gauge.
    pub cylinder_gauge: PressureGauge,
    outside: BoundaryId,
    outlet: ElementId,
}

impl NitrogenSet {
    /// The pressure in the cylinder at an air temperature, K: Pa absolute.
    fn cylinder_pressure(&self, air: f64) -> f64 {
        self.content * R_UNIVERSAL * air / VOLUME
    }

    /// The pressure at the outlet, Pa absolute, when gas can flow; `None` when it is shut off.
    fn outlet_pressure(&self, air: f64) -> Option<f64> {
        if !self.valve_open {
            None
        } else if self.regulator_fitted {
            let set = self.setting.pascals().min(RELIEF);
            (set > 0.0).then(|| (set + ATMOSPHERE).min(self.cylinder_pressure(air)))
        } else {
            Some(self.cylinder_pressure(air))
        }
    }
}

/// Nitrogen outside, at a pressure, Pa, and a temperature, K.
const fn nitrogen(pressure: f64, temperature: f64) -> Boundary {
    Boundary {
        pressure,
        temperature,
        moles: [1.0, 0.0, 0.0],
    }
}

impl Tool for NitrogenSet {
    type Action = Action;
    type Reading = Reading;
    type Milestone = Milestone;
    type Status = Status;
    type Finding = Finding;

    /// A full cylinder, shut, its regulator fitted and backed off.
    ///
    /// Chosen: full is 2,000 psig at 70 °F (common practice, no source).
    fn set_up(bench: &mut Bench<'_>) -> Self {
        let full = 2000.0 * PSI + ATMOSPHERE;
        let outside = nitrogen(ATMOSPHERE, bench.air_temperature);
        let outside = bench.network.add_boundary(outside);
        let ends = (End::Boundary(outside), End::Node(bench.hose));
        Self {
            valve_open: false,
            regulator_fitted: true,
            setting: GaugePressure::from_psig(0.0),
            content: full * VOLUME / (R_UNIVERSAL * 294.26),
            outlet_gauge: PressureGauge::regulator_outlet(),
            cylinder_gauge: PressureGauge::cylinder(),
            outside,
            outlet: bench.network.add_element(ends.0, ends.1, Law::Shut),
        }
    }

    fn before(&self, at: &mut Before<'_>) {
        let law = match self.outlet_pressure(at.air_temperature) {
            Some(pressure) if at.is_on => {
                let outside = nitrogen(pressure, at.air_temperature);
                at.network.set_boundary(self.outside, outside);
                let seat = Path::through(&[Restriction::opening(SEAT)]);
                Law::Path(seat.only(Direction::Forward))
            }
            _ => Law::Shut,
        };
        at.network.set_law(self.outlet, law);
    }

    fn after(&mut self, at: &After<'_>) {
        let given = at.network.flux(self.outlet).gas[0] * at.dt;
        self.content = (self.content - given).max(0.0);
    }

    fn follow(&mut self, at: &Follow<'_>) {
        let air = at.air_temperature;
        let outlet = self.outlet_pressure(air).unwrap_or(ATMOSPHERE);
        let cylinder = if self.valve_open {
            self.cylinder_pressure(air)
        } else {
            ATMOSPHERE
        };
        let (outlet, cylinder) = if self.regulator_fitted {
            (outlet, cylinder)
        } else {
            (ATMOSPHERE, ATMOSPHERE)
        };
        self.outlet_gauge.follow(outlet, at.dt);
        self.cylinder_gauge.follow(cylinder, at.dt);
    }

    fn watch(&self, at: &After<'_>, note: &mut dyn FnMut(Finding, Size)) {
        if at.network.flux(self.outlet).gas[0] > 0.0 && !self.regulator_fitted {
            note(Finding::NoRegulator, Size::More(at.dt));
        }
    }

    fn act(&mut self, action: Action) -> Result<(), Refused> {
        match action {
            Action::Valve(open) => {
                require(self.valve_open != open, "refusal-cylinder-so")?;
                self.valve_open = open;
            }
            Action::Regulator(fitted) => {
                require(self.regulator_fitted != fitted, "refusal-regulator-so")?;
                require(!self.valve_open, "refusal-shut-nitrogen-first")?;
                self.regulator_fitted = fitted;
            }
            Action::SetRegulator(to) => {
                require(self.regulator_fitted, "refusal-no-regulator")?;
                let range = 0.0..=SCREW_END.pascals();
                require(range.contains(&to.pascals()), "refusal-regulator-range")?;
                self.setting = to;
            }
        }
        Ok(())
    }

    fn reaches(action: Action) -> Option<Milestone> {
        match action {
            Action::Valve(true) => Some(Milestone::Opened),
            Action::Valve(false) | Action::Regulator(_) | Action::SetRegulator(_) => None,
        }
    }

    fn stage(milestone: Milestone) -> Stage {
        match milestone {
            Milestone::Opened => Stage::Test,
        }
    }

    fn looms(&self, finding: Finding) -> bool {
        match finding {
            Finding::NoRegulator => !self.regulator_fitted,
        }
    }

    fn face(reading: Reading) -> Face {
        Face {
            dimension: Dimension::GaugePressure,
            steady_within: match reading {
                Reading::Outlet => 5.5 * PSI,
                Reading::Cylinder => 55.0 * PSI,
            },
            is_key: reading == Reading::Outlet,
        }
    }

    fn shown(&self, reading: Reading) -> Shown {
        let shown = match reading {
            Reading::Outlet => self.outlet_gauge.shown(),
            Reading::Cylinder => self.cylinder_gauge.shown(),
        };
        let dimension = Dimension::GaugePressure;
        shown.map_or(Shown::OverRange, |si| {
            Shown::Value(Quantity { si, dimension })
        })
    }

    fn needle(&self, reading: Reading) -> Option<(f64, f64, f64)> {
        let gauge = match reading {
            Reading::Outlet => &self.outlet_gauge,
            Reading::Cylinder => &self.cylinder_gauge,
        };
        Some((gauge.needle(), gauge.least, gauge.most))
    }

    fn is(&self, status: Status, is_on: bool) -> bool {
        match status {
            Status::ShutOff => !is_on || !self.valve_open || self.setting.pascals() == 0.0,
            Status::RegulatorFitted => self.regulator_fitted,
        }
    }

    fn row(finding: Finding) -> FindingRow {
        match finding {
            Finding::NoRegulator => {
                FindingRow::new(Dimension::Plain, RowPrice::Priceless).at(Stage::Test)
            }
        }
    }

    fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(f64::from(u8::from(self.valve_open)));
        visit(f64::from(u8::from(self.regulator_fitted)));
        visit(self.setting.pascals());
        visit(self.content);
        self.outlet_gauge.visit_state(visit);
        self.cylinder_gauge.visit_state(visit);
    }
}
