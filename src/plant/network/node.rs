//! A control volume: what is in it, and what follows from that.

use super::gas;
use super::ledger::Amounts;
use crate::fluid::water::{
    FUSION, SPECIFIC_HEAT_ICE as ICE_HEAT, SPECIFIC_HEAT_LIQUID as LIQUID_HEAT,
};

/// Heat capacity of the wet patch of the wall, in the free water's own state, J/K. Chosen: it
/// keeps the water's temperature well-posed down to its last trace.
pub(super) const PATCH: f64 = 5.0;

/// What the node's outlets draw of a mixture of liquid and vapour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Draws {
    /// What fills it, as it is.
    #[default]
    Mixed,
    /// Both, with the vapour running ahead of the liquid by their slip: a line.
    Settled,
    /// Vapour while there is any.
    Vapour,
    /// Liquid while there is any.
    Liquid,
    /// Vapour, with liquid carried along once it fills a quarter: a compressor's shell.
    Sump,
    /// Liquid from the bottom while there is any; what goes back through the inlet at the top is
    /// vapour: a receiver.
    Reservoir,
}

/// The phase of the refrigerant in a node.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Phase {
    /// Full of liquid.
    Liquid,
    /// Liquid and vapour.
    TwoPhase,
    /// Vapour alone, with or without gases.
    #[default]
    Vapour,
}

/// What a node begins with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fill {
    /// Air of the place at one atmosphere, half saturated with water.
    MoistAir,
    /// Next to nothing: 10 Pa of air.
    Evacuated,
    /// Refrigerant alone, kg, at a temperature, K.
    Refrigerant {
        /// Its mass, kg.
        mass: f64,
        /// Its temperature, K.
        temperature: f64,
    },
}

/// A node as it is added.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NodeSpec {
    /// Inner volume, m³.
    pub volume: f64,
    /// Heat capacity of its wall, J/K.
    pub wall: f64,
    /// Conductance to the air around, W/K.
    pub to_ambient: f64,
    /// What it begins with.
    pub fill: Fill,
}

/// A control volume. The first block is its state; the rest follows from it by the flash.
#[derive(Debug, Clone, Copy, Default)]
pub struct Node {
    /// Refrigerant as liquid and vapour, kg; what is dissolved in oil is apart.
    pub refrigerant: f64,
    /// Nitrogen, air and water (as vapour or dissolved), mol.
    pub gas: [f64; 3],
    /// Internal energy with that of the wall, J.
    pub energy: f64,
    /// Water that lies free, liquid or ice, kg.
    pub free_water: f64,
    /// Energy of the free water and its patch of wall above liquid of 0 °C, J.
    pub free_water_energy: f64,
    /// Oil, kg.
    pub oil: f64,
    /// Refrigerant dissolved in the oil, kg.
    pub dissolved: f64,
    /// Water held by a desiccant, mol.
    pub bound_water: f64,

    /// Inner volume, m³.
    pub volume: f64,
    /// Heat capacity of the wall, J/K.
    pub wall: f64,
    /// Conductance to the air around, W/K.
    pub to_ambient: f64,
    /// What its outlets draw.
    pub draws: Draws,

    /// Temperature, K.
    pub temperature: f64,
    /// Pressure, Pa absolute.
    pub pressure: f64,
    /// Phase of the refrigerant.
    pub phase: Phase,
    /// Share of vapour in the refrigerant, by mass.
    pub quality: f64,
    /// Liquid refrigerant, kg.
    pub liquid: f64,
    /// Volume of the vapour and gases, m³.
    pub vapour_volume: f64,
    /// Density of the refrigerant's vapour, kg/m³.
    pub vapour_density: f64,
    /// Density of the refrigerant's liquid, kg/m³.
    pub liquid_density: f64,
    /// Partial pressure of the refrigerant, Pa.
    pub refrigerant_pressure: f64,
    /// Enthalpy of the refrigerant, J/kg.
    pub enthalpy: f64,
    /// Mass of all that flows: refrigerant and gases, kg.
    pub mass: f64,
    /// The share of the water that is vapour; the rest is dissolved in liquid refrigerant.
    pub water_vapour_share: f64,
    /// Partial pressure of water, or what liquid refrigerant with so much dissolved in it would
    /// give off, Pa.
    pub water_pressure: f64,
    /// dp/dM at constant energy, Pa/kg.
    pub(super) per_mass: f64,
    /// dp/dU, Pa/J.
    pub(super) per_energy: f64,
    /// dp/dn of a gas that brings no energy, Pa/mol.
    pub(super) per_mole: f64,
}

impl Node {
    /// All that is in it.
    pub fn contents(&self) -> Amounts {
        let [nitrogen, air, water] = self.gas;
        let water = water + self.free_water / gas::MOLAR_MASS[2] + self.bound_water;
        Amounts {
            refrigerant: self.refrigerant + self.dissolved,
            gas: [nitrogen, air, water],
            energy: self.energy + self.free_water_energy,
        }
    }

    /// Moles of gases in the vapour's space, mol.
    #[inline]
    pub fn moles_of_gas(&self) -> f64 {
        self.gas[0] + self.gas[1] + self.water_vapour_share * self.gas[2]
    }

    /// Mass of the gases in the vapour's space, kg.
    #[inline]
    pub(super) fn mass_of_gas(&self) -> f64 {
        self.gas[0] * gas::MOLAR_MASS[0]
            + self.gas[1] * gas::MOLAR_MASS[1]
            + self.water_vapour_share * self.gas[2] * gas::MOLAR_MASS[2]
    }

    /// Temperature of the free water, K; that of the node if there is none.
    pub fn free_water_temperature(&self) -> f64 {
        if self.free_water > 0.0 {
            patch(self.free_water, self.free_water_energy).0
        } else {
            self.temperature
        }
    }

    /// Ice in the free water, kg.
    pub fn ice(&self) -> f64 {
        (-self.free_water_energy / FUSION).clamp(0.0, self.free_water.max(0.0))
    }

    /// Every number of the state, and the temperature from which the next flash starts.
    pub(super) fn visit(&self, visitor: &mut dyn FnMut(f64)) {
        let phase = match self.phase {
            Phase::Liquid => 0.0,
            Phase::TwoPhase => 1.0,
            Phase::Vapour => 2.0,
        };
        [
            self.refrigerant,
            self.energy,
            self.free_water,
            self.free_water_energy,
            self.oil,
            self.dissolved,
            self.bound_water,
            self.temperature,
            self.water_vapour_share,
            phase,
        ]
        .into_iter()
        .chain(self.gas)
        .for_each(visitor);
    }
}

/// Temperature, K, and heat capacity, J/K, of free water of this mass and energy with its patch.
#[inline]
pub(super) fn patch(mass: f64, energy: f64) -> (f64, f64) {
    if energy > 0.0 {
        let capacity = LIQUID_HEAT * mass + PATCH;
        (273.15 + energy / capacity, capacity)
    } else if energy > -FUSION * mass {
        (273.15, FUSION * mass + PATCH)
    } else {
        let capacity = ICE_HEAT * mass + PATCH;
        (273.15 + (energy + FUSION * mass) / capacity, capacity)
    }
}
