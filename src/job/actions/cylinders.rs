//! Nitrogen with its regulator, refrigerant with its scale.

use super::require;
use crate::job::{Job, Refusal};
use crate::units::{Fraction, GaugePressure};

/// The end of the regulator's screw. Chosen: a regulator for refrigeration goes to 800 psig.
const SCREW_END: GaugePressure = GaugePressure::from_psig(800.0);

impl Job {
    pub(super) fn set_nitrogen_valve(&mut self, open: bool) -> Result<(), Refusal> {
        require(self.kit.nitrogen.valve_open != open, "refusal-cylinder-so")?;
        self.kit.nitrogen.valve_open = open;
        Ok(())
    }

    pub(super) fn fit_regulator(&mut self, fitted: bool) -> Result<(), Refusal> {
        let nitrogen = &mut self.kit.nitrogen;
        require(nitrogen.regulator_fitted != fitted, "refusal-regulator-so")?;
        require(!nitrogen.valve_open, "refusal-shut-nitrogen-first")?;
        nitrogen.regulator_fitted = fitted;
        Ok(())
    }

    pub(super) fn set_regulator(&mut self, to: GaugePressure) -> Result<(), Refusal> {
        require(self.kit.nitrogen.regulator_fitted, "refusal-no-regulator")?;
        require(
            (0.0..=SCREW_END.pascals()).contains(&to.pascals()),
            "refusal-regulator-range",
        )?;
        self.kit.nitrogen.setting = to;
        Ok(())
    }

    pub(super) fn set_cylinder_valve(&mut self, open: Fraction) -> Result<(), Refusal> {
        self.kit.cylinder.valve = open;
        Ok(())
    }

    pub(super) fn turn_cylinder(&mut self, inverted: bool) -> Result<(), Refusal> {
        require(
            self.kit.cylinder.inverted != inverted,
            "refusal-cylinder-stands-so",
        )?;
        self.kit.cylinder.inverted = inverted;
        Ok(())
    }

    pub(super) fn tare_scale(&mut self) -> Result<(), Refusal> {
        self.kit.cylinder.tare();
        Ok(())
    }
}
