//! The manifold with its hoses: two dials, two hand valves, three connections.

use crate::gui::canvas::{Canvas, around, on_curve};
use crate::gui::site::carry::{Carried, Held};
use crate::gui::site::{hose_curves, places};
use crate::gui::theme::{hose_colour, hose_letter};
use crate::gui::view::looks::opening_label;
use crate::gui::view::turn::{Thread, Turn};
use crate::gui::view::{Needle, View};
use crate::kit::{Hose, HoseEnd};
use eframe::egui::{Align2, Color32, Rect, pos2};

/// Draws the three hoses.
pub fn hoses(canvas: &Canvas, view: &View, held: Option<Held>) {
    let palette = canvas.palette;
    for hose in Hose::ALL {
        let state = view.hose(hose);
        let hand = Held::holds(held, Carried::Hose(hose));
        let pieces = match hand {
            Some(tip) => vec![hose_curves::in_hand(hose, tip)],
            None => hose_curves::curves(hose, state.end),
        };
        for (width, colour) in [(9.0, palette.ink), (6.5, hose_colour(palette, hose))] {
            for piece in &pieces {
                canvas.curve(*piece, canvas.stroke(width, colour));
            }
        }
        let tip = places::hose_end(hose, state.end);
        let spills = state.end.is_none() && state.spilling > 0.0;
        if state.purging > 0.0 || spills || state.end == Some(HoseEnd::OpenAir) {
            let at = if state.purging > 0.0 {
                places::hose_start(hose)
            } else {
                tip
            };
            breath(canvas, at);
        }
    }
}

/// The couplings at the ends of the hoses and the letters on them, over everything.
pub fn hose_ends(canvas: &Canvas, view: &View, held: Option<Held>) {
    let palette = canvas.palette;
    for hose in Hose::ALL {
        let end = view.hose(hose).end;
        let hand = Held::holds(held, Carried::Hose(hose));
        let (x, y) = hand.unwrap_or(places::hose_end(hose, end));
        coupling(canvas, (x, y));
        let (x, y) = match hand {
            Some(tip) => on_curve(hose_curves::in_hand(hose, tip), 0.5),
            None => hose_curves::hose_middle(hose, end),
        };
        let rim = canvas.stroke(2.5, hose_colour(palette, hose));
        canvas.circle(x, y, 10.0, palette.raised, rim);
        let letter = hose_letter(hose);
        canvas.text(x, y, Align2::CENTER_CENTER, 13.0, letter, palette.ink);
    }
}

/// A knurled nut that a hand can take.
fn coupling(canvas: &Canvas, (x, y): (f32, f32)) {
    let palette = canvas.palette;
    canvas.rect(
        around(x, y, 14.0, 13.0),
        3.0,
        palette.metal,
        canvas.ink(1.5),
    );
    for dx in [-3.0, 0.0, 3.0] {
        canvas.line(&[(x + dx, y - 4.0), (x + dx, y + 4.0)], canvas.ink(1.0));
    }
}

/// Where a hose's end is open: three short strokes.
fn breath(canvas: &Canvas, (x, y): (f32, f32)) {
    for dx in [-7.0, 0.0, 7.0] {
        let ends = [(x + 0.6 * dx, y + 8.0), (x + dx, y + 18.0)];
        canvas.line(&ends, canvas.stroke(1.5, canvas.palette.water));
    }
}

/// Draws the manifold: two dials whose needles move, two hand valves, three connections.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let body = Rect::from_min_max(pos2(294.0, 522.0), pos2(458.0, 554.0));
    canvas.rect(body, 6.0, palette.metal, canvas.ink(2.0));
    for hose in Hose::ALL {
        let (x, _) = places::hose_start(hose);
        canvas.rect(
            around(x, 558.0, 14.0, 10.0),
            1.0,
            palette.copper,
            canvas.ink(1.0),
        );
    }
    for (hose, face, x) in [
        (Hose::Low, Needle::Low, 318.0),
        (Hose::High, Needle::High, 434.0),
    ] {
        let colour = hose_colour(palette, hose);
        canvas.circle(x, 482.0, 38.0, palette.raised, canvas.stroke(4.0, colour));
        let (share, ..) = view.needle(face);
        let angle = (150.0 + 240.0 * share as f32).to_radians();
        let tip = (x + 28.0 * angle.cos(), 482.0 + 28.0 * angle.sin());
        canvas.line(&[(x, 482.0), tip], canvas.ink(2.5));
        canvas.text(
            x,
            504.0,
            Align2::CENTER_CENTER,
            14.0,
            hose_letter(hose),
            palette.ink,
        );
    }
    for (hose, x, inner, word_at) in [
        (Hose::Low, 276.0, 294.0, 274.0),
        (Hose::High, 476.0, 458.0, 474.0),
    ] {
        canvas.line(
            &[(inner, 538.0), (x, 538.0)],
            canvas.stroke(5.0, palette.metal),
        );
        let open = view.hand_valve(hose).unwrap_or(0.0);
        let turn = Turn::of(Thread::HandValve(hose), view).map_or(0.0, Turn::angle);
        hand_valve(canvas, (x, 538.0), hose_colour(palette, hose), turn);
        // Above the wheel: a hose may pass beside it.
        let align = if hose == Hose::Low {
            Align2::RIGHT_BOTTOM
        } else {
            Align2::LEFT_BOTTOM
        };
        let word = view.tell(&opening_label(open));
        canvas.text(word_at, 521.0, align, 13.0, &word, palette.ink);
    }
}

/// A hand wheel; its mark goes round with it, from twelve o'clock where it is shut.
fn hand_valve(canvas: &Canvas, (x, y): (f32, f32), colour: Color32, angle: f32) {
    let palette = canvas.palette;
    canvas.circle(x, y, 16.0, palette.raised, canvas.stroke(3.0, colour));
    canvas.circle(x, y, 3.0, palette.ink, canvas.ink(1.0));
    let tip = (x + 13.0 * angle.sin(), y - 13.0 * angle.cos());
    canvas.line(&[(x, y), tip], canvas.ink(3.0));
}
