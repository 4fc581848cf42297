//! Protection, thermostat, disconnect, compressor.

use crate::gui::view::View;
use crate::gui::view::looks::call_label;
use crate::gui::widgets::{Halves, act, switch, take_focus};
use crate::plant::ThermostatCall;
use crate::text::Message;
use crate::words::{Action, DisconnectMove, Reading};
use eframe::egui::Ui;

/// Glasses and gloves, and the air where the work is done.
pub fn protection(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let words = (
        "hand-protection",
        Halves {
            yes: ("hand-on", "hand-protect-on"),
            no: ("hand-off", "hand-protect-off"),
        },
    );
    switch(
        ui,
        view,
        words,
        view.is_protected(),
        Action::Protect,
        actions,
    );
    let words = (
        "hand-ventilation",
        Halves {
            yes: ("hand-open", "hand-ventilate"),
            no: ("hand-shut", "hand-ventilate-off"),
        },
    );
    switch(
        ui,
        view,
        words,
        view.is_ventilated(),
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
    let words = (
        "hand-disconnect",
        Halves {
            yes: ("hand-in", "hand-insert-disconnect"),
            no: ("hand-out", "hand-pull-disconnect"),
        },
    );
    let step = |is_in| {
        Action::Disconnect(if is_in {
            DisconnectMove::Insert
        } else {
            DisconnectMove::Pull
        })
    };
    switch(ui, view, words, look.disconnect_in, step, actions);
    let words = (
        "hand-lock-and-tag",
        Halves {
            yes: ("hand-on", "hand-lock"),
            no: ("hand-off", "hand-unlock"),
        },
    );
    let step = |on| {
        Action::Disconnect(if on {
            DisconnectMove::LockAndTag
        } else {
            DisconnectMove::Unlock
        })
    };
    switch(ui, view, words, look.locked, step, actions);
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
    let words = (
        "hand-contactor",
        Halves {
            yes: ("hand-held", "hand-contactor-hold"),
            no: ("hand-free", "hand-contactor-release"),
        },
    );
    switch(
        ui,
        view,
        words,
        look.held_in,
        Action::HoldContactor,
        actions,
    );
    let words = (
        "hand-clamp-meter",
        Halves {
            yes: ("hand-on", "hand-clamp-meter-on"),
            no: ("hand-off", "hand-clamp-meter-off"),
        },
    );
    switch(
        ui,
        view,
        words,
        view.clamp_meter_on(),
        Action::ClampMeter,
        actions,
    );
    if view.clamp_meter_on() {
        let amps = view.shown(Reading::CompressorAmps);
        ui.label(view.tell(&Message::new("hand-draws").with("amps", amps)));
    }
    act(ui, view, "hand-verify-dead", Action::VerifyDead, actions);
}
