//! The room in a small window, or with large text: one thing at a time over a row of faces.

use crate::gui::parts::hands_ui;
use crate::gui::practise::coach::coach_ui;
use crate::gui::practise::reference::reference_ui;
use crate::gui::practise::room::{FACES_HEIGHT, faces_ui, scrolled_instruments, scrolled_site};
use crate::gui::practise::sheet_panel::{complaint_ui, sheet_ui};
use crate::gui::practise::{Exit, Practise, Side};
use crate::gui::site::site_ui;
use crate::gui::theme::Palette;
use crate::gui::view::{Reads, View};
use crate::job::Driver as _;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::{CentralPanel, Frame, Key, Panel, RichText, Ui};

impl Practise {
    /// Shows what was chosen of the room, over the row of faces.
    pub(super) fn narrow_ui(
        &mut self,
        ui: &mut Ui,
        frame: Frame,
        reads: Reads,
        (actions, exit): (&mut Vec<Action>, &mut Option<Exit>),
    ) {
        if self.side != Side::Instruments {
            Panel::bottom("faces")
                .frame(frame)
                .exact_size(FACES_HEIGHT + 12.0)
                .show(ui, |ui| faces_ui(ui, &self.view(reads)));
        }
        CentralPanel::default().frame(frame).show(ui, |ui| {
            self.sides_ui(ui, reads);
            let text = |message: &Message| message.in_language(reads.language);
            if let Some(why) = &self.refusal {
                let why = Message::new("room-not-done").with("why", why.clone());
                ui.label(RichText::new(text(&why)).color(Palette::of(ui).warn));
            }
            if let Some(news) = &self.news {
                ui.label(text(news));
            }
            ui.separator();
            match self.side {
                Side::Site => self.narrow_site_ui(ui, reads, actions),
                Side::Time => *exit = self.time_ui(ui, reads),
                Side::Chart => self.chart_ui(ui, reads),
                Side::Log => *exit = self.log_ui(ui, reads),
                Side::Instruments => scrolled_instruments(ui, &self.view(reads)),
                side => {
                    let mode = self.mode();
                    let view = View::new(self.recorder.job(), &self.scene, mode, reads);
                    match (side, &mut self.coach) {
                        (Side::Complaint, _) => complaint_ui(ui, &view),
                        (Side::Sheet, _) => sheet_ui(ui, &view, &mut self.sheet, actions),
                        (Side::Reference, _) => reference_ui(ui, &view, &mut self.reference),
                        (Side::Coach, Some(coach)) => coach_ui(ui, &view, coach),
                        (_, _) => hands_ui(ui, &view, self.chosen, &mut self.drafts, actions),
                    }
                }
            }
        });
    }

    /// What there is to choose from.
    fn sides_ui(&mut self, ui: &mut Ui, reads: Reads) {
        ui.horizontal_wrapped(|ui| {
            for (side, name) in [
                (Side::Site, "narrow-site"),
                (Side::Hands, "room-at-hand"),
                (Side::Complaint, "room-complaint"),
                (Side::Sheet, "room-job-sheet"),
                (Side::Instruments, "narrow-instruments"),
                (Side::Time, "time-tab"),
                (Side::Chart, "room-strip-chart"),
                (Side::Reference, "room-reference"),
                (Side::Log, "room-log"),
                (Side::Coach, "coach-coach"),
            ] {
                if side != Side::Coach || self.coach.is_some() {
                    ui.selectable_value(&mut self.side, side, reads.language.say(name));
                }
            }
        });
    }

    fn narrow_site_ui(&mut self, ui: &mut Ui, reads: Reads, actions: &mut Vec<Action>) {
        let mut chosen = self.chosen;
        let torque = self.drafts.torque;
        scrolled_site(ui, |ui| {
            site_ui(ui, &self.view(reads), torque, &mut chosen, actions, 0.0);
        });
        // The keyboard walks over the parts; only a choice leads on.
        let chose = ui.input(|i| i.pointer.any_click() || i.key_pressed(Key::Enter));
        if chosen != self.chosen && chose {
            self.side = Side::Hands;
        }
        self.chosen = chosen;
    }
}
