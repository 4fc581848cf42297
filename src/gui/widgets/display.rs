//! A number display and a row of bars.

use crate::gui::theme::Palette;
use eframe::egui::{
    Align2, CornerRadius, FontId, Rect, Role, Sense, Stroke, StrokeKind, Ui, WidgetInfo, pos2, vec2,
};

/// A display of one instrument: its name small above, its text large.
pub fn display(ui: &mut Ui, name: &str, text: &str, number: Option<f64>, size: f32, width: f32) {
    let palette = Palette::of(ui);
    let wanted = vec2(width, size + 22.0);
    let (rect, response) = ui.allocate_exact_size(wanted, Sense::hover());
    response.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::Meter, true, name);
        info.value = number;
        info.current_text_value = Some(text.to_owned());
        info
    });
    let painter = ui.painter_at(rect);
    painter.rect(
        rect.shrink(1.0),
        CornerRadius::same(4),
        palette.raised,
        Stroke::new(palette.line, palette.metal),
        StrokeKind::Inside,
    );
    painter.text(
        rect.left_top() + vec2(7.0, 4.0),
        Align2::LEFT_TOP,
        name,
        FontId::proportional(fitting(12.0, name, width)),
        palette.faint,
    );
    painter.text(
        rect.right_bottom() - vec2(7.0, 2.0),
        Align2::RIGHT_BOTTOM,
        text,
        FontId::proportional(fitting(size, text, width)),
        palette.ink,
    );
}

/// The size at which a text fits: digits are about half as wide as they are high.
fn fitting(size: f32, text: &str, width: f32) -> f32 {
    let wide = 0.56 * size * text.chars().count() as f32;
    size.min(size * (width - 16.0) / wide.max(1.0))
}

/// A signal from 0 to 1 as ten bars that rise; `away` is said where there is none.
pub fn bar(ui: &mut Ui, name: &str, away: &str, signal: Option<f64>, width: f32) {
    let palette = Palette::of(ui);
    let (rect, response) = ui.allocate_exact_size(vec2(width, 36.0), Sense::hover());
    response.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::Meter, true, name);
        info.value = signal;
        info
    });
    let painter = ui.painter_at(rect);
    let word = match signal {
        None => away.to_owned(),
        Some(share) => format!("{:.0} %", share * 100.0),
    };
    let font = FontId::proportional(12.0);
    painter.text(
        rect.left_top(),
        Align2::LEFT_TOP,
        name,
        font.clone(),
        palette.faint,
    );
    painter.text(rect.right_top(), Align2::RIGHT_TOP, word, font, palette.ink);
    let step = rect.width() / 10.0;
    for i in 0..10 {
        let lit = signal.is_some_and(|share| share * 10.0 > f64::from(i));
        let height = 8.0 + 1.2 * i as f32;
        let left = rect.left() + step * i as f32;
        let bar = Rect::from_min_max(
            pos2(left + 1.0, rect.bottom() - height),
            pos2(left + step - 2.0, rect.bottom()),
        );
        let fill = if lit { palette.warn } else { palette.raised };
        painter.rect(
            bar,
            CornerRadius::ZERO,
            fill,
            Stroke::new(palette.line, palette.metal),
            StrokeKind::Inside,
        );
    }
}
