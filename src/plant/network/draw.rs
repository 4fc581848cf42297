//! What an outlet of a node delivers.

use super::gas::{self, MOLAR_MASS, R_UNIVERSAL, VISCOSITY};
use super::node::{Draws, Node, Phase};
use super::{Boundary, Outlet};
use crate::fluid::Viscosity;
use crate::fluid::refrigerant::{Curves, Refrigerant};

/// That of no refrigerant, where there is none.
const NONE: Viscosity = Viscosity {
    liquid: 1.0,
    vapour: 1.0,
};

/// The stream that leaves through an outlet.
#[derive(Debug, Clone, Copy, Default)]
pub struct Draw {
    /// Temperature, K.
    pub t: f64,
    /// Quality of the refrigerant.
    pub x: f64,
    /// Density of the stream, kg/m³.
    pub rho: f64,
    /// Only gases and vapour.
    pub gas: bool,
    /// Enthalpy of the refrigerant in it, J/kg.
    pub enthalpy: f64,
    /// Refrigerant, gases and water per kg of stream and per unit in the node, 1/kg.
    pub(super) per_refrigerant: f64,
    pub(super) per_gas: f64,
    pub(super) per_water: f64,
    /// Refrigerant per kg of stream.
    pub(super) share: f64,
    /// Gases per kg of stream, mol/kg.
    pub(super) moles: [f64; 3],
    /// Enthalpy of the whole stream, J/kg.
    pub(super) mixed_enthalpy: f64,
    /// `1/ρ`, m³/kg.
    pub(super) per_density: f64,
    /// 1/viscosity, 1/(Pa s).
    pub(super) per_viscosity: f64,
    /// sqrt(M / (R T)), s/m.
    pub(super) per_speed: f64,
}

/// `(ρ_g/ρ_l)^(2/3)`: the slip of Zivi 1964, J. Heat Transfer 86.
#[inline]
pub fn slip(curves: &Curves) -> f64 {
    let root = libm::cbrt(curves.rho_g / curves.rho_l);
    root * root
}

/// What the outlets of `node` deliver by their kind, in the same form in which a coil says it.
pub(super) fn outlet_of(refrigerant: &Refrigerant, node: &Node) -> Outlet {
    let mut outlet = Outlet {
        quality: node.quality,
        enthalpy: node.enthalpy,
        temperature: node.temperature,
        is_bulk: true,
    };
    if node.phase != Phase::TwoPhase || node.draws == Draws::Mixed {
        return outlet;
    }
    let curves = refrigerant.at(node.temperature);
    outlet.is_bulk = false;
    outlet.quality = match node.draws {
        Draws::Mixed => node.quality,
        Draws::Settled => {
            let filled = (node.vapour_volume / node.volume).min(1.0);
            let slip = slip(&curves);
            filled * slip / (1.0 - filled + filled * slip)
        }
        Draws::Vapour => 1.0,
        Draws::Liquid | Draws::Reservoir => 0.0,
        Draws::Sump => {
            let level = node.liquid / (node.liquid_density * node.volume);
            1.0 - ((level - 0.25) * 2.0).clamp(0.0, 0.6)
        }
    };
    outlet.enthalpy = curves.h_l + outlet.quality * (curves.h_g - curves.h_l);
    outlet
}

/// What leaves `node` backward through an inlet: what fills it, or of a receiver the vapour on top.
pub(super) fn inlet_of(refrigerant: &Refrigerant, node: &Node) -> Outlet {
    let bulk = Outlet {
        quality: node.quality,
        enthalpy: node.enthalpy,
        temperature: node.temperature,
        is_bulk: true,
    };
    if node.phase != Phase::TwoPhase || node.draws != Draws::Reservoir {
        return bulk;
    }
    Outlet {
        quality: 1.0,
        enthalpy: refrigerant.at(node.temperature).h_g,
        is_bulk: false,
        ..bulk
    }
}

