//! The room at the start: the cautions, once, and the list of scenarios.

use crate::attempt::Mode;
use crate::coach::exercises;
use crate::gui::cautions::{AT_THE_START, PRACTICE_ONLY, caution_ui};
use crate::gui::session::Offer;
use crate::gui::view::flowing;
use crate::scenario::Scenario;
use crate::text::{Language, Message};
use eframe::egui::{CentralPanel, Frame, RichText, ScrollArea, Ui};
use std::path::PathBuf;

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
    /// The attempts that were never ended; `None`: nobody has looked for them yet.
    pub offers: Option<Vec<Offer>>,
}

/// What was chosen at the start.
#[derive(Debug)]
pub enum Choice {
    /// To begin with a scenario, by its place in the list.
    Begin(usize),
    /// To go on with an attempt that was never ended.
    GoOn(PathBuf),
}

/// What a job can be opened for, each with its text.
const MODES: [(Mode, &str); 2] = [
    (Mode::Practice, "attempt-practise"),
    (Mode::Assessed, "attempt-be-assessed"),
];

/// Shows the room; gives what was chosen.
pub fn start_ui(
    ui: &mut Ui,
    start: &mut Start,
    scenarios: &[Scenario],
    language: Language,
) -> Option<Choice> {
    let mut chosen = None;
    let frame = Frame::central_panel(ui.style()).inner_margin(24);
    CentralPanel::default().frame(frame).show(ui, |ui| {
        ScrollArea::vertical().show(ui, |ui| {
            ui.set_max_width(760.0);
            ui.label(RichText::new("Coldbench").size(30.0).strong());
            ui.label(language.say("room-tagline"));
            ui.add_space(12.0);
            if start.has_read {
                chosen = list(ui, start, scenarios, language);
            } else {
                cautions(ui, start, language);
            }
        });
    });
    chosen
}

fn cautions(ui: &mut Ui, start: &mut Start, language: Language) {
    ui.heading(language.say("room-before-you-begin"));
    ui.label(PRACTICE_ONLY.in_language(language));
    ui.add_space(6.0);
    for text in AT_THE_START {
        caution_ui(ui, language, text);
    }
    ui.add_space(10.0);
    let button = ui.button(language.say("room-have-read"));
    start.has_read = button.clicked();
    if ui.memory(|memory| memory.focused().is_none()) {
        button.request_focus();
    }
}

fn list(
    ui: &mut Ui,
    start: &mut Start,
    scenarios: &[Scenario],
    language: Language,
) -> Option<Choice> {
    ui.horizontal(|ui| {
        let label = ui.label(language.say("room-your-name"));
        ui.text_edit_singleline(&mut start.who)
            .labelled_by(label.id);
    });
    for (mode, key) in MODES {
        ui.radio_value(&mut start.mode, mode, language.say(key));
    }
    ui.add_space(8.0);
    if let Some(trouble) = &start.trouble {
        caution_ui(ui, language, Message::verbatim(trouble));
    }
    let text = |text: &str| Message::of_scenario(flowing(text)).in_language(language);
    let offers = start.offers.as_deref().unwrap_or_default();
    let mut chosen = unfinished(ui, offers, language).map(Choice::GoOn);
    for (index, scenario) in scenarios.iter().enumerate() {
        let file = &scenario.file;
        Frame::group(ui.style()).show(ui, |ui| {
            ui.set_width(700.0);
            ui.horizontal(|ui| {
                ui.heading(text(&file.title));
                let level = Message::new("room-level").with("level", u32::from(file.level));
                ui.weak(level.in_language(language));
            });
            let customer = &file.customer;
            ui.label(format!("{}, {}", customer.name, text(&customer.place)));
            ui.label(RichText::new(format!("“{}”", text(&customer.complaint))).italics());
            let practice = Message::list(exercises(&file.rubric), ", ");
            let practice = Message::new("room-practice-in").with("exercises", practice);
            ui.weak(practice.in_language(language));
            let go = Message::new("room-go-to-work").with("title", text(&file.title));
            if ui.button(go.in_language(language)).clicked() {
                chosen = Some(Choice::Begin(index));
            }
        });
    }
    chosen
}

/// The attempts that were never ended; gives the one to go on with.
fn unfinished(ui: &mut Ui, offers: &[Offer], language: Language) -> Option<PathBuf> {
    if offers.is_empty() {
        return None;
    }
    let mut chosen = None;
    ui.heading(language.say("attempt-never-ended"));
    for offer in offers.iter().filter(|offer| offer.obstacle.is_none()) {
        let text = Message::new("attempt-go-on").with("attempt", offer.text.clone());
        let button = ui.button(text.in_language(language));
        if button
            .on_hover_text(offer.path.display().to_string())
            .clicked()
        {
            chosen = Some(offer.path.clone());
        }
    }
    let blocked = |offer: &&Offer| offer.obstacle.is_some();
    let count = offers.iter().filter(blocked).count();
    if count > 0 {
        let text = Message::new("attempt-blocked").with("count", count);
        ui.collapsing(text.in_language(language), |ui| {
            for offer in offers {
                if let Some(why) = &offer.obstacle {
                    let text = Message::new("attempt-cannot-go-on")
                        .with("attempt", offer.text.clone())
                        .with("why", why.clone());
                    let label = ui.label(text.in_language(language));
                    label.on_hover_text(offer.path.display().to_string());
                }
            }
        });
    }
    ui.add_space(8.0);
    chosen
}
