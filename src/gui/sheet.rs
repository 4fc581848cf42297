//! The job sheet: complaint, blanks for what was measured and worked out, diagnosis, hand-back.

use super::view::View;
use super::widgets::choice;
use crate::plant::{FaultKind, Spot};
use crate::text::Message;
use crate::words::{Action, Diagnosis, SheetField};
use eframe::egui::{Frame, Grid, Margin, Panel, RichText, ScrollArea, TextEdit, Ui};
use std::collections::BTreeMap;

/// What is on the pencil's tip: typed and not yet written.
#[derive(Debug, Default)]
pub struct SheetDraft {
    typed: BTreeMap<SheetField, String>,
    /// What is thought to be wrong.
    thought: Option<Diagnosis>,
    /// The hand-back was asked for once and waits for the second word.
    handing_back: bool,
}

/// Shows the sheet.
pub fn sheet_ui(ui: &mut Ui, view: &View, draft: &mut SheetDraft, actions: &mut Vec<Action>) {
    Panel::bottom("hand back")
        .frame(Frame::NONE.inner_margin(Margin::symmetric(0, 6)))
        .show(ui, |ui| hand_back(ui, view, draft, actions));
    ScrollArea::vertical().id_salt("sheet").show(ui, |ui| {
        complaint(ui, view);
        ui.separator();
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

fn complaint(ui: &mut Ui, view: &View) {
    let scene = view.scene;
    ui.label(RichText::new(format!("{}, {}", scene.customer, scene.place)).strong());
    ui.label(RichText::new(format!("“{}”", scene.complaint)).italics());
}

/// One blank: what it asks, where to write, what stands there.
fn blank(
    ui: &mut Ui,
    view: &View,
    field: SheetField,
    draft: &mut SheetDraft,
    actions: &mut Vec<Action>,
) {
    let label = ui.label(field_label(field));
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
        Some(entry) => ui.label(entry.value.to_string()),
        None => ui.weak(unit),
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
    if let Some(fault) = choice(
        ui,
        &view.say("sheet-what-is-wrong"),
        now,
        kinds,
        fault_label,
    ) {
        draft.thought = Some(Diagnosis { fault, at: None });
    }
    if let Some(thought) = &mut draft.thought {
        if thought.fault == Some(FaultKind::Leak)
            && let Some(at) = choice(
                ui,
                &view.say("sheet-where"),
                thought.at,
                Spot::ALL,
                Spot::label,
            )
        {
            thought.at = Some(at);
        }
        if ui.button(view.say("sheet-write-diagnosis")).clicked() {
            actions.push(Action::Diagnose(*thought));
        }
    }
    if let Some((_, stands)) = view.sheet().diagnosis() {
        let at = stands
            .at
            .map_or(String::new(), |spot| format!(", {}", spot.label()));
        let diagnosis = format!("{}{at}", fault_label(stands.fault));
        ui.label(view.tell(&Message::new("sheet-on-the-sheet").with("diagnosis", diagnosis)));
    }
}

fn hand_back(ui: &mut Ui, view: &View, draft: &mut SheetDraft, actions: &mut Vec<Action>) {
    if !draft.handing_back {
        draft.handing_back = ui.button(view.say("sheet-hand-back")).clicked();
        return;
    }
    ui.label(view.say("sheet-hand-back-warning"));
    ui.horizontal(|ui| {
        if ui.button(view.say("sheet-hand-back-now")).clicked() {
            actions.push(Action::HandBack);
            draft.handing_back = false;
        }
        if ui.button(view.say("sheet-work-on")).clicked() {
            draft.handing_back = false;
        }
    });
}

/// A fault, in the technician's words.
pub const fn fault_label(fault: Option<FaultKind>) -> &'static str {
    match fault {
        None => "nothing is wrong",
        Some(kind) => kind.sheet().label,
    }
}

/// A blank, in words.
pub const fn field_label(field: SheetField) -> &'static str {
    match field {
        SheetField::StandingPressure => "standing pressure",
        SheetField::SuctionPressure => "suction pressure",
        SheetField::LiquidPressure => "liquid pressure",
        SheetField::SuctionLine => "suction line",
        SheetField::LiquidLine => "liquid line",
        SheetField::AfterDrier => "after the drier",
        SheetField::OutdoorAir => "outdoor air",
        SheetField::ReturnAir => "return air",
        SheetField::ReturnWetBulb => "return wet bulb",
        SheetField::SupplyAir => "supply air",
        SheetField::Amps => "compressor current",
        SheetField::Superheat => "superheat",
        SheetField::Subcooling => "subcooling",
        SheetField::TargetSuperheat => "target superheat",
        SheetField::Vacuum => "vacuum reached",
        SheetField::RefrigerantIn => "refrigerant put in",
        SheetField::RefrigerantOut => "refrigerant taken out",
    }
}
