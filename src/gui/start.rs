//! The room at the start: the cautions, once, and the list of scenarios.

use super::cautions::{AT_THE_START, PRACTICE_ONLY, caution_ui};
use super::scene::flowing;
use crate::attempt::Mode;
use crate::scenario::Scenario;
use eframe::egui::{CentralPanel, Frame, RichText, ScrollArea, Ui};

/// What is filled in at the start.
#[derive(Debug, Default)]
pub struct Start {
    /// The person's own name, for the attempt.
    pub who: String,
    /// For what a job is opened.
    pub mode: Mode,
    /// The cautions were read.
    pub has_read: bool,
    /// Why a scenario could not be opened.
    pub trouble: Option<String>,
}

/// What a job can be opened for.
const MODES: [(Mode, &str); 2] = [
    (
        Mode::Practice,
        "Practise: with help, and one can go back to a moment and try again",
    ),
    (
        Mode::Assessed,
        "Be assessed: no help and no going back; the attempt says so",
    ),
];

/// Shows the room; gives the place in the list of the scenario that was chosen.
pub fn start_ui(ui: &mut Ui, start: &mut Start, scenarios: &[Scenario]) -> Option<usize> {
    let mut opened = None;
    let frame = Frame::central_panel(ui.style()).inner_margin(24);
    CentralPanel::default().frame(frame).show(ui, |ui| {
        ScrollArea::vertical().show(ui, |ui| {
            ui.set_max_width(760.0);
            ui.label(RichText::new("Coldbench").size(30.0).strong());
            ui.label("A split air conditioner under repair, to practise on.");
            ui.add_space(12.0);
            if start.has_read {
                opened = list(ui, start, scenarios);
            } else {
                cautions(ui, start);
            }
        });
    });
    opened
}

fn cautions(ui: &mut Ui, start: &mut Start) {
    ui.heading("Before you begin");
    ui.label(PRACTICE_ONLY);
    ui.add_space(6.0);
    for text in AT_THE_START {
        caution_ui(ui, text);
    }
    ui.add_space(10.0);
    let button = ui.button("I have read this");
    start.has_read = button.clicked();
    if ui.memory(|memory| memory.focused().is_none()) {
        button.request_focus();
    }
}

fn list(ui: &mut Ui, start: &mut Start, scenarios: &[Scenario]) -> Option<usize> {
    let mut opened = None;
    ui.horizontal(|ui| {
        let label = ui.label("Your name");
        ui.text_edit_singleline(&mut start.who)
            .labelled_by(label.id);
    });
    for (mode, text) in MODES {
        ui.radio_value(&mut start.mode, mode, text);
    }
    ui.add_space(8.0);
    if let Some(trouble) = &start.trouble {
        caution_ui(ui, trouble);
    }
    for (index, scenario) in scenarios.iter().enumerate() {
        let file = &scenario.file;
        Frame::group(ui.style()).show(ui, |ui| {
            ui.set_width(720.0);
            ui.horizontal(|ui| {
                ui.heading(&file.title);
                ui.weak(format!("level {} of 5", file.level));
            });
            ui.label(format!("{}, {}", file.customer.name, file.customer.place));
            ui.label(RichText::new(format!("“{}”", flowing(&file.customer.complaint))).italics());
            if ui.button(format!("Go to work: {}", file.title)).clicked() {
                opened = Some(index);
            }
        });
    }
    opened
}
