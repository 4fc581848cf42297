//! All pressures of a step at once, with the set of elements that the answer itself decides.

use super::draw::{self, Draw};
use super::element::{Conductor, Direction, Law};
use super::linear::System;
use super::node::{Node, Phase};
use super::{
    Compressed, Drive, Element, MAX_ELEMENTS, MAX_NODES, MAX_PLACES, Machinery, Network, flash, gas,
};

/// How an element behaves in the search.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
enum Kind {
    /// Two ways; donor and conductance may be taken anew.
    #[default]
    Open,
    /// One way only.
    Check,
    /// A machine: linear about its working point, one way only.
    Forward,
    /// Liquid through the metering device: linear, two ways.
    Linear,
}

/// One step under way. The network keeps it from step to step, as it is long to clear.
#[derive(Debug, Clone)]
pub(super) struct Step {
    pub dt: f64,
    /// Pressures at the start, Pa.
    pub p: [f64; MAX_PLACES],
    /// What each place delivers through an outlet.
    pub front: [Draw; MAX_PLACES],
    /// What each node delivers through an inlet, backward, where that is something else.
    back: [Draw; MAX_NODES],
    has_back: [bool; MAX_NODES],
    /// Flows, kg/s, and their slopes with the pressures at both ends.
    pub flow: [f64; MAX_ELEMENTS],
    per_from: [f64; MAX_ELEMENTS],
    per_to: [f64; MAX_ELEMENTS],
    forward: [bool; MAX_ELEMENTS],
    kind: [Kind; MAX_ELEMENTS],
    bore: Option<Conductor>,
    /// Volume that changes places both ways, m³/s.
    pub exchange: [f64; MAX_ELEMENTS],
    pub compressed: Compressed,
    /// The change of the nodes' pressures, Pa.
    pub change: [f64; MAX_NODES],
}

impl Default for Step {
    fn default() -> Self {
        Self {
            dt: 0.0,
            p: [0.0; MAX_PLACES],
            front: [Draw::default(); MAX_PLACES],
            back: [Draw::default(); MAX_NODES],
            has_back: [false; MAX_NODES],
            flow: [0.0; MAX_ELEMENTS],
            per_from: [0.0; MAX_ELEMENTS],
            per_to: [0.0; MAX_ELEMENTS],
            forward: [true; MAX_ELEMENTS],
            kind: [Kind::Open; MAX_ELEMENTS],
            bore: None,
            exchange: [0.0; MAX_ELEMENTS],
            compressed: Compressed::default(),
            change: [0.0; MAX_NODES],
        }
    }
}

impl Step {
    /// Begins anew: works out what every place delivers.
    pub fn begin(&mut self, network: &Network, dt: f64, drive: &Drive) {
        self.dt = dt;
        self.bore = None;
        self.compressed = Compressed::default();
        for &j in &network.open {
            let j = usize::from(j);
            self.flow[j] = 0.0;
            self.per_from[j] = 0.0;
            self.per_to[j] = 0.0;
            self.forward[j] = true;
            self.kind[j] = Kind::Open;
            self.exchange[j] = 0.0;
        }
        let refrigerant = network.refrigerant;
        for (i, node) in network.nodes.iter().enumerate() {
            self.p[i] = node.pressure;
            let outlet = drive.outlets[i].unwrap_or_else(|| draw::outlet_of(refrigerant, node));
            self.front[i] = Draw::from_node(node, &outlet, refrigerant);
            self.has_back[i] = !outlet.is_bulk;
            if !outlet.is_bulk {
                let back = draw::inlet_of(refrigerant, node);
                self.back[i] = Draw::from_node(node, &back, refrigerant);
            }
        }
        for (k, boundary) in network.boundaries.iter().enumerate() {
            self.p[MAX_NODES + k] = boundary.pressure;
            self.front[MAX_NODES + k] = Draw::from_boundary(boundary);
        }
    }

