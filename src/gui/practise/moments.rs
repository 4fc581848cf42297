//! The moments of a job: what was done and when, and the way back to just before one of them.

use crate::attempt::Mode;
use crate::gui::moment::{Moment, moment_text};
use crate::gui::view::View;
use crate::text::Message;
use eframe::egui::{RichText, Ui};

/// Shows the list, the latest first; gives the moment to go back to, when that was asked for.
pub fn moments_ui(
    ui: &mut Ui,
    view: &View,
    moments: &[Moment],
    chosen: &mut Option<usize>,
) -> Option<usize> {
    ui.label(RichText::new(view.say("attempt-moments")).strong());
    if moments.is_empty() {
        ui.weak(view.say("attempt-nothing-done"));
        return None;
    }
    let language = view.reads.language;
    let looked_at = chosen.and_then(|index| Some((index, moments.get(index)?)));
    let mut back = None;
    match (view.mode, looked_at) {
        (Mode::Assessed, _) => {
            ui.weak(view.say("attempt-no-going-back"));
        }
        (Mode::Practice, None) => {
            ui.weak(view.say("attempt-choose-moment"));
        }
        (Mode::Practice, Some((index, moment))) => {
            let moment = moment_text(language, moment);
            ui.label(view.tell(&Message::new("attempt-before").with("moment", moment)));
            ui.weak(view.say("attempt-before-means"));
            ui.horizontal(|ui| {
                let button = ui.button(view.say("attempt-go-back"));
                back = button.clicked().then_some(index);
                if ui.button(view.say("attempt-stay")).clicked() {
                    *chosen = None;
                }
            });
        }
    }
    for (index, moment) in moments.iter().enumerate().rev() {
        let text = moment_text(language, moment);
        if view.mode == Mode::Assessed {
            ui.label(text);
        } else if ui.selectable_label(*chosen == Some(index), text).clicked() {
            *chosen = Some(index);
        }
    }
    back
}
