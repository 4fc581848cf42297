//! Turning a thing on the site: by a drag round it, the wheel over it, or keys while it has the
//! focus. How far it is turned is shown beside it.

use crate::gui::canvas::Canvas;
use crate::gui::site::layout;
use crate::gui::site::plate::plate;
use crate::gui::view::View;
use crate::gui::view::turn::{Thread, Turn};
use crate::words::Action;
use eframe::egui::accesskit;
use eframe::egui::{Color32, Event, EventFilter, Key, MouseWheelUnit, Response, Ui};
use std::f32::consts::{FRAC_PI_2, PI, TAU};

/// So near its middle the angle of the hand says nothing, drawing units.
const MIDDLE: f32 = 6.0;

/// Points of a touch pad that are one notch of a wheel. Chosen.
const NOTCH: f32 = 50.0;

/// A hand that turns a thing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turning {
    thread: Thread,
    /// Where the hand was last seen, radians clockwise.
    angle: f32,
    /// How far the hand has turned it, quarter turns.
    quarters: f64,
}

/// The angle of a point round the middle of a thing; `None` too near the middle.
fn angle_at(thread: Thread, view: &View, at: (f32, f32)) -> Option<f32> {
    let (x, y) = layout::pivot(thread, view);
    let (dx, dy) = (at.0 - x, at.1 - y);
    (dx.hypot(dy) > MIDDLE).then(|| dy.atan2(dx))
}

impl Turning {
    /// Takes hold of a thing that turns, where the hand is.
    pub fn begin(turn: Turn, view: &View, at: (f32, f32)) -> Option<Self> {
        let thread = turn.thread;
        let (x, y) = layout::pivot(thread, view);
        if (at.0 - x).hypot(at.1 - y) > layout::reach(thread) {
            return None;
        }
        Some(Self {
            thread,
            angle: angle_at(thread, view, at).unwrap_or(-FRAC_PI_2),
            quarters: turn.now,
        })
    }

    /// Follows the hand; gives the action that this makes. At its ends the thing stops the hand.
    pub fn follow(&mut self, view: &View, at: (f32, f32)) -> Option<Action> {
        let turn = Turn::of(self.thread, view)?;
        let angle = angle_at(self.thread, view, at)?;
        let moved = (angle - self.angle + PI).rem_euclid(TAU) - PI;
        self.angle = angle;
        self.quarters = (self.quarters + turn.by_angle(moved)).clamp(0.0, turn.most);
        turn.to(self.quarters)
    }
}

/// What the wheel and the keys do to a thing that turns: quarter turns by which it goes.
pub fn by_wheel_and_keys(ui: &Ui, response: &Response, turn: Turn) -> Option<Action> {
    let mut by = 0.0;
    if response.hovered() {
        by += notches(ui);
    }
    by += asked_for(ui, response);
    if response.has_focus() {
        let filter = EventFilter {
            horizontal_arrows: true,
            vertical_arrows: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
        if ui.input(|input| input.key_pressed(Key::Home)) {
            by = -turn.most;
        }
        if ui.input(|input| input.key_pressed(Key::End)) {
            by = turn.most;
        }
        by += pressed(ui);
    }
    if by == 0.0 {
        return None;
    }
    turn.to(turn.now + by)
}

/// Notches of the wheel: up is more open, or more pressure.
fn notches(ui: &Ui) -> f64 {
    ui.input(|input| {
        let mut all = 0.0;
        for event in &input.events {
            if let Event::MouseWheel {
                unit,
                delta,
                modifiers,
                ..
            } = event
                && !modifiers.command
            {
                all += match unit {
                    MouseWheelUnit::Point => delta.y / NOTCH,
                    MouseWheelUnit::Line | MouseWheelUnit::Page => delta.y,
                };
            }
        }
        f64::from(all)
    })
}

/// Quarter turns by keys: up, right and plus open it, down, left and minus shut it; with shift a
/// tenth as much.
fn pressed(ui: &Ui) -> f64 {
    ui.input(|input| {
        let count = |keys: &[Key]| -> f64 {
            let presses = keys.iter().map(|&key| input.num_presses(key));
            presses.sum::<usize>() as f64
        };
        let arrows =
            count(&[Key::ArrowUp, Key::ArrowRight]) - count(&[Key::ArrowDown, Key::ArrowLeft]);
        let signs = count(&[Key::Plus, Key::Equals]) - count(&[Key::Minus]);
        let fine = if input.modifiers.shift { 0.1 } else { 1.0 };
        arrows * fine + signs
    })
}

/// Quarter turns that an assistive program asks for; it is told that it may.
fn asked_for(ui: &Ui, response: &Response) -> f64 {
    let (up, down) = (accesskit::Action::Increment, accesskit::Action::Decrement);
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.add_action(up);
        node.add_action(down);
    });
    ui.input(|input| {
        let count = |action| input.num_accesskit_action_requests(response.id, action) as f64;
        count(up) - count(down)
    })
}

/// Draws the quarter turns round a thing, the handle on it, and how far it stands.
pub fn draw(canvas: &Canvas, view: &View, turn: Turn) {
    let palette = canvas.palette;
    let thread = turn.thread;
    let (x, y) = layout::pivot(thread, view);
    let radius = layout::reach(thread) - 6.0;
    let at = |angle: f32, r: f32| (x + r * angle.sin(), y - r * angle.cos());
    canvas.circle(
        x,
        y,
        radius,
        Color32::TRANSPARENT,
        canvas.stroke(1.2, palette.accent),
    );
    for quarter in 0..4 {
        let angle = FRAC_PI_2 * quarter as f32;
        canvas.line(
            &[at(angle, radius - 4.0), at(angle, radius + 4.0)],
            canvas.stroke(1.2, palette.accent),
        );
    }
    let angle = turn.angle();
    let (grip_x, grip_y) = at(angle, radius);
    canvas.line(
        &[at(angle, 5.0), (grip_x, grip_y)],
        canvas.stroke(4.0, palette.accent),
    );
    canvas.circle(grip_x, grip_y, 4.5, palette.accent, canvas.ink(1.2));
    let words = turn.words(view);
    plate(canvas, layout::turn_plate(thread, view), &words);
}
