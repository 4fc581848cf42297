//! Service valves and access ports.

use super::{act, toggle};
use crate::gui::part::end_label;
use crate::gui::view::View;
use crate::gui::widgets::{Setting, setting};
use crate::kit::{Hose, HoseEnd};
use crate::plant::{Line, Spot};
use crate::units::Fraction;
use crate::words::Action;
use eframe::egui::Ui;

/// Quarter turns of a stem from seat to seat. Chosen: five full turns (common practice).
pub const QUARTERS: f64 = 20.0;

/// A service valve: its cap and its stem.
pub fn valve(ui: &mut Ui, view: &View, line: Line, actions: &mut Vec<Action>) {
    let look = view.valve(line);
    let words = ("Put the stem cap on", "Take the stem cap off");
    toggle(
        ui,
        look.cap_on,
        words,
        |on| Action::StemCap { line, on },
        actions,
    );
    ui.separator();
    let turn_to = |quarters: f64| Action::Stem {
        line,
        open: Fraction::clamped(quarters / QUARTERS),
    };
    let quarters = (look.open * QUARTERS * 10.0).round() / 10.0;
    ui.label(format!("{quarters} of {QUARTERS:.0} quarter turns open"));
    ui.horizontal_wrapped(|ui| {
        act(ui, "Front-seat", turn_to(0.0), actions);
        act(ui, "Crack", turn_to(1.0), actions);
        if !look.has_core {
            act(
                ui,
                "Crack off the back seat",
                turn_to(QUARTERS - 1.0),
                actions,
            );
        }
        act(ui, "Back-seat", turn_to(QUARTERS), actions);
    });
    ui.horizontal_wrapped(|ui| {
        act(
            ui,
            "Quarter turn in",
            turn_to((quarters - 1.0).round()),
            actions,
        );
        act(
            ui,
            "Quarter turn out",
            turn_to((quarters + 1.0).round()),
            actions,
        );
    });
    let stem = Setting {
        label: "stem, quarter turns",
        value: quarters,
        range: 0.0..=QUARTERS,
        // Fine enough to crack a valve by a few degrees.
        step: 0.1,
        unit: "",
    };
    if let Some(quarters) = setting(ui, stem) {
        actions.push(turn_to(quarters));
    }
    ui.separator();
    leak_search(ui, view, Spot::Stem(line), actions);
}

/// An access port: its cap, core, core tool, and what is on it.
pub fn port(ui: &mut Ui, view: &View, line: Line, actions: &mut Vec<Action>) {
    let look = view.valve(line);
    let words = ("Put the port cap on", "Take the port cap off");
    toggle(
        ui,
        look.port_cap_on,
        words,
        |on| Action::PortCap { line, on },
        actions,
    );
    let end = HoseEnd::of_port(line);
    for hose in Hose::ALL {
        let word = match hose {
            Hose::Low => "low hose (L)",
            Hose::High => "high hose (H)",
            Hose::Centre => "centre hose (C)",
        };
        let state = view.hose(hose);
        if state.end == Some(end) {
            act(
                ui,
                &format!("Take the {word} off"),
                Action::TakeOff(hose),
                actions,
            );
            act(
                ui,
                &format!("Purge the {word}"),
                Action::Purge(hose),
                actions,
            );
        } else if state.end.is_none() {
            let action = Action::Connect { hose, to: end };
            act(ui, &format!("Put the {word} on"), action, actions);
        } else {
            ui.weak(format!("The {word} is {}.", end_label(state.end)));
        }
    }
    ui.separator();
    let words = ("Fit the core tool", "Take the core tool off");
    let tool = |fitted| Action::CoreTool { line, fitted };
    toggle(ui, look.tool_on, words, tool, actions);
    if look.tool_on {
        let words = ("Open the core tool's valve", "Shut the core tool's valve");
        let valve = |open| Action::CoreToolValve { line, open };
        toggle(ui, look.tool_open, words, valve, actions);
    }
    let words = ("Seat the core", "Pull the core");
    if look.has_core {
        toggle(
            ui,
            look.core_in,
            words,
            |seated| Action::Core { line, seated },
            actions,
        );
    } else {
        ui.weak("No core: the stem shuts this port on its back seat.");
    }
    ui.separator();
    leak_search(ui, view, Spot::Port(line), actions);
}

/// Sniff, wet, wipe: for every spot where gas can come out.
pub fn leak_search(ui: &mut Ui, view: &View, spot: Spot, actions: &mut Vec<Action>) {
    if view.detector_at() == Some(spot) {
        act(ui, "Put the detector away", Action::StopSniffing, actions);
    } else {
        act(ui, "Hold the detector here", Action::Sniff(spot), actions);
    }
    match view.bubbles(spot) {
        None => act(ui, "Wet with bubble solution", Action::Wet(spot), actions),
        Some(size) => {
            ui.label(crate::gui::part::bubbles_label(size));
            act(ui, "Wipe dry", Action::Wipe(spot), actions);
        }
    }
}
