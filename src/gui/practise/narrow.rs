//! The room in a small window, or with large text: one thing at a time over a row of faces.

use super::{Practise, Side};
use crate::gui::chart::chart_ui;
use crate::gui::coach::coach_ui;
use crate::gui::hands::hands_ui;
use crate::gui::room::{FACES_HEIGHT, faces_ui, scrolled_instruments, scrolled_site};
use crate::gui::sheet::sheet_ui;
use crate::gui::site::site_ui;
use crate::gui::view::{Reads, View};
use crate::job::Door as _;
use crate::words::Action;
use eframe::egui::{CentralPanel, Frame, Key, Panel, Ui};

impl Practise {
    /// Shows what was chosen of the room, over the row of faces.
    pub(super) fn narrow_ui(
        &mut self,
        ui: &mut Ui,
        frame: Frame,
        reads: Reads,
        actions: &mut Vec<Action>,
    ) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        if self.side != Side::Instruments {
            Panel::bottom("faces")
                .frame(frame)
                .exact_size(FACES_HEIGHT + 12.0)
                .show(ui, |ui| faces_ui(ui, &view));
        }
        CentralPanel::default().frame(frame).show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                for (side, name) in [
                    (Side::Site, "narrow-site"),
                    (Side::Hands, "narrow-at-hand"),
                    (Side::Sheet, "narrow-job-sheet"),
                    (Side::Instruments, "narrow-instruments"),
                    (Side::Chart, "narrow-strip-chart"),
                ] {
                    ui.selectable_value(&mut self.side, side, view.say(name));
                }
                if self.coach.is_some() {
                    ui.selectable_value(&mut self.side, Side::Coach, view.say("coach-coach"));
                }
            });
            ui.separator();
            match (self.side, &mut self.coach) {
                (Side::Site, _) => {
                    let before = self.chosen;
                    scrolled_site(ui, |ui| site_ui(ui, &view, &mut self.chosen));
                    // The keyboard walks over the parts; only a choice leads on.
                    let chose = ui.input(|i| i.pointer.any_click() || i.key_pressed(Key::Enter));
                    if self.chosen != before && chose {
                        self.side = Side::Hands;
                    }
                }
                (Side::Sheet, _) => sheet_ui(ui, &view, &mut self.sheet, actions),
                (Side::Instruments, _) => scrolled_instruments(ui, &view),
                (Side::Chart, _) => chart_ui(ui, &view, &self.chart),
                (Side::Coach, Some(coach)) => coach_ui(ui, &view, coach),
                (Side::Hands | Side::Coach, _) => {
                    hands_ui(ui, &view, self.chosen, &mut self.drafts, actions);
                }
            }
        });
    }
}
