//! Go to a part: some letters of its words are enough, as "suc in" for the suction flare indoors.

use crate::gui::part::Part;
use crate::gui::view::View;
use eframe::egui::{Key, ScrollArea, TextEdit, Ui};

/// What was typed so far.
#[derive(Debug, Default)]
pub struct GoTo {
    typed: String,
    has_focus: bool,
}

/// What comes of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Went {
    /// It is still open.
    Nowhere,
    /// To a part.
    To(Part),
    /// It was given up.
    Away,
}

/// Whether each word typed begins a word of a name.
fn fits(name: &str, typed: &str) -> bool {
    let (name, typed) = (name.to_lowercase(), typed.to_lowercase());
    typed
        .split_whitespace()
        .all(|word| name.split_whitespace().any(|of| of.starts_with(word)))
}

/// Shows the blank with the parts that fit; Enter goes to the first.
pub fn go_to_ui(ui: &mut Ui, view: &View, go_to: &mut GoTo) -> Went {
    let label = ui.label(view.say("keys-go-to"));
    let blank = ui
        .add(TextEdit::singleline(&mut go_to.typed).desired_width(f32::INFINITY))
        .labelled_by(label.id);
    if !go_to.has_focus {
        blank.request_focus();
        go_to.has_focus = true;
    }
    let all = Part::all().map(|part| (part, view.tell(&part.label())));
    let fit: Vec<_> = all.filter(|(_, name)| fits(name, &go_to.typed)).collect();
    if blank.lost_focus() {
        let (enter, escape) = ui.input(|input| {
            (
                input.key_pressed(Key::Enter),
                input.key_pressed(Key::Escape),
            )
        });
        if escape {
            return Went::Away;
        }
        if enter && let Some((part, _)) = fit.first() {
            return Went::To(*part);
        }
    }
    let mut went = Went::Nowhere;
    ScrollArea::vertical()
        .id_salt("go to")
        .max_height(280.0)
        .show(ui, |ui| {
            for (part, name) in fit {
                if ui.button(name).clicked() {
                    went = Went::To(part);
                }
            }
        });
    went
}

#[cfg(test)]
mod tests {
    use super::fits;

    #[test]
    fn some_letters_of_each_word_find_a_part_and_others_do_not() {
        let name = "suction flare at the indoor coil";
        assert!(fits(name, "suc in") && fits(name, "IN fl") && fits(name, ""));
        assert!(!fits(name, "uction") && !fits(name, "suc out"));
    }
}
