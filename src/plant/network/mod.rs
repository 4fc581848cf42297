//! One network for refrigerant, nitrogen, air and water, from full charge to deep vacuum.
//!
//! Nodes are control volumes, elements join them to one another and to boundaries. A step is:
//! flash, donors, pressures with an active set, implicit species, energy, free water. The same
//! flux leaves one end and enters the other, so mass, moles and energy balance to round-off
//! whatever the linearisation is worth.
//!
//! - flow goes by total mass and is split by what the donor delivers;
//! - `(I - dt dF/dp) dp = dt F` gives all pressures at once, with conductances held (Picard);
//! - species are implicit and upwind, so amounts stay positive at any step;
//! - energy rides on the solved fluxes; the wall's heat in every node lets it be explicit.

mod draw;
mod element;
mod flash;
pub mod gas;
mod ledger;
mod linear;
mod node;
mod pressures;
mod transport;
mod water;

pub use draw::{Draw, slip};
pub use element::{
    Boundary, BoundaryId, Direction, ElementId, End, Law, NodeId, Path, Restriction,
};
pub use ledger::{Amounts, Crossed, Flux, Ledger};
pub use node::{Draws, Fill, Node, NodeSpec, Phase};

use crate::fluid::refrigerant::Refrigerant;
use crate::fluid::water::SPECIFIC_HEAT_LIQUID as LIQUID_HEAT;
use crate::units::ATMOSPHERE;
use element::Conductor;
use gas::R_UNIVERSAL;
use std::sync::Arc;
use water::Moisture;

/// The most nodes.
pub const MAX_NODES: usize = 16;
/// The most elements.
pub const MAX_ELEMENTS: usize = 48;
/// The most boundaries.
pub const MAX_BOUNDARIES: usize = 8;
/// Nodes and boundaries in one row: where an element may end.
const MAX_PLACES: usize = MAX_NODES + MAX_BOUNDARIES;

/// What a coil makes of a node at its outlet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlet {
    /// Quality of the refrigerant that leaves.
    pub quality: f64,
    /// Its enthalpy, J/kg.
    pub enthalpy: f64,
    /// Its temperature, K.
    pub temperature: f64,
    /// It is what fills the node, as it is.
    pub is_bulk: bool,
}

/// What the parts do to the network in one step.
#[derive(Debug, Clone)]
pub struct Drive {
    /// Heat into a node, W.
    pub heat: [f64; MAX_NODES],
    /// Its change with the node's pressure, W/Pa.
    pub heat_per_pressure: [f64; MAX_NODES],
    /// What leaves a coil, where it is not what the node's own kind of outlet gives.
    pub outlets: [Option<Outlet>; MAX_NODES],
    /// What the first node of an element gains by each kilogram of refrigerant that leaves it
    /// forward, J/kg: a coil's single-phase zone at its outlet.
    pub on_leaving: [f64; MAX_ELEMENTS],
    /// The same of the second node by what enters it.
    pub on_entering: [f64; MAX_ELEMENTS],
}

impl Default for Drive {
    fn default() -> Self {
        Self {
            heat: [0.0; MAX_NODES],
            heat_per_pressure: [0.0; MAX_NODES],
            outlets: [None; MAX_NODES],
            on_leaving: [0.0; MAX_ELEMENTS],
            on_entering: [0.0; MAX_ELEMENTS],
        }
    }
}

/// What the compressor does at given pressures.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Compressed {
    /// Flow, kg/s.
    pub flow: f64,
    /// Its slopes with the suction and the discharge pressure, kg/(s Pa).
    pub per_suction: f64,
    /// See `per_suction`.
    pub per_discharge: f64,
    /// Electric power, W.
    pub power: f64,
    /// What the gas gains of it, J/kg; the rest warms the shell.
    pub rise: f64,
}

/// What the metering device lets pass at given pressures, kg/s, with its slopes, kg/(s Pa).
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Throttled {
    /// Flow, kg/s.
    pub flow: f64,
    /// Slope with the pressure before it.
    pub per_upstream: f64,
    /// Slope with the pressure behind it.
    pub per_downstream: f64,
}

/// The machines whose laws are not those of a path.
pub trait Machinery {
    /// The compressor, with what it draws and the pressures at its ends, Pa.
    fn compression(&self, suction: &Draw, low: f64, high: f64) -> Compressed;
    /// The metering device passing liquid or a mixture.
    fn metering(&self, donor: &Draw, upstream: f64, downstream: f64) -> Throttled;
    /// The metering device as a path, for gas.
    fn metering_bore(&self) -> Path;
}

