//! Species and energy of a step: implicit and upwind, the same flux at both ends.

use super::draw::Draw;
use super::gas::{self, MOLAR_MASS};
use super::ledger::{Amounts, Flux};
use super::linear::System;
use super::node::Phase;
use super::pressures::Step;
use super::{Drive, Element, Law, MAX_ELEMENTS, MAX_NODES, Network};

/// Less of a gas than this is none, mol: far less than one molecule.
const TRACE: f64 = 1e-30;

/// What leaves each donor per second and per unit in it, by element, 1/kg.
struct Rates {
    refrigerant: [f64; MAX_ELEMENTS],
    gas: [f64; MAX_ELEMENTS],
    water: [f64; MAX_ELEMENTS],
}

/// Amounts of refrigerant, nitrogen, air and water at the end of the step, by node.
struct Species {
    refrigerant: [f64; MAX_NODES],
    gas: [[f64; MAX_NODES]; 3],
}

impl Network {
    /// Moves everything by the solved flows.
    pub(super) fn transport(&mut self, step: &Step, drive: &Drive) {
        let rates = self.rates(step);
        let species = self.species(step, &rates);
        let mut heat = [0.0; MAX_NODES];
        for position in 0..self.open.len() {
            let j = usize::from(self.open[position]);
            self.carry(j, step, drive, &rates, &species, &mut heat);
        }
        for (i, node) in self.nodes.iter_mut().enumerate() {
            let taken = step.dt * (drive.heat[i] + drive.heat_per_pressure[i] * step.change[i]);
            self.ledger.book_energy(taken);
            node.energy += heat[i] + taken;
            node.refrigerant = species.refrigerant[i];
            for k in 0..3 {
                // A last trace would go on thinning out into numbers that are slow to reckon.
                let moles = species.gas[k][i];
                node.gas[k] = if moles < TRACE { 0.0 } else { moles };
            }
        }
    }

    /// What each element draws per unit in its donor, with the donor's predicted mass.
    fn rates(&self, step: &Step) -> Rates {
        let mut mass = [0.0; MAX_NODES];
        for (mass, node) in mass.iter_mut().zip(&self.nodes) {
            *mass = node.mass;
        }
        for &j in &self.open {
            let element = &self.elements[usize::from(j)];
            let moved = step.dt * step.flow[usize::from(j)];
            if element.from < MAX_NODES {
                mass[element.from] -= moved;
            }
            if element.to < MAX_NODES {
                mass[element.to] += moved;
            }
        }
        let mut rates = Rates {
            refrigerant: [0.0; MAX_ELEMENTS],
            gas: [0.0; MAX_ELEMENTS],
            water: [0.0; MAX_ELEMENTS],
        };
        for &j in &self.open {
            let j = usize::from(j);
            let (donor, draw) = donor_of(&self.elements[j], step, step.flow[j]);
            if donor >= MAX_NODES || step.flow[j] == 0.0 {
                continue;
            }
            let node = &self.nodes[donor];
            let thinned = node.mass / mass[donor].max(0.02 * node.mass).max(1e-30);
            // Over liquid the gases keep their space; else they thin out with everything.
            let of_gas = if node.phase == Phase::TwoPhase {
                1.0
            } else {
                thinned
            };
            let flow = step.flow[j].abs();
            rates.refrigerant[j] = flow * draw.per_refrigerant * thinned;
            rates.gas[j] = flow * draw.per_gas * of_gas;
            rates.water[j] = flow * draw.per_water * of_gas;
        }
        rates
    }

    /// Solves for the amounts at the end of the step.
    fn species(&self, step: &Step, rates: &Rates) -> Species {
        let mut species = Species {
            refrigerant: [0.0; MAX_NODES],
            gas: [[0.0; MAX_NODES]; 3],
        };
        let (mut any_gas, mut water_apart) = (false, false);
        for (i, node) in self.nodes.iter().enumerate() {
            species.refrigerant[i] = node.refrigerant;
            for k in 0..3 {
                species.gas[k][i] = node.gas[k];
                any_gas |= node.gas[k] > 0.0;
            }
            water_apart |= node.phase == Phase::TwoPhase && node.gas[2] > 0.0;
        }
        for &j in &self.open {
            let j = usize::from(j);
            let element = &self.elements[j];
            let (donor, receiver) = ends_of(element, step.flow[j]);
            if donor >= MAX_NODES && receiver < MAX_NODES {
                any_gas = true;
                let draw = &step.front[donor];
                let moved = step.dt * step.flow[j].abs();
                species.refrigerant[receiver] += moved * draw.share;
                for k in 0..3 {
                    species.gas[k][receiver] += moved * draw.moles[k];
                }
            }
            if step.exchange[j] > 0.0 && element.to >= MAX_NODES && element.from < MAX_NODES {
                any_gas = true;
                let draw = &step.front[element.to];
                for k in 0..3 {
                    species.gas[k][element.from] +=
                        step.dt * step.exchange[j] * draw.moles[k] * draw.rho;
                }
            }
            if step.exchange[j] > 0.0 && element.from >= MAX_NODES && element.to < MAX_NODES {
                any_gas = true;
                let draw = &step.front[element.from];
                for k in 0..3 {
                    species.gas[k][element.to] +=
                        step.dt * step.exchange[j] * draw.moles[k] * draw.rho;
                }
            }
        }
        [species.refrigerant] = self.upwind(step, &rates.refrigerant, [species.refrigerant]);
        if !any_gas {
            return species;
        }
        let [nitrogen, air, water] = species.gas;
        if water_apart {
            let [nitrogen, air] = self.upwind(step, &rates.gas, [nitrogen, air]);
            let [water] = self.upwind(step, &rates.water, [water]);
            species.gas = [nitrogen, air, water];
        } else {
            species.gas = self.upwind(step, &rates.gas, species.gas);
        }
        species
    }

