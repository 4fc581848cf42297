//! A window on a folder, worked by labels, and a procedure done in it up to some action.

use crate::folder::Folder;
use coldbench::attempt::Head;
use coldbench::gui::{App, Attempts};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Driver, Job, Refusal};
use coldbench::marking::Report;
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::text::Message;
use coldbench::words::Action;
use eframe::egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use std::fs;
use std::path::PathBuf;

pub type Window = Harness<'static, App>;

/// The scenario that these tests work on.
pub const DRIER: &str = "clogged_drier";

/// A window at its start, whose attempts go to a folder.
pub fn window(folder: &Folder) -> Window {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    let app = App::new(scenarios, Attempts::in_folder(folder.path()));
    let mut window = Harness::builder()
        .with_size([1360.0, 860.0])
        .with_context_setup(App::dress)
        .build_ui_state(|ui, app: &mut App| app.window_ui(ui), app);
    window.run();
    press(&mut window, "I have read this");
    window
}

/// A window in which somebody has begun to practise on the drier.
pub fn at_work(folder: &Folder) -> Window {
    let mut window = window(folder);
    let blank = (Role::TextInput, "Your name");
    window.get_by_role_and_label(blank.0, blank.1).focus();
    window.run();
    let field = window.get_by_role_and_label(blank.0, blank.1);
    field.type_text("A. Prentice");
    window.run();
    begin(&mut window);
    window
}

/// Begins the drier job from the list.
pub fn begin(window: &mut Window) {
    press(window, &format!("Go to work: {}", title()));
    // The complaint is read and shut.
    press(window, "Complaint");
}

pub fn title() -> String {
    let scenario = Scenario::shipped(DRIER).expect("it is shipped");
    scenario.file.title
}

/// The scenario of an attempt, for its replay.
pub fn lookup(head: &Head) -> Result<Scenario, String> {
    Scenario::shipped(&head.scenario).ok_or_else(|| "it is not shipped".to_owned())
}

pub fn press(window: &mut Window, label: &str) {
    // A person scrolls to what is out of sight.
    window.get_by_label(label).scroll_to_me();
    window.run_steps(3);
    window.get_by_label(label).click();
    window.run();
}

pub fn job(window: &Window) -> &Job {
    window.state().job().expect("a job is under way")
}

pub fn act(window: &mut Window, action: Action) {
    window.state_mut().act(action);
    window.run();
}

/// The attempts in a folder, in the order of their numbers.
pub fn attempts(folder: &Folder) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder.path()).expect("the folder is there");
    let mut paths: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).collect();
    paths.sort();
    paths
}

/// A procedure's hands in a window. Before an action for which it is due, it does what it is told
/// to, once.
pub struct Hands<'a> {
    pub window: Window,
    /// The job as it stood when it was last seen.
    last: Job,
    /// Before which action, counted from 0, and what.
    interlude: Option<(usize, &'a mut dyn FnMut(Window) -> Window)>,
    done: usize,
    /// The procedure stops before this action.
    stop: fn(&Action) -> bool,
}

impl<'a> Hands<'a> {
    pub fn at(window: Window) -> Self {
        let last = job(&window).clone();
        Self {
            window,
            last,
            interlude: None,
            done: 0,
            stop: |_| false,
        }
    }

    pub fn stopping(self, stop: fn(&Action) -> bool) -> Self {
        Self { stop, ..self }
    }

    pub fn with(self, before: usize, what: &'a mut dyn FnMut(Window) -> Window) -> Self {
        let interlude = Some((before, what));
        Self { interlude, ..self }
    }

    /// Does the right procedure, as far as it goes; gives the window and the marks.
    pub fn perform(mut self) -> (Window, Option<Report>) {
        let procedure = Procedure::shipped(&format!("{DRIER}_right")).expect("it is shipped");
        // Where it stops is for the test to see.
        let _stopped = Performance::new(&mut self, &mut |_| {}).run(&procedure);
        let report = self.window.state().report().cloned();
        (self.window, report)
    }
}

impl Driver for Hands<'_> {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        if (self.stop)(&action) {
            return Err(Refusal::because(Message::verbatim("It stops here.")));
        }
        if let Some((before, what)) = self.interlude.take() {
            if before == self.done {
                let other =
                    Harness::new_ui_state(|_, _| {}, App::new(Vec::new(), attempts_nowhere()));
                let window = std::mem::replace(&mut self.window, other);
                self.window = what(window);
            } else {
                self.interlude = Some((before, what));
            }
        }
        self.done += 1;
        self.last = job(&self.window).clone();
        act(&mut self.window, action);
        match self.window.query_by_label_contains("Not done: ") {
            Some(_) => Err(Refusal::because(Message::verbatim("the window says so"))),
            None => Ok(()),
        }
    }

    fn tick(&mut self) {
        self.window.state_mut().run(1);
    }

    fn job(&self) -> &Job {
        self.window.state().job().unwrap_or(&self.last)
    }
}

/// Where a window that is thrown away would write.
fn attempts_nowhere() -> Attempts {
    Attempts::in_folder("nowhere")
}
