//! Service valves and access ports.

use crate::gui::parts::leak_search::leak_search;
use crate::gui::view::View;
use crate::gui::view::looks::end_label;
use crate::gui::view::turn::{STEM, Thread};
use crate::gui::widgets::{Halves, Setting, act, offer, quarter_turns, setting, switch};
use crate::kit::{Hose, HoseEnd};
use crate::plant::{Line, Spot};
use crate::text::Message;
use crate::units::Fraction;
use crate::words::Action;
use eframe::egui::Ui;

/// A service valve: its cap and its stem.
pub fn valve(ui: &mut Ui, view: &View, line: Line, actions: &mut Vec<Action>) {
    let look = view.valve(line);
    let words = (
        "hand-stem-cap",
        Halves {
            yes: ("hand-on", "hand-stem-cap-on"),
            no: ("hand-off", "hand-stem-cap-off"),
        },
    );
    switch(
        ui,
        view,
        words,
        look.cap_on,
        |on| Action::StemCap { line, on },
        actions,
    );
    ui.separator();
    let turn_to = |quarters: f64| Action::Stem {
        line,
        open: Fraction::clamped(quarters / STEM),
    };
    ui.horizontal_wrapped(|ui| {
        act(ui, view, "hand-front-seat", turn_to(0.0), actions);
        act(ui, view, "hand-crack-stem", turn_to(1.0), actions);
        if !look.has_core {
            let off = turn_to(STEM - 1.0);
            act(ui, view, "hand-crack-off-back", off, actions);
        }
        act(ui, view, "hand-back-seat", turn_to(STEM), actions);
    });
    quarter_turns(ui, view, Thread::Stem(line), actions);
    let stem = Setting {
        label: &view.say("hand-stem-turns"),
        value: look.open * STEM,
        range: 0.0..=STEM,
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
    let words = (
        "hand-port-cap",
        Halves {
            yes: ("hand-on", "hand-port-cap-on"),
            no: ("hand-off", "hand-port-cap-off"),
        },
    );
    switch(
        ui,
        view,
        words,
        look.port_cap_on,
        |on| Action::PortCap { line, on },
        actions,
    );
    let end = HoseEnd::of_port(line);
    for hose in Hose::ALL {
        let name = Message::new(match hose {
            Hose::Low => "hand-hose-low",
            Hose::High => "hand-hose-high",
            Hose::Centre => "hand-hose-centre",
        });
        let state = view.hose(hose);
        if state.end == Some(end) {
            let off = Message::new("hand-take-hose-off").with("hose", name.clone());
            offer(ui, &view.tell(&off), Action::TakeOff(hose), actions);
            let purge = Message::new("hand-purge-that-hose").with("hose", name);
            offer(ui, &view.tell(&purge), Action::Purge(hose), actions);
        } else if state.end.is_none() {
            let action = Action::Connect { hose, to: end };
            let on = Message::new("hand-put-hose-on").with("hose", name);
            offer(ui, &view.tell(&on), action, actions);
        } else {
            let elsewhere = Message::new("hand-hose-is")
                .with("hose", name)
                .with("end", end_label(state.end));
            ui.weak(view.tell(&elsewhere));
        }
    }
    ui.separator();
    let words = (
        "hand-core-tool",
        Halves {
            yes: ("hand-on", "hand-tool-on"),
            no: ("hand-off", "hand-tool-off"),
        },
    );
    let tool = |fitted| Action::CoreTool { line, fitted };
    switch(ui, view, words, look.tool_on, tool, actions);
    if look.tool_on {
        let words = (
            "hand-core-tool-valve",
            Halves {
                yes: ("hand-open", "hand-tool-open"),
                no: ("hand-shut", "hand-tool-shut"),
            },
        );
        let valve = |open| Action::CoreToolValve { line, open };
        switch(ui, view, words, look.tool_open, valve, actions);
    }
    let words = (
        "hand-core",
        Halves {
            yes: ("hand-in", "hand-core-seat"),
            no: ("hand-out", "hand-core-pull"),
        },
    );
    if look.has_core {
        switch(
            ui,
            view,
            words,
            look.core_in,
            |seated| Action::Core { line, seated },
            actions,
        );
    } else {
        ui.weak(view.say("hand-no-core"));
    }
    ui.separator();
    leak_search(ui, view, Spot::Port(line), actions);
}
