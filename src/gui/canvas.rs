//! The sheet that the site is drawn on: drawing units in, pixels out.

use crate::gui::theme::Palette;
use crate::text::Language;
use eframe::egui::{
    Align2, Color32, CornerRadius, FontId, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2,
    emath::RectTransform, epaint::CubicBezierShape, pos2,
};

/// The sheet.
pub const SHEET: Rect = Rect {
    min: pos2(-34.0, 0.0),
    max: pos2(1074.0, 640.0),
};

/// A sheet of [`SHEET`] units that fills as much of the panel as keeps its shape.
pub struct Canvas {
    painter: Painter,
    to_screen: RectTransform,
    /// Pixels of the screen in a unit of the drawing.
    pub scale: f32,
    /// The colours.
    pub palette: &'static Palette,
    language: Language,
}

impl Canvas {
    /// A sheet in the middle of an area of the screen.
    pub fn new(
        painter: Painter,
        area: Rect,
        palette: &'static Palette,
        language: Language,
    ) -> Self {
        let sheet = SHEET;
        let scale = (area.width() / sheet.width()).min(area.height() / sheet.height());
        let target = Rect::from_center_size(area.center(), sheet.size() * scale);
        Self {
            painter,
            to_screen: RectTransform::from_to(sheet, target),
            scale,
            palette,
            language,
        }
    }

    /// The text of a key, in the language of the window.
    pub fn say(&self, key: &str) -> String {
        self.language.say(key)
    }

    /// A point on the screen.
    pub fn at(&self, x: f32, y: f32) -> Pos2 {
        self.to_screen * pos2(x, y)
    }

    /// A point of the screen, on the sheet.
    pub fn units(&self, pos: Pos2) -> (f32, f32) {
        let at = self.to_screen.inverse() * pos;
        (at.x, at.y)
    }

    /// An area on the screen.
    pub fn area(&self, rect: Rect) -> Rect {
        self.to_screen.transform_rect(rect)
    }

    /// A stroke of so many units, never thinner than a pixel.
    pub fn stroke(&self, width: f32, colour: Color32) -> Stroke {
        Stroke::new((width * self.scale).max(1.0) * self.palette.line, colour)
    }

    /// An outline in ink.
    pub fn ink(&self, width: f32) -> Stroke {
        self.stroke(width, self.palette.ink)
    }

    /// A line through points.
    pub fn line(&self, points: &[(f32, f32)], stroke: Stroke) {
        let points = points.iter().map(|&(x, y)| self.at(x, y)).collect();
        self.painter.add(Shape::line(points, stroke));
    }

    /// A dashed line.
    pub fn dashed(&self, from: (f32, f32), to: (f32, f32), stroke: Stroke) {
        let path = [self.at(from.0, from.1), self.at(to.0, to.1)];
        let dash = 6.0 * self.scale;
        self.painter
            .extend(Shape::dashed_line(&path, stroke, dash, dash));
    }

    /// A rectangle, filled and outlined.
    pub fn rect(&self, rect: Rect, radius: f32, fill: Color32, stroke: Stroke) {
        let radius = CornerRadius::from(radius * self.scale);
        self.painter
            .rect(self.area(rect), radius, fill, stroke, StrokeKind::Middle);
    }

    /// A circle, filled and outlined.
    pub fn circle(&self, x: f32, y: f32, radius: f32, fill: Color32, stroke: Stroke) {
        self.painter
            .circle(self.at(x, y), radius * self.scale, fill, stroke);
    }

    /// A convex polygon, filled and outlined.
    pub fn polygon(&self, points: &[(f32, f32)], fill: Color32, stroke: Stroke) {
        let points = points.iter().map(|&(x, y)| self.at(x, y)).collect();
        self.painter
            .add(Shape::convex_polygon(points, fill, stroke));
    }

    /// A smooth curve by its four points.
    pub fn curve(&self, points: [(f32, f32); 4], stroke: Stroke) {
        let points = points.map(|(x, y)| self.at(x, y));
        self.painter.add(CubicBezierShape::from_points_stroke(
            points,
            false,
            Color32::TRANSPARENT,
            stroke,
        ));
    }

    /// Text, never smaller than can be read.
    pub fn text(&self, x: f32, y: f32, align: Align2, size: f32, text: &str, colour: Color32) {
        let font = FontId::proportional((size * self.scale).clamp(10.0, 40.0));
        self.painter.text(self.at(x, y), align, text, font, colour);
    }

    /// A text in the middle of a place so wide, smaller where it would not fit.
    pub fn text_within(
        &self,
        (x, y): (f32, f32),
        width: f32,
        size: f32,
        text: &str,
        colour: Color32,
    ) {
        let full = FontId::proportional((size * self.scale).clamp(10.0, 40.0));
        let wide = self
            .painter
            .layout_no_wrap(text.to_owned(), full.clone(), colour)
            .size()
            .x;
        let share = (width * self.scale / wide.max(1.0)).min(1.0);
        let font = FontId::proportional(full.size * share);
        let middle = Align2::CENTER_CENTER;
        self.painter.text(self.at(x, y), middle, text, font, colour);
    }

    /// A caption in the lesser colour, centred: the text of a key.
    pub fn caption(&self, x: f32, y: f32, key: &str) {
        let text = self.say(key);
        self.text(x, y, Align2::CENTER_CENTER, 13.0, &text, self.palette.faint);
    }

    /// A mark round a thing that is chosen, pointed at or has the keyboard's focus.
    pub fn mark(&self, rect: Rect, colour: Color32, width: f32) {
        let grown = self.area(rect).expand(3.0);
        self.painter.rect_stroke(
            grown,
            CornerRadius::same(4),
            Stroke::new(width, colour),
            StrokeKind::Outside,
        );
    }
}

/// A point on the curve of four points.
pub fn on_curve(points: [(f32, f32); 4], t: f32) -> (f32, f32) {
    let u = 1.0 - t;
    let weights = [u * u * u, 3.0 * u * u * t, 3.0 * u * t * t, t * t * t];
    points
        .iter()
        .zip(weights)
        .fold((0.0, 0.0), |(x, y), (&(px, py), w)| {
            (x + px * w, y + py * w)
        })
}

/// A rectangle round a middle.
pub fn around(x: f32, y: f32, width: f32, height: f32) -> Rect {
    Rect::from_center_size(pos2(x, y), Vec2::new(width, height))
}
