//! The room in which a job is worked on: it owns the recorder, and every action goes through it.

mod clock;
mod coach;
mod drawers;
mod frame;
mod go_to;
mod hand_back;
mod key_list;
mod moments;
mod narrow;
mod reference;
mod room;
mod sheet_panel;
mod waiting;

pub use sheet_panel::fault_label;

use crate::attempt::{Branch, Mode, Observer as _, RecordError, Recorder};
use crate::gui::instruments::chart_ui;
use crate::gui::notes::Notes;
use crate::gui::pace::{Budget, FRAME, Pace, Stint};
use crate::gui::part::Part;
use crate::gui::parts::Drafts;
use crate::gui::practise::coach::Coach;
use crate::gui::practise::drawers::{Drawer, Drawers};
use crate::gui::practise::go_to::GoTo;
use crate::gui::practise::hand_back::HandBack;
use crate::gui::practise::reference::Reference;
use crate::gui::practise::room::Layout;
use crate::gui::practise::sheet_panel::SheetDraft;
use crate::gui::practise::waiting::{WaitForm, Waiting, wait_ui};
use crate::gui::session::{Kept, keep};
use crate::gui::theme::Palette;
use crate::gui::view::{Reads, Scene, View, flowing};
use crate::job::procedure::Look;
use crate::job::{Driver as _, Job, TICKS_PER_SECOND};
use crate::marking::Report;
use crate::scenario::Scenario;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::{Frame, Margin, ScrollArea, Ui};
use std::path::Path;

/// What is shown in a small window.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Side {
    Site,
    Hands,
    Complaint,
    Sheet,
    Time,
    Instruments,
    Chart,
    Coach,
    Reference,
    Log,
}

/// What the person wants that leads out of the room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Exit {
    /// Back to just before an action, counted from 0.
    GoBack(usize),
    /// To the start, and to go on another time.
    PutAside,
}

/// A job under way in the window.
pub struct Practise {
    recorder: Recorder,
    scenario: Scenario,
    scene: Scene,
    notes: Notes,
    pace: Pace,
    wait_form: WaitForm,
    waiting: Option<Waiting>,
    chosen: Option<Part>,
    side: Side,
    drafts: Drafts,
    sheet: SheetDraft,
    /// Looks on while somebody practises.
    coach: Option<Coach>,
    /// The moment that is looked at, to go back to.
    moment: Option<usize>,
    refusal: Option<Message>,
    /// What came of the last wait.
    news: Option<Message>,
    last_frame: Option<f64>,
    /// How far a frame gets with a wait.
    stint: Stint,
    /// What lies over the right of the site.
    drawers: Drawers,
    reference: Reference,
    /// The log shows only what was not done.
    only_refused: bool,
    /// Why each moment that was refused was, by its place in the list.
    refusals: Vec<(usize, Message)>,
    /// The sheet before the hand-back, while it is open.
    hand_back: Option<HandBack>,
    /// The way to a part, while it is open.
    go_to: Option<GoTo>,
    /// The keys are listed.
    lists_keys: bool,
}

/// A job that is over, with what it earned.
#[derive(Debug)]
pub struct Ended {
    /// The scenario's title.
    pub title: Message,
    /// What the scenario trains: shown only now, as it may give the fault away.
    pub trains: Message,
    /// For what it was begun.
    pub mode: Mode,
    /// From where it went on, if it is a second try.
    pub branch: Option<Branch>,
    /// The marks.
    pub report: Report,
    /// Where the attempt is kept, or why it is not.
    pub kept: Result<Kept, String>,
}

impl Practise {
    /// Begins to work behind a recorder's driver.
    pub fn new(recorder: Recorder, scenario: Scenario) -> Self {
        Self {
            drawers: Drawers::with(Drawer::Complaint),
            ..Self::going_on(recorder, scenario, Notes::default())
        }
    }

    /// Goes on with a job of which this was noted so far.
    pub fn going_on(recorder: Recorder, scenario: Scenario, notes: Notes) -> Self {
        Self {
            sheet: SheetDraft::of(recorder.job().sheet()),
            coach: (recorder.head().mode == Mode::Practice).then(|| Coach::of(&scenario)),
            recorder,
            scene: Scene::of(&scenario),
            scenario,
            notes,
            pace: Pace::paused(),
            wait_form: WaitForm::default(),
            waiting: None,
            chosen: None,
            side: Side::Hands,
            drafts: Drafts::default(),
            moment: None,
            refusal: None,
            news: None,
            last_frame: None,
            stint: Stint::default(),
            drawers: Drawers::default(),
            reference: Reference::default(),
            only_refused: false,
            refusals: Vec::new(),
            hand_back: None,
            go_to: None,
            lists_keys: false,
        }
    }

    /// Takes the place of a job, whose recording is ended as left.
    pub fn take_over(&mut self, left: Self) {
        self.chosen = left.chosen;
        self.side = left.side;
        let trouble = left.recorder.leave().err();
        self.news = trouble.map(|error| Message::verbatim(error.to_string()));
    }

    /// The same with a stint for its waits.
    #[must_use]
    pub const fn with_stint(mut self, stint: Stint) -> Self {
        self.stint = stint;
        self
    }

    /// Puts the job aside, to be gone on with.
    pub fn put_aside(self) -> Result<(), RecordError> {
        self.recorder.put_aside()
    }

    /// The job behind the driver, to look at.
    pub fn job(&self) -> &Job {
        self.recorder.job()
    }

    /// For what the job was begun.
    pub const fn mode(&self) -> Mode {
        self.recorder.head().mode
    }

