//! Waiting: for what an instrument shows, or until some time has gone by. Nobody waits in front of
//! the screen for it: it goes as fast as the machine can, through the same ticks.

use crate::gui::time::tick_text;
use crate::gui::view::{System, View};
use crate::job::Job;
use crate::job::procedure::{Awaited, Look, Wait};
use crate::text::Message;
use crate::units::Time;
use crate::words::{Bound, Dimension, Level, Quantity, Reading, Shown};
use eframe::egui::{Button, ComboBox, DragValue, ProgressBar, RichText, Ui};

/// A wait under way.
#[derive(Debug)]
pub struct Waiting {
    wait: Wait,
    since: u64,
}

impl Waiting {
    /// Begins to wait at a job.
    pub fn at(job: &Job, what: Awaited, within: Time) -> Self {
        Self {
            wait: Wait::new(what, within),
            since: job.now(),
        }
    }

    /// Looks at the job; to be done once before each tick.
    pub fn look(&mut self, job: &Job) -> Look {
        self.wait.look(job)
    }

    /// What there is to say when it is over.
    pub fn outcome(&self, view: &View, look: Look) -> Message {
        let system = view.system();
        let took = tick_text(view.now() - self.since);
        let what = awaited_text(self.wait.what(), system);
        let reading = match self.wait.what() {
            Awaited::Nothing => None,
            Awaited::Shows(reading, ..) | Awaited::Steady(reading) => Some(reading),
        };
        match (reading, look) {
            (None, Look::Reached) => Message::new("time-went-by").with("time", took),
            (None, _) => Message::new("time-stopped").with("time", took),
            (Some(_), Look::Reached) => Message::new("time-reached")
                .with("time", took)
                .with("what", what),
            (Some(reading), Look::GaveUp) => Message::new("time-given-up")
                .with("time", took)
                .with("what", what)
                .with("shown", view.shown(reading)),
            (Some(reading), Look::NotYet) => Message::new("time-stopped-before")
                .with("time", took)
                .with("what", what)
                .with("shown", view.shown(reading)),
        }
    }
}

/// What is waited for, in words.
fn awaited_text(what: Awaited, system: System) -> Message {
    let of = |level: Level| system.level(level.quantity()).words();
    match what {
        Awaited::Nothing => Message::new("time-goes-by"),
        Awaited::Steady(reading) => {
            Message::new("time-is-steady").with("instrument", reading.label())
        }
        Awaited::Shows(reading, bound, _) => match bound {
            Bound::Below(level) => Message::new("time-is-below")
                .with("instrument", reading.label())
                .with("level", of(level)),
            Bound::Above(level) => Message::new("time-is-above")
                .with("instrument", reading.label())
                .with("level", of(level)),
            Bound::Between(low, high) => Message::new("time-is-between")
                .with("instrument", reading.label())
                .with("low", of(low))
                .with("high", of(high)),
        },
    }
}

/// Shows how a wait stands; gives whether it is stopped.
pub fn waiting_ui(ui: &mut Ui, view: &View, waiting: &Waiting) -> bool {
    let what = awaited_text(waiting.wait.what(), view.system());
    let text = match waiting.wait.what() {
        Awaited::Nothing => Message::new("time-waiting").with("what", what),
        Awaited::Shows(reading, ..) | Awaited::Steady(reading) => {
            Message::new("time-waiting-shows")
                .with("what", what)
                .with("shown", view.shown(reading))
        }
    };
    let stops = ui.button(view.say("time-stop")).clicked();
    ui.label(view.tell(&text));
    let (now, limit) = waiting.wait.progress();
    let text = Message::new("time-limit")
        .with("now", tick_text(now))
        .with("limit", tick_text(limit));
    let share = now as f32 / limit.max(1) as f32;
    let bar = ProgressBar::new(share).desired_width(200.0);
    ui.add(bar.text(view.tell(&text)));
    stops
}

/// What must come true of a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Aim {
    Below,
    Above,
    Steady,
}

impl Aim {
    const ALL: [Self; 3] = [Self::Below, Self::Above, Self::Steady];

    const fn key(self) -> &'static str {
        match self {
            Self::Below => "time-below",
            Self::Above => "time-above",
            Self::Steady => "time-steady",
        }
    }
}

/// What is filled in to wait for.
#[derive(Debug)]
pub struct WaitForm {
    reading: Option<Reading>,
    aim: Aim,
    /// The value, in SI.
    value: f64,
    /// Minutes after which it is given up.
    limit: u64,
}

impl Default for WaitForm {
    fn default() -> Self {
        Self {
            reading: None,
            aim: Aim::Below,
            value: 0.0,
            limit: 120,
        }
    }
}

