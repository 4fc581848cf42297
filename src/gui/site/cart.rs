//! The cart: vacuum pump, micron gauge, nitrogen, refrigerant cylinder, and what is in the hand.

use super::canvas::{Canvas, around};
use super::carry::{Carried, Held};
use super::layout::{self, CART};
use crate::gui::part::Part;
use crate::gui::turn::Turn;
use crate::gui::view::View;
use crate::plant::Line;
use crate::words::{GaugePlace, Reading};
use eframe::egui::{Align2, Color32, Rect, pos2};

/// Draws the cart's board and what stands on it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.rect(CART, 8.0, palette.panel, canvas.stroke(1.5, palette.faint));
    pump(canvas, view);
    nitrogen(canvas, view);
    cylinder(canvas, view);
    tools(canvas, view);
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
    let word = canvas.say(if look.oil_is_milky {
        "caption-oil-milky"
    } else {
        "caption-oil"
    });
    canvas.text_within((78.0, 566.0), 22.0, 10.0, &word, Color32::BLACK);
    // The gas ballast on top.
    let up = if look.ballast_open { 514.0 } else { 522.0 };
    canvas.rect(
        Rect::from_min_max(pos2(70.0, up), pos2(90.0, 530.0)),
        2.0,
        palette.raised,
        canvas.ink(1.2),
    );
    let word = canvas.say(if look.running {
        "caption-pump-runs"
    } else {
        "caption-pump-stands"
    });
    canvas.text(
        130.0,
        566.0,
        Align2::CENTER_CENTER,
        13.0,
        &word,
        palette.ink,
    );
    canvas.caption(110.0, 614.0, "caption-vacuum-pump");
}

