//! The two-stage vacuum pump with its gas ballast and its oil.

use crate::units::MICRON;

/// Free-air displacement, m³/s. Chosen: 5 cfm, of the usual 3 to 10 (common practice).
pub const DISPLACEMENT: f64 = 2.36e-3;

/// The pump as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct VacuumPump {
    /// It runs.
    pub running: bool,
    /// The valve at its inlet is open.
    pub inlet_open: bool,
    /// The gas ballast is open.
    pub ballast_open: bool,
    /// Water in the oil, kg.
    water_in_oil: f64,
}

impl VacuumPump {
    /// Stopped, its valves shut, fresh oil.
    pub const fn with_fresh_oil() -> Self {
        Self {
            running: false,
            inlet_open: false,
            ballast_open: false,
            water_in_oil: 0.0,
        }
    }

    /// The lowest pressure it can reach, Pa absolute.
    ///
    /// A two-stage service pump blanks off at 15 to 25 micron (common practice). Chosen: the open
    /// ballast costs 150 micron, a gram of water in the oil 120.
    pub fn ultimate(&self) -> f64 {
        let ballast = if self.ballast_open { 150.0 } else { 0.0 };
        (18.0 + ballast + 120e3 * self.water_in_oil) * MICRON
    }

    /// Water vapour passes through, kg in `dt` seconds; what does not leave stays in the oil.
    /// Chosen: without ballast a fifth of it condenses in the oil, with ballast a fiftieth, and
    /// an open ballast drives out what is in the oil in about half an hour.
    pub fn pass_water(&mut self, water: f64, dt: f64) {
        let (kept, driven_out) = if self.ballast_open {
            (0.02, dt / 1800.0)
        } else {
            (0.2, 0.0)
        };
        self.water_in_oil += kept * water;
        self.water_in_oil -= self.water_in_oil * driven_out;
    }

    /// Fresh oil.
    pub fn change_oil(&mut self) {
        self.water_in_oil = 0.0;
    }

    /// The oil in the sight glass looks milky. Chosen: from half a gram of water.
    pub fn oil_is_milky(&self) -> bool {
        self.water_in_oil > 0.5e-3
    }

    /// It draws on what is at its inlet.
    pub const fn draws(&self) -> bool {
        self.running && self.inlet_open
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        for flag in [self.running, self.inlet_open, self.ballast_open] {
            visit(f64::from(u8::from(flag)));
        }
        visit(self.water_in_oil);
    }
}
