//! The window's rooms and what leads from one to the next.

use super::end::end_ui;
use super::part::Part;
use super::practise::{Ended, Practise};
use super::session::Attempts;
use super::start::{Start, start_ui};
use super::system::System;
use super::theme;
use super::view::Reads;
use super::widgets::choice;
use crate::fluid::refrigerant::Refrigerant;
use crate::job::Job;
use crate::marking::Report;
use crate::scenario::Scenario;
use crate::text::Language;
use crate::words::Action;
use eframe::egui::{Context, Frame, Margin, Panel, Ui};

/// The program's window.
pub struct App {
    scenarios: Vec<Scenario>,
    attempts: Attempts,
    start: Start,
    reads: Reads,
    room: Room,
}

enum Room {
    Start,
    Practise(Box<Practise>),
    End(Box<Ended>),
}

impl std::fmt::Debug for App {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("App")
            .field("start", &self.start)
            .finish_non_exhaustive()
    }
}

impl App {
    /// A window on these scenarios, at its start; `attempts` says where what is done is kept.
    pub fn new(scenarios: Vec<Scenario>, attempts: Attempts) -> Self {
        Self {
            scenarios,
            attempts,
            start: Start::default(),
            reads: Reads {
                language: Language::default(),
                system: System::default(),
                scale: Refrigerant::names()
                    .first()
                    .and_then(|name| Refrigerant::named(name)),
            },
            room: Room::Start,
        }
    }

    /// Puts the window's fonts, colours and sizes into a context.
    pub fn dress(ctx: &Context) {
        theme::install(ctx);
    }

    /// The job under way, if there is one.
    pub fn job(&self) -> Option<&Job> {
        match &self.room {
            Room::Practise(practise) => Some(practise.job()),
            Room::Start | Room::End(_) => None,
        }
    }

    /// The marks of the job that is over, while they are shown.
    pub fn report(&self) -> Option<&Report> {
        match &self.room {
            Room::End(ended) => Some(&ended.report),
            Room::Start | Room::Practise(_) => None,
        }
    }

    /// Does an action in the job under way, as if it had been asked for in the window.
    pub fn act(&mut self, action: Action) {
        if let Room::Practise(practise) = &mut self.room {
            practise.act(action);
        }
    }

    /// Lets ticks pass in the job under way, however the clock stands.
    pub fn run(&mut self, ticks: u64) {
        if let Room::Practise(practise) = &mut self.room {
            practise.run(ticks, self.reads);
        }
    }

    /// Chooses a part of the site, as if it had been pointed at.
    pub fn choose(&mut self, part: Part) {
        if let Room::Practise(practise) = &mut self.room {
            practise.choose(part);
        }
    }

    /// Lays the job sheet open.
    pub fn choose_sheet(&mut self) {
        if let Room::Practise(practise) = &mut self.room {
            practise.choose_sheet();
        }
    }

    /// Opens a scenario of the list.
    pub fn open(&mut self, index: usize) {
        let Some(scenario) = self.scenarios.get(index) else {
            return;
        };
        self.start.has_read = true;
        let (who, mode) = (self.start.who.trim(), self.start.mode);
        match self.attempts.begin(scenario, who, mode) {
            Ok(recorder) => {
                let practise = Practise::new(recorder, scenario.clone());
                self.room = Room::Practise(Box::new(practise));
                self.start.trouble = None;
            }
            Err(trouble) => self.start.trouble = Some(trouble),
        }
    }

    /// Shows the window.
    pub fn window_ui(&mut self, ui: &mut Ui) {
        self.bar_ui(ui);
        match &mut self.room {
            Room::Start => {
                if let Some(index) = start_ui(ui, &mut self.start, &self.scenarios) {
                    self.open(index);
                }
            }
            Room::Practise(practise) => practise.room_ui(ui, self.reads),
            Room::End(ended) => {
                if end_ui(ui, ended) {
                    self.room = Room::Start;
                }
            }
        }
        self.leave_when_over(ui);
    }

    /// The bar at the top: what holds in every room.
    fn bar_ui(&mut self, ui: &mut Ui) {
        let frame = Frame::NONE
            .fill(ui.visuals().panel_fill)
            .inner_margin(Margin::symmetric(8, 4));
        Panel::top("bar").frame(frame).show(ui, |ui| {
            ui.horizontal(|ui| {
                for language in Language::ALL {
                    let name = language.own_name();
                    ui.selectable_value(&mut self.reads.language, language, name);
                }
                let language = self.reads.language;
                ui.separator();
                for (system, name) in [(System::InchPound, "psig, °F"), (System::Metric, "kPa, °C")]
                {
                    ui.selectable_value(&mut self.reads.system, system, name);
                }
                ui.separator();
                let now = self.reads.scale.map(Refrigerant::name);
                let names = Refrigerant::names().iter().copied();
                if let Some(name) = choice(
                    ui,
                    &language.say("window-gauge-scale"),
                    now,
                    names,
                    |name| name,
                ) {
                    self.reads.scale = Refrigerant::named(name);
                }
                ui.separator();
                let dark = ui.visuals().dark_mode;
                let word = if dark {
                    "window-light-colours"
                } else {
                    "window-dark-colours"
                };
                if ui.button(language.say(word)).clicked() {
                    ui.ctx().set_theme(if dark {
                        eframe::egui::Theme::Light
                    } else {
                        eframe::egui::Theme::Dark
                    });
                }
                ui.separator();
                ui.weak(language.say("window-practice-only"));
            });
        });
    }

    fn leave_when_over(&mut self, ui: &Ui) {
        let over = self.job().is_some_and(Job::is_handed_back);
        if over && let Room::Practise(practise) = std::mem::replace(&mut self.room, Room::Start) {
            self.room = Room::End(Box::new(practise.finish()));
            ui.request_repaint();
        }
    }
}

impl eframe::App for App {
    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        self.window_ui(ui);
    }
}
