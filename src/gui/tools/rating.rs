//! What the case of a tool says of refrigerants that burn.

use crate::gui::view::View;
use eframe::egui::Ui;

/// What the case of a tool says of refrigerants that burn.
pub fn rating(ui: &mut Ui, view: &View, is_rated: bool) {
    ui.label(view.say(if is_rated {
        "hand-tool-rated"
    } else {
        "hand-tool-not-rated"
    }));
}
