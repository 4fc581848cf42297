//! A thing of two states: two halves that never trade places. The half that is so has a tick.

use crate::gui::theme::{Palette, size};
use crate::gui::view::View;
use crate::gui::widgets::focus::take_focus;
use crate::gui::widgets::key_button::{LEAST, tick};
use crate::gui::widgets::keys;
use crate::words::Action;
use eframe::egui::{
    Align2, FontId, Rect, Response, Role, Sense, Stroke, StrokeKind, Ui, WidgetInfo, pos2, vec2,
};

/// The two halves of a switch: for each the word on it, and what pressing it does.
#[derive(Debug, Clone, Copy)]
pub struct Halves<'a> {
    /// The half that says yes.
    pub yes: (&'a str, &'a str),
    /// The half that says no.
    pub no: (&'a str, &'a str),
}

/// Shows a switch with its name; pressing the half that is not so gives an action.
pub fn switch(
    ui: &mut Ui,
    view: &View,
    (name, halves): (&str, Halves),
    on: bool,
    action: impl Fn(bool) -> Action,
    actions: &mut Vec<Action>,
) {
    ui.label(view.say(name));
    let (room, _) = ui.allocate_exact_size(vec2(ui.available_width(), LEAST), Sense::hover());
    let middle = room.center().x;
    let key = keys::next_slot(ui.ctx());
    let ways = [
        (
            halves.yes,
            true,
            Rect::from_min_max(room.min, pos2(middle, room.max.y)),
        ),
        (
            halves.no,
            false,
            Rect::from_min_max(pos2(middle, room.min.y), room.max),
        ),
    ];
    for ((word, what), way, rect) in ways {
        let is_so = on == way;
        let response = half(ui, (&view.say(word), &view.say(what)), rect, is_so);
        let by_key = !is_so && key.is_some_and(|(_, key)| keys::pressed(ui.ctx(), key));
        if !is_so {
            take_focus(&response);
            if let Some((figure, _)) = key {
                caption(ui, rect, figure);
            }
        }
        if (response.clicked() || by_key) && !is_so {
            actions.push(action(way));
        }
    }
}

fn half(ui: &Ui, (word, what): (&str, &str), rect: Rect, is_so: bool) -> Response {
    let palette = Palette::of(ui);
    let id = ui.scope_id().with(("half", what));
    // The half that is so is told and not worked: the Tab key passes it by.
    let sense = if is_so {
        Sense::hover()
    } else {
        Sense::click()
    };
    let response = ui.interact(rect, id, sense);
    response.widget_info(|| WidgetInfo::selected(Role::Button, ui.is_enabled(), is_so, what));
    let fill = if is_so { palette.tint } else { palette.raised };
    let line = if response.has_focus() {
        Stroke::new(2.5 * palette.line, palette.accent)
    } else if is_so || response.hovered() {
        Stroke::new(1.6 * palette.line, palette.accent)
    } else {
        Stroke::new(palette.line, palette.edge)
    };
    ui.painter().rect(rect, 5.0, fill, line, StrokeKind::Inside);
    if is_so {
        let at =
            Rect::from_center_size(pos2(rect.left() + 16.0, rect.center().y), vec2(16.0, 16.0));
        tick(ui, at, palette.accent);
    }
    let font = FontId::proportional(size::TEXT);
    ui.painter().text(
        rect.center(),
        Align2::CENTER_CENTER,
        word,
        font,
        palette.ink,
    );
    response.on_hover_text(what)
}

fn caption(ui: &Ui, rect: Rect, figure: &str) {
    let palette = Palette::of(ui);
    let at = pos2(rect.right() - 8.0, rect.center().y);
    let font = FontId::proportional(size::CAPTION);
    ui.painter()
        .text(at, Align2::RIGHT_CENTER, figure, font, palette.faint);
}