    /// What an element draws, forward or backward.
    #[inline]
    pub fn donor(&self, element: &Element, forward: bool) -> &Draw {
        if forward {
            &self.front[element.from]
        } else if element.to < MAX_NODES && self.has_back[element.to] {
            &self.back[element.to]
        } else {
            &self.front[element.to]
        }
    }

    /// First flows and slopes of all open elements.
    pub fn conduct(&mut self, network: &Network, machinery: &impl Machinery) {
        for &j in &network.open {
            let j = usize::from(j);
            let element = &network.elements[j];
            let (pa, pb) = (self.p[element.from], self.p[element.to]);
            match element.law {
                Law::Shut => {}
                Law::Compression => {
                    self.kind[j] = Kind::Forward;
                    self.compressed = machinery.compression(&self.front[element.from], pa, pb);
                    self.flow[j] = self.compressed.flow;
                    self.per_from[j] = self.compressed.per_suction;
                    self.per_to[j] = self.compressed.per_discharge;
                }
                Law::Pump {
                    displacement,
                    ultimate,
                } => {
                    self.kind[j] = Kind::Forward;
                    let g = displacement * self.front[element.from].rho / pa.max(1e-6);
                    self.flow[j] = (g * (pa - ultimate)).max(0.0);
                    self.per_from[j] = if self.flow[j] > 0.0 { g } else { 0.0 };
                }
                Law::Metering => self.meter(network, j, machinery),
                Law::Path(path) => {
                    self.forward[j] = match path.one_way {
                        Some(way) => way == Direction::Forward,
                        None => pa >= pb,
                    };
                    self.hold(element, j, &element.conductor, None);
                    if path.one_way.is_some() {
                        self.kind[j] = Kind::Check;
                    } else {
                        self.mix(network, j);
                    }
                }
            }
        }
    }

    /// The metering device: its own law for liquid, a path for gas.
    fn meter(&mut self, network: &Network, j: usize, machinery: &impl Machinery) {
        let element = &network.elements[j];
        let (pa, pb) = (self.p[element.from], self.p[element.to]);
        let forward = pa >= pb;
        self.forward[j] = forward;
        let donor = *self.donor(element, forward);
        if donor.gas {
            let bore = Conductor::of(&machinery.metering_bore());
            if bore.is_shut() {
                return;
            }
            self.bore = Some(bore);
            self.hold(element, j, &bore, None);
            return;
        }
        self.kind[j] = Kind::Linear;
        let (up, down) = if forward { (pa, pb) } else { (pb, pa) };
        let throttled = machinery.metering(&donor, up, down);
        if forward {
            self.flow[j] = throttled.flow;
            self.per_from[j] = throttled.per_upstream;
            self.per_to[j] = throttled.per_downstream;
        } else {
            self.flow[j] = -throttled.flow;
            self.per_to[j] = -throttled.per_upstream;
            self.per_from[j] = -throttled.per_downstream;
        }
    }

    /// Takes the conductance at the present pressures, or at those that `change` predicts.
    fn hold(
        &mut self,
        element: &Element,
        j: usize,
        conductor: &Conductor,
        change: Option<&[f64; MAX_NODES]>,
    ) -> f64 {
        let (pa, pb) = (self.p[element.from], self.p[element.to]);
        let at = |place: usize, p: f64| match change {
            Some(change) if place < MAX_NODES => (p + change[place]).max(0.1),
            _ => p,
        };
        let (a, b) = (at(element.from, pa), at(element.to, pb));
        let donor = self.donor(element, self.forward[j]);
        let g = conductor.conductance(donor, a.max(b), a.min(b));
        self.flow[j] = g * (pa - pb);
        self.per_from[j] = g;
        self.per_to[j] = -g;
        g
    }

