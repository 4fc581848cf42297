//! The coach: a thought when it is asked for, more when it is asked for again, and what happened
//! with what it would have cost. For practice only: while somebody is assessed it is not there.

use crate::coach::{Depth, Happening, Price, Teller, Want, happenings, lost, outlook, slips};
use crate::gui::theme::Palette;
use crate::gui::time::time_text;
use crate::gui::view::{System, View};
use crate::job::{Job, TICKS_PER_SECOND};
use crate::marking::{CourseRecorder, evidence};
use crate::scenario::{Costs, Scenario};
use crate::text::Message;
use crate::units::{Mass, Time};
use crate::words::Level;
use eframe::egui::{CollapsingHeader, Frame, Margin, Panel, RichText, ScrollArea, Ui};

/// So often the coach looks at a job to which nothing is done, ticks. Chosen: 10 s.
const LOOKS_EVERY: u64 = 10 * TICKS_PER_SECOND;

/// After so long on the job without an action, more can be asked for, ticks. Chosen: 30 s.
const PATIENCE: u64 = 30 * TICKS_PER_SECOND;

/// What happened stays in sight for so long, ticks; then it is folded away. Chosen: 2 min.
const IN_SIGHT: u64 = 120 * TICKS_PER_SECOND;

/// What the coach has to say.
#[derive(Debug)]
pub struct Coach {
    want: Want,
    /// The thought of now at each depth.
    thought: [Message; 3],
    /// How much of it has been asked for.
    shown: Option<Depth>,
    /// The scenario's own hints, and how many of them were given.
    hints: Vec<Message>,
    given: usize,
    /// The moments of the course, and the tick, at which it last looked.
    looked: Option<(usize, u64)>,
    /// Whether something was done since its last thought.
    was_tried: bool,
    said_at: u64,
    /// What happened, each with the tick at which it last grew.
    happened: Vec<(Happening, u64)>,
    /// What can no longer be met, in the words of the rubric.
    gone: Vec<Message>,
    slips: Vec<Message>,
    lost: f64,
    costs: Costs,
    /// How high it came out last time, points.
    height: f32,
}

impl Coach {
    /// Somebody who has not looked yet.
    pub fn of(scenario: &Scenario) -> Self {
        Self {
            want: Want::HandBack,
            thought: [const { Message::new("coach-ask") }; 3],
            shown: None,
            hints: scenario
                .file
                .hints
                .iter()
                .map(Message::of_scenario)
                .collect(),
            given: 0,
            looked: None,
            was_tried: false,
            said_at: 0,
            happened: Vec::new(),
            gone: Vec::new(),
            slips: Vec::new(),
            lost: 0.0,
            costs: scenario.file.costs.clone(),
            height: 0.0,
        }
    }

    /// Looks at the job, where something was done since or some time has passed.
    pub fn look(
        &mut self,
        course: &mut CourseRecorder,
        job: &Job,
        scenario: &Scenario,
        system: System,
    ) {
        let course = course.so_far(job);
        let (moments, last) = self.looked.unwrap_or((0, 0));
        let new = course.moments.get(moments..).unwrap_or_default();
        let acted = new.iter().any(|moment| moment.action.is_some());
        self.was_tried |= acted || job.now() >= self.said_at + PATIENCE;
        if self.looked.is_some() && !acted && job.now() < last + LOOKS_EVERY {
            return;
        }
        self.looked = Some((course.moments.len(), job.now()));
        let rubric = &scenario.file.rubric;
        let outlook = outlook(course, rubric, job);
        let want = outlook.next;
        if !want.is_for_the_same(&self.want) {
            self.shown = None;
        }
        let teller = Teller {
            course,
            target: scenario.unit.nameplate.target,
            level: &|level| level_text(system, level),
        };
        self.thought = [Depth::Aim, Depth::Way, Depth::Goal].map(|d| teller.tell(&want, d));
        self.want = want;
        let refrigerant = scenario.unit.refrigerant.get();
        let happened = happenings(course, &self.costs, refrigerant);
        let spent = Time::from_seconds(job.now() as f64 / TICKS_PER_SECOND as f64);
        self.lost = lost(&happened, rubric, spent, &self.costs);
        self.note(happened, job.now());
        let gone = outlook.passed.into_iter();
        self.gone = gone
            .map(|place| Message::of_scenario(rubric[place].text.clone()))
            .collect();
        self.slips = slips(job.sheet(), refrigerant)
            .into_iter()
            .map(|slip| slip.text)
            .collect();
    }

    /// Takes in what happened; what is as it was before keeps its time.
    fn note(&mut self, happened: Vec<Happening>, now: u64) {
        let before = std::mem::take(&mut self.happened);
        let since = |new: &Happening| {
            let known = |(old, _): &&(Happening, u64)| (old.tick, old.kind) == (new.tick, new.kind);
            match before.iter().find(known) {
                Some((old, since)) if old == new => *since,
                Some(_) => now,
                None => new.tick,
            }
        };
        self.happened = happened
            .into_iter()
            .map(|happening| {
                let since = since(&happening);
                (happening, since)
            })
            .collect();
    }

    /// Asks for the next depth of the thought: help comes after a try, not before it.
    pub fn ask(&mut self, now: u64) {
        if self.shown.is_none() || self.was_tried {
            self.say_more(now);
        }
    }

    /// Says the next depth of the thought; after the last, a hint of the scenario.
    fn say_more(&mut self, now: u64) {
        self.shown = match self.shown {
            None => Some(Depth::Aim),
            Some(Depth::Goal) => {
                self.given += 1;
                Some(Depth::Goal)
            }
            Some(depth) => depth.more(),
        };
        self.was_tried = false;
        self.said_at = now;
    }
}

