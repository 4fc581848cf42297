//! The cart: manifold with its hoses, vacuum pump, micron gauge, nitrogen, refrigerant cylinder.

use super::canvas::{Canvas, around, on_curve};
use super::layout::{self, CART};
use crate::gui::part::opening_label;
use crate::gui::theme::Palette;
use crate::gui::view::View;
use crate::kit::{Hose, HoseEnd};
use crate::plant::Line;
use crate::words::{GaugePlace, Reading};
use eframe::egui::{Align2, Color32, Rect, pos2};

/// The colour of a hose, by the trade's custom.
pub const fn hose_colour(palette: &Palette, hose: Hose) -> Color32 {
    match hose {
        Hose::Low => palette.low,
        Hose::High => palette.high,
        Hose::Centre => palette.centre,
    }
}

/// The letter of a hose, so that its colour is not its only sign.
pub const fn hose_letter(hose: Hose) -> &'static str {
    match hose {
        Hose::Low => "L",
        Hose::High => "H",
        Hose::Centre => "C",
    }
}

/// Where a hose to the liquid port passes between the suction line's flare and its thermometer, so
/// that it covers neither these nor the scale of the suction valve's stem.
const PASS: (f32, f32) = (442.0, 336.0);

/// The curve of a hose, in one piece or two of four points each.
fn curves(hose: Hose, end: Option<HoseEnd>) -> Vec<[(f32, f32); 4]> {
    if end != Some(HoseEnd::LiquidPort) {
        return vec![curve(hose, end)];
    }
    let start = layout::hose_start(hose);
    let tip = layout::hose_end(hose, end);
    let out = (690.0, 660.0);
    vec![
        [start, out, (PASS.0, PASS.1 + 92.0), PASS],
        [PASS, (PASS.0, PASS.1 - 58.0), (412.0, tip.1 + 17.0), tip],
    ]
}

/// The four points of a hose's curve in one piece.
fn curve(hose: Hose, end: Option<HoseEnd>) -> [(f32, f32); 4] {
    let start = layout::hose_start(hose);
    let tip = layout::hose_end(hose, end);
    let (leave, arrive) = match end {
        None => ((start.0, start.1 + 14.0), (tip.0, tip.1 - 8.0)),
        Some(HoseEnd::SuctionPort | HoseEnd::LiquidPort) => {
            // Out to its own side of the manifold, then up to the port from below.
            let side = match hose {
                Hose::Low => -1.0,
                Hose::Centre => 1.3,
                Hose::High => 1.0,
            };
            (
                (start.0 + 190.0 * side, start.1 + 96.0),
                (tip.0 + 90.0 * side, tip.1 + 190.0),
            )
        }
        Some(_) => {
            let drop = 74.0;
            ((start.0, start.1 + drop), (tip.0, tip.1 + 60.0))
        }
    };
    [start, leave, arrive, tip]
}

/// The middle of a hose, where its letter stands and where it can be pointed at.
pub fn hose_middle(hose: Hose, end: Option<HoseEnd>) -> (f32, f32) {
    let at = match (end, hose) {
        (None, _) => 0.9,
        (Some(HoseEnd::LiquidPort), _) => 0.84,
        (Some(HoseEnd::SuctionPort), Hose::Low) => 0.93,
        (Some(HoseEnd::SuctionPort), _) => 0.7,
        // Beside the manifold: further on it may pass behind a cylinder.
        (Some(_), _) => 0.25,
    };
    on_curve(curves(hose, end)[0], at)
}

/// Draws the cart's board and what stands on it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.rect(CART, 8.0, palette.panel, canvas.stroke(1.5, palette.faint));
    pump(canvas, view);
    nitrogen(canvas, view);
    cylinder(canvas, view);
    tools(canvas, view);
}

