//! A list to choose one of.

use crate::gui::widgets::focus::take_focus;
use eframe::egui::{ComboBox, Ui};

/// Shows the list under its label; gives what was chosen anew.
pub fn choice<T: Copy + PartialEq, N: Into<String>>(
    ui: &mut Ui,
    label: &str,
    now: Option<T>,
    all: impl IntoIterator<Item = T>,
    name: impl Fn(T) -> N,
) -> Option<T> {
    let mut chosen = None;
    let name = |item| -> String { name(item).into() };
    let list = ComboBox::from_label(label)
        .selected_text(now.map_or_else(|| "…".into(), name))
        .width(120.0)
        .height(420.0)
        .show_ui(ui, |ui| {
            for item in all {
                if ui.selectable_label(now == Some(item), name(item)).clicked() {
                    chosen = Some(item);
                }
            }
        });
    take_focus(&list.response);
    chosen.filter(|&item| now != Some(item))
}