/// A level as the rubric has it, or in the person's units.
fn level_text(system: System, level: Level) -> Message {
    match system {
        System::InchPound => evidence::level(level),
        System::Metric => evidence::level(system.converted(level)),
    }
}

/// Shows the coach at the foot of a panel, as high as it needs, at most two fifths of it.
pub fn coach_below(ui: &mut Ui, view: &View, coach: &mut Coach) {
    const MARGIN: f32 = 6.0;
    let most = 0.4 * ui.available_height();
    let height = (coach.height + 2.0 * MARGIN).min(most);
    Panel::bottom("coach")
        .frame(Frame::NONE.inner_margin(Margin::symmetric(0, MARGIN as i8)))
        .exact_size(height)
        .show(ui, |ui| coach_ui(ui, view, coach));
}

/// Shows the coach, to be scrolled where there is not enough room.
pub fn coach_ui(ui: &mut Ui, view: &View, coach: &mut Coach) {
    let scroll = ScrollArea::vertical().id_salt("coach").auto_shrink(false);
    let shown = scroll.show(ui, |ui| {
        thought_ui(ui, view, coach);
        slips_ui(ui, view, coach);
        happened_ui(ui, view, coach);
    });
    if (shown.content_size.y - coach.height).abs() > 0.5 {
        coach.height = shown.content_size.y;
        ui.request_repaint();
    }
}

fn thought_ui(ui: &mut Ui, view: &View, coach: &mut Coach) {
    let depths = [Depth::Aim, Depth::Way, Depth::Goal];
    if let Some(shown) = coach.shown {
        let texts = depths.iter().zip(&coach.thought);
        for (_, thought) in texts.filter(|(depth, _)| **depth <= shown) {
            ui.label(view.tell(thought));
        }
        if shown == Depth::Goal {
            for hint in coach.hints.iter().take(coach.given) {
                ui.label(RichText::new(view.tell(hint)).italics());
            }
        }
    }
    let (word, hint) = match coach.shown {
        None => ("coach-ask", "coach-ask-hint"),
        Some(Depth::Aim) => ("coach-tell", "coach-tell-hint"),
        Some(Depth::Way) => ("coach-reach", "coach-reach-hint"),
        Some(Depth::Goal) if coach.given < coach.hints.len() => ("coach-clue", "coach-clue-hint"),
        Some(Depth::Goal) => return,
    };
    // Help comes after a try, not before it.
    let may = coach.shown.is_none() || coach.was_tried;
    ui.add_enabled_ui(may, |ui| {
        let button = ui.button(view.say(word)).on_hover_text(view.say(hint));
        let button = button.on_disabled_hover_text(view.say("coach-try-first"));
        if button.clicked() {
            coach.say_more(view.now());
        }
    });
}

fn slips_ui(ui: &mut Ui, view: &View, coach: &Coach) {
    let warn = Palette::of(ui).warn;
    for slip in &coach.slips {
        ui.label(RichText::new(view.tell(slip)).color(warn));
    }
}

/// What happened, the newest first, and what it all costs.
fn happened_ui(ui: &mut Ui, view: &View, coach: &Coach) {
    let newest_first = coach.happened.iter().rev();
    let is_fresh = |since: u64| view.now() < since + IN_SIGHT;
    let (fresh, rest): (Vec<_>, Vec<_>) = newest_first.partition(|(_, since)| is_fresh(*since));
    for (happening, _) in &fresh {
        happening_ui(ui, view, happening, &coach.costs);
    }
    if coach.lost > 0.0 {
        let amount = money(&coach.costs, coach.lost);
        let total = Message::new("coach-lost-so-far").with("amount", amount);
        ui.label(RichText::new(view.tell(&total)).strong());
    }
    if !rest.is_empty() {
        let title = Message::new("coach-before-that").with("count", rest.len());
        let folded = CollapsingHeader::new(view.tell(&title)).id_salt("before that");
        folded.show(ui, |ui| {
            for (happening, _) in rest {
                happening_ui(ui, view, happening, &coach.costs);
            }
        });
    }
    if !coach.gone.is_empty() {
        let title = Message::new("coach-too-late").with("count", coach.gone.len());
        let folded = CollapsingHeader::new(view.tell(&title)).id_salt("too late");
        folded.show(ui, |ui| {
            for gone in &coach.gone {
                ui.label(view.tell(gone));
            }
        });
    }
}

fn happening_ui(ui: &mut Ui, view: &View, happening: &Happening, costs: &Costs) {
    let at = time_text(happening.tick as f64 / TICKS_PER_SECOND as f64);
    ui.label(format!("{at}  {}", view.tell(&happening.text)));
    let mut lines = Vec::new();
    match happening.price {
        Price::Lost(amount) if amount > 0.0 => lines.push(format!("{}.", money(costs, amount))),
        Price::Risked(amount) => {
            let risk = Message::new("coach-at-risk").with("amount", money(costs, amount));
            lines.push(view.tell(&risk));
        }
        Price::Lost(_) | Price::Priceless => {}
    }
    lines.push(view.tell(&happening.why));
    let kilograms = happening.carbon_dioxide.map_or(0.0, Mass::kilograms);
    if kilograms >= 1.0 {
        let warms = Message::new("coach-warms").with("kilograms", format!("{kilograms:.0}"));
        lines.push(view.tell(&warms));
    }
    ui.weak(lines.join(" "));
}

/// An amount of money: to the cent while it is small.
fn money(costs: &Costs, amount: f64) -> String {
    let sign = &costs.money;
    if amount < 100.0 {
        format!("{sign} {amount:.2}")
    } else {
        format!("{sign} {}", evidence::thousands(amount))
    }
}
