//! The marks of what was done, in a lane along the strip chart.

use crate::gui::moment::{Moment, moment_text};
use crate::gui::theme::Palette;
use crate::gui::view::View;
use crate::job::TICKS_PER_SECOND;
use crate::text::Message;
use eframe::egui::{
    Id, Pos2, Rect, Response, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2,
};
use egui_plot::PlotTransform;

/// The height of the lane.
pub const LANE: f32 = 12.0;

/// Marks closer than this are one.
const APART: f32 = 9.0;

/// More actions than this are counted and not listed.
const LISTED: usize = 6;

/// What was done at one place of the lane.
struct LaneMark {
    x: f32,
    /// The places in the list of what was done.
    actions: Vec<usize>,
}

/// Shows the lane under a strip; gives the place in the list of the first action of a mark that
/// was pressed. A pointer reads the marks; the keyboard has the list of moments.
pub fn marks_ui(
    ui: &mut Ui,
    view: &View,
    strip: &PlotTransform,
    moments: &[Moment],
) -> Option<usize> {
    let lane = ui.allocate_space(vec2(ui.available_width(), LANE)).1;
    let mut pressed = None;
    for mark in merged(strip, moments) {
        let Some(&first) = mark.actions.first() else {
            continue;
        };
        let place = Rect::from_center_size(pos2(mark.x, lane.center().y), vec2(APART, LANE));
        let id = Id::unique(("what was done", first));
        let response = ui.interact(place, id, Sense::CLICK);
        let text = lane_text(view, &mark, moments);
        let name = text.clone();
        response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
        paint(ui, place.center_top(), &response, mark.actions.len());
        if response.on_hover_text(text).clicked() {
            pressed = Some(first);
        }
    }
    pressed
}

/// The marks that are in sight, those that are close to each other as one.
fn merged(strip: &PlotTransform, moments: &[Moment]) -> Vec<LaneMark> {
    let mut marks: Vec<LaneMark> = Vec::new();
    for (index, moment) in moments.iter().enumerate() {
        let seconds = moment.tick as f64 / TICKS_PER_SECOND as f64;
        let x = strip.position_from_point_x(seconds);
        if moment.refused || !strip.frame().x_range().contains(x) {
            continue;
        }
        match marks.last_mut() {
            Some(mark) if x - mark.x < APART => mark.actions.push(index),
            Some(_) | None => marks.push(LaneMark {
                x,
                actions: vec![index],
            }),
        }
    }
    marks
}

fn lane_text(view: &View, mark: &LaneMark, moments: &[Moment]) -> String {
    let first = mark.actions.iter().take(LISTED);
    let language = view.reads.language;
    let mut lines: Vec<String> = first
        .map(|&index| moment_text(language, &moments[index]))
        .collect();
    if mark.actions.len() > LISTED {
        let count = mark.actions.len() - LISTED;
        lines.push(view.tell(&Message::new("time-more").with("count", count)));
    }
    lines.join("\n")
}

/// A small pointer upward, filled where it stands for several.
fn paint(ui: &Ui, tip: Pos2, response: &Response, count: usize) {
    let palette = Palette::of(ui);
    let colour = if response.hovered() {
        palette.accent
    } else {
        palette.ink
    };
    let corners = vec![
        tip + vec2(0.0, 1.0),
        tip + vec2(4.0, 10.0),
        tip + vec2(-4.0, 10.0),
    ];
    let fill = if count > 1 { colour } else { palette.paper };
    let shape = Shape::convex_polygon(corners, fill, Stroke::new(1.0, colour));
    ui.painter().add(shape);
}
