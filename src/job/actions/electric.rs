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
        require(self.surroundings.fan_on != on, "It is so already.")?;
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
                require(electrics.disconnect_in, "The disconnect is out already.")?;
                electrics.disconnect_in = false;
            }
            DisconnectMove::Insert => {
                require(!electrics.disconnect_in, "The disconnect is in already.")?;
                require(
                    !electrics.locked,
                    "Lock and tag are on it: take them off first.",
                )?;
                electrics.disconnect_in = true;
            }
            DisconnectMove::LockAndTag => {
                require(
                    !electrics.disconnect_in,
                    "Pull the disconnect before you lock it.",
                )?;
                require(!electrics.locked, "Lock and tag are on it already.")?;
                electrics.locked = true;
            }
            DisconnectMove::Unlock => {
                require(electrics.locked, "There is no lock on it.")?;
                electrics.locked = false;
            }
        }
        Ok(())
    }

    pub(super) fn verify_dead(&mut self) -> Result<(), Refusal> {
        require(
            !self.electrics.disconnect_in,
            "The meter shows the full supply: pull the disconnect first.",
        )?;
        self.electrics.capacitor_charged = false;
        Ok(())
    }

    pub(super) fn hold_contactor(&mut self, held: bool) -> Result<(), Refusal> {
        require(self.electrics.held_in != held, "It is so already.")?;
        self.electrics.held_in = held;
        Ok(())
    }
}
