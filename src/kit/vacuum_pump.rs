//! The two-stage vacuum pump with its gas ballast and its oil.

use super::tool::{
    After, Before, Bench, Blank, Face, Nothing, Refused, Size, Tool, keyed, require,
};
use super::{FindingRow, Item, RowPrice, Stage};
use crate::fluid::gas::MOLAR_MASS;
use crate::plant::network::{ElementId, End, Law, NodeId};
use crate::units::quantity::{Dimension, Shown};
use crate::units::{ATMOSPHERE, MICRON, PSI};
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoStaticStr};

/// Free-air displacement, m³/s. Chosen: 5 cfm, of the usual 3 to 10 (common practice).
const DISPLACEMENT: f64 = 2.36e-3;

/// Pressure at its inlet that it cannot bear while it runs, Pa gauge. Chosen.
const TOO_HIGH: f64 = 10.0 * PSI;

/// What can be done with it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, IntoStaticStr, EnumIter)]
#[strum(serialize_all = "kebab-case", prefix = "vacuum_pump-do-")]
pub enum Action {
    /// Run or stop it.
    Run(bool),
    /// Open or shut the valve at its inlet.
    Inlet(bool),
    /// Open or shut the gas ballast.
    Ballast(bool),
    /// Change its oil.
    ChangeOil,
}

impl Action {
    /// What fills the blank of its text.
    pub const fn blank(self) -> Option<Blank> {
        match self {
            Self::Run(on) | Self::Inlet(on) | Self::Ballast(on) => Some(Blank::Flag(on)),
            Self::ChangeOil => None,
        }
    }
}

/// What can be read on it: nothing.
pub type Reading = Nothing;

keyed! { VacuumPump "vacuum_pump-done-":
    /// What done with it a rubric can ask for.
    pub enum Milestone {
        /// It was started.
        Started,
    }
}

keyed! { VacuumPump "vacuum_pump-is-":
    /// What anybody can see of it.
    pub enum Status {
        /// It runs, its inlet is open and the centre hose is on it.
        Evacuating,
        /// It is shut off from the hoses, or stands still.
        ShutOff,
    }
}

keyed! { VacuumPump "vacuum_pump-found-":
    /// What the watch can note of it.
    pub enum Finding {
        /// Running, it met pressure from the circuit; size is that pressure, Pa gauge.
        UnderPressure,
        /// Refrigerant was pumped out through it; size in kilograms.
        PumpedAway,
    }
}

/// The pump as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a switch or valve that stands by itself"
)]
pub struct VacuumPump {
    /// It runs.
    pub running: bool,
    /// The valve at its inlet is open.
    pub inlet_open: bool,
    /// The gas ballast is open.
    pub ballast_open: bool,
    /// Water in the oil, kg.
    water_in_oil: f64,
    /// It is rated for refrigerants that burn.
    rated: bool,
    hose: NodeId,
    exhaust: ElementId,
}

impl VacuumPump {
    /// The lowest pressure it can reach, Pa absolute.
    ///
    /// A two-stage service pump blanks off at 15 to 25 micron (common practice). Chosen: the open
    /// ballast costs 150 micron, a gram of water in the oil 120.
    pub fn ultimate(&self) -> f64 {
        let ballast = if self.ballast_open { 150.0 } else { 0.0 };
        (18.0 + ballast + 120e3 * self.water_in_oil) * MICRON
    }

    /// Water vapour passes through, kg in `dt` seconds; what does not leave stays in the oil.
    /// Chosen: without ballast a fifth of it condenses in the oil, with ballast a fiftieth, and
    /// an open ballast drives out what is in the oil in about half an hour.
    fn pass_water(&mut self, water: f64, dt: f64) {
        let (kept, driven_out) = if self.ballast_open {
            (0.02, dt / 1800.0)
        } else {
            (0.2, 0.0)
        };
        self.water_in_oil += kept * water;
        self.water_in_oil -= self.water_in_oil * driven_out;
    }

