//! What a technician can do: the only things that change a job, beside the passing of time.

use super::{Diagnosis, Level};
use super::{GaugePlace, Hose, HoseEnd, SheetField, Spot, ThermometerPlace};
use crate::kit::plain::plain;
use crate::kit::tools;
use crate::plant::{Arrow, Joint, Line, ThermostatCall};
use crate::units::{Fraction, Torque};
use serde::{Deserialize, Serialize};
use strum::VariantNames;

/// What is done to the disconnect of the outdoor unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum DisconnectMove {
    /// Pull it: the outdoor unit is dead.
    Pull,
    /// Put it back in.
    Insert,
    /// Lock it out and hang the tag.
    LockAndTag,
    /// Take lock and tag off.
    Unlock,
}

/// One thing done by the technician.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, VariantNames)]
#[serde(remote = "Self")]
pub enum Action {
    /// Put glasses and gloves on, or take them off.
    Protect(bool),
    /// Open doors and set a fan up that changes the air where the work is done, or end that.
    Ventilate(bool),
    /// Set the thermostat.
    Thermostat(ThermostatCall),
    /// Work the disconnect.
    Disconnect(DisconnectMove),
    /// Discharge the capacitor and prove with the meter that nothing is live.
    VerifyDead,
    /// Hold the contactor in by hand past the low-pressure switch, or let go.
    HoldContactor(bool),

    /// Put a service valve's stem cap on or take it off.
    StemCap {
        /// Which.
        line: Line,
        /// On, or off.
        on: bool,
    },
    /// Turn a stem: 0 is front-seated, 1 back-seated, a little above 0 cracked.
    Stem {
        /// Which.
        line: Line,
        /// How far it is open.
        open: Fraction,
    },
    /// Put a port's cap on or take it off.
    PortCap {
        /// Which.
        line: Line,
        /// On, or off.
        on: bool,
    },
    /// Put the core tool between port and hose, or take it off.
    CoreTool {
        /// Which.
        line: Line,
        /// On, or off.
        fitted: bool,
    },
    /// Pull or seat the core through the core tool, or by hand.
    Core {
        /// Which.
        line: Line,
        /// Seated, or out.
        seated: bool,
    },
    /// Open or shut the core tool's own valve.
    CoreToolValve {
        /// Which.
        line: Line,
        /// Open, or shut.
        open: bool,
    },

    /// Put a hose's far end on something.
    Connect {
        /// Which.
        hose: Hose,
        /// On what.
        to: HoseEnd,
    },
    /// Take a hose's far end off what it is on.
    TakeOff(Hose),
    /// Let a breath through a hose: crack its end at the manifold for a moment.
    Purge(Hose),
    /// Set a hand valve of the manifold (low or high): 0 shut, 1 open.
    HandValve {
        /// Which.
        hose: Hose,
        /// How far it is open.
        open: Fraction,
    },

    /// Put the micron gauge somewhere.
    MicronGauge(GaugePlace),
    /// Open or shut the micron gauge's own valve.
    MicronGaugeValve(bool),

    /// Crack a flare nut by a turn.
    Loosen(Joint),
    /// Take a flare joint apart.
    TakeApart(Joint),
    /// Plug both open ends of a joint that is apart.
    Plug(Joint),
    /// Cut the tube and make a new flare; the joint must be apart.
    RenewFlare(Joint),
    /// Make a joint up to a torque.
    MakeUp {
        /// Which.
        joint: Joint,
        /// How tight.
        torque: Torque,
    },
    /// Hold the detector at a spot.
    Sniff(Spot),
    /// Put the detector away.
    StopSniffing,
    /// Wet a spot with bubble solution.
    Wet(Spot),
    /// Wipe a spot dry.
    Wipe(Spot),

    /// Take the drier out; both of its flares must be apart.
    TakeOutDrier,
    /// Take the caps off a new drier and put it in place, hand-tight.
    FitDrier(Arrow),
    /// Clean the outdoor coil.
    CleanOutdoorCoil,
    /// Change the indoor air filter.
    ChangeFilter,

    /// Clamp or hang a thermometer.
    Clamp(ThermometerPlace),
    /// Take a thermometer away.
    Unclamp(ThermometerPlace),
    /// Put the clamp meter on the compressor's lead, or take it off.
    ClampMeter(bool),

    /// Write a value on the job sheet.
    Write {
        /// Which blank.
        field: SheetField,
        /// What is written.
        value: Level,
    },
    /// Write the diagnosis on the job sheet.
    Diagnose(Diagnosis),
    /// Hand the job back: it is over.
    HandBack,

    /// Work a tool. A file leaves this word out: `Nitrogen(Valve(true))`.
    #[serde(skip)]
    Tool(tools::Action),
}

plain!(Action, tools::Action, earlier: [
    "NitrogenValve" => Nitrogen "Valve",
    "Regulator" => Nitrogen "Regulator",
    "SetRegulator" => Nitrogen "SetRegulator",
    "CylinderValve" => RefrigerantCylinder "Valve",
    "CylinderInverted" => RefrigerantCylinder "Inverted",
    "TareScale" => RefrigerantCylinder "Tare",
    "Pump" => VacuumPump "Run",
    "PumpIsolation" => VacuumPump "Inlet",
    "GasBallast" => VacuumPump "Ballast",
    "ChangePumpOil" => VacuumPump "ChangeOil",
]);

impl Action {
    /// Work on a tool.
    pub fn of(action: impl Into<tools::Action>) -> Self {
        Self::Tool(action.into())
    }
}
