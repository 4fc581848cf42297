//! What a tool is. Its file has all of it; the list in [`tools`](super::tools) has its one line.
//!
//! A tool owns its nodes and elements in the network, its state, its actions, readings,
//! milestones, statuses and findings. It knows no language: each of those is an enum whose variant
//! gives the key of its text, `nitrogen-do-valve`, and what fills the blanks of that text.

use super::tools;
use super::{FindingRow, Stage};
use crate::plant::network::{BoundaryId, ElementId, Law, Network, NodeId, Path, Restriction};
use crate::units::quantity::{Dimension, Shown};
use crate::units::{Fraction, GaugePressure, Mass};
use serde::{Deserialize, Serialize};
use strum::VariantArray;

/// Declares an enum of a tool: the tool's name, then what the keys of its texts begin with.
macro_rules! keyed {
    ($Tool:ident $prefix:literal: $(#[$doc:meta])* pub enum $Name:ident { $($body:tt)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        #[derive(serde::Serialize, serde::Deserialize, strum::IntoStaticStr, strum::VariantArray)]
        #[strum(serialize_all = "kebab-case", prefix = $prefix)]
        pub enum $Name { $($body)* }

        impl crate::kit::tool::Word for $Name {
            fn index(self) -> usize {
                self as usize
            }
        }

        impl From<$Name> for crate::kit::tools::$Name {
            fn from(one: $Name) -> Self {
                Self::$Tool(one)
            }
        }
    };
}
pub(super) use keyed;

/// A word of a tool with its place among its like.
pub trait Word: VariantArray + Copy {
    /// Its place in the list of its enum.
    fn index(self) -> usize;
}

/// What was brought, as the scenario says it.
#[derive(Debug, Clone, Copy)]
pub struct Load<'a> {
    /// Refrigerant in the cylinder.
    pub refrigerant: Mass,
    /// Tools that are not on every cart.
    pub extra: &'a [tools::Name],
    /// The vacuum pump is rated for refrigerants that burn.
    pub pump_rated: bool,
    /// The recovery machine is rated for refrigerants that burn.
    pub recovery_rated: bool,
}

/// Where a tool is set up: what it can join its own nodes and elements to.
#[derive(Debug)]
pub struct Bench<'a> {
    /// The network.
    pub network: &'a mut Network,
    /// The far end of the centre hose.
    pub hose: NodeId,
    /// The air of the place.
    pub air: BoundaryId,
    /// Its temperature, K.
    pub air_temperature: f64,
    /// What was brought.
    pub load: Load<'a>,
    /// The scenario names the tool among those that not every cart has.
    pub is_extra: bool,
}

/// Before a step: what a tool opens and shuts.
#[derive(Debug)]
pub struct Before<'a> {
    /// The network.
    pub network: &'a mut Network,
    /// The centre hose is on the tool.
    pub is_on: bool,
    /// The temperature of the air of the place, K.
    pub air_temperature: f64,
}

/// After a step of the plant: what flowed in it.
#[derive(Debug, Clone, Copy)]
pub struct After<'a> {
    /// The network.
    pub network: &'a Network,
    /// The temperature of the air of the place, K.
    pub air_temperature: f64,
    /// The length of the step, s.
    pub dt: f64,
}

/// A tick: what the gauges of a tool follow.
#[derive(Debug, Clone, Copy)]
pub struct Follow<'a> {
    /// The network.
    pub network: &'a Network,
    /// The temperature of the air of the place, K.
    pub air_temperature: f64,
    /// The length of the tick, s.
    pub dt: f64,
}

impl Follow<'_> {
    /// The pressure of a node now, Pa absolute.
    pub fn pressure(&self, node: NodeId) -> f64 {
        self.network.node(node).pressure
    }

    /// The refrigerant in a node now, kg.
    pub fn refrigerant(&self, node: NodeId) -> f64 {
        self.network.node(node).refrigerant
    }
}

/// How much there is of a finding, in the SI unit of its dimension.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Size {
    /// A single event.
    Once(f64),
    /// So much more of an event that goes on.
    More(f64),
    /// The height that an event has now.
    Peak(f64),
}

/// Why a tool does not do an action as things stand: the key of the reason.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Refused(pub &'static str);

/// Refuses unless something is so.
pub(super) const fn require(so: bool, why: &'static str) -> Result<(), Refused> {
    if so { Ok(()) } else { Err(Refused(why)) }
}

/// What fills the blank `value` of an action's text, without a language.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Blank {
    /// `yes` or `no`.
    Flag(bool),
    /// `shut`, `open` or `partly`, and the percent in a blank `percent`.
    Opening(Fraction),
    /// `none` at zero, else the pressure with its unit.
    Pressure(GaugePressure),
}

/// What a reading measures, and by how much it may move and is still called steady, SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Face {
    /// What its number means.
    pub dimension: Dimension,
    /// A little more than one step of the instrument.
    pub steady_within: f64,
    /// It tells most of the tool, and stands in the course of a procedure.
    pub is_key: bool,
}

/// No such thing: for a tool that has none.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Nothing {}

impl From<Nothing> for &'static str {
    fn from(nothing: Nothing) -> Self {
        match nothing {}
    }
}

impl VariantArray for Nothing {
    const VARIANTS: &'static [Self] = &[];
}

impl Word for Nothing {
    fn index(self) -> usize {
        match self {}
    }
}

