//! Protection, thermostat, disconnect, compressor.

use super::{act, toggle};
use crate::gui::part::call_label;
use crate::gui::view::View;
use crate::gui::widgets::take_focus;
use crate::plant::ThermostatCall;
use crate::words::{Action, DisconnectMove, Reading};
use eframe::egui::Ui;

/// Glasses and gloves, and the air where the work is done.
pub fn protection(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let words = ("Put glasses and gloves on", "Take glasses and gloves off");
    toggle(ui, view.is_protected(), words, Action::Protect, actions);
    let words = ("Open the doors, set a fan up", "Take the fan away");
    toggle(ui, view.is_ventilated(), words, Action::Ventilate, actions);
}

/// The thermostat.
pub fn thermostat(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    for call in [
        ThermostatCall::Off,
        ThermostatCall::Fan,
        ThermostatCall::Cool,
    ] {
        let now = view.call() == call;
        let radio = ui.radio(now, format!("Set to {}", call_label(call)));
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
            "Pull the disconnect",
            look.disconnect_in,
            DisconnectMove::Pull,
        ),
        ("Lock and tag it", !look.locked, DisconnectMove::LockAndTag),
        ("Take lock and tag off", look.locked, DisconnectMove::Unlock),
        (
            "Put the disconnect in",
            !look.disconnect_in,
            DisconnectMove::Insert,
        ),
    ] {
        if offered {
            act(ui, text, Action::Disconnect(step), actions);
        }
    }
    ui.separator();
    act(
        ui,
        "Discharge the capacitor, verify dead",
        Action::VerifyDead,
        actions,
    );
}

/// The compressor with its contactor and its lead.
pub fn compressor(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let look = view.electrics();
    if let Some(safety) = look.open_safety {
        ui.label(format!("The meter finds the {safety} open."));
    }
    let words = ("Hold the contactor in", "Let the contactor go");
    toggle(ui, look.held_in, words, Action::HoldContactor, actions);
    let words = (
        "Put the clamp meter on its lead",
        "Take the clamp meter off",
    );
    toggle(
        ui,
        view.clamp_meter_on(),
        words,
        Action::ClampMeter,
        actions,
    );
    if view.clamp_meter_on() {
        ui.label(format!("It draws {}.", view.text(Reading::CompressorAmps)));
    }
    act(
        ui,
        "Discharge the capacitor, verify dead",
        Action::VerifyDead,
        actions,
    );
}
