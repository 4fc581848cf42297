//! A pressure gauge that can be read from afar: pressure scale outside, the saturation temperature
//! of the chosen refrigerant inside, a long needle, its letter and its reading in the open sector.

use crate::gui::theme::Palette;
use eframe::egui::{
    Align2, Color32, FontId, Painter, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo,
};

/// What a dial shows.
#[derive(Debug)]
pub struct Dial<'a> {
    /// Its name in the accessibility tree.
    pub name: &'a str,
    /// Its letter.
    pub letter: &'a str,
    /// The colour of its rim.
    pub rim: Color32,
    /// Where the needle stands, 0 to 1 of the scale.
    pub needle: f64,
    /// The reading in words.
    pub text: String,
    /// The reading as a number in the unit of the scale, for the accessibility tree.
    pub number: Option<f64>,
    /// The pressure scale: share of the sweep, and the figure at a major mark.
    pub scale: Vec<(f64, Option<String>)>,
    /// The saturation scale likewise.
    pub saturation: Vec<(f64, Option<String>)>,
    /// What the two scales count: the unit of the pressure, that of the saturation temperature.
    pub units: (&'a str, String),
}

/// The scale starts here, degrees from three o'clock, and sweeps clockwise.
const START: f32 = 150.0;

/// The whole sweep, degrees.
const SWEEP: f32 = 240.0;

/// Paints a dial of a diameter.
pub fn dial(ui: &mut Ui, what: &Dial, diameter: f32) {
    let (rect, response) = ui.allocate_exact_size(Vec2::splat(diameter), Sense::hover());
    response.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::Meter, true, what.name);
        info.value = what.number;
        info.current_text_value = Some(what.text.clone());
        info
    });
    if ui.is_rect_visible(rect) {
        Face::new(ui, rect).paint(what);
    }
}

struct Face {
    painter: Painter,
    middle: Pos2,
    radius: f32,
    palette: &'static Palette,
}

impl Face {
    fn new(ui: &Ui, rect: Rect) -> Self {
        Self {
            painter: ui.painter_at(rect),
            middle: rect.center(),
            radius: 0.5 * rect.width() / 1.05 - 1.0,
            palette: Palette::of(ui),
        }
    }

    /// A point at a share of the sweep and a share of the radius.
    fn at(&self, share: f64, radius: f32) -> Pos2 {
        let angle = (START + SWEEP * share as f32).to_radians();
        self.middle + Vec2::angled(angle) * radius * self.radius
    }

    fn paint(&self, what: &Dial) {
        let palette = self.palette;
        self.painter.circle(
            self.middle,
            self.radius,
            palette.raised,
            Stroke::new(0.05 * self.radius, what.rim),
        );
        self.scale(&what.scale, (0.94, 0.83, 0.88), 0.69, 0.115, palette.ink);
        if !what.saturation.is_empty() {
            let arc = (0..=60)
                .map(|i| self.at(f64::from(i) / 60.0, 0.56))
                .collect();
            let thin = Stroke::new(1.0, palette.faint);
            self.painter.add(Shape::line(arc, thin));
            self.scale(
                &what.saturation,
                (0.56, 0.50, 0.53),
                0.42,
                0.085,
                palette.accent,
            );
        }
        self.needle(what.needle);
        self.words(what);
    }

    fn scale(
        &self,
        marks: &[(f64, Option<String>)],
        (outer, major, minor): (f32, f32, f32),
        figures: f32,
        size: f32,
        colour: Color32,
    ) {
        let font = FontId::proportional(size * self.radius);
        for (share, figure) in marks {
            let inner = if figure.is_some() { major } else { minor };
            let width = if figure.is_some() { 0.018 } else { 0.008 };
            let stroke = Stroke::new((width * self.radius).max(1.0) * self.palette.line, colour);
            let ends = [self.at(*share, inner), self.at(*share, outer)];
            self.painter.line_segment(ends, stroke);
            if let Some(figure) = figure {
                let at = self.at(*share, figures);
                self.painter
                    .text(at, Align2::CENTER_CENTER, figure, font.clone(), colour);
            }
        }
    }

    fn needle(&self, share: f64) {
        let palette = self.palette;
        let angle = (START + SWEEP * share as f32).to_radians();
        let along = Vec2::angled(angle) * self.radius;
        let across = along.rot90() * 0.03;
        let points = vec![
            self.middle + along * 0.9,
            self.middle + across - along * 0.12,
            self.middle - across - along * 0.12,
        ];
        self.painter
            .add(Shape::convex_polygon(points, palette.ink, Stroke::NONE));
        self.painter
            .circle_filled(self.middle, 0.06 * self.radius, palette.ink);
    }

    fn words(&self, what: &Dial) {
        let palette = self.palette;
        let write = |down: f32, size: f32, text: &str, colour: Color32| {
            let at = self.middle + Vec2::new(0.0, down * self.radius);
            let font = FontId::proportional(size * self.radius);
            self.painter
                .text(at, Align2::CENTER_CENTER, text, font, colour);
        };
        write(0.24, 0.17, what.letter, what.rim);
        write(0.48, 0.20, &what.text, palette.ink);
        write(0.66, 0.085, what.units.0, palette.faint);
        write(0.78, 0.085, &what.units.1, palette.accent);
    }
}
