//! Amounts and the account of what came in from outside.

use std::ops::{AddAssign, Sub};

/// Amounts of everything that the network keeps account of.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Amounts {
    /// Refrigerant, kg.
    pub refrigerant: f64,
    /// Nitrogen, air and water, mol.
    pub gas: [f64; 3],
    /// Energy, J.
    pub energy: f64,
}

impl Amounts {
    /// Nothing.
    pub const NOTHING: Self = Self {
        refrigerant: 0.0,
        gas: [0.0; 3],
        energy: 0.0,
    };

    /// Refrigerant alone, kg.
    pub const fn refrigerant(mass: f64) -> Self {
        Self {
            refrigerant: mass,
            ..Self::NOTHING
        }
    }

    /// Air alone, kg.
    pub const fn air(mass: f64) -> Self {
        Self {
            gas: [0.0, mass / super::gas::MOLAR_MASS[1], 0.0],
            ..Self::NOTHING
        }
    }

    /// Nitrogen alone, kg.
    pub const fn nitrogen(mass: f64) -> Self {
        Self {
            gas: [mass / super::gas::MOLAR_MASS[0], 0.0, 0.0],
            ..Self::NOTHING
        }
    }

    /// Water alone, kg.
    pub const fn water(mass: f64) -> Self {
        Self {
            gas: [0.0, 0.0, mass / super::gas::MOLAR_MASS[2]],
            ..Self::NOTHING
        }
    }

    /// Adds `share` of `other`.
    #[inline]
    pub(super) fn add_scaled(&mut self, other: &Self, share: f64) {
        self.refrigerant += share * other.refrigerant;
        for (sum, part) in self.gas.iter_mut().zip(other.gas) {
            *sum += share * part;
        }
        self.energy += share * other.energy;
    }

    /// The same amounts without signs.
    pub(super) fn absolute(&self) -> Self {
        Self {
            refrigerant: self.refrigerant.abs(),
            gas: self.gas.map(f64::abs),
            energy: self.energy.abs(),
        }
    }

    /// Every number of it.
    pub(super) fn visit(&self, visitor: &mut dyn FnMut(f64)) {
        visitor(self.refrigerant);
        self.gas.into_iter().for_each(&mut *visitor);
        visitor(self.energy);
    }
}

impl AddAssign for Amounts {
    fn add_assign(&mut self, other: Self) {
        self.add_scaled(&other, 1.0);
    }
}

impl Sub for Amounts {
    type Output = Self;
    fn sub(mut self, other: Self) -> Self {
        self.add_scaled(&other, -1.0);
        self
    }
}

/// What flows through an element.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Flux {
    /// Refrigerant, kg/s.
    pub refrigerant: f64,
    /// Nitrogen, air and water, mol/s.
    pub gas: [f64; 3],
    /// Energy, W.
    pub energy: f64,
    /// All of it, kg/s.
    pub mass: f64,
}

/// What has crossed an element since the start, each way by itself.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Crossed {
    /// From the first end to the second.
    pub out: Amounts,
    /// From the second end to the first.
    pub in_: Amounts,
}

/// The account with the outside.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Ledger {
    /// All that came in less all that went out: through boundaries, as heat and work, or by hand.
    pub net: Amounts,
    /// All that passed, whichever way: the scale of a balance.
    pub scale: Amounts,
}

impl Ledger {
    /// Books what came in.
    #[inline]
    pub(super) fn book(&mut self, amounts: &Amounts) {
        self.net.add_scaled(amounts, 1.0);
        self.scale += amounts.absolute();
    }

    /// Books heat or work that came in, J.
    #[inline]
    pub(super) fn book_energy(&mut self, energy: f64) {
        self.net.energy += energy;
        self.scale.energy += energy.abs();
    }
}
