//! A small plate with lines of text, over everything.

use crate::gui::canvas::{Canvas, SHEET, around};
use eframe::egui::{Align2, vec2};

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
        (SHEET.left() - area.left()).max(0.0) - (area.right() - SHEET.right()).max(0.0),
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
