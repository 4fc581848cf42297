//! Looking for a leak: the detector and the bubbles.

use crate::gui::view::View;
use crate::gui::view::looks::bubbles_label;
use crate::gui::widgets::act;
use crate::plant::Spot;
use crate::words::Action;
use eframe::egui::Ui;

/// Sniff, wet, wipe: for every spot where gas can come out.
pub fn leak_search(ui: &mut Ui, view: &View, spot: Spot, actions: &mut Vec<Action>) {
    if view.detector_at() == Some(spot) {
        act(
            ui,
            view,
            "hand-detector-away",
            Action::StopSniffing,
            actions,
        );
    } else {
        act(ui, view, "hand-detector-here", Action::Sniff(spot), actions);
    }
    match view.bubbles(spot) {
        None => act(ui, view, "hand-wet", Action::Wet(spot), actions),
        Some(size) => {
            ui.label(view.tell(&bubbles_label(size)));
            act(ui, view, "hand-wipe", Action::Wipe(spot), actions);
        }
    }
}
