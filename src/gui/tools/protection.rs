//! Glasses and gloves.

use crate::gui::canvas::{Canvas, around};
use crate::gui::view::View;
use eframe::egui::Color32;

/// Draws them on the hook, or gone because they are worn.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
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