/// Draws the three hoses.
pub fn hoses(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    for hose in Hose::ALL {
        let state = view.hose(hose);
        let pieces = curves(hose, state.end);
        for (width, colour) in [(9.0, palette.ink), (6.5, hose_colour(palette, hose))] {
            for piece in &pieces {
                canvas.curve(*piece, canvas.stroke(width, colour));
            }
        }
        let (x, y) = layout::hose_end(hose, state.end);
        canvas.circle(x, y, 6.0, palette.metal, canvas.ink(1.5));
        let spills = state.end.is_none() && state.spilling > 0.0;
        if state.purging > 0.0 || spills || state.end == Some(HoseEnd::OpenAir) {
            breath(
                canvas,
                if state.purging > 0.0 {
                    layout::hose_start(hose)
                } else {
                    (x, y)
                },
            );
        }
    }
}

/// The letters on the hoses, over everything.
pub fn hose_letters(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    for hose in Hose::ALL {
        let (x, y) = hose_middle(hose, view.hose(hose).end);
        canvas.circle(
            x,
            y,
            10.0,
            palette.raised,
            canvas.stroke(2.5, hose_colour(palette, hose)),
        );
        let letter = hose_letter(hose);
        canvas.text(x, y, Align2::CENTER_CENTER, 13.0, letter, palette.ink);
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
pub fn manifold(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let body = Rect::from_min_max(pos2(294.0, 522.0), pos2(458.0, 554.0));
    canvas.rect(body, 6.0, palette.metal, canvas.ink(2.0));
    for hose in Hose::ALL {
        let (x, _) = layout::hose_start(hose);
        canvas.rect(
            around(x, 558.0, 14.0, 10.0),
            1.0,
            palette.copper,
            canvas.ink(1.0),
        );
    }
    for (hose, face, x) in [
        (Hose::Low, Reading::LowGauge, 318.0),
        (Hose::High, Reading::HighGauge, 434.0),
    ] {
        let colour = hose_colour(palette, hose);
        canvas.circle(x, 482.0, 38.0, palette.raised, canvas.stroke(4.0, colour));
        let share = view.needle(face).map_or(0.0, |(share, ..)| share);
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
        hand_valve(canvas, x, hose_colour(palette, hose), open);
        // Above the wheel: a hose may pass beside it.
        let align = if hose == Hose::Low {
            Align2::RIGHT_BOTTOM
        } else {
            Align2::LEFT_BOTTOM
        };
        let word = opening_label(open);
        canvas.text(word_at, 521.0, align, 13.0, &word, palette.ink);
    }
}

/// A hand wheel; its pointer shows how far it is open, from across (shut) to along (open).
fn hand_valve(canvas: &Canvas, x: f32, colour: Color32, open: f64) {
    let palette = canvas.palette;
    canvas.circle(x, 538.0, 16.0, palette.raised, canvas.stroke(3.0, colour));
    let angle = std::f32::consts::FRAC_PI_2 * (1.0 - open as f32);
    let (dx, dy) = (12.0 * angle.cos(), 12.0 * angle.sin());
    canvas.line(
        &[(x - dx, 538.0 - dy), (x + dx, 538.0 + dy)],
        canvas.ink(3.0),
    );
}

fn pump(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let look = view.pump();
    canvas.rect(
        Rect::from_min_max(pos2(56.0, 530.0), pos2(166.0, 592.0)),
        8.0,
        palette.metal,
        canvas.ink(2.0),
    );
    canvas.rect(
        Rect::from_min_max(pos2(48.0, 592.0), pos2(174.0, 600.0)),
        1.0,
        palette.ink,
        canvas.ink(1.0),
    );
    // The inlet with its valve: a lever along the pipe is open, across it shut.
    canvas.line(
        &[(150.0, 530.0), (150.0, 506.0), (176.0, 506.0)],
        canvas.stroke(6.0, palette.copper),
    );
    let lever = if look.inlet_open {
        [(150.0, 508.0), (150.0, 530.0)]
    } else {
        [(138.0, 518.0), (162.0, 518.0)]
    };
    canvas.line(&lever, canvas.ink(4.0));
    // The oil's sight glass.
    let oil = if look.oil_is_milky {
        palette.raised
    } else {
        palette.centre
    };
    canvas.circle(78.0, 566.0, 12.0, oil, canvas.ink(1.5));
    let word = if look.oil_is_milky { "milky" } else { "oil" };
    canvas.text(
        78.0,
        566.0,
        Align2::CENTER_CENTER,
        10.0,
        word,
        Color32::BLACK,
    );
    // The gas ballast on top.
    let up = if look.ballast_open { 514.0 } else { 522.0 };
    canvas.rect(
        Rect::from_min_max(pos2(70.0, up), pos2(90.0, 530.0)),
        2.0,
        palette.raised,
        canvas.ink(1.2),
    );
    let word = if look.running { "runs" } else { "stopped" };
    canvas.text(130.0, 566.0, Align2::CENTER_CENTER, 13.0, word, palette.ink);
    canvas.caption(110.0, 614.0, "vacuum pump");
}

/// Draws the micron gauge where it is.
pub fn micron_gauge(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (place, valve_open, ruined) = view.micron_gauge();
    let (x, y) = layout::micron_gauge(place);
    // The tube by which it is on something.
    let on = match place {
        GaugePlace::Cart => None,
        GaugePlace::Pump => Some((176.0, 506.0)),
        GaugePlace::Manifold => Some((x, 522.0)),
        GaugePlace::SuctionPort => Some(layout::core_tool(Line::Suction)),
        GaugePlace::LiquidPort => Some(layout::core_tool(Line::Liquid)),
    };
    if let Some(on) = on {
        canvas.line(&[(x, y), on], canvas.stroke(4.0, palette.copper));
    }
    canvas.rect(
        around(x, y, 62.0, 40.0),
        5.0,
        palette.raised,
        canvas.stroke(2.0, palette.accent),
    );
    let text = match (ruined, view.reading(Reading::Microns)) {
        (true, _) => "ruined".to_owned(),
        (false, crate::words::Shown::OverRange) => "over".to_owned(),
        (false, crate::words::Shown::Nothing) => "off".to_owned(),
        (false, crate::words::Shown::Value(quantity)) => {
            format!("{:.0}", quantity.si / crate::units::MICRON)
        }
    };
    canvas.text(x, y - 6.0, Align2::CENTER_CENTER, 14.0, &text, palette.ink);
    let word = if valve_open { "micron" } else { "valve shut" };
    canvas.text(
        x,
        y + 11.0,
        Align2::CENTER_CENTER,
        10.0,
        word,
        palette.faint,
    );
}

fn nitrogen(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (open, fitted, _) = view.nitrogen();
    canvas.rect(
        Rect::from_min_max(pos2(566.0, 478.0), pos2(610.0, 606.0)),
        16.0,
        palette.metal,
        canvas.ink(2.0),
    );
    canvas.text(588.0, 550.0, Align2::CENTER_CENTER, 18.0, "N₂", palette.ink);
    canvas.rect(
        around(588.0, 470.0, 14.0, 16.0),
        1.0,
        palette.copper,
        canvas.ink(1.2),
    );
    // The hand wheel stands higher when it is open.
    let wheel = if open { 448.0 } else { 456.0 };
    canvas.line(&[(574.0, wheel), (602.0, wheel)], canvas.ink(5.0));
    canvas.line(&[(588.0, wheel), (588.0, 464.0)], canvas.ink(2.0));
    canvas.line(
        &[(595.0, 472.0), (640.0, 472.0), (640.0, 494.0)],
        canvas.stroke(4.0, palette.copper),
    );
    if fitted {
        canvas.circle(622.0, 472.0, 12.0, palette.metal, canvas.ink(1.5));
        for (x, face) in [
            (612.0, Reading::NitrogenCylinder),
            (648.0, Reading::NitrogenOutlet),
        ] {
            canvas.circle(x, 448.0, 13.0, palette.raised, canvas.ink(1.5));
            let share = view.needle(face).map_or(0.0, |(share, ..)| share);
            let angle = (150.0 + 240.0 * share as f32).to_radians();
            canvas.line(
                &[
                    (x, 448.0),
                    (x + 9.0 * angle.cos(), 448.0 + 9.0 * angle.sin()),
                ],
                canvas.ink(1.5),
            );
        }
    }
    canvas.caption(588.0, 618.0, "nitrogen");
}

fn cylinder(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (valve, inverted) = view.cylinder();
    canvas.rect(
        Rect::from_min_max(pos2(716.0, 592.0), pos2(870.0, 604.0)),
        2.0,
        palette.ink,
        canvas.ink(1.0),
    );
    canvas.rect(
        Rect::from_min_max(pos2(742.0, 500.0), pos2(802.0, 592.0)),
        14.0,
        palette.metal,
        canvas.ink(2.0),
    );
    let refrigerant = view.scene.refrigerant;
    canvas.text(
        772.0,
        546.0,
        Align2::CENTER_CENTER,
        14.0,
        refrigerant,
        palette.ink,
    );
    let (foot, tip) = if inverted {
        (592.0, 584.0)
    } else {
        (500.0, 484.0)
    };
    canvas.line(
        &[(772.0, foot), (772.0, tip)],
        canvas.stroke(6.0, palette.copper),
    );
    if inverted {
        // It stands on its head: its valve is below, a dip of hose reaches up to the connection.
        canvas.line(
            &[(772.0, 584.0), (808.0, 584.0), (808.0, 478.0)],
            canvas.stroke(3.0, palette.copper),
        );
        canvas.line(
            &[(808.0, 478.0), (772.0, 478.0)],
            canvas.stroke(3.0, palette.copper),
        );
    }
    let turned = if valve > 0.0 { (0.0, 9.0) } else { (9.0, 0.0) };
    canvas.line(
        &[
            (790.0 - turned.0, 486.0 - turned.1),
            (790.0 + turned.0, 486.0 + turned.1),
        ],
        canvas.ink(3.0),
    );
    let scale = Rect::from_min_max(pos2(808.0, 562.0), pos2(890.0, 588.0));
    canvas.rect(scale, 3.0, palette.raised, canvas.ink(1.5));
    let weight = view.text(Reading::Scale);
    canvas.text(
        849.0,
        575.0,
        Align2::CENTER_CENTER,
        12.0,
        &weight,
        palette.ink,
    );
    canvas.caption(790.0, 618.0, "refrigerant on the scale");
}

fn tools(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.caption(906.0, 538.0, "detector");
    // Glasses and gloves: on the hook, or gone because they are worn.
    let worn = view.is_protected();
    let stroke = if worn {
        canvas.stroke(1.2, palette.faint)
    } else {
        canvas.ink(2.0)
    };
    canvas.circle(963.0, 470.0, 9.0, Color32::TRANSPARENT, stroke);
    canvas.circle(985.0, 470.0, 9.0, Color32::TRANSPARENT, stroke);
    canvas.line(&[(972.0, 468.0), (976.0, 468.0)], stroke);
    canvas.rect(
        around(974.0, 504.0, 26.0, 30.0),
        8.0,
        Color32::TRANSPARENT,
        stroke,
    );
    canvas.caption(974.0, 538.0, if worn { "worn" } else { "protection" });
}

/// Draws the detector where it is: its bars count its signal.
pub fn detector(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (x, y) = match view.detector_at() {
        None => layout::DETECTOR,
        Some(spot) => {
            let (x, y) = layout::spot(spot);
            canvas.curve(
                [
                    (x + 4.0, y + 14.0),
                    (x + 14.0, y + 30.0),
                    (x + 26.0, y + 24.0),
                    (x + 32.0, y + 40.0),
                ],
                canvas.ink(3.0),
            );
            (x + 36.0, y + 66.0)
        }
    };
    canvas.rect(
        around(x, y, 28.0, 56.0),
        6.0,
        palette.raised,
        canvas.ink(1.8),
    );
    let signal = view
        .reading(Reading::Detector)
        .quantity()
        .map_or(0.0, |q| q.si);
    for bar in 0..5 {
        let lit = signal * 5.0 > f64::from(bar);
        let fill = if lit { palette.warn } else { palette.paper };
        let top = y + 18.0 - 9.0 * bar as f32;
        canvas.rect(around(x, top, 16.0, 6.0), 1.0, fill, canvas.ink(0.8));
    }
}
