//! The site: everything that can be worked on, drawn, each part to be pointed at, turned, carried
//! or reached by the keyboard.

mod carry;
mod cart;
mod context;
mod fans;
mod grip;
mod hose_curves;
mod indoor;
mod layout;
mod lines;
mod manifold;
mod outdoor;
mod places;
mod plate;
mod turning;
mod wrench;

use crate::gui::canvas::Canvas;
use crate::gui::part::Part;
use crate::gui::theme::Palette;
use crate::gui::view::View;
use crate::gui::widgets::{ask_for_focus, keys};
use crate::kit::Hose;
use crate::units::Torque;
use crate::words::Action;
use carry::Held;
use context::Site;
use eframe::egui::{
    CursorIcon, Id, Key, PointerButton, Rect, Response, Role, Sense, Ui, WidgetInfo, pos2, vec2,
};
use fans::Fans;
use grip::Grip;

/// Draws the site, lets a part be chosen, and does to it what the hand does. `torque` is what the
/// torque wrench is set to, `covered` the width at the right that something lies over. Gives where
/// the chosen part is on the screen.
pub fn site_ui(
    ui: &mut Ui,
    view: &View,
    torque: Torque,
    chosen: &mut Option<Part>,
    actions: &mut Vec<Action>,
    covered: f32,
) -> Option<Rect> {
    let area = ui.available_rect_before_wrap();
    ui.allocate_rect(area, Sense::hover());
    let palette = Palette::of(ui);
    ui.painter().rect_filled(area, 0.0, palette.paper);
    let seen = Rect::from_min_max(area.min, pos2(area.right() - covered, area.bottom()));
    ui.set_clip_rect(seen.intersect(ui.clip_rect()));
    let sheet = area.shrink(4.0);
    let painter = ui.painter_at(seen);
    let still = Canvas::new(painter.clone(), sheet, palette, view.reads.language);
    let pan = pan(ui, &still, view, *chosen, seen, covered);
    let sheet = sheet.translate(vec2(-pan, 0.0));
    let canvas = &Canvas::new(painter, sheet, palette, view.reads.language);
    let site = Site {
        canvas,
        view,
        torque,
    };
    let held = Grip::held(ui, &site);
    draw(canvas, view, Fans::turned(ui, view), held);
    for part in Part::on_site(view) {
        part_ui(ui, &site, part, chosen, actions);
    }
    for hose in Hose::ALL {
        hose_end_ui(ui, &site, hose, chosen, actions);
    }
    Grip::follow(ui, &site, actions);
    if !actions.is_empty() {
        // What they change is to be seen at once.
        ui.request_repaint();
    }
    let focused = ui.memory(eframe::egui::Memory::focused);
    let parts = |id| Part::all().any(|part| part_id(ui, part) == id);
    keys::note_site_focus(ui.ctx(), focused.is_some_and(parts));
    chosen.map(|part| canvas.area(layout::area(part, view)))
}

/// How far the site is moved to the left so that the chosen part is in view beside what covers it.
/// It moves no further than it must.
fn pan(
    ui: &Ui,
    still: &Canvas,
    view: &View,
    chosen: Option<Part>,
    seen: Rect,
    covered: f32,
) -> f32 {
    const MARGIN: f32 = 16.0;
    let id = Id::unique("how far the site is moved");
    let mut pan: f32 = ui.data(|data| data.get_temp(id)).unwrap_or(0.0);
    if let Some(part) = chosen
        && Grip::now(ui).is_none()
    {
        let part = still.area(layout::area(part, view));
        pan = pan.max(part.right() + MARGIN - seen.right());
        pan = pan.min(part.left() - MARGIN - seen.left());
    }
    let pan = pan.clamp(0.0, covered);
    ui.data_mut(|data| data.insert_temp(id, pan));
    pan
}

/// The widget of a part.
fn part_id(ui: &Ui, part: Part) -> Id {
    ui.scope_id().with(format!("{part:?}"))
}

/// Paints back to front.
fn draw(canvas: &Canvas, view: &View, fans: Fans, held: Option<Held>) {
    use crate::plant::Line;
    outdoor::ground(canvas);
    outdoor::draw(canvas, view, fans.outdoor);
    indoor::draw(canvas, view, fans.indoor);
    lines::draw(canvas, view);
    cart::draw(canvas, view);
    manifold::hoses(canvas, view, held);
    manifold::draw(canvas, view);
    cart::draw_micron_gauge(canvas, view, held);
    for line in Line::ALL {
        outdoor::valve(canvas, view, line);
    }
    lines::bubbles(canvas, view);
    lines::thermometers(canvas, view, held);
    cart::draw_detector(canvas, view, held);
    manifold::hose_ends(canvas, view, held);
}

