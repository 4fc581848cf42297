//! How far the fans have turned. They turn with the time of the job, not with that on the wall.

use crate::gui::view::View;
use eframe::egui::{Id, Ui};

/// The fans as they stand, radians.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Fans {
    /// The tick at which they stood so.
    at: u64,
    /// The fan of the outdoor unit.
    pub outdoor: f32,
    /// The blower of the indoor unit.
    pub indoor: f32,
}

/// A tick turns a fan by this, radians: a third of the way from blade to blade, so that the eye
/// sees which way it goes.
const TICK: f32 = 0.7;

impl Fans {
    /// The fans now: what runs has turned since the last look, what stopped stands where it was.
    pub fn turned(ui: &Ui, view: &View) -> Self {
        let id = Id::unique("the fans of the site");
        let mut fans: Self = ui.data(|data| data.get_temp(id)).unwrap_or_default();
        let look = view.electrics();
        if view.now() != fans.at {
            // However many ticks passed: more than one look could follow would seem to stand still.
            for (angle, runs) in [
                (&mut fans.outdoor, look.outdoor_fan_runs),
                (&mut fans.indoor, look.blower_runs),
            ] {
                if runs {
                    *angle = (*angle + TICK) % std::f32::consts::TAU;
                }
            }
            fans.at = view.now();
            ui.data_mut(|data| data.insert_temp(id, fans));
        }
        fans
    }
}
