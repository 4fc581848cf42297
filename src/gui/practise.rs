//! The room in which a job is worked on: it owns the recorder and passes actions through its door.

mod narrow;

use super::chart::{StripChart, chart_ui};
use super::clock::clock_ui;
use super::coach::{Coach, coach_below};
use super::hands::{Drafts, hands_ui};
use super::instruments::instruments_ui;
use super::pace::Pace;
use super::part::Part;
use super::room::Layout;
use super::scene::{Scene, flowing};
use super::session::{Kept, keep};
use super::sheet::{SheetDraft, sheet_ui};
use super::site::site_ui;
use super::theme::Palette;
use super::view::{Reads, View};
use crate::attempt::{Mode, Observer, Recorder};
use crate::job::{Door as _, Job, TICKS_PER_SECOND};
use crate::marking::{CourseRecorder, Report};
use crate::scenario::Scenario;
use crate::words::Action;
use eframe::egui::{CentralPanel, Frame, Margin, Panel, RichText, Ui};

/// What the panel at the side shows; in a small window, what is shown at all.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Side {
    Site,
    Hands,
    Sheet,
    Instruments,
    Chart,
    Coach,
}

/// A job under way in the window.
pub struct Practise {
    recorder: Recorder,
    scenario: Scenario,
    scene: Scene,
    course: CourseRecorder,
    pace: Pace,
    chosen: Option<Part>,
    side: Side,
    drafts: Drafts,
    sheet: SheetDraft,
    chart: StripChart,
    /// Looks on while somebody practises.
    coach: Option<Coach>,
    refusal: Option<String>,
    last_frame: Option<f64>,
    chart_is_below: bool,
}

/// The strip chart goes beside the instruments when so much width is left.
const ROOM_FOR_CHART: f32 = 240.0;

/// A job that is over, with what it earned.
#[derive(Debug)]
pub struct Ended {
    /// The scenario's title.
    pub title: String,
    /// What the scenario trains: said only now, as it may give the fault away.
    pub trains: String,
    /// The marks.
    pub report: Report,
    /// Where the attempt is kept, or why it is not.
    pub kept: Result<Kept, String>,
}

impl Practise {
    /// Begins to work behind a recorder's door.
    pub fn new(recorder: Recorder, scenario: Scenario) -> Self {
        Self {
            coach: (recorder.head().mode == Mode::Practice).then(|| Coach::of(&scenario)),
            recorder,
            scene: Scene::of(&scenario),
            scenario,
            course: CourseRecorder::default(),
            pace: Pace::paused(),
            chosen: None,
            side: Side::Hands,
            drafts: Drafts::default(),
            sheet: SheetDraft::default(),
            chart: StripChart::default(),
            refusal: None,
            last_frame: None,
            chart_is_below: false,
        }
    }

    /// The job behind the door, to look at.
    pub fn job(&self) -> &Job {
        self.recorder.job()
    }

    /// For what the job was begun.
    pub const fn mode(&self) -> Mode {
        self.recorder.head().mode
    }

    /// Does an action; a refusal is kept to be shown.
    pub fn act(&mut self, action: Action) {
        let answer = self.recorder.apply(action);
        self.course
            .action(self.recorder.job(), &action, answer.is_err());
        self.refusal = answer.err().map(|refusal| refusal.why);
    }

    /// Lets ticks pass.
    pub fn run(&mut self, ticks: u64, reads: Reads) {
        let mode = self.mode();
        for _ in 0..ticks {
            self.recorder.tick();
            let job = self.recorder.job();
            if job.now().is_multiple_of(TICKS_PER_SECOND) {
                self.course.second(job);
                self.chart.note(&View::new(job, &self.scene, mode, reads));
            }
        }
    }

    /// Chooses a part, as if it had been pointed at.
    pub const fn choose(&mut self, part: Part) {
        self.chosen = Some(part);
        self.side = Side::Hands;
    }

    /// Lays the job sheet open.
    pub const fn choose_sheet(&mut self) {
        self.side = Side::Sheet;
    }

    /// Closes the recording and marks the course.
    pub fn finish(self) -> Ended {
        let course = self.course.finish(self.recorder.job());
        let file = &self.scenario.file;
        Ended {
            title: file.title.clone(),
            trains: flowing(&file.trains),
            report: Report::new(&course, &file.rubric, file.pass),
            kept: keep(self.recorder),
        }
    }

