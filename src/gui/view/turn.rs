//! What is turned by hand: service valve stems, hand valves, the refrigerant cylinder's valve and
//! the regulator's screw. Each is counted in quarter turns, as a hand counts them.

use crate::gui::view::View;
use crate::kit::Hose;
use crate::kit::{nitrogen, refrigerant_cylinder};
use crate::plant::Line;
use crate::text::Message;
use crate::units::{Fraction, GaugePressure};
use crate::words::Action;

/// Quarter turns of a stem from seat to seat. Chosen: five full turns (common practice).
pub const STEM: f64 = 20.0;

/// Quarter turns of a hand wheel from shut to open. Chosen: two and a half full turns, so that its
/// mark stands on the other side when it is open.
const WHEEL: f64 = 10.0;

/// What a quarter turn of the regulator's screw adds, psig. Chosen: six full turns to 600 psig.
const SCREW: f64 = 25.0;

/// The most that the regulator is turned up to here, psig.
pub const SCREW_MOST: f64 = 600.0;

/// The least change that is an action of its own, quarter turns.
const STEP: f64 = 0.1;

/// The steps of a slider for a valve, per cent: what a tenth of a quarter turn opens it by.
pub const FINE: f64 = 1.0;

/// A thing that turns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Thread {
    /// The stem of a service valve.
    Stem(Line),
    /// A hand valve of the manifold.
    HandValve(Hose),
    /// The valve of the refrigerant cylinder.
    Cylinder,
    /// The screw of the regulator.
    Regulator,
}

/// A thing that turns, and where it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// What turns.
    pub thread: Thread,
    /// Quarter turns from its lower end: a stem from its front seat, a screw from backed off.
    pub now: f64,
    /// Quarter turns from end to end.
    pub most: f64,
}

impl Turn {
    /// How far a thing is turned; `None` where it is not there as things stand.
    pub fn of(thread: Thread, view: &View) -> Option<Self> {
        let (share, most) = match thread {
            Thread::Stem(line) => (view.valve(line).open, STEM),
            Thread::HandValve(hose) => (view.hand_valve(hose)?, WHEEL),
            Thread::Cylinder => (view.cylinder().0, WHEEL),
            Thread::Regulator => {
                let (_, fitted, psig) = view.nitrogen();
                (fitted.then_some(psig / SCREW_MOST)?, SCREW_MOST / SCREW)
            }
        };
        Some(Self {
            thread,
            now: on_grid(share * most),
            most,
        })
    }

    /// Whether the thing can be turned as it stands; a stem under its cap cannot.
    pub fn is_bare(self, view: &View) -> bool {
        match self.thread {
            Thread::Stem(line) => !view.valve(line).cap_on,
            Thread::HandValve(_) | Thread::Cylinder | Thread::Regulator => true,
        }
    }

    /// The action that turns it to so many quarter turns, held to its ends; `None` when that is no
    /// more than it stands at.
    pub fn to(self, quarters: f64) -> Option<Action> {
        let quarters = on_grid(quarters).clamp(0.0, self.most);
        if (quarters - self.now).abs() < 0.5 * STEP {
            return None;
        }
        let open = Fraction::clamped(quarters / self.most);
        Some(match self.thread {
            Thread::Stem(line) => Action::Stem { line, open },
            Thread::HandValve(hose) => Action::HandValve { hose, open },
            Thread::Cylinder => Action::of(refrigerant_cylinder::Action::Valve(open)),
            Thread::Regulator => Action::of(nitrogen::Action::SetRegulator(
                GaugePressure::from_psig(quarters * SCREW),
            )),
        })
    }

    /// Quarter turns that a turn of the hand by an angle makes, radians, clockwise as one looks at
    /// it. All threads are right-handed: clockwise goes in, which shuts a valve and loads the
    /// spring of a regulator.
    pub fn by_angle(self, clockwise: f32) -> f64 {
        self.sense() * f64::from(clockwise) / std::f64::consts::FRAC_PI_2
    }

    /// The angle at which its mark stands, radians clockwise from twelve o'clock.
    pub fn angle(self) -> f32 {
        (self.sense() * self.now * std::f64::consts::FRAC_PI_2) as f32
    }

    const fn sense(self) -> f64 {
        match self.thread {
            Thread::Regulator => 1.0,
            Thread::Stem(_) | Thread::HandValve(_) | Thread::Cylinder => -1.0,
        }
    }

    /// How far it is turned, in two short lines.
    pub fn words(self, view: &View) -> [String; 2] {
        let turns = Message::new("face-turns-of")
            .with("now", quarters_text(self.now))
            .with("most", format!("{:.0}", self.most));
        match self.thread {
            Thread::Regulator => [
                view.tell(&view.system().gauge(view.regulator())),
                view.say("face-set"),
            ],
            Thread::Stem(_) | Thread::HandValve(_) | Thread::Cylinder => {
                [view.tell(&turns), view.say("face-turned")]
            }
        }
    }
}

/// Quarter turns as they are written: tenths only where there are some.
pub fn quarters_text(quarters: f64) -> String {
    format!("{}", on_grid(quarters))
}

/// The nearest tenth of a quarter turn.
fn on_grid(quarters: f64) -> f64 {
    (quarters / STEP).round() / (1.0 / STEP)
}

#[cfg(test)]
mod tests {
    use super::{STEM, Thread, Turn};
    use crate::plant::Line;
    use crate::units::Fraction;
    use crate::words::Action;
    use std::f32::consts::FRAC_PI_2;

    fn stem(now: f64) -> Turn {
        Turn {
            thread: Thread::Stem(Line::Liquid),
            now,
            most: STEM,
        }
    }

    fn opened(turn: Turn, to: f64) -> Option<f64> {
        match turn.to(to)? {
            Action::Stem { open, .. } => Some(open.get()),
            other => panic!("a stem gives {other:?}"),
        }
    }

    /// Right-handed threads: clockwise goes in. Common practice, no source.
    #[test]
    fn a_quarter_turn_clockwise_is_one_quarter_turn_in() {
        let turn = stem(20.0);
        assert!((turn.by_angle(FRAC_PI_2) + 1.0).abs() < 1e-6);
        assert!((turn.by_angle(-FRAC_PI_2) - 1.0).abs() < 1e-6);
        let screw = Turn {
            thread: Thread::Regulator,
            ..turn
        };
        assert!((screw.by_angle(FRAC_PI_2) - 1.0).abs() < 1e-6);
    }

    #[test]
    fn less_than_a_tenth_is_no_action_and_the_seats_hold() {
        assert_eq!(opened(stem(20.0), 19.96), None);
        assert_eq!(opened(stem(20.0), 19.9), Some(19.9 / STEM));
        assert_eq!(opened(stem(20.0), 23.0), None);
        assert_eq!(opened(stem(0.3), -2.0), Some(Fraction::ZERO.get()));
    }
}
