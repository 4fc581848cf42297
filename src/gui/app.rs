//! The window's rooms and what leads from one to the next.

use super::end::end_ui;
use super::part::Part;
use super::practise::{Ended, Practise};
use super::session::Attempts;
use super::settings::{Keeper, Settings, settings_ui};
use super::start::{Start, start_ui};
use super::theme;
use super::view::Reads;
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
    settings: Settings,
    keeper: Keeper,
    /// The settings are laid open.
    choosing: bool,
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
            reads: Reads::chosen(&Settings::default()),
            settings: Settings::default(),
            keeper: Keeper::nowhere(),
            choosing: false,
            room: Room::Start,
        }
    }

    /// The same with settings that are kept, and with those that were.
    #[must_use]
    pub fn with_settings(mut self, keeper: Keeper) -> Self {
        self.settings = keeper.kept();
        self.choosing = keeper.trouble.is_some();
        self.keeper = keeper;
        self
    }

    /// The settings as they are.
    pub const fn settings(&self) -> Settings {
        self.settings
    }

    /// Changes the settings, as if they had been chosen.
    pub const fn set(&mut self, settings: Settings) {
        self.settings = settings;
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
        theme::wear(ui.ctx(), self.settings.colours, self.settings.text.factor());
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
            ui.horizontal_wrapped(|ui| {
                for each in Language::ALL {
                    let name = each.own_name();
                    ui.selectable_value(&mut self.settings.language, each, name);
                }
                let language = self.settings.language;
                ui.separator();
                ui.toggle_value(&mut self.choosing, language.say("settings-settings"));
                ui.separator();
                ui.weak(language.say("window-practice-only"));
            });
            if self.choosing {
                ui.separator();
                settings_ui(ui, &mut self.settings, &self.keeper);
            }
        });
        self.reads = Reads::chosen(&self.settings);
        self.keeper.keep(self.settings);
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
