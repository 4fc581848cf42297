//! An action as a short sentence.

use super::{Action, DisconnectMove, GaugePlace};
use crate::kit::tool::Blank;
use crate::kit::tools;
use crate::plant::{Arrow, ThermostatCall};
use crate::text::Message;
use crate::units::Fraction;
use std::fmt;

impl fmt::Display for Action {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.words().fmt(f)
    }
}

/// A service valve's stem turned; `what` is the valve with its article.
fn stem(open: Fraction, what: Message) -> Message {
    match open.get() {
        0.0 => Message::new("action-front-seat").with("valve", what),
        1.0 => Message::new("action-back-seat").with("valve", what),
        share if share < 0.25 => Message::new("action-crack")
            .with("valve", what)
            .with("percent", format!("{:.0}", 100.0 * share)),
        share if share >= 0.9 => Message::new("action-crack-off-back").with("valve", what),
        share => Message::new("action-turn")
            .with("valve", what)
            .with("percent", format!("{:.0}", 100.0 * share)),
    }
}

/// A valve that can stand between shut and open; `what` is the valve with its article.
fn valve(open: Fraction, what: Message) -> Message {
    match open.get() {
        0.0 => Message::new("action-shut").with("what", what),
        1.0 => Message::new("action-open").with("what", what),
        share => Message::new("action-open-partly")
            .with("what", what)
            .with("percent", format!("{:.0}", 100.0 * share)),
    }
}

