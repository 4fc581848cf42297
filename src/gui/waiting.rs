//! Waiting: for what an instrument shows, or until some time has gone by. Nobody waits in front of
//! the screen for it: it goes as fast as the machine can, through the same ticks.

use super::clock::tick_text;
use super::system::System;
use super::view::View;
use crate::job::Job;
use crate::job::procedure::{Awaited, Look, Wait};
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
    pub fn outcome(&self, view: &View, look: Look) -> String {
        let system = view.system();
        let took = tick_text(view.now() - self.since);
        let what = awaited_text(self.wait.what(), system);
        match (self.wait.what(), look) {
            (Awaited::Nothing, Look::Reached) => format!("{took} went by."),
            (_, Look::Reached) => format!("After {took}: {what}."),
            (Awaited::Nothing, _) => format!("Stopped after {took}."),
            (Awaited::Shows(reading, ..) | Awaited::Steady(reading), _) => {
                let word = if look == Look::GaveUp {
                    "Given up"
                } else {
                    "Stopped"
                };
                let shown = view.text(reading);
                format!("{word} after {took}: not yet {what}; it shows {shown}.")
            }
        }
    }
}

/// What is waited for, in words.
fn awaited_text(what: Awaited, system: System) -> String {
    match what {
        Awaited::Nothing => "the time goes by".to_owned(),
        Awaited::Steady(reading) => format!("{reading} steady"),
        Awaited::Shows(reading, bound, _) => {
            let of = |level: Level| system.level(level.quantity());
            match bound {
                Bound::Below(level) => format!("{reading} below {}", of(level)),
                Bound::Above(level) => format!("{reading} above {}", of(level)),
                Bound::Between(low, high) => {
                    format!("{reading} between {} and {}", of(low), of(high))
                }
            }
        }
    }
}

/// Shows how a wait stands; gives whether it is stopped.
pub fn waiting_ui(ui: &mut Ui, view: &View, waiting: &Waiting) -> bool {
    let what = awaited_text(waiting.wait.what(), view.system());
    let shown = match waiting.wait.what() {
        Awaited::Nothing => String::new(),
        Awaited::Shows(reading, ..) | Awaited::Steady(reading) => {
            format!(", it shows {}", view.text(reading))
        }
    };
    let stops = ui.button("Stop waiting").clicked();
    ui.label(format!("Waiting: {what}{shown}"));
    let (now, limit) = waiting.wait.progress();
    let text = format!("{} of at most {}", tick_text(now), tick_text(limit));
    let share = now as f32 / limit.max(1) as f32;
    ui.add(ProgressBar::new(share).desired_width(200.0).text(text));
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

    const fn text(self) -> &'static str {
        match self {
            Self::Below => "below",
            Self::Above => "above",
            Self::Steady => "steady",
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
    ui.label(RichText::new("Wait until").strong());
    let shows = |reading: Reading| view.reading(reading) != Shown::Nothing;
    form.reading = form.reading.filter(|&reading| shows(reading));
    let readings: Vec<Reading> = Reading::FACES.into_iter().filter(|&r| shows(r)).collect();
    let name = |reading: Option<Reading>| reading.map_or("choose".into(), |r| r.to_string());
    ui.horizontal_wrapped(|ui| {
        ComboBox::from_label("shows")
            .selected_text(name(form.reading))
            .height(420.0)
            .show_ui(ui, |ui| {
                for reading in readings {
                    let is_it = form.reading == Some(reading);
                    let text = format!("wait for the {reading}");
                    if ui.selectable_label(is_it, text).clicked() {
                        form.choose(view, reading);
                    }
                }
            });
        for aim in Aim::ALL {
            ui.radio_value(&mut form.aim, aim, aim.text());
        }
    });
    ui.horizontal_wrapped(|ui| {
        if let Some(reading) = form.reading
            && form.aim != Aim::Steady
        {
            form.value_ui(ui, view.system(), reading.dimension());
        }
        ComboBox::from_label("at most")
            .selected_text(minutes_text(form.limit))
            .show_ui(ui, |ui| {
                for limit in LIMITS {
                    ui.selectable_value(&mut form.limit, limit, minutes_text(limit));
                }
            });
        let can = form.reading.is_some();
        if ui.add_enabled(can, Button::new("Wait for it")).clicked() {
            asked = form.asked();
        }
    });
    ui.add_space(6.0);
    ui.label(RichText::new("Do something useful meanwhile").strong());
    ui.horizontal_wrapped(|ui| {
        for minutes in AWAY {
            let text = format!("for {}", minutes_text(minutes));
            if ui.button(text).clicked() {
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
            _ => shown.map_or(0.0, |quantity| quantity.si),
        };
    }

    fn value_ui(&mut self, ui: &mut Ui, system: System, dimension: Dimension) {
        let shown = system.level(Quantity {
            si: self.value,
            dimension,
        });
        let mut number = (shown.number() * 10.0).round() / 10.0;
        let label = ui.label("value");
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