    /// The journal's file.
    pub fn journal(&self) -> &Path {
        self.recorder.path()
    }

    /// Takes news for the person.
    pub fn tell(&mut self, text: Message) {
        self.news = Some(text);
    }

    fn view(&self, reads: Reads) -> View<'_> {
        View::new(self.recorder.job(), &self.scene, self.mode(), reads)
    }

    /// Does an action; a refusal is kept to be shown. Who does something waits no longer.
    pub fn act(&mut self, action: Action, reads: Reads) {
        self.news = None;
        self.end_wait(Look::NotYet, reads);
        let answer = self.recorder.apply(action);
        self.notes
            .action(self.recorder.job(), &action, answer.is_err());
        self.refusal = answer.err().map(|refusal| refusal.why);
        if let Some(why) = &self.refusal {
            let place = self.notes.moments.len().saturating_sub(1);
            self.refusals.push((place, why.clone()));
        }
    }

    /// Lets ticks pass.
    pub fn run(&mut self, ticks: u64) {
        for _ in 0..ticks {
            self.recorder.tick();
            let job = self.recorder.job();
            if job.now().is_multiple_of(TICKS_PER_SECOND) {
                self.notes.second(job);
            }
        }
    }

    /// Chooses a part, as if it had been pointed at.
    pub const fn choose(&mut self, part: Part) {
        self.chosen = Some(part);
        self.side = Side::Hands;
    }

    /// Opens the job sheet.
    pub fn choose_sheet(&mut self) {
        self.open(Drawer::Sheet);
    }

    /// Opens what can be waited for.
    pub fn choose_time(&mut self) {
        self.open(Drawer::Wait);
    }

    /// Closes the recording and marks the course.
    pub fn finish(self) -> Ended {
        let (mode, branch) = (self.mode(), self.recorder.head().branch.clone());
        let course = self.notes.course.finish(self.recorder.job());
        let file = &self.scenario.file;
        Ended {
            title: Message::of_scenario(file.title.clone()),
            trains: Message::of_scenario(flowing(&file.trains)),
            mode,
            branch,
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
        if self.waiting.is_some() {
            self.wait(reads);
            ui.request_repaint();
            return;
        }
        let ticks = self.pace.ticks(elapsed);
        self.run(ticks);
        if let Some(wait) = self.pace.next_frame() {
            ui.request_repaint_after(wait);
        }
    }

    /// Waits on for as long as a frame may take.
    fn wait(&mut self, reads: Reads) {
        let mut budget = Budget::of(self.stint, FRAME);
        loop {
            let ticks = budget.next_ticks();
            if ticks == 0 {
                return;
            }
            for _ in 0..ticks {
                let Some(waiting) = &mut self.waiting else {
                    return;
                };
                match waiting.look(self.recorder.job()) {
                    Look::NotYet => self.run(1),
                    over => self.end_wait(over, reads),
                }
            }
        }
    }

    /// Ends a wait, if there is one. Nobody looked while it went on, so the clock then runs no
    /// faster than a person can follow.
    fn end_wait(&mut self, look: Look, reads: Reads) {
        if let Some(waiting) = self.waiting.take() {
            self.news = Some(waiting.outcome(&self.view(reads), look));
            self.pace.slow_down();
        }
    }

    /// Shows the room and does what was asked in it; gives what leads out of it.
    pub fn room_ui(&mut self, ui: &mut Ui, reads: Reads, menu: &mut bool) -> Option<Exit> {
        self.pass_time(ui, reads);
        if let Some(coach) = &mut self.coach {
            let job = self.recorder.job();
            coach.look(&mut self.notes.course, job, &self.scenario, reads.system);
        }
        let (mut actions, mut exit) = (Vec::new(), None);
        let window = ui.available_size();
        let frame = Frame::NONE
            .fill(Palette::of(ui).panel)
            .inner_margin(Margin::symmetric(8, 6));
        let layout = Layout::of(window);
        self.bar_ui(ui, reads, menu, layout == Layout::Wide);
        match layout {
            Layout::Wide => self.wide_ui(ui, reads, (&mut actions, &mut exit)),
            Layout::Narrow => self.narrow_ui(ui, frame, reads, (&mut actions, &mut exit)),
        }
        self.over_all_ui(ui, reads, &mut actions);
        for action in actions {
            self.act(action, reads);
        }
        exit
    }

    /// The strip chart; a mark that is pressed is looked at among the moments.
    fn chart_ui(&mut self, ui: &mut Ui, reads: Reads) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        let Notes { chart, moments, .. } = &mut self.notes;
        if let Some(moment) = chart_ui(ui, &view, chart, moments) {
            self.moment = Some(moment);
            self.open(Drawer::Log);
        }
    }

    /// What can be waited for, and putting the job aside.
    fn time_ui(&mut self, ui: &mut Ui, reads: Reads) -> Option<Exit> {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        let (mut asked, mut exit) = (None, None);
        ScrollArea::vertical().id_salt("time").show(ui, |ui| {
            asked = wait_ui(ui, &view, &mut self.wait_form);
            ui.separator();
            let put_aside = ui.button(view.say("attempt-put-aside"));
            let put_aside = put_aside.on_hover_text(view.say("attempt-put-aside-hint"));
            if put_aside.clicked() {
                exit = Some(Exit::PutAside);
            }
        });
        if let Some((what, within)) = asked {
            self.waiting = Some(Waiting::at(self.recorder.job(), what, within));
            (self.news, self.refusal) = (None, None);
            ui.request_repaint();
        }
        exit
    }
}
