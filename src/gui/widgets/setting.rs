//! A slider that gives its value once, when the hand lets go, so that a turn of a valve is one
//! action and not a hundred.

use eframe::egui::{Slider, Ui};
use std::ops::RangeInclusive;

/// What can be set, and where it stands.
#[derive(Debug, Clone)]
pub struct Setting<'a> {
    /// Its name.
    pub label: &'a str,
    /// Where it stands now.
    pub value: f64,
    /// How far it goes.
    pub range: RangeInclusive<f64>,
    /// The steps it goes in.
    pub step: f64,
    /// The unit behind the number.
    pub unit: &'a str,
}

/// Shows it; gives the new value when one was settled on.
pub fn setting(ui: &mut Ui, what: Setting) -> Option<f64> {
    let id = ui.scope_id().with(("setting", what.label));
    // A slider rounds to its steps by itself: that is no change that anybody made.
    let stands = (what.value / what.step).round() * what.step;
    let mut value = ui.data(|data| data.get_temp(id)).unwrap_or(stands);
    let slider = Slider::new(&mut value, what.range)
        .step_by(what.step)
        .suffix(what.unit)
        .text(what.label);
    // Beside it stand its number and its name: the row may not widen the panel, which would move
    // the site under the hand.
    let beside = 0.56 * 14.0 * what.label.chars().count() as f32 + 96.0;
    let room = ui.available_width() - beside;
    ui.spacing_mut().slider_width = room.clamp(50.0, 150.0);
    let response = ui.add(slider);
    let settled = response.drag_stopped() || (response.changed() && !response.dragged());
    if response.dragged() && !settled {
        ui.data_mut(|data| data.insert_temp(id, value));
        return None;
    }
    ui.data_mut(|data| data.remove_temp::<f64>(id));
    (settled && (value - stands).abs() > 0.5 * what.step).then_some(value)
}