impl Draw {
    /// Of a node through an outlet.
    pub(super) fn from_node(node: &Node, outlet: &Outlet, refrigerant: &Refrigerant) -> Self {
        let mut draw = Self {
            t: outlet.temperature,
            x: outlet.quality,
            enthalpy: outlet.enthalpy,
            ..Self::default()
        };
        let wet = 1.0 - node.water_vapour_share;
        let vapour_share;
        if node.phase == Phase::Liquid {
            draw.rho = node.liquid_density;
            let per_mass = 1.0 / node.mass;
            draw.per_refrigerant = per_mass;
            draw.per_gas = per_mass;
            draw.per_water = per_mass;
            vapour_share = 0.0;
        } else {
            let hotter = outlet.temperature > node.temperature;
            let cooling = if hotter {
                node.temperature / outlet.temperature
            } else {
                1.0
            };
            let vapour = node.vapour_density * cooling;
            let per_space = 1.0 / node.vapour_volume;
            vapour_share = if node.phase == Phase::Vapour {
                1.0
            } else if outlet.is_bulk {
                node.vapour_volume / node.volume
            } else {
                let gas = outlet.quality / vapour.max(1e-30);
                gas / (gas + (1.0 - outlet.quality) / node.liquid_density)
            };
            let liquid_share = 1.0 - vapour_share;
            draw.gas = vapour_share >= 1.0;
            draw.rho = vapour_share * (vapour + node.mass_of_gas() * per_space)
                + liquid_share * node.liquid_density;
            let per_rho = 1.0 / draw.rho;
            draw.per_gas = vapour_share * per_space * per_rho;
            draw.per_refrigerant = if node.phase == Phase::Vapour {
                cooling * per_rho / node.volume
            } else {
                (vapour_share * vapour + liquid_share * node.liquid_density) * per_rho
                    / node.refrigerant
            };
            draw.per_water = draw.per_gas * node.water_vapour_share;
            if wet > 0.0 {
                draw.per_water += liquid_share * wet * node.liquid_density / node.liquid * per_rho;
            }
        }
        draw.share = draw.per_refrigerant * node.refrigerant;
        draw.moles = [
            draw.per_gas * node.gas[0],
            draw.per_gas * node.gas[1],
            draw.per_water * node.gas[2],
        ];
        let (molar_mass, viscosity) = (refrigerant.molar_mass(), refrigerant.viscosity());
        draw.finish(molar_mass, viscosity, vapour_share > 0.5);
        draw
    }

    /// Of what is outside.
    pub(super) fn from_boundary(boundary: &Boundary) -> Self {
        let t = boundary.temperature;
        let mass: f64 = (0..3).map(|k| boundary.moles[k] * MOLAR_MASS[k]).sum();
        let mut draw = Self {
            t,
            x: 1.0,
            gas: true,
            rho: boundary.pressure * mass / (R_UNIVERSAL * t),
            moles: boundary.moles.map(|share| share / mass),
            ..Self::default()
        };
        draw.finish(1.0, NONE, true);
        draw
    }

    /// Works out what follows from the composition.
    #[inline]
    fn finish(&mut self, molar_mass: f64, viscosity: Viscosity, vapour_first: bool) {
        let of_refrigerant = self.share / molar_mass;
        let mut moles = of_refrigerant;
        let mut viscous = of_refrigerant * viscosity.vapour;
        self.mixed_enthalpy = self.share * self.enthalpy;
        for (k, of_gas) in VISCOSITY.iter().enumerate() {
            moles += self.moles[k];
            viscous += self.moles[k] * of_gas;
            self.mixed_enthalpy += self.moles[k] * gas::enthalpy(k, self.t);
        }
        let per_moles = 1.0 / moles.max(1e-300);
        self.per_viscosity = if self.gas {
            1.0 / (viscous * per_moles).max(1e-7)
        } else if vapour_first {
            1.0 / viscosity.vapour
        } else {
            1.0 / viscosity.liquid
        };
        self.per_density = 1.0 / self.rho.max(1e-30);
        self.per_speed = (per_moles / (R_UNIVERSAL * self.t)).sqrt();
    }
}