/// An element with what is worked out of its law.
#[derive(Debug, Clone)]
struct Element {
    law: Law,
    /// Places of its ends.
    from: usize,
    to: usize,
    conductor: Conductor,
    flux: Flux,
    crossed: Crossed,
}

/// The network.
#[derive(Debug, Clone)]
pub struct Network {
    refrigerant: &'static Refrigerant,
    moisture: Arc<Moisture>,
    ambient: f64,
    nodes: Vec<Node>,
    elements: Vec<Element>,
    boundaries: Vec<Boundary>,
    /// The elements that may pass anything.
    open: Vec<u8>,
    initial: Amounts,
    ledger: Ledger,
    compressor_power: f64,
    /// Room for the next step; nothing in it outlives one.
    step: Option<Box<pressures::Step>>,
}

impl Network {
    /// An empty network for this refrigerant, in air of `ambient`, K.
    pub fn new(refrigerant: &'static Refrigerant, ambient: f64) -> Self {
        Self {
            refrigerant,
            moisture: Arc::new(Moisture::of(refrigerant)),
            ambient,
            nodes: Vec::with_capacity(MAX_NODES),
            elements: Vec::with_capacity(MAX_ELEMENTS),
            boundaries: Vec::with_capacity(MAX_BOUNDARIES),
            open: Vec::with_capacity(MAX_ELEMENTS),
            initial: Amounts::NOTHING,
            ledger: Ledger::default(),
            compressor_power: 0.0,
            step: None,
        }
    }

