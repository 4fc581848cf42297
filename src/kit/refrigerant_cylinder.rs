//! The refrigerant cylinder on its charging scale.

use super::tool::{
    After, Before, Bench, Blank, Face, Follow, Nothing, Refused, Tool, keyed, opening, require,
};
use super::{FindingRow, Instrument, Stage};
use crate::plant::network::{Draws, ElementId, End, Fill, Law, NodeId, NodeSpec};
use crate::units::Fraction;
use crate::units::quantity::{Dimension, Quantity, Shown};
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoStaticStr};

/// The area of the valve of a refrigerant cylinder, m². Chosen.
const VALVE: f64 = 8.0e-6;

/// The inner volume of a 30 lb refrigerant cylinder, m³ (common practice, no source).
const VOLUME: f64 = 13.4e-3;

/// What can be done with it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, IntoStaticStr, EnumIter)]
#[strum(serialize_all = "kebab-case", prefix = "refrigerant_cylinder-do-")]
pub enum Action {
    /// Set its valve.
    Valve(Fraction),
    /// Turn it over (liquid) or upright (vapour).
    Inverted(bool),
    /// Set the charging scale to zero as it stands.
    Tare,
}

impl Action {
    /// What fills the blank of its text.
    pub const fn blank(self) -> Option<Blank> {
        match self {
            Self::Valve(open) => Some(Blank::Opening(open)),
            Self::Inverted(on) => Some(Blank::Flag(on)),
            Self::Tare => None,
        }
    }
}

keyed! { RefrigerantCylinder "refrigerant_cylinder-shows-":
    /// What can be read on it.
    pub enum Reading {
        /// The charging scale under it, less its tare.
        Scale,
    }
}

keyed! { RefrigerantCylinder "refrigerant_cylinder-done-":
    /// What done with it a rubric can ask for.
    pub enum Milestone {
        /// It was opened.
        Opened,
    }
}

/// What anybody can see of it: nothing that a rubric names.
pub type Status = Nothing;

/// What the watch can note of it: nothing.
pub type Finding = Nothing;

/// Cylinder and scale as they stand. What is inside is a node of the network.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RefrigerantCylinder {
    /// Its valve.
    pub valve: Fraction,
    /// It stands on its head: liquid comes out.
    pub inverted: bool,
    scale: Instrument,
    tare: Option<f64>,
    inside: NodeId,
    outlet: ElementId,
}

impl RefrigerantCylinder {
    /// What the scale has gained since its tare, kg; negative when the cylinder has given; `None`
    /// before it was set to zero.
    pub fn weighed_in(&self) -> Option<f64> {
        self.tare.map(|tare| self.scale.shown() - tare)
    }

    /// The node of what is inside.
    pub const fn inside(&self) -> NodeId {
        self.inside
    }
}

impl Tool for RefrigerantCylinder {
    type Action = Action;
    type Reading = Reading;
    type Milestone = Milestone;
    type Status = Status;
    type Finding = Finding;

    /// Shut, upright, the scale at rest on it and not tared.
    fn set_up(bench: &mut Bench<'_>) -> Self {
        let refrigerant = bench.load.refrigerant.kilograms();
        let inside = bench.network.add_node(NodeSpec {
            volume: VOLUME,
            wall: 3000.0,
            to_ambient: 3.0,
            fill: Fill::Refrigerant {
                mass: refrigerant,
                temperature: bench.air_temperature,
            },
        });
        let ends = (End::Node(inside), End::Node(bench.hose));
        Self {
            valve: Fraction::ZERO,
            inverted: false,
            // Chosen: a charging scale settles in a second and is read to 5 g (common practice).
            scale: Instrument::at(refrigerant, 0.5, 5e-3),
            tare: None,
            inside,
            outlet: bench.network.add_element(ends.0, ends.1, Law::Shut),
        }
    }

    fn before(&self, at: &mut Before<'_>) {
        let area = if at.is_on {
            VALVE * self.valve.get()
        } else {
            0.0
        };
        at.network.set_law(self.outlet, opening(area));
        let draws = if self.inverted {
            Draws::Liquid
        } else {
            Draws::Vapour
        };
        at.network.set_draws(self.inside, draws);
    }

    fn after(&mut self, _: &After<'_>) {}

    fn follow(&mut self, at: &Follow<'_>) {
        self.scale.follow(at.refrigerant(self.inside), at.dt);
    }

    fn act(&mut self, action: Action) -> Result<(), Refused> {
        match action {
            Action::Valve(open) => self.valve = open,
            Action::Inverted(inverted) => {
                require(self.inverted != inverted, "refusal-cylinder-stands-so")?;
                self.inverted = inverted;
            }
            Action::Tare => self.tare = Some(self.scale.shown()),
        }
        Ok(())
    }

    fn reaches(action: Action) -> Option<Milestone> {
        match action {
            Action::Valve(open) => (open.get() > 0.0).then_some(Milestone::Opened),
            Action::Inverted(_) | Action::Tare => None,
        }
    }

    fn stage(milestone: Milestone) -> Stage {
        match milestone {
            Milestone::Opened => Stage::Prove,
        }
    }

    fn face(reading: Reading) -> Face {
        match reading {
            Reading::Scale => Face {
                dimension: Dimension::Mass,
                // A quarter of an ounce.
                steady_within: 0.007,
                is_key: true,
            },
        }
    }

    fn shown(&self, reading: Reading) -> Shown {
        let si = match reading {
            Reading::Scale => self.scale.shown() - self.tare.unwrap_or(0.0),
        };
        let dimension = Dimension::Mass;
        Shown::Value(Quantity { si, dimension })
    }

    fn is(&self, status: Status, _: bool) -> bool {
        match status {}
    }

    fn row(finding: Finding) -> FindingRow {
        match finding {}
    }

    fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(self.valve.get());
        visit(f64::from(u8::from(self.inverted)));
        visit(self.scale.position());
        visit(self.tare.unwrap_or(0.0));
    }
}