    /// The oil in the sight glass looks milky. Chosen: from half a gram of water.
    pub fn oil_is_milky(&self) -> bool {
        self.water_in_oil > 0.5e-3
    }

    /// It draws on what is at its inlet.
    pub const fn draws(&self) -> bool {
        self.running && self.inlet_open
    }
}

impl Tool for VacuumPump {
    type Action = Action;
    type Reading = Reading;
    type Milestone = Milestone;
    type Status = Status;
    type Finding = Finding;

    /// Stopped, its valves shut, fresh oil.
    fn set_up(bench: &mut Bench<'_>) -> Self {
        let ends = (End::Node(bench.hose), End::Boundary(bench.air));
        Self {
            running: false,
            inlet_open: false,
            ballast_open: false,
            water_in_oil: 0.0,
            rated: bench.load.pump_rated,
            hose: bench.hose,
            exhaust: bench.network.add_element(ends.0, ends.1, Law::Shut),
        }
    }

    fn before(&self, at: &mut Before<'_>) {
        let law = if at.is_on && self.draws() {
            Law::Pump {
                displacement: DISPLACEMENT,
                ultimate: self.ultimate(),
            }
        } else {
            Law::Shut
        };
        at.network.set_law(self.exhaust, law);
    }

    fn after(&mut self, at: &After<'_>) {
        let water = at.network.flux(self.exhaust).gas[2] * MOLAR_MASS[2];
        self.pass_water(water.max(0.0) * at.dt, at.dt);
    }

    fn watch(&self, at: &After<'_>, note: &mut dyn FnMut(Finding, Size)) {
        let pumped = at.network.flux(self.exhaust);
        if pumped.refrigerant > 0.0 {
            note(Finding::PumpedAway, Size::More(pumped.refrigerant * at.dt));
        }
        let at_inlet = at.network.node(self.hose).pressure - ATMOSPHERE;
        if pumped.mass > 0.0 && at_inlet > TOO_HIGH {
            note(Finding::UnderPressure, Size::Peak(at_inlet));
        }
    }

    fn outlet(&self) -> Option<ElementId> {
        Some(self.exhaust)
    }

    fn could_ignite(&self) -> bool {
        self.running && !self.rated
    }

    fn act(&mut self, action: Action) -> Result<(), Refused> {
        match action {
            Action::Run(run) => {
                require(self.running != run, "refusal-pump-so")?;
                self.running = run;
            }
            Action::Inlet(open) => self.inlet_open = open,
            Action::Ballast(open) => self.ballast_open = open,
            Action::ChangeOil => {
                require(!self.running, "refusal-stop-pump-for-oil")?;
                self.water_in_oil = 0.0;
            }
        }
        Ok(())
    }

    fn reaches(action: Action) -> Option<Milestone> {
        match action {
            Action::Run(true) => Some(Milestone::Started),
            Action::Run(false) | Action::Inlet(_) | Action::Ballast(_) | Action::ChangeOil => None,
        }
    }

    fn stage(milestone: Milestone) -> Stage {
        match milestone {
            Milestone::Started => Stage::Evacuate,
        }
    }

    fn face(reading: Reading) -> Face {
        match reading {}
    }

    fn shown(&self, reading: Reading) -> Shown {
        match reading {}
    }

    fn is(&self, status: Status, is_on: bool) -> bool {
        let evacuating = is_on && self.draws();
        match status {
            Status::Evacuating => evacuating,
            Status::ShutOff => !evacuating,
        }
    }

    fn row(finding: Finding) -> FindingRow {
        match finding {
            Finding::UnderPressure => {
                FindingRow::new(Dimension::GaugePressure, RowPrice::Lost(Item::PumpOil))
                    .highest()
                    .at(Stage::Evacuate)
            }
            Finding::PumpedAway => {
                FindingRow::new(Dimension::Mass, RowPrice::Lost(Item::Refrigerant)).from_size(1e-4)
            }
        }
    }

    fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        for flag in [self.running, self.inlet_open, self.ballast_open] {
            visit(f64::from(u8::from(flag)));
        }
        visit(self.water_in_oil);
    }
}
