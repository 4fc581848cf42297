//! The room between: a job is done again, as fast as the machine can, up to where it goes on.

use crate::attempt::CatchUp;
use crate::gui::notes::Notes;
use crate::gui::pace::{AT_ONCE, Budget, FRAME, Stint};
use crate::gui::practise::Practise;
use crate::gui::time::tick_text;
use crate::text::{Language, Message};
use eframe::egui::{CentralPanel, Frame, ProgressBar, Ui};
use std::time::Duration;

/// A job that is being done again, with what is noted on the way.
pub struct CatchingUp {
    catch_up: CatchUp,
    notes: Notes,
    /// The job that is left when this one goes on; without it, one that was cut goes on.
    left: Option<Box<Practise>>,
    stint: Stint,
}

/// What came of it.
pub enum Caught {
    /// There is more to do again.
    NotYet(Box<CatchingUp>),
    /// The job goes on.
    Up(Box<Practise>),
    /// It cannot go on, or nobody wants it to: back to the job that would have been left, with what
    /// there is to say about it.
    Not(Option<Box<Practise>>, Option<String>),
}

impl CatchingUp {
    /// Begins, and does it at once where that takes no longer than a person notices. `left` is the
    /// job that is left for this one.
    pub fn begin(catch_up: CatchUp, left: Option<Box<Practise>>, stint: Stint) -> Caught {
        let begun = Self {
            catch_up,
            notes: Notes::default(),
            left,
            stint,
        };
        begun.go_on(AT_ONCE)
    }

    /// Shows how far it is, and goes on.
    pub fn room_ui(self, ui: &mut Ui, language: Language) -> Caught {
        let (now, end) = self.catch_up.progress();
        let mut stops = false;
        let frame = Frame::central_panel(ui.style()).inner_margin(24);
        CentralPanel::default().frame(frame).show(ui, |ui| {
            ui.heading(language.say("attempt-again"));
            let share = now as f32 / end.max(1) as f32;
            let text = Message::new("attempt-progress")
                .with("now", tick_text(now))
                .with("end", tick_text(end));
            let text = text.in_language(language);
            ui.add(ProgressBar::new(share).desired_width(420.0).text(text));
            stops = ui.button(language.say("attempt-stop")).clicked();
        });
        if stops {
            return self.give_up(None);
        }
        ui.request_repaint();
        self.go_on(FRAME)
    }

    /// Goes on for so long on the wall.
    fn go_on(mut self, limit: Duration) -> Caught {
        let mut budget = Budget::of(self.stint, limit);
        loop {
            let ticks = budget.next_ticks();
            if ticks == 0 {
                return Caught::NotYet(Box::new(self));
            }
            match self.catch_up.advance(ticks, &mut self.notes) {
                Ok(true) => return self.finish(),
                Ok(false) => {}
                Err(error) => return self.give_up(Some(error.to_string())),
            }
        }
    }

    fn finish(self) -> Caught {
        let scenario = self.catch_up.scenario().clone();
        match self.catch_up.finish() {
            Ok(recorder) => {
                let mut practise =
                    Practise::going_on(recorder, scenario, self.notes).with_stint(self.stint);
                if let Some(left) = self.left {
                    practise.take_over(*left);
                }
                Caught::Up(Box::new(practise))
            }
            Err(error) => Caught::Not(self.left, Some(error.to_string())),
        }
    }

    /// Stops where it is; a job that would have been left is put aside.
    pub fn put_aside(self) {
        if let Caught::Not(Some(left), _) = self.give_up(None) {
            // The window has gone: there is nobody to show it to.
            let _is_kept = left.put_aside();
        }
    }

    fn give_up(self, trouble: Option<String>) -> Caught {
        let given_up = self.catch_up.give_up();
        let trouble = trouble.or_else(|| given_up.err().map(|error| error.to_string()));
        Caught::Not(self.left, trouble)
    }
}
