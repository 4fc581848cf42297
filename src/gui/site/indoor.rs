//! The line set with its flares and drier, the indoor unit and the thermostat.

use super::canvas::{Canvas, around};
use super::layout::{self, INDOOR, VALVES, line_y};
use super::outdoor::blades;
use crate::gui::part::call_label;
use crate::gui::view::View;
use crate::job::{Coat, TICKS_PER_SECOND};
use crate::kit::ThermometerPlace;
use crate::plant::{Arrow, Joint, Line, Made, Spot};
use eframe::egui::{Align2, Color32, Rect, pos2};

/// Draws the indoor unit and the thermostat.
pub fn draw(canvas: &Canvas, view: &View) {
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
    blower(canvas, view);
    filter(canvas);
    canvas.caption(866.0, 22.0, "indoor unit");
    thermostat(canvas, view);
}

/// The two ducts, with an arrow for the way of the air.
fn ducts(canvas: &Canvas) {
    for (top, bottom, word, way) in [(46.0, 86.0, "supply", 1.0), (314.0, 392.0, "return", -1.0)] {
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
        "metering",
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
    canvas.caption(880.0, 112.0, "indoor coil");
    canvas.line(&[(800.0, 268.0), (940.0, 268.0)], canvas.ink(2.0));
}

fn blower(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.circle(866.0, 318.0, 38.0, palette.paper, canvas.ink(1.5));
    let turn = if view.electrics().blower_runs {
        (view.now() % (TICKS_PER_SECOND * 2)) as f32 * 0.7
    } else {
        0.2
    };
    blades(canvas, (866.0, 318.0), 32.0, turn);
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
    let word = call_label(view.call());
    canvas.text(636.0, 78.0, Align2::CENTER_CENTER, 16.0, word, palette.ink);
    canvas.caption(636.0, 112.0, "thermostat");
}

/// Draws both lines with their flares and the drier.
pub fn lines(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (liquid, suction) = (line_y(Line::Liquid), line_y(Line::Suction));
    let thin = canvas.stroke(4.0, palette.copper);
    // A tube ends short of a joint that is apart.
    let gap = |joint: Joint| {
        if matches!(view.made(joint), Made::Apart | Made::Plugged) {
            12.0
        } else {
            0.0
        }
    };
    let reach = |joint: Joint| layout::joint(joint).0;
    for (from, to) in [
        (Joint::LiquidValve, Joint::DrierInlet),
        (Joint::DrierOutlet, Joint::IndoorLiquid),
    ] {
        let ends = [
            (reach(from) + gap(from), liquid),
            (reach(to) - gap(to), liquid),
        ];
        canvas.line(&ends, thin);
    }
    canvas.line(
        &[(VALVES, liquid), (reach(Joint::LiquidValve), liquid)],
        thin,
    );
    let thick = canvas.stroke(8.0, palette.copper);
    canvas.line(
        &[(VALVES, suction), (reach(Joint::SuctionValve), suction)],
        thick,
    );
    let (from, to) = (Joint::SuctionValve, Joint::IndoorSuction);
    let ends = [
        (reach(from) + gap(from), suction),
        (reach(to) - gap(to), suction),
    ];
    canvas.line(&ends, thick);
    canvas.caption(706.0, liquid + 24.0, "liquid line");
    canvas.caption(604.0, suction + 20.0, "suction line");
    drier(canvas, view, liquid);
    for joint in Joint::ALL {
        flare(canvas, view, joint);
    }
    coats(canvas, view);
}

fn drier(canvas: &Canvas, view: &View, y: f32) {
    let palette = canvas.palette;
    let Some(arrow) = view.drier() else {
        for x in [578.0, 642.0] {
            canvas.dashed(
                (x, y - 20.0),
                (x, y + 20.0),
                canvas.stroke(1.2, palette.faint),
            );
        }
        canvas.caption(610.0, y, "drier out");
        return;
    };
    let thin = canvas.stroke(4.0, palette.copper);
    canvas.line(&[(556.0, y), (664.0, y)], thin);
    canvas.rect(
        around(610.0, y, 64.0, 36.0),
        12.0,
        palette.metal,
        canvas.ink(1.5),
    );
    let way = match arrow {
        Arrow::TowardMetering => 1.0,
        Arrow::TowardOutdoor => -1.0,
    };
    canvas.line(
        &[(610.0 - 20.0 * way, y), (610.0 + 20.0 * way, y)],
        canvas.ink(2.5),
    );
    canvas.line(
        &[
            (610.0 + 11.0 * way, y - 7.0),
            (610.0 + 20.0 * way, y),
            (610.0 + 11.0 * way, y + 7.0),
        ],
        canvas.ink(2.5),
    );
    canvas.caption(612.0, y + 34.0, "filter drier");
}

fn flare(canvas: &Canvas, view: &View, joint: Joint) {
    let palette = canvas.palette;
    let (x, y) = layout::joint(joint);
    let nut = |x: f32, fill: Color32| {
        let points = [
            (x - 9.0, y),
            (x - 5.0, y - 11.0),
            (x + 5.0, y - 11.0),
            (x + 9.0, y),
            (x + 5.0, y + 11.0),
            (x - 5.0, y + 11.0),
        ];
        canvas.polygon(&points, fill, canvas.ink(1.5));
    };
    match view.made(joint) {
        Made::Up(_) => nut(x, palette.centre.gamma_multiply(0.8)),
        Made::Cracked => {
            nut(x - 5.0, palette.raised);
            canvas.line(&[(x + 8.0, y - 12.0), (x + 8.0, y + 12.0)], canvas.ink(1.5));
        }
        Made::Apart => {
            nut(x - 12.0, palette.raised);
            canvas.circle(x + 10.0, y, 5.0, palette.paper, canvas.ink(1.5));
        }
        Made::Plugged => {
            nut(x - 12.0, palette.raised);
            canvas.rect(
                around(x - 1.0, y, 6.0, 16.0),
                1.0,
                palette.ink,
                canvas.ink(1.0),
            );
            canvas.rect(
                around(x + 9.0, y, 6.0, 16.0),
                1.0,
                palette.ink,
                canvas.ink(1.0),
            );
        }
    }
}

/// Drops and bubbles where a spot is wet.
pub fn bubbles(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    for spot in Spot::ALL {
        let Some(size) = view.bubbles(spot) else {
            continue;
        };
        let (x, y) = layout::spot(spot);
        let water = canvas.stroke(1.2, palette.water);
        canvas.line(
            &[(x - 14.0, y + 15.0), (x + 14.0, y + 15.0)],
            canvas.stroke(2.5, palette.water),
        );
        if size < 0.05 {
            continue;
        }
        let clear = palette.water.gamma_multiply(0.25);
        let count = 2 + (size * 7.0) as i32;
        for i in 0..count {
            let angle = 2.4 * i as f32;
            let out = 6.0 + 2.2 * i as f32;
            let radius = 2.5 + 6.0 * size as f32 / (1.0 + 0.3 * i as f32);
            canvas.circle(
                x + out * angle.cos(),
                y + 10.0 + 0.5 * out * angle.sin(),
                radius,
                clear,
                water,
            );
        }
    }
}

/// Frost and sweat on the pipes: short strokes for frost, drops for sweat.
fn coats(canvas: &Canvas, view: &View) {
    let runs = [
        (
            ThermometerPlace::SuctionLine,
            440.0,
            730.0,
            line_y(Line::Suction),
        ),
        (
            ThermometerPlace::LiquidLine,
            436.0,
            546.0,
            line_y(Line::Liquid),
        ),
        (
            ThermometerPlace::AfterDrier,
            676.0,
            738.0,
            line_y(Line::Liquid),
        ),
    ];
    let palette = canvas.palette;
    for (place, from, to, y) in runs {
        let coat = view.coat(place);
        let mut x: f32 = from;
        let mut up = true;
        while x < to && coat != Coat::Dry {
            match coat {
                Coat::Frost => {
                    let stroke = canvas.stroke(2.0, palette.frost);
                    for (dx, dy) in [(-4.0, -10.0), (4.0, 10.0), (4.0, -10.0), (-4.0, 10.0)] {
                        canvas.line(&[(x, y), (x + dx, y + dy)], stroke);
                    }
                }
                Coat::Sweat => {
                    let drop = if up { y + 7.0 } else { y + 10.0 };
                    canvas.circle(
                        x,
                        drop,
                        2.6,
                        palette.water,
                        canvas.stroke(0.5, palette.water),
                    );
                }
                Coat::Dry => {}
            }
            up = !up;
            x += 14.0;
        }
    }
}

/// Thermometer pads: an empty ring where one can be put, a probe with its reading where one is.
pub fn thermometers(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    for place in ThermometerPlace::ALL {
        let (x, y) = layout::place(place);
        if view.thermometer_at(place) {
            canvas.rect(
                around(x, y, 18.0, 18.0),
                4.0,
                palette.accent,
                canvas.ink(1.5),
            );
            let text = view.text(crate::words::Reading::Thermometer(place));
            let (align, dx, dy) = label_side(place);
            canvas.text(x + dx, y + dy, align, 14.0, &text, palette.ink);
        } else {
            canvas.circle(x, y, 8.0, palette.raised, canvas.stroke(1.5, palette.faint));
            canvas.text(x, y, Align2::CENTER_CENTER, 10.0, "T", palette.faint);
        }
    }
}

/// Where the reading stands beside its pad: alignment and distance.
const fn label_side(place: ThermometerPlace) -> (Align2, f32, f32) {
    match place {
        ThermometerPlace::ReturnAir
        | ThermometerPlace::ReturnWetBulb
        | ThermometerPlace::SupplyAir => (Align2::LEFT_CENTER, 13.0, 0.0),
        // To the right: a hose may pass on the left.
        ThermometerPlace::SuctionLine => (Align2::LEFT_BOTTOM, -9.0, -16.0),
        ThermometerPlace::OutdoorAir => (Align2::CENTER_TOP, 0.0, 13.0),
        _ => (Align2::CENTER_BOTTOM, 0.0, -16.0),
    }
}
