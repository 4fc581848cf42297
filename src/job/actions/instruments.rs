//! Thermometers and clamp meter.

use super::require;
use crate::job::{Job, Refusal};
use crate::words::ThermometerPlace;

impl Job {
    pub(super) fn clamp(&mut self, place: ThermometerPlace) -> Result<(), Refusal> {
        let thermometers = &mut self.kit.thermometers;
        require(!thermometers.is_at(place), "refusal-thermometer-here")?;
        require(thermometers.free() > 0, "refusal-thermometers-in-use")?;
        thermometers.put(place);
        Ok(())
    }

    pub(super) fn unclamp(&mut self, place: ThermometerPlace) -> Result<(), Refusal> {
        require(self.kit.thermometers.is_at(place), "refusal-no-thermometer")?;
        self.kit.thermometers.take(place);
        Ok(())
    }

    pub(super) fn put_clamp_meter(&mut self, on: bool) -> Result<(), Refusal> {
        self.kit.clamp_meter.on = on;
        Ok(())
    }
}
