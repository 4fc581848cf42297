//! The moments of a job: what was done and when, and the way back to just before one of them.

use super::clock::tick_text;
use super::notes::Moment;
use crate::attempt::Mode;
use eframe::egui::{RichText, ScrollArea, Ui};

/// What is said before one goes back.
const BACK: &str = "The job then stands as it stood just before this. What was done from there on \
                    stays in its own attempt, which is ended as left; a new one is begun.";

/// A moment, as it is listed and pointed at.
pub fn moment_text(moment: &Moment) -> String {
    let refused = if moment.refused { ", refused" } else { "" };
    let (at, action) = (tick_text(moment.tick), moment.action);
    format!("{at}  {action}{refused}")
}

/// Shows the list, the latest first; gives the moment to go back to, when that was asked for.
pub fn moments_ui(
    ui: &mut Ui,
    mode: Mode,
    moments: &[Moment],
    chosen: &mut Option<usize>,
) -> Option<usize> {
    ui.label(RichText::new("Moments").strong());
    if moments.is_empty() {
        ui.weak("Nothing was done yet.");
        return None;
    }
    let mut back = None;
    match mode {
        Mode::Assessed => {
            ui.weak("This is an assessment: there is no going back.");
        }
        Mode::Practice => match chosen.and_then(|index| Some((index, moments.get(index)?))) {
            None => {
                ui.weak("Choose one to go back to and try again from there.");
            }
            Some((index, moment)) => {
                ui.label(format!("Go back to before: {}", moment_text(moment)));
                ui.weak(BACK);
                ui.horizontal(|ui| {
                    back = ui
                        .button("Go back and try again")
                        .clicked()
                        .then_some(index);
                    if ui.button("Stay here").clicked() {
                        *chosen = None;
                    }
                });
            }
        },
    }
    ScrollArea::vertical()
        .id_salt("moments")
        .auto_shrink(false)
        .show(ui, |ui| {
            for (index, moment) in moments.iter().enumerate().rev() {
                let text = moment_text(moment);
                if mode == Mode::Assessed {
                    ui.label(text);
                } else if ui.selectable_label(*chosen == Some(index), text).clicked() {
                    *chosen = Some(index);
                }
            }
        });
    back
}
