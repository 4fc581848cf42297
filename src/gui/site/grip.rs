//! The hand on the pointer: it turns a thing or carries it, from the press to letting go.

use crate::gui::canvas::Canvas;
use crate::gui::part::Part;
use crate::gui::site::carry::{Carried, Held};
use crate::gui::site::context::Site;
use crate::gui::site::plate::{plate, plate_width};
use crate::gui::site::turning::Turning;
use crate::gui::site::wrench::Wrench;
use crate::gui::view::View;
use crate::plant::Joint;
use crate::words::Action;
use eframe::egui::{Color32, CursorIcon, Id, Key, Pos2, Ui};

/// What the hand does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Grip {
    /// It turns a thing.
    Turning(Turning),
    /// It has the wrench on a nut.
    Wrench(Wrench),
    /// It carries a thing.
    Carrying(Carried),
}

fn slot() -> Id {
    Id::unique("the hand on the site")
}

impl Grip {
    /// What the hand has hold of.
    pub fn now(ui: &Ui) -> Option<Self> {
        ui.data(|data| data.get_temp(slot()))
    }

    /// Whether the hand can do something to a part but point at it.
    pub fn can_take(part: Part, view: &View) -> bool {
        let turns = part.turn(view).is_some() || matches!(part, Part::Joint(_));
        turns || Carried::of(part, view).is_some()
    }

    /// The wrench, if the hand has it on this nut.
    pub fn wrench_on(grip: Option<Self>, joint: Joint) -> Option<Wrench> {
        match grip {
            Some(Self::Wrench(wrench)) if wrench.joint == joint => Some(wrench),
            Some(Self::Wrench(_) | Self::Turning(_) | Self::Carrying(_)) | None => None,
        }
    }

    fn keep(self, ui: &Ui) {
        ui.data_mut(|data| data.insert_temp(slot(), self));
    }

    fn end(ui: &Ui) {
        ui.data_mut(|data| data.remove::<Self>(slot()));
    }

    /// Takes hold of a part where the pointer was pressed. What may not be turned says why.
    pub fn begin(ui: &Ui, site: &Site, part: Part, actions: &mut Vec<Action>) {
        let view = site.view;
        let Some(pressed) = ui.input(|input| input.pointer.press_origin()) else {
            return;
        };
        let at = site.canvas.units(pressed);
        if let Some(turn) = part.turn(view) {
            let turning = Turning::begin(turn, view, at);
            match turning {
                Some(turning) if turn.is_bare(view) => Self::Turning(turning).keep(ui),
                // The job refuses it in its own words.
                Some(_) => actions.extend(turn.to(turn.now - 1.0).or(turn.to(turn.now + 1.0))),
                None => {}
            }
        } else if let Part::Joint(joint) = part {
            Self::Wrench(Wrench::on(joint, at)).keep(ui);
        } else if let Some(carried) = Carried::of(part, view) {
            Self::Carrying(carried).keep(ui);
        }
    }

    /// What is carried and where it is now: at the pointer, or snapped to where it could go.
    pub fn held(ui: &Ui, site: &Site) -> Option<Held> {
        let view = site.view;
        let Some(Self::Carrying(what)) = Self::now(ui) else {
            return None;
        };
        let at = site.canvas.units(pointer(ui)?);
        let snapped = what
            .target_at(view, at)
            .filter(|target| view.would_do(&target.actions));
        Some(Held {
            what,
            at: snapped.map_or(at, |target| target.at),
        })
    }

    /// Follows the pointer and, when it is let go, does what that means.
    pub fn follow(ui: &Ui, site: &Site, actions: &mut Vec<Action>) {
        let (canvas, view) = (site.canvas, site.view);
        let Some(grip) = Self::now(ui) else { return };
        let Some(pointer) = pointer(ui) else {
            return Self::end(ui);
        };
        ui.set_cursor_icon(CursorIcon::Grabbing);
        let at = canvas.units(pointer);
        let is_held = ui.input(|input| input.pointer.primary_down());
        if ui.input(|input| input.key_pressed(Key::Escape)) {
            return Self::end(ui);
        }
        match grip {
            Self::Turning(mut turning) => {
                actions.extend(turning.follow(view, at));
                Self::Turning(turning).keep(ui);
            }
            Self::Wrench(mut wrench) => {
                if let Some(action) = wrench.follow(view, site.torque, at) {
                    // It clicked, or the nut came loose: the hand takes the wrench off.
                    actions.push(action);
                    return Self::end(ui);
                }
                Self::Wrench(wrench).keep(ui);
            }
            Self::Carrying(carried) if is_held => targets(canvas, view, carried, at),
            Self::Carrying(carried) => match carried.target_at(view, at) {
                Some(target) => actions.extend(target.actions),
                None => actions.extend(carried.let_go(view)),
            },
        }
        if !is_held {
            Self::end(ui);
        }
    }
}

fn pointer(ui: &Ui) -> Option<Pos2> {
    ui.input(|input| input.pointer.interact_pos())
}

/// Rings where the thing could go now; the one at hand is double and named.
fn targets(canvas: &Canvas, view: &View, carried: Carried, at: (f32, f32)) {
    let palette = canvas.palette;
    let at_hand = carried.target_at(view, at);
    for target in carried.targets(view) {
        if !view.would_do(&target.actions) {
            continue;
        }
        let (x, y) = target.at;
        let ring = |radius: f32, width: f32| {
            let stroke = canvas.stroke(width, palette.accent);
            canvas.circle(x, y, radius, Color32::TRANSPARENT, stroke);
        };
        ring(13.0, 2.0);
        if at_hand.as_ref() == Some(&target) {
            ring(17.0, 2.0);
            // Beside it: above and below there is more that one looks at.
            let name = [view.tell(&target.label)];
            let half = 0.5 * plate_width(canvas, &name);
            plate(canvas, (x + 24.0 + half, y), &name);
        }
    }
}
