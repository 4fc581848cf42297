//! The hermetic compressor with its shell and discharge line.

use super::network::Compressed;
use crate::units::{Conductance, Displacement, HeatCapacity, Mass, Power, Time, Volume};
use serde::{Deserialize, Serialize};

/// A compressor as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CompressorData {
    /// Volume swept in a second.
    pub displacement: Displacement,
    /// Clearance as a share of the swept volume.
    pub clearance: f64,
    /// Polytropic index.
    pub index: f64,
    /// Efficiency at its best ratio of pressures.
    pub efficiency: f64,
    /// That ratio; 3 if the file does not say.
    #[serde(default = "usual_best_ratio")]
    pub best_ratio: f64,
    /// How it falls off that ratio, per square of the distance.
    pub efficiency_fall: f64,
    /// Power that it takes whatever it pumps.
    pub idle: Power,
    /// Share of the power that heats the shell and not the gas.
    pub shell_share: f64,
    /// Free volume of the shell.
    pub shell: Volume,
    /// Heat capacity of the shell with motor and oil.
    pub shell_wall: HeatCapacity,
    /// From the shell to the air around.
    pub shell_to_air: Conductance,
    /// Volume of the discharge plenum and line.
    pub discharge: Volume,
    /// Heat capacity of the discharge line.
    pub discharge_wall: HeatCapacity,
    /// From the discharge to the shell: it bounds the discharge temperature at low flow.
    pub discharge_to_shell: Conductance,
    /// Oil.
    pub oil: Mass,
    /// How fast oil takes up and gives off refrigerant.
    pub oil_lag: Time,
}

impl CompressorData {
    /// Flow, kg/s, and electric power, W, between two pressures, Pa, of gas of this density,
    /// kg/m³, at the suction.
    pub fn pumps(&self, density: f64, low: f64, high: f64) -> (f64, f64) {
        let mut compressor = Compressor::new(self);
        compressor.powered = true;
        let done = compressor.compress(density, low, high);
        (done.flow, done.power)
    }
}

/// The lowest efficiency. Chosen.
const EFFICIENCY_MIN: f64 = 0.55;
/// The most that the gas is heated by, J/kg. Chosen: the shell's heat takes the rest.
const RISE_MAX: f64 = 150e3;

/// The ratio of pressures with the best efficiency. Chosen: that of air conditioning.
const fn usual_best_ratio() -> f64 {
    3.0
}

/// What the laws of the compressor need, in SI.
#[derive(Debug, Clone, Copy)]
pub(super) struct Compressor {
    pub powered: bool,
    displacement: f64,
    clearance: f64,
    index: f64,
    efficiency: f64,
    best_ratio: f64,
    efficiency_fall: f64,
    idle: f64,
    to_gas: f64,
}

impl Compressor {
    pub fn new(data: &CompressorData) -> Self {
        Self {
            powered: false,
            displacement: data.displacement.cubic_metres_per_second(),
            clearance: data.clearance,
            index: data.index,
            efficiency: data.efficiency,
            best_ratio: data.best_ratio,
            efficiency_fall: data.efficiency_fall,
            idle: data.idle.watts(),
            to_gas: 1.0 - data.shell_share,
        }
    }

    /// Flow and power between two pressures, Pa, of gas of this density, kg/m³.
    ///
    /// ```text
    /// m = ρ V (1 - C [(pd/ps)^(1/n) - 1])
    /// w = n/(n-1) ps/ρ [(pd/ps)^((n-1)/n) - 1] / η
    /// ```
    pub fn compress(&self, density: f64, low: f64, high: f64) -> Compressed {
        if !self.powered {
            return Compressed::default();
        }
        let (low, n) = (low.max(1e-3), self.index);
        let ratio = (high / low).max(1.0);
        let root = libm::exp(libm::log(ratio) / n);
        let filled = (1.0 - self.clearance * (root - 1.0)).max(0.0);
        let swept = density * self.displacement;
        let flow = swept * filled;
        let lost = if ratio > 1.0 {
            swept * self.clearance * root / n
        } else {
            0.0
        };
        let off = ratio - self.best_ratio;
        let efficiency = (self.efficiency - self.efficiency_fall * off * off).max(EFFICIENCY_MIN);
        let work = n / (n - 1.0) * low / density.max(1e-9) * (ratio / root - 1.0);
        let power = flow * work / efficiency + self.idle;
        let pumps = filled > 0.0;
        Compressed {
            flow,
            per_suction: if pumps { (flow + lost) / low } else { 0.0 },
            per_discharge: if pumps { -lost / high.max(low) } else { 0.0 },
            power,
            rise: (self.to_gas * power / flow.max(2e-4)).min(RISE_MAX),
        }
    }
}