    /// Lets the time of the job pass that belongs to this frame.
    fn pass_time(&mut self, ui: &Ui, reads: Reads) {
        let now = ui.input(|input| input.time);
        let elapsed = now - self.last_frame.replace(now).unwrap_or(now);
        if self.job().is_handed_back() {
            return;
        }
        let ticks = self.pace.ticks(elapsed);
        self.run(ticks, reads);
        if let Some(wait) = self.pace.next_frame() {
            ui.request_repaint_after(wait);
        }
    }

    /// Shows the room and does what was asked in it.
    pub fn room_ui(&mut self, ui: &mut Ui, reads: Reads) {
        self.pass_time(ui, reads);
        if let Some(coach) = &mut self.coach {
            let job = self.recorder.job();
            coach.look(&mut self.course, job, &self.scenario, reads.system);
        }
        let mut actions = Vec::new();
        let window = ui.available_size();
        let frame = Frame::NONE
            .fill(Palette::of(ui).panel)
            .inner_margin(Margin::symmetric(8, 6));
        Panel::top("clock")
            .frame(frame)
            .show(ui, |ui| self.top_ui(ui, reads));
        match Layout::of(window) {
            Layout::Wide => self.wide_ui(ui, frame, reads, &mut actions),
            Layout::Narrow => self.narrow_ui(ui, frame, reads, &mut actions),
        }
        for action in actions {
            self.act(action);
        }
    }

    /// Everything beside each other.
    fn wide_ui(&mut self, ui: &mut Ui, frame: Frame, reads: Reads, actions: &mut Vec<Action>) {
        let window = ui.available_size();
        Panel::bottom("instruments")
            .frame(frame)
            .exact_size((0.32 * window.y).clamp(170.0, 0.42 * window.x))
            .show(ui, |ui| self.bottom_ui(ui, reads));
        Panel::right("side")
            .frame(frame)
            .resizable(true)
            .default_size((0.27 * window.x).max(330.0))
            .size_range(300.0..=700.0)
            .show(ui, |ui| self.side_ui(ui, reads, actions));
        let before = self.chosen;
        CentralPanel::default().frame(Frame::NONE).show(ui, |ui| {
            let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
            site_ui(ui, &view, &mut self.chosen);
        });
        if self.chosen != before {
            self.side = Side::Hands;
        }
    }

    /// The clock, and why the last thing was not done.
    fn top_ui(&mut self, ui: &mut Ui, reads: Reads) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        ui.horizontal_wrapped(|ui| {
            clock_ui(ui, &view, &mut self.pace);
            ui.separator();
            ui.label(RichText::new(&self.scene.title).strong());
            if let Some(why) = &self.refusal {
                ui.separator();
                let text = RichText::new(format!("Not done: {why}"));
                ui.label(text.color(Palette::of(ui).warn));
            }
        });
    }

    /// The instruments, and the strip chart where there is room beside them.
    fn bottom_ui(&mut self, ui: &mut Ui, reads: Reads) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        ui.horizontal_top(|ui| {
            instruments_ui(ui, &view);
            self.chart_is_below = ui.available_width() > ROOM_FOR_CHART;
            if self.chart_is_below {
                ui.vertical(|ui| chart_ui(ui, &view, &self.chart));
            }
        });
    }

    /// What can be done, the job sheet, and the strip chart where it has no room below.
    fn side_ui(&mut self, ui: &mut Ui, reads: Reads, actions: &mut Vec<Action>) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        ui.horizontal(|ui| {
            ui.selectable_value(&mut self.side, Side::Hands, "At hand");
            ui.selectable_value(&mut self.side, Side::Sheet, "Job sheet");
            if !self.chart_is_below {
                ui.selectable_value(&mut self.side, Side::Chart, "Strip chart");
            }
        });
        ui.separator();
        if let Some(coach) = &mut self.coach {
            coach_below(ui, &view, coach);
        }
        match self.side {
            Side::Sheet => sheet_ui(ui, &view, &mut self.sheet, actions),
            Side::Chart if !self.chart_is_below => chart_ui(ui, &view, &self.chart),
            _ => {
                hands_ui(ui, &view, self.chosen, &mut self.drafts, actions);
            }
        }
    }
}