/// The invisible widget over a part: it takes clicks, drags and the keyboard's focus, tells its
/// name and state, and marks what is chosen.
fn part_ui(ui: &Ui, site: &Site, part: Part, chosen: &mut Option<Part>, actions: &mut Vec<Action>) {
    let (canvas, view) = (site.canvas, site.view);
    let area = layout::area(part, view);
    let turn = part.turn(view);
    let moves = Grip::can_take(part, view);
    let sense = if moves {
        Sense::click_and_drag()
    } else {
        Sense::click()
    };
    let id = part_id(ui, part);
    let response = ui.interact(canvas.area(area), id, sense);
    let name = format!("{}, {}", view.tell(&part.label()), part.state(view));
    let is_chosen = *chosen == Some(part);
    response.widget_info(|| {
        let mut info = WidgetInfo::selected(Role::Button, true, is_chosen, &name);
        info.value = turn.map(|turn| turn.now);
        info
    });
    if response.clicked() || response.gained_focus() || response.drag_started() {
        *chosen = Some(part);
    }
    // Enter on a part leads to what can be done to it, Escape back to the part.
    if response.clicked() && !response.clicked_by(PointerButton::Primary) {
        ask_for_focus(ui.ctx());
        ui.request_repaint();
    }
    let grip = Grip::now(ui);
    if is_chosen && grip.is_none() && ui.input(|input| input.key_pressed(Key::Escape)) {
        response.request_focus();
    }
    if response.drag_started() {
        Grip::begin(ui, site, part, actions);
    }
    if let Some(turn) = turn {
        actions.extend(turning::by_wheel_and_keys(ui, &response, turn));
        let at_work = is_chosen || response.hovered() || response.has_focus();
        if turn.is_bare(view) && at_work {
            turning::draw(canvas, view, turn);
        }
    }
    let mut is_shown = is_chosen && matches!(grip, Some(Grip::Carrying(_)));
    if let Part::Joint(joint) = part
        && is_chosen
    {
        let hand = Grip::wrench_on(grip, joint);
        wrench::draw(canvas, view, joint, site.torque, hand);
        // The wrench shows the choice: a frame would hide how the nut bubbles.
        is_shown = !response.has_focus();
    }
    // What is carried is where the hand is.
    if !is_shown {
        mark(canvas, area, &response, is_chosen);
    }
    tell(response, moves, grip.is_none(), &name);
}

/// What is pointed at has a thin line round it, what is chosen a thick one, and what has the
/// keyboard's focus a double one.
fn mark(canvas: &Canvas, area: Rect, response: &Response, is_chosen: bool) {
    let palette = canvas.palette;
    if response.has_focus() {
        canvas.mark(area, palette.accent, 2.5);
        canvas.mark(area.expand(4.5), palette.ink, 1.5);
    } else if is_chosen {
        canvas.mark(area, palette.accent, 2.5);
    } else if response.hovered() {
        canvas.mark(area, palette.accent, 1.0);
    }
}

/// The pointer shows what the hand can do here; the name comes while the hand is free.
fn tell(response: Response, moves: bool, is_free: bool, name: &str) {
    if is_free {
        let cursor = if moves {
            CursorIcon::Grab
        } else {
            CursorIcon::PointingHand
        };
        response.on_hover_cursor(cursor).on_hover_text(name);
    }
}

/// The end of a hose, to be taken in the hand. The hose itself has the name and the focus.
fn hose_end_ui(
    ui: &Ui,
    site: &Site,
    hose: Hose,
    chosen: &mut Option<Part>,
    actions: &mut Vec<Action>,
) {
    let (canvas, view) = (site.canvas, site.view);
    let part = Part::Hose(hose);
    let area = layout::coupling(hose, view);
    let id = ui.scope_id().with(("end", format!("{part:?}")));
    let response = ui.interact(canvas.area(area), id, Sense::CLICK | Sense::DRAG);
    if response.clicked() || response.drag_started() {
        *chosen = Some(part);
    }
    if response.drag_started() {
        Grip::begin(ui, site, part, actions);
    }
    let is_free = Grip::now(ui).is_none();
    if is_free && response.hovered() {
        canvas.mark(area, canvas.palette.accent, 1.0);
    }
    let name = format!("{}, {}", view.tell(&part.label()), part.state(view));
    tell(response, true, is_free, &name);
}
