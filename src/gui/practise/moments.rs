//! The moments of a job: what was done and when, and the way back to just before one of them.

use crate::attempt::Mode;
use crate::gui::moment::{Moment, moment_text};
use crate::gui::theme::Palette;
use crate::gui::view::View;
use crate::gui::widgets::{Look, key_button};
use crate::text::Message;
use eframe::egui::{RichText, Ui};

/// Shows the list, the latest first, each refusal with its reason; gives the moment to go back to,
/// when that was asked for.
pub fn moments_ui(
    ui: &mut Ui,
    view: &View,
    moments: &[Moment],
    refusals: &[(usize, Message)],
    (chosen, only_refused): (&mut Option<usize>, &mut bool),
) -> Option<usize> {
    ui.label(RichText::new(view.say("attempt-moments")).strong());
    if moments.is_empty() {
        ui.weak(view.say("attempt-nothing-done"));
        return None;
    }
    ui.horizontal_wrapped(|ui| {
        for (key, refused) in [("log-all", false), ("log-not-done", true)] {
            let look = if *only_refused == refused {
                Look::Chosen
            } else {
                Look::Plain
            };
            if key_button(ui, &view.say(key), None, look).clicked() {
                *only_refused = refused;
            }
        }
    });
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
        if *only_refused && !moment.refused {
            continue;
        }
        let text = moment_text(language, moment);
        if view.mode == Mode::Assessed {
            ui.label(text);
        } else if ui.selectable_label(*chosen == Some(index), text).clicked() {
            *chosen = Some(index);
        }
        if let Some((_, why)) = refusals.iter().find(|(refused, _)| *refused == index) {
            ui.label(
                RichText::new(view.tell(why))
                    .small()
                    .color(Palette::of(ui).warn),
            );
        }
    }
    back
}
