//! The job sheet: complaint, blanks for what was measured and worked out, diagnosis, hand-back.

use crate::gui::view::View;
use crate::gui::widgets::choice;
use crate::job::JobSheet;
use crate::plant::{FaultKind, Spot};
use crate::text::Message;
use crate::words::{Action, Diagnosis, SheetField};
use eframe::egui::{Grid, RichText, ScrollArea, TextEdit, Ui};
use std::collections::BTreeMap;

/// What is on the pencil's tip: typed and not yet written.
#[derive(Debug, Default)]
pub struct SheetDraft {
    typed: BTreeMap<SheetField, String>,
    /// What is thought to be wrong.
    thought: Option<Diagnosis>,
}

impl SheetDraft {
    /// As it is after all that stands on a sheet was written.
    pub fn of(sheet: &JobSheet) -> Self {
        Self {
            thought: sheet.diagnosis().map(|(_, diagnosis)| diagnosis),
            ..Self::default()
        }
    }
}

/// Shows the sheet.
pub fn sheet_ui(ui: &mut Ui, view: &View, draft: &mut SheetDraft, actions: &mut Vec<Action>) {
    ScrollArea::vertical().id_salt("sheet").show(ui, |ui| {
        Grid::new("blanks")
            .num_columns(3)
            .spacing([8.0, 4.0])
            .show(ui, |ui| {
                for field in SheetField::ALL {
                    blank(ui, view, field, draft, actions);
                    ui.end_row();
                }
            });
        ui.separator();
        diagnosis(ui, view, draft, actions);
    });
}

/// Shows what the customer says.
pub fn complaint_ui(ui: &mut Ui, view: &View) {
    let scene = view.scene;
    let (place, complaint) = (view.tell(&scene.place), view.tell(&scene.complaint));
    ui.label(RichText::new(format!("{}, {place}", scene.customer)).strong());
    ui.label(RichText::new(format!("“{complaint}”")).italics());
}

/// One blank: what it asks, where to write, what stands there.
fn blank(
    ui: &mut Ui,
    view: &View,
    field: SheetField,
    draft: &mut SheetDraft,
    actions: &mut Vec<Action>,
) {
    let label = ui.label(view.tell(&field.label()));
    let text = draft.typed.entry(field).or_default();
    let unit = view.system().unit(field.dimension());
    let edit = TextEdit::singleline(text);
    let response = ui.add_sized([72.0, 22.0], edit).labelled_by(label.id);
    if response.lost_focus() && !text.trim().is_empty() {
        if let Some(value) = number(text) {
            actions.push(Action::Write {
                field,
                value: view.system().level_of(value, field.dimension()),
            });
            text.clear();
        } else {
            ui.weak(view.say("sheet-number-please"));
            return;
        }
    }
    match view.sheet().entry(field) {
        // In the units of the person, whichever it was written in.
        Some(entry) => ui.label(view.tell(&view.system().converted(entry.value).words())),
        None => ui.weak(view.tell(&unit)),
    };
}

/// A number as people type it, with a decimal point or comma.
fn number(text: &str) -> Option<f64> {
    let value: f64 = text.trim().replace(',', ".").parse().ok()?;
    value.is_finite().then_some(value)
}

fn diagnosis(ui: &mut Ui, view: &View, draft: &mut SheetDraft, actions: &mut Vec<Action>) {
    ui.label(RichText::new(view.say("sheet-diagnosis")).strong());
    let kinds = std::iter::once(None).chain(FaultKind::ALL.map(Some));
    let now = draft.thought.map(|thought| thought.fault);
    if let Some(fault) = choice(ui, &view.say("sheet-what-is-wrong"), now, kinds, |fault| {
        view.tell(&fault_label(fault))
    }) {
        draft.thought = Some(Diagnosis { fault, at: None });
    }
    if let Some(thought) = &mut draft.thought {
        if thought.fault == Some(FaultKind::Leak)
            && let Some(at) = choice(
                ui,
                &view.say("sheet-where"),
                thought.at,
                Spot::ALL,
                |spot| view.tell(&spot.label()),
            )
        {
            thought.at = Some(at);
        }
        if ui.button(view.say("sheet-write-diagnosis")).clicked() {
            actions.push(Action::Diagnose(*thought));
        }
    }
    if let Some((_, stands)) = view.sheet().diagnosis() {
        let text = Message::new("sheet-on-the-sheet").with("diagnosis", stands.words());
        ui.label(view.tell(&text));
    }
}

/// A fault, in the technician's words.
pub fn fault_label(fault: Option<FaultKind>) -> Message {
    Diagnosis { fault, at: None }.words()
}