/// A tool that the technician brings. The defaults are those of a tool that does no such thing.
pub trait Tool: Sized {
    /// What can be done with it.
    type Action: Copy;
    /// What can be read on it.
    type Reading: Copy;
    /// What done with it a rubric can ask for.
    type Milestone: Copy + PartialEq;
    /// What anybody can see of it.
    type Status: Copy;
    /// What the watch can note of it.
    type Finding: Copy;

    /// Only some carts have it: a scenario must name it among its tools.
    const IS_EXTRA: bool = false;

    /// Whether it was brought.
    fn is_there(&self) -> bool {
        true
    }

    /// Sets it up: its nodes, elements and boundaries.
    fn set_up(bench: &mut Bench<'_>) -> Self;

    /// Sets what is open for the next step.
    fn before(&self, at: &mut Before<'_>);

    /// Takes in what flowed in a step.
    fn after(&mut self, at: &After<'_>);

    /// Lets its gauges and scales follow for a tick.
    fn follow(&mut self, at: &Follow<'_>) {
        let _ = at;
    }

    /// Says what of a step is worth noting; comes after [`Tool::after`].
    fn watch(&self, at: &After<'_>, note: &mut dyn FnMut(Self::Finding, Size)) {
        let _ = (at, note);
    }

    /// Where refrigerant leaves it to the air.
    fn outlet(&self) -> Option<ElementId> {
        None
    }

    /// It is switched on and not rated for refrigerants that burn: it could light them.
    fn could_ignite(&self) -> bool {
        false
    }

    /// Does an action, or refuses it and changes nothing.
    fn act(&mut self, action: Self::Action) -> Result<(), Refused>;

    /// The milestone that an action reaches.
    fn reaches(action: Self::Action) -> Option<Self::Milestone>;

    /// Where in the work a milestone belongs.
    fn stage(milestone: Self::Milestone) -> Stage;

    /// What a reading measures.
    fn face(reading: Self::Reading) -> Face;

    /// What is shown now.
    fn shown(&self, reading: Self::Reading) -> Shown;

    /// Where the needle of a reading stands as a share of its scale, and the ends of that scale,
    /// Pa gauge; `None` for a reading without a needle.
    fn needle(&self, reading: Self::Reading) -> Option<(f64, f64, f64)> {
        let _ = reading;
        None
    }

    /// Whether something can be seen to be so; `is_on`: the centre hose is on the tool.
    fn is(&self, status: Self::Status, is_on: bool) -> bool;

    /// What is fixed of a finding.
    fn row(finding: Self::Finding) -> FindingRow;

    /// Whether a finding could come, as the tool stands.
    fn looms(&self, finding: Self::Finding) -> bool {
        let _ = finding;
        false
    }

    /// Every number of the state, for digests.
    fn visit_state(&self, visit: &mut dyn FnMut(f64));
}

/// A tool that not every cart has: it adds nothing to the network where it was not brought.
impl<T: Tool> Tool for Option<T> {
    type Action = T::Action;
    type Reading = T::Reading;
    type Milestone = T::Milestone;
    type Status = T::Status;
    type Finding = T::Finding;

    const IS_EXTRA: bool = true;

    fn is_there(&self) -> bool {
        self.is_some()
    }

    fn set_up(bench: &mut Bench<'_>) -> Self {
        bench.is_extra.then(|| T::set_up(bench))
    }

    fn before(&self, at: &mut Before<'_>) {
        if let Some(tool) = self {
            tool.before(at);
        }
    }

    fn after(&mut self, at: &After<'_>) {
        if let Some(tool) = self {
            tool.after(at);
        }
    }

    fn follow(&mut self, at: &Follow<'_>) {
        if let Some(tool) = self {
            tool.follow(at);
        }
    }

    fn watch(&self, at: &After<'_>, note: &mut dyn FnMut(Self::Finding, Size)) {
        if let Some(tool) = self {
            tool.watch(at, note);
        }
    }

    fn outlet(&self) -> Option<ElementId> {
        self.as_ref().and_then(T::outlet)
    }

    fn could_ignite(&self) -> bool {
        self.as_ref().is_some_and(T::could_ignite)
    }

    fn act(&mut self, action: Self::Action) -> Result<(), Refused> {
        let tool = self.as_mut().ok_or(Refused("refusal-not-on-cart"))?;
        tool.act(action)
    }

    fn reaches(action: Self::Action) -> Option<Self::Milestone> {
        T::reaches(action)
    }

    fn stage(milestone: Self::Milestone) -> Stage {
        T::stage(milestone)
    }

    fn face(reading: Self::Reading) -> Face {
        T::face(reading)
    }

    fn shown(&self, reading: Self::Reading) -> Shown {
        self.as_ref()
            .map_or(Shown::Nothing, |tool| tool.shown(reading))
    }

    fn needle(&self, reading: Self::Reading) -> Option<(f64, f64, f64)> {
        self.as_ref().and_then(|tool| tool.needle(reading))
    }

    fn is(&self, status: Self::Status, is_on: bool) -> bool {
        self.as_ref().is_some_and(|tool| tool.is(status, is_on))
    }

    fn row(finding: Self::Finding) -> FindingRow {
        T::row(finding)
    }

    fn looms(&self, finding: Self::Finding) -> bool {
        self.as_ref().is_some_and(|tool| tool.looms(finding))
    }

    fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        if let Some(tool) = self {
            tool.visit_state(visit);
        }
    }
}

/// An opening of this area, m²; shut when it has none.
pub(super) fn opening(area: f64) -> Law {
    if area > 0.0 {
        Law::Path(Path::through(&[Restriction::opening(area)]))
    } else {
        Law::Shut
    }
}
