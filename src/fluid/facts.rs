//! What there is to know of a refrigerant beside its table: safety, water, viscosity, oil.

use super::constants::ZERO_CELSIUS;
use super::within;
use serde::Deserialize;

/// How a refrigerant may harm and burn, by the class of ISO 817 and ASHRAE 34.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum SafetyClass {
    /// Of lower toxicity, no flame.
    A1,
    /// Of lower toxicity, burns slowly.
    A2L,
    /// Of lower toxicity, burns.
    A2,
    /// Of lower toxicity, burns readily.
    A3,
    /// Of higher toxicity, no flame.
    B1,
    /// Of higher toxicity, burns slowly.
    B2L,
}

impl SafetyClass {
    /// As the standards write it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::A1 => "A1",
            Self::A2L => "A2L",
            Self::A2 => "A2",
            Self::A3 => "A3",
            Self::B1 => "B1",
            Self::B2L => "B2L",
        }
    }

    /// Whether it burns.
    pub const fn is_flammable(self) -> bool {
        match self {
            Self::A1 | Self::B1 => false,
            Self::A2L | Self::A2 | Self::A3 | Self::B2L => true,
        }
    }
}

/// Viscosity of a refrigerant, Pa s.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Viscosity {
    /// Of the liquid.
    pub liquid: f64,
    /// Of the vapour.
    pub vapour: f64,
}

/// Specific heats in the zones of the coils, J/(kg K).
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Zones {
    /// Of the vapour that the outdoor coil desuperheats.
    pub hot_vapour: f64,
    /// Of the liquid that it subcools.
    pub liquid: f64,
    /// Of the vapour that the indoor coil superheats.
    pub cold_vapour: f64,
}

/// Refrigerant per kg of oil at equilibrium: `a r + b r⁶`, r the share of saturation.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct InOil {
    /// Of the straight part.
    pub a: f64,
    /// Of the part that grows as saturation nears.
    pub b: f64,
}

impl InOil {
    /// Refrigerant per kg of oil at a share of saturation.
    pub fn held(self, saturation: f64) -> f64 {
        let r = saturation.clamp(0.0, 0.98);
        let cube = r * r * r;
        self.a * r + self.b * cube * cube
    }
}

/// The facts of one refrigerant, as its file in `assets/refrigerants` gives them.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Facts {
    /// The version of this format: 1.
    pub version: u32,
    /// The trade name.
    pub name: String,
    /// How it may harm and burn.
    pub safety: SafetyClass,
    /// Lower flammability limit, kg/m³.
    pub burns_from: Option<f64>,
    /// Global warming potential over 100 years.
    pub gwp: f64,
    /// Water in its liquid: °F and ppm by mass, the coldest first.
    pub water: Vec<(f64, f64)>,
    /// Viscosity.
    pub viscosity: Viscosity,
    /// Specific heats in the coils.
    pub zones: Zones,
    /// What oil holds of it.
    pub oil: InOil,
}

impl Facts {
    /// Reads a file; `None` where it contradicts itself.
    pub fn read(text: &str) -> Option<Self> {
        let facts: Self = ron::from_str(text).ok()?;
        let rises = |w: &[(f64, f64)]| w[0].0 < w[1].0 && w[0].1 > 0.0 && w[1].1 > 0.0;
        let above_zero = [
            facts.viscosity.liquid,
            facts.viscosity.vapour,
            facts.zones.hot_vapour,
            facts.zones.liquid,
            facts.zones.cold_vapour,
        ];
        let holds = facts.version == 1
            && facts.burns_from.is_some() == facts.safety.is_flammable()
            && facts.burns_from.is_none_or(|limit| limit > 0.0)
            && facts.gwp >= 0.0
            && facts.water.len() >= 2
            && facts.water.windows(2).all(rises)
            && above_zero.iter().all(|value| *value > 0.0)
            && facts.oil.a >= 0.0
            && facts.oil.b >= 0.0;
        holds.then_some(facts)
    }

    /// How much water the liquid dissolves at `t`, K: ppm by mass, straight in the logarithm
    /// between the lines of its table and on beyond its ends.
    pub fn dissolves(&self, t: f64) -> f64 {
        // The reach of the table and a little more: a log line must not run away.
        let fahrenheit = within((t - ZERO_CELSIUS) * 1.8 + 32.0, -100.0, 200.0);
        let above = self.water.partition_point(|line| line.0 <= fahrenheit);
        let above = above.clamp(1, self.water.len() - 1);
        let (low, high) = (self.water[above - 1], self.water[above]);
        let part = (fahrenheit - low.0) / (high.0 - low.0);
        low.1 * libm::exp(part * libm::log(high.1 / low.1))
    }
}
