//! The outdoor unit with its service valves, and the disconnect beside it.

use crate::gui::canvas::Canvas;
use crate::gui::site::places;
use crate::gui::site::places::{OUTDOOR, VALVES, line_y};
use crate::gui::view::{ValveLook, View};
use crate::plant::Line;
use eframe::egui::{Align2, Color32, Rect, pos2};

/// Draws cabinet, coil, fan, compressor and pipes.
pub fn draw(canvas: &Canvas, view: &View, turn: f32) {
    let palette = canvas.palette;
    canvas.rect(OUTDOOR, 6.0, palette.raised, canvas.ink(2.0));
    pipes(canvas);
    coil(canvas);
    fan(canvas, turn);
    compressor(canvas, view);
    nameplate(canvas, view);
    disconnect(canvas, view);
    canvas.caption(186.0, 22.0, "caption-outdoor-unit");
}

fn pipes(canvas: &Canvas) {
    let thin = canvas.stroke(4.0, canvas.palette.copper);
    let thick = canvas.stroke(7.0, canvas.palette.copper);
    let (liquid, suction) = (line_y(Line::Liquid), line_y(Line::Suction));
    // Discharge: compressor to the top of the coil.
    canvas.line(&[(110.0, 312.0), (110.0, 292.0), (50.0, 292.0)], thin);
    canvas.line(&[(50.0, 292.0), (50.0, 204.0), (66.0, 204.0)], thin);
    // Liquid: bottom of the coil to the valve.
    canvas.line(&[(306.0, 268.0), (318.0, 268.0), (318.0, liquid)], thin);
    canvas.line(&[(318.0, liquid), (VALVES, liquid)], thin);
    // Suction: valve to compressor.
    canvas.line(
        &[(VALVES, suction), (250.0, suction), (250.0, 366.0)],
        thick,
    );
    canvas.line(&[(250.0, 366.0), (150.0, 366.0)], thick);
}

/// The serpentine between its fins.
fn coil(canvas: &Canvas) {
    let palette = canvas.palette;
    let fin = canvas.stroke(1.0, palette.metal);
    for i in 0..34 {
        let x = 62.0 + 7.5 * i as f32;
        canvas.line(&[(x, 196.0), (x, 276.0)], fin);
    }
    let rows = [204.0, 220.0, 236.0, 252.0, 268.0];
    let mut points = Vec::new();
    for (i, &y) in rows.iter().enumerate() {
        let ends = [(66.0, y), (306.0, y)];
        points.extend(if i % 2 == 0 { ends } else { [ends[1], ends[0]] });
    }
    canvas.line(&points, canvas.stroke(4.0, palette.copper));
    canvas.caption(186.0, 186.0, "caption-outdoor-coil");
}

/// The fan turns while it runs, and its blades stand still while the job stands still.
fn fan(canvas: &Canvas, turn: f32) {
    let palette = canvas.palette;
    let (x, y, radius) = (186.0, 108.0, 62.0);
    canvas.circle(x, y, radius, palette.paper, canvas.ink(1.5));
    blades(canvas, (x, y), radius - 8.0, turn + 0.4);
}

/// A fan's three blades.
pub fn blades(canvas: &Canvas, (x, y): (f32, f32), radius: f32, turn: f32) {
    let third = std::f32::consts::TAU / 3.0;
    for blade in 0..3 {
        let at = |offset: f32, r: f32| {
            let angle = turn + third * blade as f32 + offset;
            (x + r * angle.cos(), y + r * angle.sin())
        };
        let points = [
            (x, y),
            at(-0.28, radius * 0.7),
            at(0.0, radius),
            at(0.3, radius * 0.92),
        ];
        canvas.polygon(&points, canvas.palette.metal, canvas.ink(1.0));
    }
    canvas.circle(x, y, radius * 0.14, canvas.palette.raised, canvas.ink(1.0));
}

