//! Protection, thermostat, disconnect, compressor.

use crate::gui::view::View;
use crate::gui::view::looks::call_label;
use crate::gui::widgets::{act, take_focus, toggle};
use crate::plant::ThermostatCall;
use crate::text::Message;
use crate::words::{Action, DisconnectMove, Reading};
use eframe::egui::Ui;

/// Glasses and gloves, and the air where the work is done.
pub fn protection(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let words = ("hand-protect-on", "hand-protect-off");
    toggle(
        ui,
        view,
        view.is_protected(),
        words,
        Action::Protect,
        actions,
    );
    let words = ("hand-ventilate", "hand-ventilate-off");
    toggle(
        ui,
        view,
        view.is_ventilated(),
        words,
        Action::Ventilate,
        actions,
    );
}

/// The thermostat.
pub fn thermostat(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    for call in [
        ThermostatCall::Off,
        ThermostatCall::Fan,
        ThermostatCall::Cool,
    ] {
        let now = view.call() == call;
        let radio = ui.radio(
            now,
            view.tell(&Message::new("hand-thermostat").with("call", call_label(call))),
        );
        take_focus(&radio);
        if radio.clicked() && !now {
            actions.push(Action::Thermostat(call));
        }
    }
}

/// The disconnect.
pub fn disconnect(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let look = view.electrics();
    for (text, offered, step) in [
        (
            "hand-pull-disconnect",
            look.disconnect_in,
            DisconnectMove::Pull,
        ),
        ("hand-lock", !look.locked, DisconnectMove::LockAndTag),
        ("hand-unlock", look.locked, DisconnectMove::Unlock),
        (
            "hand-insert-disconnect",
            !look.disconnect_in,
            DisconnectMove::Insert,
        ),
    ] {
        if offered {
            act(ui, view, text, Action::Disconnect(step), actions);
        }
    }
    ui.separator();
    act(ui, view, "hand-verify-dead", Action::VerifyDead, actions);
}

/// The compressor with its contactor and its lead.
pub fn compressor(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let look = view.electrics();
    if let Some(safety) = look.open_safety {
        let open = Message::new("hand-safety-open").with("safety", safety.the());
        ui.label(view.tell(&open));
    }
    let words = ("hand-contactor-hold", "hand-contactor-release");
    toggle(
        ui,
        view,
        look.held_in,
        words,
        Action::HoldContactor,
        actions,
    );
    let words = ("hand-clamp-meter-on", "hand-clamp-meter-off");
    toggle(
        ui,
        view,
        view.clamp_meter_on(),
        words,
        Action::ClampMeter,
        actions,
    );
    if view.clamp_meter_on() {
        let amps = view.shown(Reading::CompressorAmps);
        ui.label(view.tell(&Message::new("hand-draws").with("amps", amps)));
    }
    act(ui, view, "hand-verify-dead", Action::VerifyDead, actions);
}