    /// The refrigerant that it is filled with.
    pub const fn refrigerant(&self) -> &'static Refrigerant {
        self.refrigerant
    }

    /// Sets the temperature of the air around, K.
    pub const fn set_ambient(&mut self, ambient: f64) {
        self.ambient = ambient;
    }

    /// Vapour pressure of water, or below 0 °C of ice, Pa.
    pub fn water_pressure(&self, t: f64) -> f64 {
        self.moisture.vapour_pressure(t).0
    }

    /// The same with its slope, Pa/K.
    pub(super) fn water_pressure_and_slope(&self, t: f64) -> (f64, f64) {
        self.moisture.vapour_pressure(t)
    }

    /// Pressure of water in a node by each mole in it, Pa/mol.
    pub(super) fn water_pressure_per_mole(&self, id: NodeId) -> f64 {
        let node = self.node(id);
        R_UNIVERSAL * node.temperature * node.water_vapour_share / node.vapour_volume
    }

    /// Adds a node.
    ///
    /// # Panics
    ///
    /// When there are [`MAX_NODES`] already.
    pub fn add_node(&mut self, spec: NodeSpec) -> NodeId {
        assert!(
            self.nodes.len() < MAX_NODES,
            "a network has at most {MAX_NODES} nodes"
        );
        let mut node = Node {
            volume: spec.volume,
            wall: spec.wall,
            to_ambient: spec.to_ambient,
            temperature: self.ambient,
            vapour_volume: spec.volume,
            water_vapour_share: 1.0,
            ..Node::default()
        };
        let mut put_air = |pressure: f64, water: f64| {
            let per_pressure = spec.volume / (R_UNIVERSAL * self.ambient);
            node.gas = [0.0, (pressure - water) * per_pressure, water * per_pressure];
        };
        match spec.fill {
            Fill::MoistAir => {
                put_air(
                    ATMOSPHERE,
                    0.5 * self.moisture.vapour_pressure(self.ambient).0,
                );
            }
            Fill::Evacuated => put_air(10.0, 0.0),
            Fill::Refrigerant { mass, temperature } => {
                node.refrigerant = mass.max(0.0);
                node.temperature = temperature;
            }
        }
        self.bring_to(&mut node);
        self.initial += node.contents();
        self.nodes.push(node);
        NodeId((self.nodes.len() - 1) as u8)
    }

    /// Adds a node with oil in it that holds refrigerant dissolved, kg.
    pub(super) fn add_node_with_oil(&mut self, spec: NodeSpec, oil: f64, dissolved: f64) -> NodeId {
        let id = self.add_node(spec);
        let mut node = self.nodes[usize::from(id.0)];
        let before = node.contents();
        (node.oil, node.dissolved) = (oil, dissolved);
        self.bring_to(&mut node);
        self.initial += node.contents() - before;
        self.nodes[usize::from(id.0)] = node;
        id
    }

    /// Adds the heat that the air around gives to each node, W, but to these: they have their own.
    pub(super) fn warm_by_ambient(&self, heat: &mut [f64; MAX_NODES], but: &[usize]) {
        for (i, (heat, node)) in heat.iter_mut().zip(&self.nodes).enumerate() {
            if !but.contains(&i) {
                *heat = node.to_ambient * (self.ambient - node.temperature);
            }
        }
    }

    /// Electric power of the compressor in the last step, W.
    pub(super) const fn compressor_power(&self) -> f64 {
        self.compressor_power
    }

    /// Gives a node the energy that it has at its present temperature, and flashes it.
    fn bring_to(&self, node: &mut Node) {
        let t = node.temperature;
        let curves = self.refrigerant.at(t);
        let m = node.refrigerant;
        let most = node.volume * curves.rho_g;
        node.energy = node.wall * t + node.dissolved * curves.u_l;
        for k in 0..3 {
            node.energy += node.gas[k] * gas::energy(k, t);
        }
        node.energy += node.bound_water * LIQUID_HEAT * gas::MOLAR_MASS[2] * (t - 273.15);
        if m <= most {
            node.phase = Phase::Vapour;
            node.energy += m * self.refrigerant.vapour_energy(&curves, t, m / node.volume);
        } else {
            node.phase = Phase::TwoPhase;
            let (v_l, v_g) = (1.0 / curves.rho_l, 1.0 / curves.rho_g);
            let x = ((node.volume / m - v_l) / (v_g - v_l)).clamp(0.0, 1.0);
            node.energy += m * (curves.u_l + x * (curves.u_g - curves.u_l));
        }
        flash::flash(self.refrigerant, &self.moisture, node);
    }

    /// Adds something outside.
    ///
    /// # Panics
    ///
    /// When there are [`MAX_BOUNDARIES`] already.
    pub fn add_boundary(&mut self, boundary: Boundary) -> BoundaryId {
        assert!(
            self.boundaries.len() < MAX_BOUNDARIES,
            "a network has at most {MAX_BOUNDARIES} boundaries"
        );
        self.boundaries.push(boundary);
        BoundaryId((self.boundaries.len() - 1) as u8)
    }

    /// Changes what is outside.
    pub fn set_boundary(&mut self, id: BoundaryId, boundary: Boundary) {
        self.boundaries[usize::from(id.0)] = boundary;
    }

    /// What is outside.
    pub fn boundary(&self, id: BoundaryId) -> &Boundary {
        &self.boundaries[usize::from(id.0)]
    }

    /// Joins two ends.
    ///
    /// # Panics
    ///
    /// When there are [`MAX_ELEMENTS`] already.
    pub fn add_element(&mut self, from: End, to: End, law: Law) -> ElementId {
        assert!(
            self.elements.len() < MAX_ELEMENTS,
            "a network has at most {MAX_ELEMENTS} elements"
        );
        let place = |end: End| match end {
            End::Node(id) => usize::from(id.0),
            End::Boundary(id) => MAX_NODES + usize::from(id.0),
        };
        self.elements.push(Element {
            law: Law::Shut,
            from: place(from),
            to: place(to),
            conductor: Conductor::default(),
            flux: Flux::default(),
            crossed: Crossed::default(),
        });
        let id = ElementId((self.elements.len() - 1) as u8);
        self.set_law(id, law);
        id
    }

    /// Changes how an element lets pass.
    pub fn set_law(&mut self, id: ElementId, law: Law) {
        let element = &mut self.elements[usize::from(id.0)];
        if element.law == law {
            return;
        }
        element.law = law;
        element.conductor = match law {
            Law::Path(path) => Conductor::of(&path),
            _ => Conductor::default(),
        };
        element.flux = Flux::default();
        self.open.clear();
        self.open
            .extend(self.elements.iter().enumerate().filter_map(|(j, element)| {
                let shut = match element.law {
                    Law::Shut => true,
                    Law::Path(_) => element.conductor.is_shut(),
                    Law::Pump { displacement, .. } => displacement <= 0.0,
                    Law::Compression | Law::Metering => false,
                };
                (!shut).then_some(j as u8)
            }));
    }

    /// How an element lets pass.
    pub fn law(&self, id: ElementId) -> &Law {
        &self.elements[usize::from(id.0)].law
    }

    /// A node as it stands.
    pub fn node(&self, id: NodeId) -> &Node {
        &self.nodes[usize::from(id.0)]
    }

    /// Quality of the refrigerant that a node's outlets draw, by its own kind of outlet.
    pub(super) fn drawn(&self, id: NodeId) -> f64 {
        draw::outlet_of(self.refrigerant, self.node(id)).quality
    }

    /// Sets what a node's outlets draw of a mixture.
    pub fn set_draws(&mut self, id: NodeId, draws: Draws) {
        self.nodes[usize::from(id.0)].draws = draws;
    }

    /// A node, for the parts that live in it.
    pub(super) fn node_mut(&mut self, id: NodeId) -> &mut Node {
        &mut self.nodes[usize::from(id.0)]
    }

    /// What flowed through an element in the last step, positive from its first end.
    pub fn flux(&self, id: ElementId) -> &Flux {
        &self.elements[usize::from(id.0)].flux
    }

    /// What has crossed an element since the start.
    pub fn crossed(&self, id: ElementId) -> &Crossed {
        &self.elements[usize::from(id.0)].crossed
    }

    /// Puts something into a node: liquid refrigerant, gases and liquid water of its own
    /// temperature, and `energy` beside. Less than nothing is left out.
    pub fn add(&mut self, id: NodeId, amounts: Amounts) {
        let node = &mut self.nodes[usize::from(id.0)];
        let before = node.contents();
        let t = node.temperature;
        node.energy += amounts.energy;
        if amounts.refrigerant > 0.0 {
            node.refrigerant += amounts.refrigerant;
            node.energy += amounts.refrigerant * self.refrigerant.at(t).u_l;
        }
        for k in 0..2 {
            if amounts.gas[k] > 0.0 {
                node.gas[k] += amounts.gas[k];
                node.energy += amounts.gas[k] * gas::energy(k, t);
            }
        }
        if amounts.gas[2] > 0.0 {
            if node.free_water <= 0.0 {
                let warm = node::PATCH * (t - 273.15);
                node.free_water_energy = warm;
                node.energy -= warm;
            }
            let mass = amounts.gas[2] * gas::MOLAR_MASS[2];
            node.free_water += mass;
            node.free_water_energy += mass * LIQUID_HEAT * (t - 273.15);
        }
        flash::flash(self.refrigerant, &self.moisture, node);
        let change = node.contents() - before;
        self.ledger.book(&change);
    }

    /// Takes the free and dissolved water and the desiccant's out of a node, or sets the bound
    /// water, mol, as a new drier brings it; counted in the account.
    pub(super) fn set_bound_water(&mut self, id: NodeId, moles: f64) {
        let node = &mut self.nodes[usize::from(id.0)];
        let before = node.contents();
        let heat = LIQUID_HEAT * gas::MOLAR_MASS[2] * (node.temperature - 273.15);
        node.energy += (moles - node.bound_water) * heat;
        node.bound_water = moles;
        flash::flash(self.refrigerant, &self.moisture, node);
        let change = node.contents() - before;
        self.ledger.book(&change);
    }

    /// All that is in the nodes.
    pub fn contents(&self) -> Amounts {
        let mut all = Amounts::NOTHING;
        for node in &self.nodes {
            all += node.contents();
        }
        all
    }

    /// What the nodes began with.
    pub const fn initial(&self) -> &Amounts {
        &self.initial
    }

    /// The account with the outside: `contents - initial = ledger.net` to round-off.
    pub const fn ledger(&self) -> &Ledger {
        &self.ledger
    }

    /// Brings pressures and temperatures up to the amounts.
    pub(super) fn flash(&mut self) {
        for node in &mut self.nodes {
            flash::flash(self.refrigerant, &self.moisture, node);
        }
    }

    /// One step of `dt`, s, from flashed nodes.
    pub(super) fn advance(&mut self, dt: f64, drive: &Drive, machinery: &impl Machinery) {
        let mut step = self.step.take().unwrap_or_default();
        step.begin(self, dt, drive);
        step.conduct(self, machinery);
        step.solve(self, drive);
        self.compressor_power = step.compressed.power;
        self.transport(&step, drive);
        self.step = Some(step);
        for node in &mut self.nodes {
            water::exchange(&self.moisture, node, dt);
        }
    }

    /// Every number of the state.
    pub fn visit_state(&self, visitor: &mut dyn FnMut(f64)) {
        for node in &self.nodes {
            node.visit(visitor);
        }
        for element in &self.elements {
            element.crossed.out.visit(visitor);
            element.crossed.in_.visit(visitor);
            visitor(element.flux.mass);
        }
        self.ledger.net.visit(visitor);
    }
}