fn compressor(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let body = Rect::from_min_max(pos2(72.0, 314.0), pos2(148.0, 382.0));
    canvas.rect(body, 24.0, palette.metal, canvas.ink(2.0));
    // Terminal box with the contactor; its bar is in or out.
    let terminals = Rect::from_min_max(pos2(84.0, 338.0), pos2(112.0, 360.0));
    canvas.rect(terminals, 2.0, palette.raised, canvas.ink(1.0));
    let electrics = view.electrics();
    let bar = if electrics.held_in || electrics.outdoor_fan_runs {
        353.0
    } else {
        344.0
    };
    canvas.line(&[(89.0, bar), (107.0, bar)], canvas.ink(2.0));
    if electrics.compressor_runs {
        // It hums: two arcs beside the shell.
        for offset in [5.0, 10.0] {
            canvas.curve(
                [
                    (150.0 + offset, 330.0),
                    (156.0 + offset, 340.0),
                    (156.0 + offset, 350.0),
                    (150.0 + offset, 358.0),
                ],
                canvas.ink(1.0),
            );
        }
    }
    if view.clamp_meter_on() {
        canvas.circle(
            98.0,
            372.0,
            7.0,
            Color32::TRANSPARENT,
            canvas.stroke(3.0, palette.accent),
        );
        canvas.text(110.0, 374.0, Align2::LEFT_CENTER, 12.0, "A", palette.ink);
    }
    canvas.caption(200.0, 384.0, "caption-compressor");
}

fn nameplate(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let plate = Rect::from_min_max(pos2(266.0, 338.0), pos2(318.0, 374.0));
    canvas.rect(plate, 2.0, palette.paper, canvas.stroke(1.2, palette.faint));
    let refrigerant = view.scene.refrigerant;
    canvas.text(
        292.0,
        348.0,
        Align2::CENTER_CENTER,
        12.0,
        refrigerant,
        palette.ink,
    );
    for y in [358.0, 366.0] {
        canvas.line(&[(273.0, y), (311.0, y)], canvas.stroke(1.0, palette.faint));
    }
}

fn disconnect(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    let electrics = view.electrics();
    let frame = Rect::from_min_max(pos2(432.0, 36.0), pos2(476.0, 96.0));
    canvas.rect(frame, 3.0, palette.raised, canvas.ink(1.5));
    let handle_top = if electrics.disconnect_in { 56.0 } else { 24.0 };
    let handle = Rect::from_min_max(pos2(444.0, handle_top), pos2(464.0, handle_top + 22.0));
    canvas.rect(handle, 2.0, palette.metal, canvas.ink(1.5));
    if electrics.locked {
        let lock = Rect::from_min_max(pos2(445.0, 66.0), pos2(463.0, 80.0));
        canvas.circle(
            454.0,
            64.0,
            6.0,
            Color32::TRANSPARENT,
            canvas.stroke(2.5, palette.accent),
        );
        canvas.rect(lock, 2.0, palette.accent, canvas.ink(1.0));
        canvas.text(
            454.0,
            88.0,
            Align2::CENTER_CENTER,
            11.0,
            &canvas.say("caption-tag"),
            palette.ink,
        );
    }
    let name = canvas.say("caption-disconnect");
    canvas.text_within((454.0, 108.0), 82.0, 13.0, &name, palette.faint);
}

/// Draws a service valve over the lines: body, stem with cap, port with cap, core and tool.
pub fn valve(canvas: &Canvas, view: &View, line: Line) {
    let look = view.valve(line);
    let palette = canvas.palette;
    let y = line_y(line);
    let body = [
        (VALVES - 17.0, y - 13.0),
        (VALVES + 17.0, y - 13.0),
        (VALVES + 22.0, y + 13.0),
        (VALVES - 22.0, y + 13.0),
    ];
    canvas.polygon(&body, palette.metal, canvas.ink(1.5));
    stem(canvas, &look, y);
    port(canvas, &look, y);
}

