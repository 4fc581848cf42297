//! What a technician brings: one file per instrument or tool.

mod bubbles;
mod clamp_meter;
mod detector;
mod finding_row;
mod gauge;
mod instrument;
mod manifold;
mod micron_gauge;
pub mod nitrogen;
mod piping;
mod place;
pub(crate) mod plain;
pub mod recovery;
pub mod refrigerant_cylinder;
mod stage;
mod thermometer;
pub mod tool;
pub mod tools;
pub mod vacuum_pump;

pub use bubbles::BubbleSolution;
pub use clamp_meter::ClampMeter;
pub use detector::Detector;
pub use finding_row::{Counts, FindingRow, Item, RowPrice};
pub use gauge::PressureGauge;
pub use instrument::Instrument;
pub use manifold::{HoseState, Manifold};
pub use micron_gauge::MicronGauge;
pub use nitrogen::NitrogenSet;
pub use piping::{OutletPlace, Piping};
pub use place::{GaugePlace, Hose, HoseEnd, ThermometerPlace};
pub use recovery::RecoveryMachine;
pub use refrigerant_cylinder::RefrigerantCylinder;
pub use stage::Stage;
pub use thermometer::Thermometers;
pub use tools::Tools;
pub use vacuum_pump::VacuumPump;

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::SeedableRng;

/// Everything the technician brought, as it stands.
#[derive(Debug, Clone)]
pub struct Kit {
    /// Manifold with its hoses and gauges.
    pub manifold: Manifold,
    /// What the centre hose can be put on.
    pub tools: Tools,
    /// Micron gauge.
    pub micron_gauge: MicronGauge,
    /// Electronic leak detector.
    pub detector: Detector,
    /// Bubble solution.
    pub bubbles: BubbleSolution,
    /// Clamp thermometers.
    pub thermometers: Thermometers,
    /// Clamp meter.
    pub clamp_meter: ClampMeter,
    /// Glasses and gloves are on.
    pub protection_on: bool,
    /// The noise of the instruments.
    pub noise: ChaCha8Rng,
}

impl Kit {
    /// The kit on its cart at an air temperature, K, with these tools, so many thermometers and a
    /// seed for the noise of the instruments.
    pub fn on_the_cart(tools: Tools, air: f64, thermometers: u8, seed: u64) -> Self {
        Self {
            manifold: Manifold::on_the_cart(),
            tools,
            micron_gauge: MicronGauge::on_the_cart(),
            detector: Detector::put_away(),
            bubbles: BubbleSolution::default(),
            thermometers: Thermometers::put_away(air, thermometers),
            clamp_meter: ClampMeter::put_away(),
            protection_on: false,
            noise: ChaCha8Rng::seed_from_u64(seed),
        }
    }

    /// The tool that the centre hose is on.
    pub fn tool_in_use(&self) -> Option<tools::Name> {
        self.manifold.hose(Hose::Centre).end.and_then(HoseEnd::tool)
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        self.manifold.visit_state(visit);
        self.tools.visit_state(visit);
        self.micron_gauge.visit_state(visit);
        self.detector.visit_state(visit);
        self.bubbles.visit_state(visit);
        self.thermometers.visit_state(visit);
        self.clamp_meter.visit_state(visit);
        visit(f64::from(u8::from(self.protection_on)));
    }
}
