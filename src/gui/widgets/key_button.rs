//! A button with its key beside its text. A view has at most one that is filled.

use crate::gui::theme::{Palette, semibold, size};
use eframe::egui::{
    Color32, FontId, Key, Rect, Response, Role, Sense, Shape, Stroke, StrokeKind, Ui, WidgetInfo,
    pos2, vec2,
};

/// How a button looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    /// As usual.
    Plain,
    /// What it stands for is open or chosen: a tint and a tick.
    Chosen,
    /// The next thing to do.
    Filled,
}

/// The least height of what can be pressed, points.
pub const LEAST: f32 = 32.0;

/// Shows a button as wide as its text needs, in more than one line where that is wider than the
/// place; gives whether it was pressed by the pointer or while it had the focus.
pub fn key_button(ui: &mut Ui, text: &str, key: Option<(&str, Key)>, look: Look) -> Response {
    let palette = Palette::of(ui);
    let (fill, ink) = match look {
        Look::Plain => (palette.raised, palette.ink),
        Look::Chosen => (palette.tint, palette.ink),
        Look::Filled => (palette.accent, palette.raised),
    };
    let cap = key.map(|(name, _)| {
        let font = FontId::proportional(size::CAPTION);
        ui.painter().layout_no_wrap(name.to_owned(), font, ink)
    });
    let beside = cap.as_ref().map_or(0.0, |cap| cap.size().x + 16.0);
    let font = match look {
        Look::Filled => semibold(size::TEXT),
        Look::Plain | Look::Chosen => FontId::proportional(size::TEXT),
    };
    let room = (ui.max_rect().width() - 16.0 - beside).max(40.0);
    let body = ui.painter().layout(text.to_owned(), font, ink, room);
    let wanted = vec2(
        body.size().x + 16.0 + beside,
        (body.size().y + 10.0).max(LEAST),
    );
    let (rect, response) = ui.allocate_exact_size(wanted, Sense::click());
    response.widget_info(|| {
        WidgetInfo::selected(Role::Button, ui.is_enabled(), look == Look::Chosen, text)
    });
    let line = if response.has_focus() {
        Stroke::new(2.5 * palette.line, palette.accent)
    } else if response.hovered() || look == Look::Chosen {
        Stroke::new(1.6 * palette.line, palette.accent)
    } else {
        Stroke::new(palette.line, palette.edge)
    };
    ui.painter().rect(rect, 5.0, fill, line, StrokeKind::Inside);
    let left = pos2(rect.left() + 8.0, rect.center().y - 0.5 * body.size().y);
    ui.painter().galley(left, body, ink);
    if let Some(cap) = cap {
        let at = Rect::from_min_size(
            pos2(rect.right() - cap.size().x - 14.0, rect.center().y - 10.0),
            vec2(cap.size().x + 10.0, 20.0),
        );
        let edge = match look {
            Look::Filled => palette.raised,
            Look::Plain | Look::Chosen => palette.edge,
        };
        let ground = match look {
            Look::Filled => Color32::TRANSPARENT,
            Look::Plain | Look::Chosen => palette.panel,
        };
        let line = Stroke::new(palette.line, edge);
        ui.painter().rect(at, 4.0, ground, line, StrokeKind::Inside);
        let corner = at.center() - 0.5 * cap.size();
        ui.painter().galley(corner, cap, ink);
    }
    response
}

/// A tick in the middle of a place.
pub fn tick(ui: &Ui, at: Rect, colour: Color32) {
    let middle = at.center();
    let points = vec![
        middle + vec2(-5.0, 0.0),
        middle + vec2(-1.5, 4.0),
        middle + vec2(5.0, -5.0),
    ];
    ui.painter()
        .add(Shape::line(points, Stroke::new(2.0, colour)));
}