/// The stem rises out of its neck as it is opened; the scale beside it has the two seats.
fn stem(canvas: &Canvas, look: &ValveLook, y: f32) {
    let palette = canvas.palette;
    let neck = Rect::from_min_max(pos2(VALVES - 8.0, y - 30.0), pos2(VALVES + 8.0, y - 13.0));
    canvas.rect(neck, 1.0, palette.raised, canvas.ink(1.2));
    let rise = 18.0 * look.open as f32;
    if look.cap_on {
        let cap = Rect::from_min_max(pos2(VALVES - 12.0, y - 56.0), pos2(VALVES + 12.0, y - 22.0));
        canvas.rect(cap, 4.0, palette.metal, canvas.ink(1.5));
        return;
    }
    let top = y - 34.0 - rise;
    canvas.line(
        &[(VALVES, y - 30.0), (VALVES, top)],
        canvas.stroke(8.0, palette.copper),
    );
    canvas.line(&[(VALVES - 5.0, top), (VALVES + 5.0, top)], canvas.ink(2.0));
    // The cap hangs beside.
    let cap = Rect::from_min_max(pos2(VALVES - 38.0, y - 40.0), pos2(VALVES - 22.0, y - 22.0));
    canvas.rect(cap, 3.0, Color32::TRANSPARENT, canvas.ink(1.2));
    for (mark, height) in [("F", 34.0), ("B", 52.0)] {
        let tick = y - height;
        canvas.line(
            &[(VALVES + 10.0, tick), (VALVES + 15.0, tick)],
            canvas.ink(1.0),
        );
        canvas.text(
            VALVES + 17.0,
            tick,
            Align2::LEFT_CENTER,
            10.0,
            mark,
            palette.faint,
        );
    }
}

fn port(canvas: &Canvas, look: &ValveLook, y: f32) {
    let palette = canvas.palette;
    let barrel = Rect::from_min_max(pos2(VALVES - 7.0, y + 13.0), pos2(VALVES + 7.0, y + 34.0));
    canvas.rect(barrel, 1.0, palette.copper, canvas.ink(1.2));
    if look.core_in {
        canvas.line(&[(VALVES, y + 22.0), (VALVES, y + 34.0)], canvas.ink(2.0));
    } else {
        canvas.circle(VALVES, y + 29.0, 3.0, palette.paper, canvas.ink(1.0));
    }
    if look.tool_on {
        let tool = Rect::from_min_max(pos2(VALVES - 9.0, y + 34.0), pos2(VALVES + 9.0, y + 56.0));
        canvas.rect(tool, 2.0, palette.metal, canvas.ink(1.5));
        let (dx, dy) = if look.tool_open {
            (0.0, 8.0)
        } else {
            (8.0, 0.0)
        };
        let middle = y + 45.0;
        canvas.line(
            &[(VALVES - dx, middle - dy), (VALVES + dx, middle + dy)],
            canvas.stroke(3.0, palette.accent),
        );
    }
    if look.port_cap_on {
        let cap = Rect::from_min_max(pos2(VALVES - 10.0, y + 26.0), pos2(VALVES + 10.0, y + 46.0));
        canvas.rect(cap, 3.0, palette.metal, canvas.ink(1.5));
    } else {
        let cap = Rect::from_min_max(pos2(VALVES - 36.0, y + 26.0), pos2(VALVES - 20.0, y + 44.0));
        canvas.rect(cap, 3.0, Color32::TRANSPARENT, canvas.ink(1.2));
    }
}

/// Where the outdoor unit's own caption of the ground is drawn.
pub fn ground(canvas: &Canvas) {
    let palette = canvas.palette;
    canvas.line(
        &[(-24.0, 404.0), (1064.0, 404.0)],
        canvas.stroke(1.5, palette.faint),
    );
    canvas.dashed(
        (places::WALL, 12.0),
        (places::WALL, 404.0),
        canvas.stroke(2.0, palette.faint),
    );
    canvas.text(
        places::WALL - 8.0,
        9.0,
        Align2::RIGHT_CENTER,
        12.0,
        &canvas.say("caption-outdoors"),
        palette.faint,
    );
    canvas.text(
        places::WALL + 8.0,
        9.0,
        Align2::LEFT_CENTER,
        12.0,
        &canvas.say("caption-indoors"),
        palette.faint,
    );
}
