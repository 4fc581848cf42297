//! The drawers: what slides over the right of the site, each with its key.

use crate::gui::view::View;
use eframe::egui::Key;
use strum::VariantArray;

/// A drawer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
pub enum Drawer {
    /// What is waited for.
    Wait,
    /// What the customer says.
    Complaint,
    /// The job sheet.
    Sheet,
    /// The card, the torques, the nameplate.
    Reference,
    /// The strip chart.
    Chart,
    /// What was done, and what was not.
    Log,
}

impl Drawer {
    /// The key that opens and shuts it.
    pub const fn key(self) -> (&'static str, Key) {
        match self {
            Self::Wait => ("W", Key::W),
            Self::Complaint => ("C", Key::C),
            Self::Sheet => ("J", Key::J),
            Self::Reference => ("R", Key::R),
            Self::Chart => ("T", Key::T),
            Self::Log => ("L", Key::L),
        }
    }

    /// Its name.
    pub fn name(self, view: &View) -> String {
        view.say(match self {
            Self::Wait => "time-open",
            Self::Complaint => "room-complaint",
            Self::Sheet => "room-job-sheet",
            Self::Reference => "room-reference",
            Self::Chart => "room-strip-chart",
            Self::Log => "room-log",
        })
    }
}

/// The drawers that are open, the latest last.
#[derive(Debug, Default)]
pub struct Drawers(Vec<Drawer>);

impl Drawers {
    /// The one is open and no other.
    pub fn with(drawer: Drawer) -> Self {
        Self(vec![drawer])
    }

    /// Whether one is open.
    pub fn has(&self, drawer: Drawer) -> bool {
        self.0.contains(&drawer)
    }

    /// Opens or shuts one.
    pub fn toggle(&mut self, drawer: Drawer) {
        if self.has(drawer) {
            self.shut(drawer);
        } else {
            self.open(drawer);
        }
    }

    /// Opens one, over the others.
    pub fn open(&mut self, drawer: Drawer) {
        self.shut(drawer);
        self.0.push(drawer);
    }

    /// Shuts one.
    pub fn shut(&mut self, drawer: Drawer) {
        self.0.retain(|&open| open != drawer);
    }

    /// The ones for which there is room, the earlier first; the others are shut.
    pub fn shown(&mut self, room: usize) -> Vec<Drawer> {
        let too_many = self.0.len().saturating_sub(room);
        self.0.drain(..too_many);
        self.0.clone()
    }
}

#[cfg(test)]
mod tests {
    use super::{Drawer, Drawers};

    #[test]
    fn a_key_opens_and_shuts_and_the_latest_have_the_room() {
        let mut drawers = Drawers::default();
        for drawer in [Drawer::Sheet, Drawer::Reference, Drawer::Log] {
            drawers.toggle(drawer);
        }
        assert_eq!(drawers.shown(2), [Drawer::Reference, Drawer::Log]);
        drawers.toggle(Drawer::Log);
        assert_eq!(drawers.shown(2), [Drawer::Reference]);
    }
}