    /// Two gases at rest change places through a hole and diffuse into one another.
    fn mix(&mut self, network: &Network, j: usize) {
        let element = &network.elements[j];
        let is_gas =
            |place: usize| place >= MAX_NODES || network.nodes[place].phase == Phase::Vapour;
        if !is_gas(element.from) || !is_gas(element.to) {
            return;
        }
        let (rho_a, rho_b) = (self.front[element.from].rho, self.front[element.to].rho);
        let lighter = ((rho_a - rho_b).abs() / (0.5 * (rho_a + rho_b))).min(1.0);
        let high = self.p[element.from].max(self.p[element.to]).max(100.0);
        // Diffusivity of gases, 1e-5 m²/s at one atmosphere (from memory), goes with 1/p.
        let still = element.conductor.exchange * lighter.sqrt()
            + element.conductor.diffusive * 1e-5 * 1e5 / high;
        // A stream through the hole sweeps out what would come against it.
        let donor = self.donor(element, self.forward[j]);
        let stream = self.flow[j].abs() * donor.per_density;
        self.exchange[j] = (still - 0.2 * stream).max(0.0);
    }

    /// Solves for the pressures until the set of elements agrees with the answer.
    pub fn solve(&mut self, network: &Network, drive: &Drive) {
        let n = network.nodes.len();
        let mut stiffness: [f64; MAX_NODES] =
            std::array::from_fn(|i| network.nodes.get(i).map_or(0.0, |node| node.per_mass));
        for pass in 0..6 {
            let mut system = self.system(network, drive, &stiffness);
            system.solve(n);
            let mut change = system.sides[0];
            for (change, p) in change[..n].iter_mut().zip(&self.p) {
                *change = change.max(-0.9 * p);
            }
            self.change = change;
            let mut next = self.flow;
            let mut again = false;
            for &j in &network.open {
                again |= self.revise(network, usize::from(j), pass, &mut next);
            }
            if pass < 4 {
                again |= self.overfills(network, &next, &mut stiffness);
            }
            if !again || pass == 5 {
                self.flow = next;
                return;
            }
        }
    }

    /// The linear system: `(I - dt dF/dp) dp = dt F`.
    fn system(&self, network: &Network, drive: &Drive, stiffness: &[f64; MAX_NODES]) -> System<1> {
        let dt = self.dt;
        let mut system = System::identity([[0.0; MAX_NODES]]);
        for (i, node) in network.nodes.iter().enumerate() {
            system.add(i, i, -dt * node.per_energy * drive.heat_per_pressure[i]);
            system.sides[0][i] = dt * node.per_energy * drive.heat[i];
        }
        for &j in &network.open {
            let j = usize::from(j);
            let element = &network.elements[j];
            if element.law == Law::Compression {
                let Compressed {
                    flow, power, rise, ..
                } = self.compressed;
                if element.from < MAX_NODES {
                    let given = dt * (power - flow * rise);
                    system.sides[0][element.from] += network.nodes[element.from].per_energy * given;
                }
                if element.to < MAX_NODES {
                    let given = dt * flow * rise;
                    system.sides[0][element.to] += network.nodes[element.to].per_energy * given;
                }
            }
            if self.flow[j] == 0.0 && self.per_from[j] == 0.0 {
                continue;
            }
            let donor = self.donor(element, self.forward[j]);
            let extra = if self.forward[j] {
                [-drive.on_leaving[j], drive.on_entering[j]]
            } else {
                [0.0; 2]
            };
            let ends = [(element.from, -dt, extra[0]), (element.to, dt, extra[1])];
            for (i, sign, extra) in ends {
                if i >= MAX_NODES {
                    continue;
                }
                let rise = sign * per_flow(&network.nodes[i], stiffness[i], donor, extra);
                system.sides[0][i] += rise * self.flow[j];
                if element.from < MAX_NODES {
                    system.add(i, element.from, -rise * self.per_from[j]);
                }
                if element.to < MAX_NODES {
                    system.add(i, element.to, -rise * self.per_to[j]);
                }
            }
        }
        system
    }

