//! The indoor unit with its coil, blower and filter, and the thermostat.

use crate::gui::canvas::Canvas;
use crate::gui::site::outdoor::blades;
use crate::gui::site::places::{INDOOR, line_y};
use crate::gui::view::View;
use crate::gui::view::looks::call_label;
use crate::job::PipeSurface;
use crate::plant::Line;
use eframe::egui::{Align2, Rect, pos2};

/// Draws the indoor unit and the thermostat.
pub fn draw(canvas: &Canvas, view: &View, turn: f32) {
    let palette = canvas.palette;
    canvas.rect(INDOOR, 6.0, palette.raised, canvas.ink(2.0));
    ducts(canvas);
    let thin = canvas.stroke(4.0, palette.copper);
    let thick = canvas.stroke(7.0, palette.copper);
    let (liquid, suction) = (line_y(Line::Liquid), line_y(Line::Suction));
    canvas.line(&[(748.0, liquid), (830.0, liquid)], thin);
    canvas.line(&[(748.0, suction), (786.0, suction), (786.0, 250.0)], thick);
    canvas.line(&[(786.0, 250.0), (812.0, 250.0)], thick);
    metering(canvas, liquid);
    coil(canvas);
    coat(canvas, view);
    blower(canvas, turn);
    filter(canvas);
    canvas.caption(866.0, 22.0, "caption-indoor-unit");
    thermostat(canvas, view);
}

/// The two ducts, with an arrow for the way of the air.
fn ducts(canvas: &Canvas) {
    for (top, bottom, word, way) in [
        (46.0, 86.0, "caption-supply", 1.0),
        (314.0, 392.0, "caption-return", -1.0),
    ] {
        for y in [top, bottom] {
            canvas.line(&[(960.0, y), (1064.0, y)], canvas.ink(1.5));
        }
        let middle = 0.5 * (top + bottom);
        let (tail, tip) = (1056.0 - 8.0 * way, 1056.0 + 8.0 * way);
        let barb = tip - 7.0 * way;
        canvas.line(&[(tail, middle), (tip, middle)], canvas.ink(1.5));
        canvas.line(
            &[(barb, middle - 6.0), (tip, middle), (barb, middle + 6.0)],
            canvas.ink(1.5),
        );
        canvas.caption(1012.0, top - 11.0, word);
    }
}

fn metering(canvas: &Canvas, y: f32) {
    let palette = canvas.palette;
    let left = [(788.0, y - 11.0), (800.0, y), (788.0, y + 11.0)];
    let right = [(812.0, y - 11.0), (800.0, y), (812.0, y + 11.0)];
    canvas.polygon(&left, palette.metal, canvas.ink(1.5));
    canvas.polygon(&right, palette.metal, canvas.ink(1.5));
    canvas.text(
        774.0,
        y - 36.0,
        Align2::LEFT_CENTER,
        13.0,
        &canvas.say("caption-metering"),
        palette.faint,
    );
}

/// Two slabs that lean on each other, tube through both.
fn coil(canvas: &Canvas) {
    let palette = canvas.palette;
    let copper = canvas.stroke(4.0, palette.copper);
    for side in [-1.0, 1.0] {
        let x = |at: f32| 880.0 + side * at;
        let slab = [
            (x(14.0), 132.0),
            (x(30.0), 132.0),
            (x(66.0), 258.0),
            (x(46.0), 258.0),
        ];
        canvas.polygon(&slab, palette.paper, canvas.ink(1.5));
        for i in 1..9 {
            let t = i as f32 / 9.0;
            let (a, b) = (14.0 + 32.0 * t, 30.0 + 36.0 * t);
            let y = 132.0 + 126.0 * t;
            canvas.line(&[(x(a), y), (x(b), y)], canvas.stroke(2.5, palette.copper));
        }
    }
    canvas.line(&[(830.0, 180.0), (848.0, 180.0)], copper);
    canvas.caption(880.0, 112.0, "caption-indoor-coil");
    canvas.line(&[(800.0, 268.0), (940.0, 268.0)], canvas.ink(2.0));
}

/// Frost on the slabs, or drops that run off them into the pan.
fn coat(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    match view.indoor_coil_coat() {
        PipeSurface::Dry => {}
        PipeSurface::Frost => {
            let frost = canvas.stroke(2.0, palette.frost);
            for side in [-1.0, 1.0] {
                for i in 1..9 {
                    let t = i as f32 / 9.0;
                    let (x, y) = (880.0 + side * (22.0 + 34.0 * t), 125.0 + 126.0 * t);
                    for (dx, dy) in [(4.0, 5.0), (4.0, -5.0)] {
                        canvas.line(&[(x - dx, y - dy), (x + dx, y + dy)], frost);
                    }
                }
            }
        }
        PipeSurface::Sweat => {
            // A drop falls from each slab's foot into the pan, a step every half second.
            let fallen = (view.now() / 5 % 2) as f32 * 4.0;
            for x in [818.0, 830.0, 930.0, 942.0] {
                let stroke = canvas.stroke(0.5, palette.water);
                canvas.circle(x, 259.5 + fallen, 2.4, palette.water, stroke);
            }
        }
    }
}

fn blower(canvas: &Canvas, turn: f32) {
    let palette = canvas.palette;
    canvas.circle(866.0, 318.0, 38.0, palette.paper, canvas.ink(1.5));
    blades(canvas, (866.0, 318.0), 32.0, turn + 0.2);
}

fn filter(canvas: &Canvas) {
    let palette = canvas.palette;
    let frame = Rect::from_min_max(pos2(788.0, 368.0), pos2(944.0, 384.0));
    canvas.rect(frame, 1.0, palette.paper, canvas.ink(1.5));
    let mut pleats = Vec::new();
    for i in 0..=26 {
        let y = if i % 2 == 0 { 381.0 } else { 371.0 };
        pleats.push((788.0 + 6.0 * i as f32, y));
    }
    canvas.line(&pleats, canvas.stroke(1.0, palette.faint));
}

fn thermostat(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let frame = Rect::from_min_max(pos2(606.0, 56.0), pos2(666.0, 100.0));
    canvas.rect(frame, 6.0, palette.raised, canvas.ink(1.5));
    let word = view.tell(&call_label(view.call()));
    canvas.text_within((636.0, 78.0), 54.0, 16.0, &word, palette.ink);
    canvas.caption(636.0, 112.0, "caption-thermostat");
}
