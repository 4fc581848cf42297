//! A window to be worked in tests: what has the focus, where things are, and what was done.

#![allow(dead_code, reason = "each test file takes what it needs")]

use crate::folder::Folder;
use coldbench::gui::{App, Attempts, Part};
use coldbench::job::Job;
use coldbench::scenario::{Scenario, shipped_names};
use eframe::egui::{Key, Pos2, Rect, Theme, Vec2, ViewportId};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use std::fs;
use std::ops::{Deref, DerefMut};
use std::time::Duration;

/// A window with the folder of its attempts, which goes when the window has gone.
pub struct Window {
    harness: Harness<'static, App>,
    folder: Folder,
}

impl Deref for Window {
    type Target = Harness<'static, App>;

    fn deref(&self) -> &Self::Target {
        &self.harness
    }
}

impl DerefMut for Window {
    fn deref_mut(&mut self) -> &mut Self::Target {
        &mut self.harness
    }
}

/// A window at its start, of a size.
pub fn window(size: [f32; 2]) -> Window {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    let folder = Folder::fresh();
    let attempts = Attempts::in_folder(folder.path());
    let harness = Harness::builder()
        .with_size(size)
        .with_theme(Theme::Light)
        .with_context_setup(App::dress)
        .build_ui_state(
            |ui, app: &mut App| app.window_ui(ui),
            App::new(scenarios, attempts),
        );
    let mut window = Window { harness, folder };
    window.run();
    window
}

/// A window in which a scenario is open.
pub fn at_work(scenario: &str) -> Window {
    let mut window = window([1280.0, 800.0]);
    let index = shipped_names().position(|name| name == scenario);
    window.state_mut().open(index.expect("it is shipped"));
    window.run();
    // The complaint is read and shut.
    window.get_by_label("Complaint").click();
    window.run();
    window
}

/// How often a word stands in what was recorded of the job: once for each action of that name.
pub fn recorded(window: &Window, word: &str) -> usize {
    let files = fs::read_dir(window.folder.path()).expect("the folder is there");
    files
        .map(|file| fs::read_to_string(file.expect("it is listed").path()))
        .map(|text| text.expect("a journal is text").matches(word).count())
        .sum()
}

/// The job under way.
pub fn job(window: &Window) -> &Job {
    window.state().job().expect("a job is under way")
}

/// The name of what has the keyboard's focus.
pub fn focused(window: &Window) -> Option<String> {
    let mut nodes = window.root().children_recursive();
    let node = nodes.find(egui_kittest::Node::is_focused)?;
    let node = node.accesskit_node();
    node.label().or_else(|| node.value())
}

/// Presses Tab until what has the focus begins so.
pub fn tab_to(window: &mut Window, start: &str) {
    for _ in 0..120 {
        if focused(window).is_some_and(|name| name.starts_with(start)) {
            return;
        }
        window.key_press(Key::Tab);
        window.run();
    }
    panic!("the Tab key never reaches {start:?}");
}

/// Presses a key.
pub fn key(window: &mut Window, key: Key) {
    window.key_press(key);
    window.run();
}

/// Where a part is on the screen.
pub fn area(window: &Window, part: Part) -> Rect {
    let start = format!("{}, ", part.label());
    let mut nodes = window.root().children_recursive();
    let node = nodes.find(|node| {
        let label = node.accesskit_node().label();
        label.is_some_and(|label| label.starts_with(&start))
    });
    node.expect("the part is on the site").rect()
}

/// Where the drawing's units are on the screen, found by two parts that never move.
pub struct Sheet {
    origin: Pos2,
    scale: f32,
}

impl Sheet {
    pub fn of(window: &Window) -> Self {
        let [plate, filter] = [Part::Nameplate, Part::Filter].map(|part| area(window, part));
        let scale = (filter.center().x - plate.center().x) / (866.0 - 292.0);
        let origin = plate.center() - Vec2::new(292.0, 356.0) * scale;
        Self { origin, scale }
    }

    pub fn at(&self, x: f32, y: f32) -> Pos2 {
        self.origin + Vec2::new(x, y) * self.scale
    }
}

/// Drags from the first point over the others and lets go at the last.
pub fn drag(window: &mut Window, points: &[Pos2]) {
    window.hover_at(points[0]);
    window.run();
    window.drag_at(points[0]);
    window.run();
    for &point in &points[1..] {
        window.hover_at(point);
        window.run();
    }
    let last = points.last().copied().expect("it goes somewhere");
    window.drop_at(last);
    window.run();
}

/// When the window asks to be painted again.
pub fn next_frame(window: &Window) -> Duration {
    window.output().viewport_output[&ViewportId::ROOT].repaint_delay
}

/// What the window says when something was not done.
pub fn refusal(window: &Window) -> Option<String> {
    window.query_by_label_contains("Not done: ")?.value()
}