    /// The amounts of one kind of species after the step, from those before it.
    fn upwind<const R: usize>(
        &self,
        step: &Step,
        rates: &[f64; MAX_ELEMENTS],
        amounts: [[f64; MAX_NODES]; R],
    ) -> [[f64; MAX_NODES]; R] {
        let mut system = System::identity(amounts);
        for &j in &self.open {
            let j = usize::from(j);
            let element = &self.elements[j];
            let (donor, receiver) = ends_of(element, step.flow[j]);
            if rates[j] > 0.0 {
                let moved = step.dt * rates[j];
                system.add(donor, donor, moved);
                if receiver < MAX_NODES {
                    system.add(receiver, donor, -moved);
                }
            }
            if step.exchange[j] > 0.0 {
                let (from, to) = (element.from, element.to);
                for (one, other) in [(from, to), (to, from)] {
                    if one < MAX_NODES {
                        let moved = step.dt * step.exchange[j] / self.nodes[one].vapour_volume;
                        system.add(one, one, moved);
                        if other < MAX_NODES {
                            system.add(other, one, -moved);
                        }
                    }
                }
            }
        }
        system.solve(self.nodes.len());
        system.sides
    }

    /// Moves the energy of one element and books what it moved.
    fn carry(
        &mut self,
        j: usize,
        step: &Step,
        drive: &Drive,
        rates: &Rates,
        species: &Species,
        heat: &mut [f64; MAX_NODES],
    ) {
        let dt = step.dt;
        let element = &self.elements[j];
        let (from, to) = (element.from, element.to);
        let mut flux = Flux::default();
        let (donor, draw) = donor_of(element, step, step.flow[j]);
        let sign = if step.flow[j] >= 0.0 { 1.0 } else { -1.0 };
        if donor < MAX_NODES {
            flux.refrigerant = sign * rates.refrigerant[j] * species.refrigerant[donor];
            for k in 0..3 {
                let rate = if k == 2 { rates.water[j] } else { rates.gas[j] };
                flux.gas[k] = sign * rate * species.gas[k][donor];
            }
        } else {
            flux.refrigerant = step.flow[j] * draw.share;
            flux.gas = draw.moles.map(|moles| step.flow[j] * moles);
        }
        flux.energy = flux.refrigerant * draw.enthalpy;
        for k in 0..3 {
            flux.energy += flux.gas[k] * gas::enthalpy(k, draw.t);
        }
        let carried = flux.refrigerant;
        if step.exchange[j] > 0.0 {
            for (one, sign) in [(from, 1.0), (to, -1.0)] {
                self.swap(one, sign * step.exchange[j], step, species, &mut flux);
            }
        }
        let moved = Amounts {
            refrigerant: dt * flux.refrigerant,
            gas: flux.gas.map(|rate| dt * rate),
            energy: dt * flux.energy,
        };
        for (place, sign) in [(from, -1.0), (to, 1.0)] {
            if place < MAX_NODES {
                heat[place] += sign * moved.energy;
            } else {
                let mut came = Amounts::NOTHING;
                came.add_scaled(&moved, -sign);
                self.ledger.book(&came);
            }
        }
        if step.flow[j] > 0.0 {
            for (place, extra) in [(from, drive.on_leaving[j]), (to, drive.on_entering[j])] {
                if place < MAX_NODES && extra != 0.0 {
                    let gained = dt * carried * extra;
                    heat[place] += gained;
                    self.ledger.book_energy(gained);
                }
            }
        }
        if self.elements[j].law == Law::Compression && from < MAX_NODES && to < MAX_NODES {
            let work = dt * step.compressed.power;
            let given = dt * carried * step.compressed.rise;
            heat[to] += given;
            heat[from] += work - given;
            self.ledger.book_energy(work);
        }
        flux.mass = flux.refrigerant
            + flux
                .gas
                .iter()
                .zip(MOLAR_MASS)
                .map(|(rate, mass)| rate * mass)
                .sum::<f64>();
        let element = &mut self.elements[j];
        element.flux = flux;
        let crossed = &mut element.crossed;
        let (way, sign) = if flux.mass >= 0.0 {
            (&mut crossed.out, 1.0)
        } else {
            (&mut crossed.in_, -1.0)
        };
        way.add_scaled(&moved, sign);
    }

    /// Adds what one side of an exchange gives to the other, `volume` m³/s with its sign.
    fn swap(&self, one: usize, volume: f64, step: &Step, species: &Species, flux: &mut Flux) {
        if one < MAX_NODES {
            let node = &self.nodes[one];
            let share = volume / node.vapour_volume;
            let refrigerant = share * species.refrigerant[one];
            flux.refrigerant += refrigerant;
            flux.energy += refrigerant * node.enthalpy;
            for k in 0..3 {
                let moles = share * species.gas[k][one];
                flux.gas[k] += moles;
                flux.energy += moles * gas::enthalpy(k, node.temperature);
            }
        } else {
            let draw = &step.front[one];
            for k in 0..3 {
                let moles = volume * draw.moles[k] * draw.rho;
                flux.gas[k] += moles;
                flux.energy += moles * gas::enthalpy(k, draw.t);
            }
        }
    }
}

/// Donor and receiver of an element by the sign of its flow.
#[inline]
fn ends_of(element: &Element, flow: f64) -> (usize, usize) {
    if flow >= 0.0 {
        (element.from, element.to)
    } else {
        (element.to, element.from)
    }
}

/// The donor of an element, and what it delivers.
#[inline]
fn donor_of<'a>(element: &Element, step: &'a Step, flow: f64) -> (usize, &'a Draw) {
    (ends_of(element, flow).0, step.donor(element, flow >= 0.0))
}
