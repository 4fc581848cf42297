//! Turning a thing on the site: by a drag round it, the wheel over it, or keys while it has the
//! focus. How far it is turned is shown beside it.

use super::canvas::{Canvas, around};
use super::layout;
use crate::gui::part::Part;
use crate::gui::turn::Turn;
use crate::gui::view::View;
use crate::words::Action;
use eframe::egui::accesskit;
use eframe::egui::{Align2, Color32, Event, EventFilter, Key, MouseWheelUnit, Response, Ui, vec2};
use std::f32::consts::{FRAC_PI_2, PI, TAU};

/// So near its middle the angle of the hand says nothing, drawing units.
const MIDDLE: f32 = 6.0;

/// Points of a touch pad that are one notch of a wheel. Chosen.
const NOTCH: f32 = 50.0;

/// A hand that turns a thing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turning {
    part: Part,
    /// Where the hand was last seen, radians clockwise.
    angle: f32,
    /// How far the hand has turned it, quarter turns.
    quarters: f64,
}

/// The angle of a point round the middle of a part; `None` too near the middle.
fn angle_at(part: Part, view: &View, at: (f32, f32)) -> Option<f32> {
    let (x, y) = layout::pivot(part, view);
    let (dx, dy) = (at.0 - x, at.1 - y);
    (dx.hypot(dy) > MIDDLE).then(|| dy.atan2(dx))
}

impl Turning {
    /// Takes hold of what turns at a part, where the hand is.
    pub fn begin(part: Part, turn: Turn, view: &View, at: (f32, f32)) -> Option<Self> {
        let (x, y) = layout::pivot(part, view);
        if (at.0 - x).hypot(at.1 - y) > layout::reach(part) {
            return None;
        }
        Some(Self {
            part,
            angle: angle_at(part, view, at).unwrap_or(-FRAC_PI_2),
            quarters: turn.now,
        })
    }

    /// Follows the hand; gives the action that this makes. At its ends the thing stops the hand.
    pub fn follow(&mut self, view: &View, at: (f32, f32)) -> Option<Action> {
        let turn = Turn::of(self.part, view)?;
        let angle = angle_at(self.part, view, at)?;
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
pub fn draw(canvas: &Canvas, view: &View, part: Part, turn: Turn) {
    let palette = canvas.palette;
    let (x, y) = layout::pivot(part, view);
    let radius = layout::reach(part) - 6.0;
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
    plate(canvas, layout::turn_plate(part, view), &words);
}

/// The size of a plate's text. It is never smaller than can be read: in a low window it takes more
/// of the sheet.
fn plate_text(canvas: &Canvas) -> f32 {
    (12.0_f32).max(10.0 / canvas.scale)
}

/// How wide a plate is.
pub fn plate_width(canvas: &Canvas, lines: &[impl AsRef<str>]) -> f32 {
    let letters = lines.iter().map(|line| line.as_ref().chars().count());
    0.56 * plate_text(canvas) * letters.max().unwrap_or(0) as f32 + 12.0
}

/// A small plate with lines of text, over everything.
pub fn plate(canvas: &Canvas, (x, y): (f32, f32), lines: &[impl AsRef<str>]) {
    let palette = canvas.palette;
    let size = plate_text(canvas);
    let height = 1.25 * size * lines.len() as f32 + 6.0;
    let area = around(x, y, plate_width(canvas, lines), height);
    let area = area.translate(vec2(
        (layout::SHEET.left() - area.left()).max(0.0)
            - (area.right() - layout::SHEET.right()).max(0.0),
        0.0,
    ));
    canvas.rect(
        area,
        3.0,
        palette.raised,
        canvas.stroke(1.2, palette.accent),
    );
    for (i, line) in lines.iter().enumerate() {
        let from_middle = i as f32 - 0.5 * (lines.len() as f32 - 1.0);
        canvas.text(
            area.center().x,
            y + 1.25 * size * from_middle,
            Align2::CENTER_CENTER,
            size,
            line.as_ref(),
            palette.ink,
        );
    }
}
