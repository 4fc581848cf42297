//! Hoses and hand valves of the manifold.

use crate::gui::view::View;
use crate::gui::view::looks::end_label;
use crate::gui::view::turn::{FINE, Thread};
use crate::gui::widgets::{Setting, act, choice, quarter_turns, setting};
use crate::kit::{Hose, HoseEnd};
use crate::units::Fraction;
use crate::words::Action;
use eframe::egui::Ui;

/// A hose: where its end goes, purging it, taking it off.
pub fn hose(ui: &mut Ui, view: &View, hose: Hose, actions: &mut Vec<Action>) {
    let state = view.hose(hose);
    let name = |end| view.tell(&end_label(Some(end)));
    let ends = HoseEnd::all().filter(|&end| view.has(end));
    if let Some(to) = choice(ui, &view.say("hand-hose-to"), state.end, ends, name) {
        actions.push(Action::Connect { hose, to });
    }
    if state.end.is_some() {
        act(ui, view, "hand-purge", Action::Purge(hose), actions);
        ui.weak(view.say(if state.purged {
            "hand-purged"
        } else {
            "hand-not-purged"
        }));
        act(ui, view, "hand-hose-off", Action::TakeOff(hose), actions);
    }
}

/// A hand valve.
pub fn hand_valve(ui: &mut Ui, view: &View, hose: Hose, actions: &mut Vec<Action>) {
    let open = view.hand_valve(hose).unwrap_or(0.0);
    let turn_to = |percent: f64| Action::HandValve {
        hose,
        open: Fraction::clamped(percent / 100.0),
    };
    ui.horizontal_wrapped(|ui| {
        act(ui, view, "hand-valve-shut", turn_to(0.0), actions);
        act(ui, view, "hand-valve-crack", turn_to(5.0), actions);
        act(ui, view, "hand-valve-open", turn_to(100.0), actions);
    });
    quarter_turns(ui, view, Thread::HandValve(hose), actions);
    let what = Setting {
        label: &view.say("hand-hand-valve"),
        value: open * 100.0,
        range: 0.0..=100.0,
        step: FINE,
        unit: " %",
    };
    if let Some(percent) = setting(ui, what) {
        actions.push(turn_to(percent));
    }
}
