//! The hermetic compressor with its shell and discharge line.

use super::network::Compressed;
use crate::units::{Conductance, Displacement, HeatCapacity, Mass, Power, Time, Volume};
use serde::{Deserialize, Serialize};

/// How a compressor squeezes its gas.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum CompressorKind {
    /// Pistons with valves: its power falls with the suction.
    #[default]
    Piston,
    /// Scrolls: they close the gas off, squeeze it by a built-in ratio of volumes and then open to
    /// the discharge, whatever stands there. Its power hangs on the discharge, hardly on the
    /// suction.
    Scroll {
        /// The volume closed off against the volume at the opening to the discharge.
        built_in: f64,
    },
}

/// A compressor as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CompressorData {
    /// How it squeezes its gas; pistons if the file does not say.
    #[serde(default)]
    pub kind: CompressorKind,
    /// Volume swept in a second.
    pub displacement: Displacement,
    /// Clearance as a share of the swept volume.
    pub clearance: f64,
    /// Polytropic index.
    pub index: f64,
    /// Efficiency at its best ratio of pressures, without what it takes idle.
    pub efficiency: f64,
    /// That ratio; 3 if the file does not say.
    #[serde(default = "usual_best_ratio")]
    pub best_ratio: f64,
    /// How a piston machine's falls off that ratio, per square of the distance; nought if the file
    /// does not say.
    #[serde(default)]
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
/// The loss of filling from which on it runs out evenly. Chosen: a machine in order still draws a
/// low side into a vacuum (common practice, no source).
const LOSS_EVEN: f64 = 0.5;
/// The least flow that carries the heat of compression off, kg/s.
const FLOW_MIN: f64 = 1e-6;

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
    kind: CompressorKind,
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
            kind: data.kind,
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
    /// m = ρ V f(C [(pd/ps)^(1/n) - 1])
    /// P = m n/(n-1) ps/ρ [(pd/ps)^((n-1)/n) - 1] / η + idle            pistons
    /// P = V [pd/v + ps (v^(n-1) - n)/(n-1)] / η + idle                  scrolls
    /// ```
    ///
    /// f(x) is 1 - x and runs out evenly beyond a half. v is the built-in ratio of volumes: a
    /// scroll squeezes to it by the polytrope, then opens at once to what stands in the discharge.
    pub fn compress(&self, density: f64, low: f64, high: f64) -> Compressed {
        if !self.powered {
            return Compressed::default();
        }
        let (low, n) = (low.max(1e-3), self.index);
        let ratio = (high / low).max(1.0);
        let root = libm::exp(libm::log(ratio) / n);
        let (filled, slope) = fill(self.clearance * (root - 1.0));
        let swept = density * self.displacement;
        let flow = swept * filled;
        let lost = if ratio > 1.0 {
            swept * slope * self.clearance * root / n
        } else {
            0.0
        };
        let power = match self.kind {
            CompressorKind::Piston => {
                let work = n / (n - 1.0) * low / density.max(1e-9) * (ratio / root - 1.0);
                flow * work / self.piston_efficiency(ratio)
            }
            CompressorKind::Scroll { built_in } => {
                let squeezed = libm::exp(libm::log(built_in) * (n - 1.0));
                let mean = high.max(low) / built_in + low * (squeezed - n) / (n - 1.0);
                self.displacement * mean.max(0.0) / self.efficiency
            }
        } + self.idle;
        Compressed {
            flow,
            per_suction: (flow + lost) / low,
            per_discharge: -lost / high.max(low),
            power,
            rise: self.to_gas * power / flow.max(FLOW_MIN),
        }
    }

    fn piston_efficiency(&self, ratio: f64) -> f64 {
        let off = ratio - self.best_ratio;
        (self.efficiency - self.efficiency_fall * off * off).max(EFFICIENCY_MIN)
    }
}

/// How full the cylinders get when `loss` of the filling goes to gas that expands from the
/// clearance, and how that falls with the loss.
fn fill(loss: f64) -> (f64, f64) {
    if loss <= LOSS_EVEN {
        return (1.0 - loss, 1.0);
    }
    let rest = 1.0 - LOSS_EVEN;
    let slope = libm::exp((LOSS_EVEN - loss) / rest);
    (rest * slope, slope)
}
