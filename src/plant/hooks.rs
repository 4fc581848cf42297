//! What faults and repairs change in the circuit.

use super::circuit::{Plant, Section};
use super::desiccant;
use super::network::gas::MOLAR_MASS;
use super::network::{Direction, Law, Path, Restriction};

impl Plant {
    /// Sets the area that leaks back past the compressor's valves, m².
    pub fn set_valve_leak(&mut self, area: f64) {
        let law = if area > 0.0 {
            let hole = Path::through(&[Restriction::opening(area)]);
            Law::Path(hole.only(Direction::Forward))
        } else {
            Law::Shut
        };
        self.network.set_law(self.valve_leak, law);
    }

    /// Water that the drier's desiccant holds, kg.
    pub fn desiccant_water(&self) -> f64 {
        let node = self.network.node(self.node(Section::AfterDrier));
        node.bound_water * MOLAR_MASS[2]
    }

    /// Sets the water that the desiccant holds, kg, as a new drier brings it.
    pub fn set_desiccant_water(&mut self, water: f64) {
        let node = self.node(Section::AfterDrier);
        let moles = water.max(0.0) / MOLAR_MASS[2];
        self.network.set_bound_water(node, moles);
    }

    /// Takes the drier's desiccant out of the circuit, with the water that it holds.
    pub fn take_out_desiccant(&mut self) {
        self.set_desiccant_water(0.0);
        self.desiccant_in = false;
    }

    /// Puts fresh desiccant in. Chosen: it has taken a twentieth of a gram while it was uncapped.
    pub fn fit_fresh_desiccant(&mut self) {
        self.desiccant_in = true;
        self.set_desiccant_water(5e-5);
    }

    /// Lets the desiccant lie open for `dt`, s, in air with the vapour pressure of water `outside`,
    /// Pa: its ends are apart, and the air comes to it freely.
    pub fn expose_desiccant(&mut self, outside: f64, dt: f64) {
        let node = self.network.node(self.node(Section::AfterDrier));
        let (held, t) = (node.bound_water, node.temperature);
        let saturated = self.network.water_pressure(t);
        let taken = desiccant::taken_from_air(held, self.drier_capacity, outside, saturated, dt);
        let moles = (held + taken).max(0.0);
        self.network
            .set_bound_water(self.node(Section::AfterDrier), moles);
    }

    /// Water that a fresh desiccant holds at most, kg.
    pub fn desiccant_capacity(&self) -> f64 {
        self.drier_capacity * MOLAR_MASS[2]
    }
}
