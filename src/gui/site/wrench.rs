//! A wrench on a flare nut: a quarter turn in pulls the nut up until the torque wrench clicks at
//! what it is set to, a quarter turn out loosens it, another takes the joint apart.

use crate::gui::canvas::Canvas;
use crate::gui::site::places;
use crate::gui::site::plate::plate;
use crate::gui::view::View;
use crate::plant::{Joint, Made};
use crate::units::Torque;
use crate::words::Action;
use eframe::egui::Color32;
use std::f32::consts::{FRAC_PI_2, PI, TAU};

/// The length of the handle, drawing units.
const HANDLE: f32 = 21.0;

/// A hand on the wrench.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wrench {
    /// The nut that it is on.
    pub joint: Joint,
    /// Where the hand is, radians clockwise from three o'clock.
    angle: f32,
    /// How far it has turned, radians clockwise.
    turned: f32,
}

impl Wrench {
    /// Put on a nut, where the hand is.
    pub fn on(joint: Joint, at: (f32, f32)) -> Self {
        Self {
            joint,
            angle: angle_at(joint, at),
            turned: 0.0,
        }
    }

    /// Follows the hand; after a quarter turn it gives what that does. Threads are right-handed.
    pub fn follow(&mut self, view: &View, torque: Torque, at: (f32, f32)) -> Option<Action> {
        let joint = self.joint;
        let angle = angle_at(joint, at);
        self.turned += (angle - self.angle + PI).rem_euclid(TAU) - PI;
        self.angle = angle;
        if self.turned >= FRAC_PI_2 {
            return Some(Action::MakeUp { joint, torque });
        }
        if self.turned > -FRAC_PI_2 {
            return None;
        }
        Some(match view.made(joint) {
            Made::Up(_) => Action::Loosen(joint),
            Made::Cracked | Made::Apart | Made::Plugged => Action::TakeApart(joint),
        })
    }
}

fn angle_at(joint: Joint, at: (f32, f32)) -> f32 {
    let (x, y) = places::joint(joint);
    (at.1 - y).atan2(at.0 - x)
}

/// Draws the wrench at a nut, in the hand or ready, and what it is set to.
pub fn draw(canvas: &Canvas, view: &View, joint: Joint, torque: Torque, hand: Option<Wrench>) {
    let palette = canvas.palette;
    let (x, y) = places::joint(joint);
    let thin = canvas.stroke(1.2, palette.accent);
    canvas.circle(x, y, HANDLE, Color32::TRANSPARENT, thin);
    let angle = hand.map_or(-FRAC_PI_2, |wrench| wrench.angle);
    let at = |r: f32| (x + r * angle.cos(), y + r * angle.sin());
    canvas.line(&[at(10.0), at(HANDLE)], canvas.stroke(4.0, palette.accent));
    let grip = at(HANDLE);
    canvas.circle(grip.0, grip.1, 4.5, palette.accent, canvas.ink(1.2));
    let text = view.system().torque(torque);
    plate(canvas, (x, y - 40.0), &[text]);
}