impl Action {
    /// The action as a short sentence.
    #[expect(
        clippy::too_many_lines,
        reason = "one match, so that an action without a sentence does not compile"
    )]
    pub fn words(&self) -> Message {
        match *self {
            Self::Protect(on) => Message::new(if on {
                "action-protect-on"
            } else {
                "action-protect-off"
            }),
            Self::Ventilate(true) => Message::new("action-ventilate"),
            Self::Ventilate(false) => Message::new("action-ventilate-off"),
            Self::Thermostat(call) => Message::new(match call {
                ThermostatCall::Off => "action-thermostat-off",
                ThermostatCall::Fan => "action-thermostat-fan",
                ThermostatCall::Cool => "action-thermostat-cool",
            }),
            Self::Disconnect(by) => Message::new(match by {
                DisconnectMove::Pull => "action-disconnect-pull",
                DisconnectMove::Insert => "action-disconnect-insert",
                DisconnectMove::LockAndTag => "action-disconnect-lock",
                DisconnectMove::Unlock => "action-disconnect-unlock",
            }),
            Self::VerifyDead => Message::new("action-verify-dead"),
            Self::HoldContactor(true) => Message::new("action-contactor-hold"),
            Self::HoldContactor(false) => Message::new("action-contactor-release"),
            Self::Write { field, value } => Message::new("action-write")
                .with("field", field.label())
                .with("value", value.words()),
            Self::Diagnose(diagnosis) => {
                Message::new("action-diagnosis").with("diagnosis", diagnosis.words())
            }
            Self::HandBack => Message::new("action-hand-back"),
            Self::Clamp(place) => Message::new("action-clamp").with("place", place.label()),
            Self::Unclamp(place) => Message::new("action-unclamp").with("place", place.label()),
            Self::ClampMeter(true) => Message::new("action-clamp-meter-on"),
            Self::ClampMeter(false) => Message::new("action-clamp-meter-off"),
            Self::CleanOutdoorCoil => Message::new("action-clean-outdoor-coil"),
            Self::ChangeFilter => Message::new("action-change-filter"),
            Self::StemCap { line, on: true } => {
                Message::new("action-stem-cap-on").with("valve", line.valve_label().the())
            }
            Self::StemCap { line, on: false } => {
                Message::new("action-stem-cap-off").with("valve", line.valve_label().the())
            }
            Self::Stem { line, open } => stem(open, line.valve_label().the()),
            Self::PortCap { line, on: true } => {
                Message::new("action-port-cap-on").with("port", line.port_label().the())
            }
            Self::PortCap { line, on: false } => {
                Message::new("action-port-cap-off").with("port", line.port_label().the())
            }
            Self::CoreTool { line, fitted: true } => {
                Message::new("action-core-tool-on").with("port", line.port_label().the())
            }
            Self::CoreTool {
                line,
                fitted: false,
            } => Message::new("action-core-tool-off").with("port", line.port_label().the()),
            Self::Core { line, seated: true } => {
                Message::new("action-core-seat").with("port", line.port_label().the())
            }
            Self::Core {
                line,
                seated: false,
            } => Message::new("action-core-pull").with("port", line.port_label().the()),
            Self::CoreToolValve { line, open: true } => {
                Message::new("action-core-tool-open").with("port", line.port_label().the())
            }
            Self::CoreToolValve { line, open: false } => {
                Message::new("action-core-tool-shut").with("port", line.port_label().the())
            }
            Self::Connect { hose, to } => Message::new("action-connect")
                .with("hose", hose.label())
                .with("end", to.label().the()),
            Self::TakeOff(hose) => Message::new("action-take-off").with("hose", hose.label().the()),
            Self::Purge(hose) => Message::new("action-purge").with("hose", hose.label().the()),
            Self::HandValve { hose, open } => valve(open, hose.valve_label().the()),
            Self::MicronGauge(place) => Message::new(match place {
                GaugePlace::Cart => "action-micron-gauge-cart",
                GaugePlace::Pump => "action-micron-gauge-pump",
                GaugePlace::Manifold => "action-micron-gauge-manifold",
                GaugePlace::SuctionPort => "action-micron-gauge-suction-port",
                GaugePlace::LiquidPort => "action-micron-gauge-liquid-port",
            }),
            Self::MicronGaugeValve(true) => Message::new("action-micron-gauge-open"),
            Self::MicronGaugeValve(false) => Message::new("action-micron-gauge-shut"),
            Self::Loosen(joint) => Message::new("action-loosen").with("joint", joint.label().the()),
            Self::TakeApart(joint) => {
                Message::new("action-take-apart").with("joint", joint.label().the())
            }
            Self::Plug(joint) => Message::new("action-plug").with("joint", joint.label().the()),
            Self::RenewFlare(joint) => {
                Message::new("action-renew-flare").with("joint", joint.label().the())
            }
            Self::MakeUp { joint, torque } => Message::new("action-make-up")
                .with("joint", joint.label().the())
                .with("metric", format!("{:.0} N m", torque.newton_metres()))
                .with("inch", format!("{:.0} ft lb", torque.foot_pounds())),
            Self::Sniff(spot) => Message::new("action-sniff").with("spot", spot.label().the()),
            Self::StopSniffing => Message::new("action-stop-sniffing"),
            Self::Wet(spot) => Message::new("action-wet").with("spot", spot.label().the()),
            Self::Wipe(spot) => Message::new("action-wipe").with("spot", spot.label().the()),
            Self::TakeOutDrier => Message::new("action-drier-out"),
            Self::FitDrier(Arrow::TowardMetering) => Message::new("action-drier-with-flow"),
            Self::FitDrier(Arrow::TowardOutdoor) => Message::new("action-drier-against-flow"),
            Self::Tool(action) => with_tool(action),
        }
    }
}

/// Work on a tool.
fn with_tool(action: tools::Action) -> Message {
    let text = Message::new(action.key());
    match action.blank() {
        None => text,
        Some(Blank::Flag(on)) => text.with("value", word(if on { "yes" } else { "no" })),
        Some(Blank::Opening(open)) => {
            let opening = match open.get() {
                0.0 => "shut",
                1.0 => "open",
                _ => "partly",
            };
            text.with("value", word(opening))
                .with("percent", format!("{:.0}", 100.0 * open.get()))
        }
        Some(Blank::Pressure(pressure)) if pressure.pascals() == 0.0 => {
            text.with("value", word("none"))
        }
        Some(Blank::Pressure(pressure)) => {
            text.with("value", format!("{:.0} psig", pressure.psig()))
        }
    }
}

/// A word by which a text chooses among its forms.
fn word(word: &str) -> Message {
    Message::verbatim(word)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::kit::nitrogen;
    use crate::plant::FaultKind;
    use crate::plant::{Joint, Line};
    use crate::units::{GaugePressure, Torque};
    use crate::words::Diagnosis;

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
                Action::of(nitrogen::Action::SetRegulator(GaugePressure::from_psig(
                    0.0,
                ))),
                "back the regulator off",
            ),
            (
                Action::of(nitrogen::Action::SetRegulator(GaugePressure::from_psig(
                    120.0,
                ))),
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
