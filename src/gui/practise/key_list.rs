//! All keys, listed.

use crate::gui::view::View;
use eframe::egui::{Grid, RichText, Ui};

/// Shows what each key does.
pub fn key_list_ui(ui: &mut Ui, view: &View) {
    ui.heading(view.say("keys-all"));
    Grid::new("keys").num_columns(2).show(ui, |ui| {
        for (key, does) in [
            (view.say("keys-space"), "keys-does-space"),
            ("C J R T L".to_owned(), "keys-does-drawers"),
            ("W".to_owned(), "keys-does-wait"),
            ("1–9".to_owned(), "keys-does-slots"),
            ("G".to_owned(), "keys-does-go-to"),
            ("Q".to_owned(), "keys-does-thought"),
            ("H".to_owned(), "keys-does-hand-back"),
            ("F6".to_owned(), "keys-does-areas"),
            (view.say("keys-tab"), "keys-does-tab"),
            (view.say("keys-enter"), "keys-does-enter"),
            (view.say("keys-arrows"), "keys-does-arrows"),
            ("?".to_owned(), "keys-does-list"),
        ] {
            ui.label(RichText::new(key).strong());
            ui.label(view.say(does));
            ui.end_row();
        }
    });
}
