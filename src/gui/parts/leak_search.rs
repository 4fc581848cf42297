//! Looking for a leak: the detector and the bubbles.

use crate::gui::view::View;
use crate::gui::view::looks::bubbles_label;
use crate::gui::widgets::{Halves, switch};
use crate::plant::Spot;
use crate::words::Action;
use eframe::egui::Ui;

/// Sniff, wet, wipe: for every spot where gas can come out.
pub fn leak_search(ui: &mut Ui, view: &View, spot: Spot, actions: &mut Vec<Action>) {
    let words = (
        "hand-detector",
        Halves {
            yes: ("hand-here", "hand-detector-here"),
            no: ("hand-away", "hand-detector-away"),
        },
    );
    let sniff = |here| {
        if here {
            Action::Sniff(spot)
        } else {
            Action::StopSniffing
        }
    };
    let is_here = view.detector_at() == Some(spot);
    switch(ui, view, words, is_here, sniff, actions);
    let bubbles = view.bubbles(spot);
    let words = (
        "hand-bubbles",
        Halves {
            yes: ("hand-is-wet", "hand-wet"),
            no: ("hand-is-dry", "hand-wipe"),
        },
    );
    let wet = |on| {
        if on {
            Action::Wet(spot)
        } else {
            Action::Wipe(spot)
        }
    };
    switch(ui, view, words, bubbles.is_some(), wet, actions);
    if let Some(size) = bubbles {
        ui.label(view.tell(&bubbles_label(size)));
    }
}
