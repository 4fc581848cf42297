//! Nitrogen cylinder, regulator and its relief.

use super::PressureGauge;
use crate::fluid::gas::R_UNIVERSAL;
use crate::units::{ATMOSPHERE, GaugePressure, PSI};

/// The water volume of the cylinder, m³. Chosen: a 40 cubic foot cylinder (common practice).
const VOLUME: f64 = 8.0e-3;

/// The relief of the regulator opens here, Pa gauge. Chosen (common practice, no source).
const RELIEF: f64 = 600.0 * PSI;

/// Nitrogen cylinder and regulator as they stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NitrogenSet {
    /// The cylinder's valve is open.
    pub valve_open: bool,
    /// The regulator is on the cylinder.
    pub regulator_fitted: bool,
    /// What the regulator's screw is set to; 0 is backed off.
    pub setting: GaugePressure,
    /// What is left in the cylinder, mol.
    content: f64,
    /// The outlet gauge.
    pub outlet_gauge: PressureGauge,
    /// The cylinder gauge.
    pub cylinder_gauge: PressureGauge,
}

impl NitrogenSet {
    /// A full cylinder, shut, its regulator fitted and backed off.
    ///
    /// Chosen: full is 2,000 psig at 70 °F (common practice, no source).
    pub fn full() -> Self {
        let full = 2000.0 * PSI + ATMOSPHERE;
        Self {
            valve_open: false,
            regulator_fitted: true,
            setting: GaugePressure::from_psig(0.0),
            content: full * VOLUME / (R_UNIVERSAL * 294.26),
            outlet_gauge: PressureGauge::regulator_outlet(),
            cylinder_gauge: PressureGauge::cylinder(),
        }
    }

    /// The pressure in the cylinder at an air temperature, K: Pa absolute.
    pub fn cylinder_pressure(&self, air: f64) -> f64 {
        self.content * R_UNIVERSAL * air / VOLUME
    }

    /// The pressure at the outlet, Pa absolute, when gas can flow; `None` when it is shut off.
    pub fn outlet_pressure(&self, air: f64) -> Option<f64> {
        if !self.valve_open {
            None
        } else if self.regulator_fitted {
            let set = self.setting.pascals().min(RELIEF);
            (set > 0.0).then(|| (set + ATMOSPHERE).min(self.cylinder_pressure(air)))
        } else {
            Some(self.cylinder_pressure(air))
        }
    }

    /// Takes moles out of the cylinder.
    pub fn give(&mut self, moles: f64) {
        self.content = (self.content - moles).max(0.0);
    }

    /// Gauges follow: the outlet's at `outlet`, Pa absolute, for `dt` seconds.
    pub fn follow(&mut self, outlet: f64, air: f64, dt: f64) {
        let cylinder = self.cylinder_pressure(air);
        let (outlet, cylinder) = if self.regulator_fitted {
            (
                outlet,
                if self.valve_open {
                    cylinder
                } else {
                    ATMOSPHERE
                },
            )
        } else {
            (ATMOSPHERE, ATMOSPHERE)
        };
        self.outlet_gauge.follow(outlet, dt);
        self.cylinder_gauge.follow(cylinder, dt);
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        visit(f64::from(u8::from(self.valve_open)));
        visit(f64::from(u8::from(self.regulator_fitted)));
        visit(self.setting.pascals());
        visit(self.content);
        self.outlet_gauge.visit_state(visit);
        self.cylinder_gauge.visit_state(visit);
    }
}