/// The limits offered, min.
const LIMITS: [u64; 6] = [10, 30, 60, 120, 240, 480];

/// The times offered in which one does something else, min.
const AWAY: [u64; 4] = [5, 15, 30, 60];

/// Shows what can be waited for; gives what is, and how long at most.
pub fn wait_ui(ui: &mut Ui, view: &View, form: &mut WaitForm) -> Option<(Awaited, Time)> {
    let mut asked = None;
    ui.label(RichText::new(view.say("time-wait-until")).strong());
    let shows = |reading: Reading| view.reading(reading) != Shown::Nothing;
    form.reading = form.reading.filter(|&reading| shows(reading));
    let readings: Vec<Reading> = Reading::faces().filter(|&r| shows(r)).collect();
    let name = |reading: Option<Reading>| match reading {
        Some(reading) => view.tell(&reading.label()),
        None => view.say("time-choose"),
    };
    ui.horizontal_wrapped(|ui| {
        ComboBox::from_label(view.say("time-shows"))
            .selected_text(name(form.reading))
            .height(420.0)
            .show_ui(ui, |ui| {
                for reading in readings {
                    let is_it = form.reading == Some(reading);
                    let text = Message::new("time-wait-for").with("instrument", reading.label());
                    let text = view.tell(&text);
                    if ui.selectable_label(is_it, text).clicked() {
                        form.choose(view, reading);
                    }
                }
            });
        for aim in Aim::ALL {
            ui.radio_value(&mut form.aim, aim, view.say(aim.key()));
        }
    });
    ui.horizontal_wrapped(|ui| {
        if let Some(reading) = form.reading
            && form.aim != Aim::Steady
        {
            form.value_ui(ui, view, reading.dimension());
        }
        ComboBox::from_label(view.say("time-at-most"))
            .selected_text(minutes_text(form.limit))
            .show_ui(ui, |ui| {
                for limit in LIMITS {
                    ui.selectable_value(&mut form.limit, limit, minutes_text(limit));
                }
            });
        let can = form.reading.is_some();
        if ui
            .add_enabled(can, Button::new(view.say("time-wait")))
            .clicked()
        {
            asked = form.asked();
        }
    });
    ui.add_space(6.0);
    ui.label(RichText::new(view.say("time-useful")).strong());
    ui.horizontal_wrapped(|ui| {
        for minutes in AWAY {
            let text = Message::new("time-for").with("time", minutes_text(minutes));
            if ui.button(view.tell(&text)).clicked() {
                asked = Some((Awaited::Nothing, of_minutes(minutes)));
            }
        }
    });
    asked
}

impl WaitForm {
    /// Chooses a reading, with a value to begin with.
    fn choose(&mut self, view: &View, reading: Reading) {
        self.reading = Some(reading);
        let shown = view.reading(reading).quantity();
        self.value = match reading.dimension() {
            // What an evacuation is waited for (common practice, no source).
            Dimension::Vacuum => Level::Microns(500.0).quantity().si,
            Dimension::GaugePressure
            | Dimension::PressureDifference
            | Dimension::Temperature
            | Dimension::TemperatureDifference
            | Dimension::Current
            | Dimension::Mass
            | Dimension::Time
            | Dimension::Plain => shown.map_or(0.0, |quantity| quantity.si),
        };
    }

    fn value_ui(&mut self, ui: &mut Ui, view: &View, dimension: Dimension) {
        let system = view.system();
        let shown = system.level(Quantity {
            si: self.value,
            dimension,
        });
        let mut number = (shown.number() * 10.0).round() / 10.0;
        let label = ui.label(view.say("time-value"));
        let unit = format!(" {}", system.unit(dimension));
        let drag = DragValue::new(&mut number).suffix(unit).max_decimals(1);
        if ui.add(drag).labelled_by(label.id).changed() {
            self.value = system.level_of(number, dimension).quantity().si;
        }
    }

    /// What is waited for, as it is filled in.
    fn asked(&self) -> Option<(Awaited, Time)> {
        let reading = self.reading?;
        let dimension = reading.dimension();
        let si = self.value;
        let level = Quantity { si, dimension }.inch_pound();
        let what = match self.aim {
            Aim::Below => Awaited::Shows(reading, Bound::Below(level), Time::default()),
            Aim::Above => Awaited::Shows(reading, Bound::Above(level), Time::default()),
            Aim::Steady => Awaited::Steady(reading),
        };
        Some((what, of_minutes(self.limit)))
    }
}

fn of_minutes(minutes: u64) -> Time {
    Time::from_minutes(minutes as f64)
}

fn minutes_text(minutes: u64) -> String {
    if minutes < 60 {
        format!("{minutes} min")
    } else {
        format!("{} h", minutes / 60)
    }
}
