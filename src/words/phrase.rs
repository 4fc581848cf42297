//! The vocabulary in the technician's words: an action as a short sentence, a reading by name.

use super::{Action, Diagnosis, DisconnectMove, Reading, SheetField};
use super::{GaugePlace, Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Arrow, Line, ThermostatCall};
use crate::units::Fraction;
use std::fmt;

const fn hose(hose: Hose) -> &'static str {
    match hose {
        Hose::Low => "low",
        Hose::High => "high",
        Hose::Centre => "centre",
    }
}

const fn line(line: Line) -> &'static str {
    match line {
        Line::Liquid => "liquid",
        Line::Suction => "suction",
    }
}

const fn gauge_place(place: GaugePlace) -> &'static str {
    match place {
        GaugePlace::Cart => "micron gauge back on the cart",
        GaugePlace::Pump => "micron gauge on the pump",
        GaugePlace::Manifold => "micron gauge on the manifold",
        GaugePlace::SuctionPort => "micron gauge on the suction port",
        GaugePlace::LiquidPort => "micron gauge on the liquid port",
    }
}

const fn hose_end(end: HoseEnd) -> &'static str {
    match end {
        HoseEnd::SuctionPort => "the suction port",
        HoseEnd::LiquidPort => "the liquid port",
        HoseEnd::VacuumPump => "the vacuum pump",
        HoseEnd::Nitrogen => "the nitrogen",
        HoseEnd::RefrigerantCylinder => "the refrigerant cylinder",
        HoseEnd::OpenAir => "the open air",
    }
}

/// `open` or `shut`.
const fn turn(open: bool) -> &'static str {
    if open { "open" } else { "shut" }
}

/// A cap or a tool that goes on or comes off something.
fn on_off(on: bool, what: &str, of: &str) -> String {
    if on {
        format!("put the {what} on {of}")
    } else {
        format!("take the {what} off {of}")
    }
}

/// A valve that can stand between shut and open.
fn valve(open: Fraction, what: &str) -> String {
    match open.get() {
        0.0 => format!("shut the {what}"),
        1.0 => format!("open the {what}"),
        share => format!("open the {what} to {:.0} %", 100.0 * share),
    }
}

impl fmt::Display for Reading {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::LowGauge => "low gauge",
            Self::HighGauge => "high gauge",
            Self::Microns => "micron gauge",
            Self::NitrogenOutlet => "nitrogen outlet",
            Self::NitrogenCylinder => "nitrogen cylinder",
            Self::Scale => "scale",
            Self::CompressorAmps => "compressor",
            Self::Thermometer(place) => place.label(),
            Self::Detector => "detector",
            Self::Bubbles(spot) => return write!(f, "bubbles at the {}", spot.label()),
        })
    }
}

impl SheetField {
    /// What the blank is called.
    pub const fn label(self) -> &'static str {
        match self {
            Self::StandingPressure => "standing pressure",
            Self::SuctionPressure => "suction pressure",
            Self::LiquidPressure => "liquid pressure",
            Self::SuctionLine => ThermometerPlace::SuctionLine.label(),
            Self::LiquidLine => ThermometerPlace::LiquidLine.label(),
            Self::AfterDrier => ThermometerPlace::AfterDrier.label(),
            Self::OutdoorAir => ThermometerPlace::OutdoorAir.label(),
            Self::ReturnAir => ThermometerPlace::ReturnAir.label(),
            Self::ReturnWetBulb => ThermometerPlace::ReturnWetBulb.label(),
            Self::SupplyAir => ThermometerPlace::SupplyAir.label(),
            Self::Amps => "compressor amps",
            Self::Superheat => "superheat",
            Self::Subcooling => "subcooling",
            Self::TargetSuperheat => "target superheat",
            Self::Vacuum => "vacuum",
            Self::RefrigerantIn => "refrigerant put in",
            Self::RefrigerantOut => "refrigerant taken out",
        }
    }
}

