//! What each action does. An action checks first and changes after, so a refused one changes
//! nothing; a foolish one is done, with its consequences.

#![expect(
    clippy::unnecessary_wraps,
    reason = "every action answers alike, also one never refused"
)]

mod electric;
mod hoses;
mod instruments;
mod joints;
mod micron_gauge;
mod paperwork;
mod valves;

use super::{Job, Refusal};
use crate::kit::tool::Refused;
use crate::kit::tools;
use crate::text::Message;
use crate::words::{Action, FindingKind, Where};

/// Refuses unless something is so; `why` is the key of the reason.
fn require(so: bool, why: &'static str) -> Result<(), Refusal> {
    if so {
        Ok(())
    } else {
        Err(Refusal::because(Message::new(why)))
    }
}

impl Job {
    /// Does an action, or refuses it, says why and changes nothing.
    pub fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        require(!self.handed_back, "refusal-handed-back")?;
        require(self.lost_at.is_none(), "refusal-lost")?;
        match action {
            Action::Protect(on) => self.protect(on),
            Action::Ventilate(on) => self.ventilate(on),
            Action::Thermostat(call) => self.set_thermostat(call),
            Action::Disconnect(by) => self.work_disconnect(by),
            Action::VerifyDead => self.verify_dead(),
            Action::HoldContactor(held) => self.hold_contactor(held),
            Action::StemCap { line, on } => self.put_stem_cap(line, on),
            Action::Stem { line, open } => self.turn_stem(line, open),
            Action::PortCap { line, on } => self.put_port_cap(line, on),
            Action::CoreTool { line, fitted } => self.put_core_tool(line, fitted),
            Action::Core { line, seated } => self.work_core(line, seated),
            Action::CoreToolValve { line, open } => self.set_core_tool_valve(line, open),
            Action::Connect { hose, to } => self.connect(hose, to),
            Action::TakeOff(hose) => self.take_off(hose),
            Action::Purge(hose) => self.purge(hose),
            Action::HandValve { hose, open } => self.set_hand_valve(hose, open),
            Action::MicronGauge(place) => self.put_micron_gauge(place),
            Action::MicronGaugeValve(open) => self.set_micron_gauge_valve(open),
            Action::Loosen(joint) => self.loosen(joint),
            Action::TakeApart(joint) => self.take_apart(joint),
            Action::Plug(joint) => self.plug(joint),
            Action::RenewFlare(joint) => self.renew_flare(joint),
            Action::MakeUp { joint, torque } => self.make_up(joint, torque),
            Action::Sniff(spot) => self.sniff(Some(spot)),
            Action::StopSniffing => self.sniff(None),
            Action::Wet(spot) => self.wet(spot),
            Action::Wipe(spot) => self.wipe(spot),
            Action::TakeOutDrier => self.take_out_drier(),
            Action::FitDrier(arrow) => self.fit_drier(arrow),
            Action::CleanOutdoorCoil => self.clean_outdoor_coil(),
            Action::ChangeFilter => self.change_filter(),
            Action::Clamp(place) => self.clamp(place),
            Action::Unclamp(place) => self.unclamp(place),
            Action::ClampMeter(on) => self.put_clamp_meter(on),
            Action::Write { field, value } => self.write(field, value),
            Action::Diagnose(diagnosis) => self.diagnose(diagnosis),
            Action::HandBack => self.hand_back(),
            Action::Tool(action) => self.work_tool(action),
        }
    }

    /// Works a tool.
    fn work_tool(&mut self, action: tools::Action) -> Result<(), Refusal> {
        let name = action.tool();
        let could_ignite = |job: &Self| job.kit.tools.that_could_ignite().any(|tool| tool == name);
        let was_on = could_ignite(self);
        let done = self.kit.tools.act(action);
        done.map_err(|Refused(why)| Refusal::because(Message::new(why)))?;
        if !was_on && could_ignite(self) {
            self.note_not_rated(Where::Tool(name));
        }
        Ok(())
    }

    /// Notes work on the circuit that is done without glasses and gloves.
    fn hands_on_circuit(&mut self, at: impl Into<Where>) {
        if !self.kit.protection_on {
            self.watch
                .note(self.tick, FindingKind::Unprotected, at, 1.0);
        }
    }

    /// Notes hands in the unit while it can come alive.
    fn hands_in_unit(&mut self, at: impl Into<Where>) {
        let at = at.into();
        self.hands_on_circuit(at);
        if !self.electrics.locked {
            self.watch.note(self.tick, FindingKind::WorkedLive, at, 1.0);
        }
    }
}
