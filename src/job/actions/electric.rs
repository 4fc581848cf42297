//! Thermostat, disconnect, contactor, and what protects the technician.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::ThermostatCall;
use crate::words::DisconnectMove;

impl Job {
    pub(super) fn protect(&mut self, on: bool) -> Result<(), Refusal> {
        self.kit.protection_on = on;
        Ok(())
    }

    pub(super) fn ventilate(&mut self, on: bool) -> Result<(), Refusal> {
        require(self.surroundings.fan_on != on, "refusal-so-already")?;
        self.surroundings.fan_on = on;
        Ok(())
    }

    pub(super) fn set_thermostat(&mut self, call: ThermostatCall) -> Result<(), Refusal> {
        self.electrics.call = call;
        Ok(())
    }

    pub(super) fn work_disconnect(&mut self, by: DisconnectMove) -> Result<(), Refusal> {
        let electrics = &mut self.electrics;
        match by {
            DisconnectMove::Pull => {
                require(electrics.disconnect_in, "refusal-disconnect-out")?;
                electrics.disconnect_in = false;
            }
            DisconnectMove::Insert => {
                require(!electrics.disconnect_in, "refusal-disconnect-in")?;
                require(!electrics.locked, "refusal-locked")?;
                electrics.disconnect_in = true;
            }
            DisconnectMove::LockAndTag => {
                require(!electrics.disconnect_in, "refusal-pull-before-lock")?;
                require(!electrics.locked, "refusal-locked-already")?;
                electrics.locked = true;
            }
            DisconnectMove::Unlock => {
                require(electrics.locked, "refusal-not-locked")?;
                electrics.locked = false;
            }
        }
        Ok(())
    }

    pub(super) fn verify_dead(&mut self) -> Result<(), Refusal> {
        require(!self.electrics.disconnect_in, "refusal-still-live")?;
        self.electrics.capacitor_charged = false;
        Ok(())
    }

    pub(super) fn hold_contactor(&mut self, held: bool) -> Result<(), Refusal> {
        require(self.electrics.held_in != held, "refusal-so-already")?;
        self.electrics.held_in = held;
        Ok(())
    }
}
