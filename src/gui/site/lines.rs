//! The line set: its flares, drier and sight glass, what covers it, what is clamped to it.

use crate::gui::canvas::{Canvas, around};
use crate::gui::site::carry::{Carried, Held};
use crate::gui::site::places;
use crate::gui::site::places::{VALVES, line_y};
use crate::gui::view::View;
use crate::job::{Glass, PipeSurface};
use crate::kit::ThermometerPlace;
use crate::plant::{Arrow, Joint, Line, Made, Spot};
use eframe::egui::{Align2, Color32};

/// Draws both lines with their flares and the drier.
pub fn draw(canvas: &Canvas, view: &View) {
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
    let reach = |joint: Joint| places::joint(joint).0;
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
    canvas.caption(540.0, liquid + 20.0, "caption-liquid-line");
    canvas.caption(704.0, liquid + 24.0, "caption-sight-glass");
    canvas.caption(604.0, suction + 20.0, "caption-suction-line");
    drier(canvas, view, liquid);
    for joint in Joint::ALL {
        flare(canvas, view, joint);
    }
    coats(canvas, view);
    sight_glass(canvas, view);
}

/// The glass: a round window in which liquid that carries vapour flashes.
fn sight_glass(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (x, y) = places::SIGHT_GLASS;
    canvas.circle(x, y, 11.0, palette.metal, canvas.ink(1.5));
    canvas.circle(x, y, GLASS, palette.raised, canvas.ink(1.0));
    let water = canvas.stroke(1.2, palette.water);
    match view.sight_glass() {
        Glass::Clear => {}
        Glass::Level(filled) => {
            let down = GLASS * (1.0 - 2.0 * filled as f32);
            let half = (GLASS * GLASS - down * down).max(0.0).sqrt();
            canvas.line(&[(x - half, y + down), (x + half, y + down)], water);
        }
        Glass::Flashes(vapour) => {
            let vapour = vapour as f32;
            let (count, radius) = (3 + (vapour * 9.0) as u64, 1.4 + vapour);
            for i in 0..count {
                // They run with the flow, each on its own height, with the time of the job.
                let height = 0.7 * GLASS * ((i * 5 % 7) as f32 / 3.0 - 1.0);
                let half = (GLASS * GLASS - height * height).sqrt() - radius;
                let run = ((view.now() * 3 + i * 11) % 20) as f32 / 10.0 - 1.0;
                canvas.circle(
                    x + half * run,
                    y + height,
                    radius,
                    Color32::TRANSPARENT,
                    water,
                );
            }
        }
    }
}

/// The radius of the sight glass's window.
const GLASS: f32 = 8.0;

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
        canvas.caption(610.0, y, "caption-drier-out");
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
    canvas.caption(612.0, y + 34.0, "caption-drier");
}

fn flare(canvas: &Canvas, view: &View, joint: Joint) {
    let palette = canvas.palette;
    let (x, y) = places::joint(joint);
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
        let (x, y) = places::spot(spot);
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
        while x < to && coat != PipeSurface::Dry {
            match coat {
                PipeSurface::Frost => {
                    let stroke = canvas.stroke(2.0, palette.frost);
                    for (dx, dy) in [(-4.0, -10.0), (4.0, 10.0), (4.0, -10.0), (-4.0, 10.0)] {
                        canvas.line(&[(x, y), (x + dx, y + dy)], stroke);
                    }
                }
                PipeSurface::Sweat => {
                    let drop = if up { y + 7.0 } else { y + 10.0 };
                    canvas.circle(
                        x,
                        drop,
                        2.6,
                        palette.water,
                        canvas.stroke(0.5, palette.water),
                    );
                }
                PipeSurface::Dry => {}
            }
            up = !up;
            x += 14.0;
        }
    }
}

/// Thermometer pads: an empty ring where one can be put, a probe with its reading where one is.
pub fn thermometers(canvas: &Canvas, view: &View, held: Option<Held>) {
    let palette = canvas.palette;
    if let Some(Held {
        what: Carried::Thermometer(_),
        at,
    }) = held
    {
        probe(canvas, at);
    }
    for place in ThermometerPlace::ALL {
        let (x, y) = places::place(place);
        let in_hand = Held::holds(held, Carried::Thermometer(Some(place))).is_some();
        if view.thermometer_at(place) && !in_hand {
            probe(canvas, (x, y));
            let text = view.text(crate::words::Reading::Thermometer(place));
            let (align, dx, dy) = label_side(place);
            canvas.text(x + dx, y + dy, align, 14.0, &text, palette.ink);
        } else {
            canvas.circle(x, y, 8.0, palette.raised, canvas.stroke(1.5, palette.faint));
            canvas.text(x, y, Align2::CENTER_CENTER, 10.0, "T", palette.faint);
        }
    }
}

/// A thermometer's clamp.
pub fn probe(canvas: &Canvas, (x, y): (f32, f32)) {
    let fill = canvas.palette.accent;
    canvas.rect(around(x, y, 18.0, 18.0), 4.0, fill, canvas.ink(1.5));
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
        ThermometerPlace::LiquidLine
        | ThermometerPlace::AfterDrier
        | ThermometerPlace::DischargeLine => (Align2::CENTER_BOTTOM, 0.0, -16.0),
    }
}