impl fmt::Display for Diagnosis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.fault {
            Some(fault) => f.write_str(fault.sheet().label)?,
            None => f.write_str("nothing is wrong")?,
        }
        self.at
            .map_or(Ok(()), |spot| write!(f, ", {}", spot.label()))
    }
}

impl fmt::Display for Action {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence())
    }
}

impl Action {
    /// The action as a short sentence.
    fn sentence(&self) -> String {
        match *self {
            Self::Protect(true) => "glasses and gloves on".into(),
            Self::Protect(false) => "glasses and gloves off".into(),
            Self::Ventilate(true) => "ventilate: doors open, fan on".into(),
            Self::Ventilate(false) => "stop ventilating".into(),
            Self::Thermostat(ThermostatCall::Off) => "thermostat off".into(),
            Self::Thermostat(ThermostatCall::Fan) => "thermostat to fan".into(),
            Self::Thermostat(ThermostatCall::Cool) => "thermostat to cooling".into(),
            Self::Disconnect(DisconnectMove::Pull) => "pull the disconnect".into(),
            Self::Disconnect(DisconnectMove::Insert) => "put the disconnect in".into(),
            Self::Disconnect(DisconnectMove::LockAndTag) => "lock and tag the disconnect".into(),
            Self::Disconnect(DisconnectMove::Unlock) => "take lock and tag off".into(),
            Self::VerifyDead => "discharge the capacitor, prove that nothing is live".into(),
            Self::HoldContactor(true) => "hold the contactor in".into(),
            Self::HoldContactor(false) => "let the contactor go".into(),
            Self::Write { field, value } => format!("write {}: {value}", field.label()),
            Self::Diagnose(diagnosis) => format!("diagnosis: {diagnosis}"),
            Self::HandBack => "hand the job back".into(),
            Self::Clamp(place) => format!("hang a thermometer: {}", place.label()),
            Self::Unclamp(place) => format!("take the thermometer away: {}", place.label()),
            Self::ClampMeter(on) => on_off(on, "clamp meter", "the compressor's lead"),
            Self::CleanOutdoorCoil => "clean the outdoor coil".into(),
            Self::ChangeFilter => "change the air filter".into(),
            _ => self
                .on_valves()
                .or_else(|| self.with_kit())
                .unwrap_or_else(|| self.on_joints()),
        }
    }

    /// At the service valves and their ports.
    fn on_valves(&self) -> Option<String> {
        let port = |l: Line| format!("the {} port", line(l));
        Some(match *self {
            Self::StemCap { line: l, on } => {
                on_off(on, "stem cap", &format!("the {} valve", line(l)))
            }
            Self::Stem { line: l, open } => match open.get() {
                0.0 => format!("front-seat the {} valve", line(l)),
                1.0 => format!("back-seat the {} valve", line(l)),
                share if share < 0.25 => {
                    format!("crack the {} valve, {:.0} %", line(l), 100.0 * share)
                }
                share if share >= 0.9 => format!("crack the {} valve off its back seat", line(l)),
                share => format!("turn the {} valve to {:.0} %", line(l), 100.0 * share),
            },
            Self::PortCap { line: l, on } => on_off(on, "cap", &port(l)),
            Self::CoreTool { line: l, fitted } => on_off(fitted, "core tool", &port(l)),
            Self::Core {
                line: l,
                seated: true,
            } => format!("seat the core of {}", port(l)),
            Self::Core {
                line: l,
                seated: false,
            } => format!("pull the core of {}", port(l)),
            Self::CoreToolValve { line: l, open } => {
                format!("{} the core tool at {}", turn(open), port(l))
            }
            _ => return None,
        })
    }