/// Draws the micron gauge where it is.
pub fn micron_gauge(canvas: &Canvas, view: &View, held: Option<Held>) {
    let palette = canvas.palette;
    let (place, valve_open, ruined) = view.micron_gauge();
    let in_hand = Held::holds(held, Carried::MicronGauge);
    let (x, y) = in_hand.unwrap_or(layout::micron_gauge(place));
    // The tube by which it is on something.
    let on = match place {
        _ if in_hand.is_some() => None,
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
        (true, _) => canvas.say("caption-ruined"),
        (false, crate::words::Shown::OverRange) => canvas.say("caption-over"),
        (false, crate::words::Shown::Nothing) => canvas.say("caption-off"),
        (false, crate::words::Shown::Value(quantity)) => {
            format!("{:.0}", quantity.si / crate::units::MICRON)
        }
    };
    canvas.text(x, y - 6.0, Align2::CENTER_CENTER, 14.0, &text, palette.ink);
    let word = canvas.say(if valve_open {
        "caption-micron"
    } else {
        "caption-valve-shut"
    });
    canvas.text(
        x,
        y + 11.0,
        Align2::CENTER_CENTER,
        10.0,
        &word,
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
    if !fitted {
        // Where it goes.
        let outline = canvas.stroke(1.0, palette.faint);
        canvas.circle(622.0, 472.0, 12.0, Color32::TRANSPARENT, outline);
    }
    if fitted {
        canvas.circle(622.0, 472.0, 12.0, palette.metal, canvas.ink(1.5));
        let turn = Turn::of(Part::Regulator, view).map_or(0.0, Turn::angle);
        let (dx, dy) = (9.0 * turn.sin(), -9.0 * turn.cos());
        canvas.line(&[(622.0, 472.0), (622.0 + dx, 472.0 + dy)], canvas.ink(3.0));
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
    canvas.caption(588.0, 618.0, "caption-nitrogen");
}

fn cylinder(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let (_, inverted) = view.cylinder();
    // On its head it stands on its guard, so that its valve has room below.
    let (top, bottom) = if inverted {
        (480.0, 572.0)
    } else {
        (500.0, 592.0)
    };
    canvas.rect(
        Rect::from_min_max(pos2(716.0, 592.0), pos2(870.0, 604.0)),
        2.0,
        palette.ink,
        canvas.ink(1.0),
    );
    canvas.rect(
        Rect::from_min_max(pos2(742.0, top), pos2(802.0, bottom)),
        14.0,
        palette.metal,
        canvas.ink(2.0),
    );
    let refrigerant = view.scene.refrigerant;
    canvas.text(
        772.0,
        0.5 * (top + bottom),
        Align2::CENTER_CENTER,
        14.0,
        refrigerant,
        palette.ink,
    );
    let (foot, tip) = if inverted {
        (572.0, 586.0)
    } else {
        (500.0, 482.0)
    };
    canvas.line(
        &[(772.0, foot), (772.0, tip)],
        canvas.stroke(6.0, palette.copper),
    );
    if inverted {
        // It stands on its head: its valve is below, a dip of hose reaches up to the connection.
        canvas.line(
            &[(772.0, 582.0), (806.0, 582.0), (806.0, 474.0)],
            canvas.stroke(3.0, palette.copper),
        );
        canvas.line(
            &[(806.0, 474.0), (772.0, 474.0)],
            canvas.stroke(3.0, palette.copper),
        );
    }
    let (x, y) = layout::cylinder_wheel(inverted);
    canvas.line(&[(772.0, y), (x, y)], canvas.stroke(4.0, palette.copper));
    canvas.circle(x, y, 11.0, palette.raised, canvas.ink(2.0));
    let turn = Turn::of(Part::Cylinder, view).map_or(0.0, Turn::angle);
    let tip = (x + 9.0 * turn.sin(), y - 9.0 * turn.cos());
    canvas.line(&[(x, y), tip], canvas.ink(3.0));
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
    canvas.caption(790.0, 618.0, "caption-cylinder");
}

fn tools(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.caption(924.0, 538.0, "caption-detector");
    // The case: as many probes as are left in it.
    canvas.rect(layout::CASE, 4.0, palette.raised, canvas.ink(1.5));
    let left = view.thermometers_free();
    for i in 0..left.min(8) {
        let (column, row) = ((i % 4) as f32, (i / 4) as f32);
        let at = (836.0 + 8.0 * column, 468.0 + 27.0 * row);
        canvas.line(&[at, (at.0, at.1 + 20.0)], canvas.ink(1.5));
        let head = around(at.0, at.1 + 4.0, 6.0, 8.0);
        canvas.rect(head, 1.0, palette.accent, canvas.ink(0.8));
    }
    canvas.caption(850.0, 450.0, "caption-thermometers");
    // Glasses and gloves: on the hook, or gone because they are worn.
    let worn = view.is_protected();
    let stroke = if worn {
        canvas.stroke(1.2, palette.faint)
    } else {
        canvas.ink(2.0)
    };
    canvas.circle(973.0, 470.0, 9.0, Color32::TRANSPARENT, stroke);
    canvas.circle(995.0, 470.0, 9.0, Color32::TRANSPARENT, stroke);
    canvas.line(&[(982.0, 468.0), (986.0, 468.0)], stroke);
    canvas.rect(
        around(984.0, 504.0, 26.0, 30.0),
        8.0,
        Color32::TRANSPARENT,
        stroke,
    );
    canvas.caption(
        984.0,
        538.0,
        if worn {
            "caption-worn"
        } else {
            "caption-protection"
        },
    );
}

/// Draws the detector where it is: its bars count its signal.
pub fn detector(canvas: &Canvas, view: &View, held: Option<Held>) {
    let palette = canvas.palette;
    let tip = Held::holds(held, Carried::Detector).or(view.detector_at().map(layout::spot));
    let (x, y) = match tip {
        None => layout::DETECTOR,
        Some((x, y)) => {
            canvas.curve(
                [
                    (x + 4.0, y + 14.0),
                    (x + 14.0, y + 30.0),
                    (x + 26.0, y + 24.0),
                    (x + 32.0, y + 40.0),
                ],
                canvas.ink(3.0),
            );
            layout::detector_body((x, y))
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
