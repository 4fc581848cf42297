//! Thermostat, disconnect, contactor, pressure switches and the compressor's motor.

use super::Thermostat;
use crate::units::{Current, GaugePressure, Voltage};
use serde::{Deserialize, Serialize};

/// What the thermostat calls for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum ThermostatCall {
    /// Nothing runs.
    #[default]
    Off,
    /// The indoor blower alone.
    Fan,
    /// Cooling: blower, compressor and outdoor fan.
    Cool,
}

/// A pressure switch: where it opens and where it closes again.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PressureSwitch {
    /// It opens here.
    pub opens: GaugePressure,
    /// It closes again here.
    pub closes: GaugePressure,
}

/// What stops the compressor by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Safety {
    /// The high-pressure switch in the discharge line.
    HighPressureSwitch,
    /// The low-pressure switch in the suction line.
    LowPressureSwitch,
    /// The overload in the motor.
    Overload,
}

/// The electric side of a unit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ElectricsData {
    /// Supply voltage.
    pub supply: Voltage,
    /// Power factor of the running compressor.
    pub power_factor: f64,
    /// Rated load amps of the compressor, from the nameplate.
    pub rated: Current,
    /// Locked-rotor amps.
    pub locked_rotor: Current,
    /// The high-pressure switch in the discharge line.
    pub high_switch: PressureSwitch,
    /// The low-pressure switch in the suction line, if there is one.
    pub low_switch: Option<PressureSwitch>,
}

/// The electric side as it stands.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a thing that is so or is not"
)]
#[derive(Debug, Clone, PartialEq)]
pub struct Electrics {
    data: ElectricsData,
    /// What the thermostat stands on.
    pub call: ThermostatCall,
    /// The room as the thermostat feels it.
    pub thermostat: Thermostat,
    /// The disconnect is in.
    pub disconnect_in: bool,
    /// Lock and tag are on the disconnect.
    pub locked: bool,
    /// The contactor is held in by hand.
    pub held_in: bool,
    /// The capacitor holds a charge.
    pub capacitor_charged: bool,
    /// The motor is ruined: its winding has gone to earth.
    pub motor_ruined: bool,
    high_open: bool,
    low_open: bool,
    /// How far the overload's bimetal has warmed: 1 opens it.
    overload: f64,
    overload_open: bool,
}

impl Electrics {
    /// Everything as the customer left it: the thermostat off, the disconnect in.
    pub const fn at_rest(data: ElectricsData, thermostat: Thermostat) -> Self {
        Self {
            data,
            call: ThermostatCall::Off,
            thermostat,
            disconnect_in: true,
            locked: false,
            held_in: false,
            capacitor_charged: true,
            motor_ruined: false,
            high_open: false,
            low_open: false,
            overload: 0.0,
            overload_open: false,
        }
    }

    /// The data of the electric side.
    pub const fn data(&self) -> &ElectricsData {
        &self.data
    }

    /// The thermostat stands on cool and the room is too warm for it.
    pub const fn calls_for_cooling(&self) -> bool {
        matches!(self.call, ThermostatCall::Cool) && self.thermostat.calls()
    }

    /// The contactor is in: by the thermostat's call through the switches, or by hand.
    pub const fn contactor_in(&self) -> bool {
        let called =
            self.calls_for_cooling() && !self.high_open && (!self.low_open || self.held_in);
        self.disconnect_in && (called || self.held_in)
    }

    /// The compressor turns.
    pub const fn compressor_runs(&self) -> bool {
        self.contactor_in() && !self.motor_ruined && !self.overload_open
    }

    /// The outdoor fan turns.
    pub const fn outdoor_fan_runs(&self) -> bool {
        self.contactor_in()
    }

    /// The indoor blower turns.
    pub const fn blower_runs(&self) -> bool {
        matches!(self.call, ThermostatCall::Fan) || self.calls_for_cooling()
    }

    /// Which safety is open.
    pub const fn open_safety(&self) -> Option<Safety> {
        if self.high_open {
            Some(Safety::HighPressureSwitch)
        } else if self.low_open {
            Some(Safety::LowPressureSwitch)
        } else if self.overload_open {
            Some(Safety::Overload)
        } else {
            None
        }
    }

    /// Lets `dt` seconds pass at the gauge pressures of suction and discharge line, Pa, and the
    /// compressor's electric power, W. Gives whether the high-pressure switch opened just now.
    pub fn follow(&mut self, suction: f64, discharge: f64, power: f64, dt: f64) -> bool {
        let before = self.high_open;
        self.high_open = switch(self.data.high_switch, discharge, self.high_open, true);
        self.low_open = self
            .data
            .low_switch
            .is_some_and(|low| switch(low, suction, self.low_open, false));
        // The thermostat's call being dropped resets nothing here; the switches reset themselves.
        let share = self.amps(power) / self.data.rated.amps();
        // Chosen: half a minute at locked rotor opens it, it bears 1.25 times the rated amps, and
        // it cools in some minutes (common practice, no source).
        let warming = if share > 1.25 {
            (share - 1.25) / 80.0
        } else {
            -1.0 / 240.0
        };
        self.overload = (self.overload + warming * dt).clamp(0.0, 1.0);
        if self.overload >= 1.0 {
            self.overload_open = true;
        } else if self.overload <= 0.0 {
            self.overload_open = false;
        }
        if self.disconnect_in {
            self.capacitor_charged = true;
        }
        self.high_open && !before
    }

    /// What a clamp meter on the compressor's lead sees at this electric power, A.
    pub fn amps(&self, power: f64) -> f64 {
        if !self.contactor_in() || self.overload_open {
            0.0
        } else if self.motor_ruined {
            self.data.locked_rotor.amps()
        } else {
            power / (self.data.supply.volts() * self.data.power_factor)
        }
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        let flags = [
            self.disconnect_in,
            self.locked,
            self.held_in,
            self.capacitor_charged,
            self.motor_ruined,
            self.high_open,
            self.low_open,
            self.overload_open,
        ];
        for flag in flags {
            visit(f64::from(u8::from(flag)));
        }
        visit(f64::from(self.call as u8));
        visit(self.overload);
        self.thermostat.visit_state(visit);
    }
}

/// Whether a switch is open: a high one opens above, a low one below.
fn switch(data: PressureSwitch, gauge: f64, open: bool, is_high: bool) -> bool {
    let (opens, closes) = (data.opens.pascals(), data.closes.pascals());
    if is_high {
        gauge > opens || (open && gauge > closes)
    } else {
        gauge < opens || (open && gauge < closes)
    }
}