    /// With hoses, cylinders, pump and instruments.
    fn with_kit(&self) -> Option<String> {
        Some(match *self {
            Self::Connect { hose: h, to } => format!("{} hose to {}", hose(h), hose_end(to)),
            Self::TakeOff(h) => format!("take the {} hose off", hose(h)),
            Self::Purge(h) => format!("purge the {} hose", hose(h)),
            Self::HandValve { hose: h, open } => valve(open, &format!("{} hand valve", hose(h))),
            Self::NitrogenValve(open) => format!("{} the nitrogen cylinder", turn(open)),
            Self::Regulator(on) => on_off(on, "regulator", "the nitrogen cylinder"),
            Self::SetRegulator(to) if to.pascals() == 0.0 => "back the regulator off".into(),
            Self::SetRegulator(to) => format!("set the regulator to {:.0} psig", to.psig()),
            Self::CylinderValve(open) => valve(open, "refrigerant cylinder"),
            Self::CylinderInverted(true) => "turn the cylinder over".into(),
            Self::CylinderInverted(false) => "stand the cylinder upright".into(),
            Self::TareScale => "zero the scale".into(),
            Self::Pump(true) => "start the vacuum pump".into(),
            Self::Pump(false) => "stop the vacuum pump".into(),
            Self::PumpIsolation(open) => format!("{} the pump's inlet", turn(open)),
            Self::GasBallast(open) => format!("{} the gas ballast", turn(open)),
            Self::ChangePumpOil => "change the pump's oil".into(),
            Self::MicronGauge(place) => gauge_place(place).into(),
            Self::MicronGaugeValve(open) => format!("{} the micron gauge's valve", turn(open)),
            _ => return None,
        })
    }

    /// At joints, drier and leaks.
    fn on_joints(&self) -> String {
        match *self {
            Self::Loosen(joint) => format!("crack the {}", joint.label()),
            Self::TakeApart(joint) => format!("take the {} apart", joint.label()),
            Self::Plug(joint) => format!("plug the {}", joint.label()),
            Self::RenewFlare(joint) => format!("renew the {}", joint.label()),
            Self::MakeUp { joint, torque } => format!(
                "make the {} up to {:.0} N m ({:.0} ft lb)",
                joint.label(),
                torque.newton_metres(),
                torque.foot_pounds()
            ),
            Self::Sniff(spot) => format!("hold the detector at the {}", spot.label()),
            Self::StopSniffing => "put the detector away".into(),
            Self::Wet(spot) => format!("put bubbles on the {}", spot.label()),
            Self::Wipe(spot) => format!("wipe the {} dry", spot.label()),
            Self::TakeOutDrier => "take the drier out".into(),
            Self::FitDrier(Arrow::TowardMetering) => "fit a new drier, arrow with the flow".into(),
            Self::FitDrier(Arrow::TowardOutdoor) => {
                "fit a new drier, arrow against the flow".into()
            }
            _ => format!("{self:?}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::{FaultKind, Joint};
    use crate::units::{GaugePressure, Torque};

    #[test]
    fn an_action_reads_as_a_person_says_it() {
        let cracked = Fraction::clamped(0.02);
        let made_up = Action::MakeUp {
            joint: Joint::DrierInlet,
            torque: Torque::from_newton_metres(37.0),
        };
        let found = Diagnosis {
            fault: Some(FaultKind::CloggedDrier),
            at: None,
        };
        let told = [
            (
                Action::Stem {
                    line: Line::Liquid,
                    open: Fraction::ZERO,
                },
                "front-seat the liquid valve",
            ),
            (
                Action::Stem {
                    line: Line::Liquid,
                    open: cracked,
                },
                "crack the liquid valve, 2 %",
            ),
            (
                Action::SetRegulator(GaugePressure::from_psig(0.0)),
                "back the regulator off",
            ),
            (
                Action::SetRegulator(GaugePressure::from_psig(120.0)),
                "set the regulator to 120 psig",
            ),
            (
                made_up,
                "make the flare at the drier inlet up to 37 N m (27 ft lb)",
            ),
            (Action::Diagnose(found), "diagnosis: clogged filter drier"),
        ];
        for (action, sentence) in told {
            assert_eq!(action.to_string(), sentence);
        }
    }
}
