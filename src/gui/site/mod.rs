//! The site: everything that can be worked on, drawn, each part to be pointed at or reached by
//! the keyboard.

mod canvas;
mod cart;
mod indoor;
mod layout;
mod outdoor;

pub use cart::{hose_colour, hose_letter};

use super::part::Part;
use super::theme::Palette;
use super::view::View;
use super::widgets::ask_for_focus;
use canvas::Canvas;
use eframe::egui::{Key, PointerButton, Role, Sense, Ui, WidgetInfo};

/// Draws the site and lets a part be chosen.
pub fn site_ui(ui: &mut Ui, view: &View, chosen: &mut Option<Part>) {
    let area = ui.available_rect_before_wrap();
    ui.allocate_rect(area, Sense::hover());
    let palette = Palette::of(ui);
    ui.painter().rect_filled(area, 0.0, palette.paper);
    let canvas = Canvas::new(ui.painter_at(area), area.shrink(4.0), palette);
    draw(&canvas, view);
    for part in Part::all() {
        part_ui(ui, &canvas, view, part, chosen);
    }
}

/// Paints back to front.
fn draw(canvas: &Canvas, view: &View) {
    use crate::plant::Line;
    outdoor::ground(canvas);
    outdoor::draw(canvas, view);
    indoor::draw(canvas, view);
    indoor::lines(canvas, view);
    cart::draw(canvas, view);
    cart::hoses(canvas, view);
    cart::manifold(canvas, view);
    cart::micron_gauge(canvas, view);
    for line in Line::ALL {
        outdoor::valve(canvas, view, line);
    }
    indoor::bubbles(canvas, view);
    indoor::thermometers(canvas, view);
    cart::detector(canvas, view);
    cart::hose_letters(canvas, view);
}

/// The invisible widget over a part: it takes clicks and the keyboard's focus, tells its name and
/// state, and marks what is chosen. A dashed mark is the pointer's, a full one the choice.
fn part_ui(ui: &Ui, canvas: &Canvas, view: &View, part: Part, chosen: &mut Option<Part>) {
    let area = layout::area(part, view);
    let response = ui.interact(
        canvas.area(area),
        ui.scope_id().with(format!("{part:?}")),
        Sense::click(),
    );
    let name = format!("{}, {}", view.tell(&part.label()), part.state(view));
    let is_chosen = *chosen == Some(part);
    response.widget_info(|| WidgetInfo::selected(Role::Button, true, is_chosen, &name));
    if response.clicked() || response.gained_focus() {
        *chosen = Some(part);
    }
    // Enter on a part leads to what can be done to it, Escape back to the part.
    if response.clicked() && !response.clicked_by(PointerButton::Primary) {
        ask_for_focus(ui.ctx());
        ui.request_repaint();
    }
    if is_chosen && ui.input(|input| input.key_pressed(Key::Escape)) {
        response.request_focus();
    }
    if is_chosen || response.has_focus() {
        canvas.mark(area, canvas.palette.accent, 2.5);
    } else if response.hovered() {
        canvas.mark(area, canvas.palette.accent, 1.0);
    }
    response.on_hover_text(name);
}