    /// The flow that the new pressures give; true if the element has to be taken otherwise.
    fn revise(
        &mut self,
        network: &Network,
        j: usize,
        pass: u32,
        next: &mut [f64; MAX_ELEMENTS],
    ) -> bool {
        if self.per_from[j] == 0.0 && self.per_to[j] == 0.0 {
            return false;
        }
        let element = &network.elements[j];
        let change_at = |place: usize| {
            if place < MAX_NODES {
                self.change[place]
            } else {
                0.0
            }
        };
        next[j] +=
            self.per_from[j] * change_at(element.from) + self.per_to[j] * change_at(element.to);
        let backward = next[j] < 0.0;
        match self.kind[j] {
            Kind::Linear => return false,
            Kind::Check | Kind::Forward => {
                if backward == self.forward[j] && next[j] != 0.0 {
                    next[j] = 0.0;
                    self.flow[j] = 0.0;
                    self.per_from[j] = 0.0;
                    self.per_to[j] = 0.0;
                    return true;
                }
                if self.kind[j] == Kind::Forward {
                    return false;
                }
            }
            Kind::Open => {
                if pass < 2 && backward == self.forward[j] && next[j].abs() > 1e-9 {
                    self.forward[j] = !self.forward[j];
                    let (conductor, change) = (self.conductor(network, j), self.change);
                    self.hold(element, j, &conductor, Some(&change));
                    return true;
                }
            }
        }
        if pass >= 3 {
            return false;
        }
        let before = (self.p[element.from] - self.p[element.to]).abs();
        let held = self.per_from[j];
        let after = (next[j] / held).abs();
        if after <= 2.0 * before + 300.0 && 2.0 * after + 300.0 >= before {
            return false;
        }
        let (conductor, change, kept) = (self.conductor(network, j), self.change, self.flow[j]);
        let g = self.hold(element, j, &conductor, Some(&change));
        if (0.7..=1.4).contains(&(g / held)) {
            self.flow[j] = kept;
            self.per_from[j] = held;
            self.per_to[j] = -held;
            return false;
        }
        true
    }

    /// The path of an element, or the bore of the metering device.
    fn conductor(&self, network: &Network, j: usize) -> Conductor {
        match network.elements[j].law {
            Law::Metering => self.bore.unwrap_or_default(),
            _ => network.elements[j].conductor,
        }
    }

    /// A node that would overfill with liquid is as stiff as liquid: takes the secant.
    fn overfills(
        &self,
        network: &Network,
        next: &[f64; MAX_ELEMENTS],
        stiffness: &mut [f64; MAX_NODES],
    ) -> bool {
        let mut predicted = [0.0; MAX_NODES];
        for (predicted, node) in predicted.iter_mut().zip(&network.nodes) {
            *predicted = node.mass;
        }
        for &j in &network.open {
            let j = usize::from(j);
            let element = &network.elements[j];
            if element.from < MAX_NODES {
                predicted[element.from] -= self.dt * next[j];
            }
            if element.to < MAX_NODES {
                predicted[element.to] += self.dt * next[j];
            }
        }
        let mut again = false;
        for (i, node) in network.nodes.iter().enumerate() {
            if node.phase == Phase::Liquid || predicted[i] <= node.mass {
                continue;
            }
            let over = predicted[i] / (node.volume * node.liquid_density) - 1.0;
            if over <= 0.0 {
                continue;
            }
            let squeeze = flash::STIFFNESS * over;
            let secant = squeeze / (predicted[i] - node.mass);
            if self.change[i] < 0.7 * squeeze && stiffness[i] < secant {
                stiffness[i] = stiffness[i].max(secant) * 1.5;
                again = true;
            }
        }
        again
    }
}

/// Rise of a node's pressure by a kilogram of what a donor delivers, Pa/kg, with `extra` J/kg of
/// heat for each kilogram of refrigerant.
#[inline]
fn per_flow(node: &Node, stiffness: f64, donor: &Draw, extra: f64) -> f64 {
    let mut rise = donor.share * (stiffness + node.per_energy * extra)
        + node.per_energy * donor.mixed_enthalpy;
    for k in 0..3 {
        let share = if k == 2 { node.water_vapour_share } else { 1.0 };
        rise += donor.moles[k]
            * (share * node.per_mole - node.per_energy * gas::energy(k, node.temperature));
    }
    rise
}
