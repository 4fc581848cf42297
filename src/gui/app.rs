//! The window's rooms and what leads from one to the next.

use crate::gui::catch_up::{CatchingUp, Caught};
use crate::gui::end::end_ui;
use crate::gui::pace::Stint;
use crate::gui::part::Part;
use crate::gui::practise::{Ended, Exit, Practise};
use crate::gui::session::Attempts;
use crate::gui::settings::{Settings, SettingsFile, settings_ui};
use crate::gui::start::{Choice, Start, start_ui};
use crate::gui::theme;
use crate::gui::view::Reads;
use crate::job::Job;
use crate::marking::Report;
use crate::scenario::Scenario;
use crate::text::{Language, Message};
use crate::words::Action;
use eframe::egui::{Context, Frame, Margin, Panel, Ui};

/// The program's window.
pub struct App {
    scenarios: Vec<Scenario>,
    attempts: Attempts,
    start: Start,
    reads: Reads,
    settings: Settings,
    settings_file: SettingsFile,
    /// The settings are open.
    choosing: bool,
    /// The bar of languages and settings is open over a job.
    menu: bool,
    stint: Stint,
    room: Room,
}

enum Room {
    Start,
    CatchUp(Box<CatchingUp>),
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
            settings_file: SettingsFile::nowhere(),
            choosing: false,
            menu: false,
            stint: Stint::default(),
            room: Room::Start,
        }
    }

    /// The same with settings that are kept, and with those that were.
    #[must_use]
    pub fn with_settings(mut self, file: SettingsFile) -> Self {
        self.settings = file.kept();
        self.choosing = file.trouble.is_some();
        self.menu = self.choosing;
        self.settings_file = file;
        self
    }

    /// Sets how far a wait and a replay get in each frame, for the jobs that are opened from now
    /// on.
    pub const fn set_stint(&mut self, stint: Stint) {
        self.stint = stint;
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
            Room::Start | Room::CatchUp(_) | Room::End(_) => None,
        }
    }

    /// The marks of the job that is over, while they are shown.
    pub fn report(&self) -> Option<&Report> {
        match &self.room {
            Room::End(ended) => Some(&ended.report),
            Room::Start | Room::CatchUp(_) | Room::Practise(_) => None,
        }
    }

    /// Does an action in the job under way, as if it had been asked for in the window.
    pub fn act(&mut self, action: Action) {
        if let Room::Practise(practise) = &mut self.room {
            practise.act(action, self.reads);
        }
    }

    /// Lets ticks pass in the job under way, however the clock stands.
    pub fn run(&mut self, ticks: u64) {
        if let Room::Practise(practise) = &mut self.room {
            practise.run(ticks);
        }
    }

    /// Chooses a part of the site, as if it had been pointed at.
    pub fn choose(&mut self, part: Part) {
        if let Room::Practise(practise) = &mut self.room {
            practise.choose(part);
        }
    }

    /// Opens the job sheet.
    pub fn choose_sheet(&mut self) {
        if let Room::Practise(practise) = &mut self.room {
            practise.choose_sheet();
        }
    }

    /// Opens what can be waited for.
    pub fn choose_time(&mut self) {
        if let Room::Practise(practise) = &mut self.room {
            practise.choose_time();
        }
    }

    /// Opens a scenario of the list.
    pub fn open(&mut self, index: usize) {
        self.start.has_read = true;
        self.room = self.begin(index);
    }

    fn begin(&mut self, index: usize) -> Room {
        let Some(scenario) = self.scenarios.get(index) else {
            return Room::Start;
        };
        let (who, mode) = (self.start.who.as_str(), self.start.mode);
        match self.attempts.begin(scenario, who, mode) {
            Ok(recorder) => {
                let practise = Practise::new(recorder, scenario.clone()).with_stint(self.stint);
                self.start.trouble = None;
                Room::Practise(Box::new(practise))
            }
            Err(trouble) => self.back_to_start(Some(trouble)),
        }
    }

    /// Shows the window.
    pub fn window_ui(&mut self, ui: &mut Ui) {
        theme::wear(ui.ctx(), self.settings.colours, self.settings.text.factor());
        if self.menu || !matches!(self.room, Room::Practise(_)) {
            self.bar_ui(ui);
        }
        self.reads = Reads::chosen(&self.settings);
        self.settings_file.keep(self.settings);
        let room = std::mem::replace(&mut self.room, Room::Start);
        self.room = match room {
            Room::Start => self.start_ui(ui),
            Room::CatchUp(catching_up) => {
                let caught = catching_up.room_ui(ui, self.reads.language);
                self.after(caught)
            }
            Room::Practise(practise) => self.practise_ui(ui, practise),
            Room::End(ended) => {
                if end_ui(ui, &ended, self.reads.language) {
                    self.back_to_start(None)
                } else {
                    Room::End(ended)
                }
            }
        };
    }

    fn start_ui(&mut self, ui: &mut Ui) -> Room {
        if self.start.offers.is_none() {
            self.start.offers = Some(self.attempts.offers(&self.scenarios));
        }
        match start_ui(ui, &mut self.start, &self.scenarios, self.reads.language) {
            Some(Choice::Begin(index)) => self.begin(index),
            Some(Choice::GoOn(path)) => match Attempts::go_on(&path, &self.scenarios) {
                Ok(catch_up) => self.after(CatchingUp::begin(catch_up, None, self.stint)),
                Err(trouble) => self.back_to_start(Some(trouble)),
            },
            None => Room::Start,
        }
    }

    fn practise_ui(&mut self, ui: &mut Ui, mut practise: Box<Practise>) -> Room {
        let exit = practise.room_ui(ui, self.reads, &mut self.menu);
        if practise.job().is_handed_back() {
            ui.request_repaint();
            return Room::End(Box::new(practise.finish()));
        }
        match exit {
            None => Room::Practise(practise),
            Some(Exit::PutAside) => {
                let trouble = practise.put_aside().err();
                self.back_to_start(trouble.map(|error| error.to_string()))
            }
            Some(Exit::GoBack(action)) => {
                match Attempts::go_back(practise.journal(), &self.scenarios, action) {
                    Ok(catch_up) => {
                        self.after(CatchingUp::begin(catch_up, Some(practise), self.stint))
                    }
                    Err(trouble) => {
                        practise.tell(Message::verbatim(trouble));
                        Room::Practise(practise)
                    }
                }
            }
        }
    }

    /// The room after a job was done again, or the same one while it is.
    fn after(&mut self, caught: Caught) -> Room {
        match caught {
            Caught::NotYet(catching_up) => Room::CatchUp(catching_up),
            Caught::Up(practise) => Room::Practise(practise),
            Caught::Not(Some(mut practise), trouble) => {
                if let Some(trouble) = trouble {
                    practise.tell(Message::verbatim(trouble));
                }
                Room::Practise(practise)
            }
            Caught::Not(None, trouble) => self.back_to_start(trouble),
        }
    }

    /// To the start, where the folder is read again.
    fn back_to_start(&mut self, trouble: Option<String>) -> Room {
        self.start.trouble = trouble;
        self.start.offers = None;
        Room::Start
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
                settings_ui(ui, &mut self.settings, &self.settings_file);
            }
        });
    }
}

impl eframe::App for App {
    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        self.window_ui(ui);
    }

    /// A job that is not over is put aside, so that no time of it is lost.
    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        match std::mem::replace(&mut self.room, Room::Start) {
            Room::Practise(practise) => {
                // The window has gone: there is nobody to show it to.
                let _is_kept = practise.put_aside();
            }
            Room::CatchUp(catching_up) => catching_up.put_aside(),
            Room::Start | Room::End(_) => {}
        }
    }
}
