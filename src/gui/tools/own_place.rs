//! How a tool that not every cart has stands on the site.

use crate::gui::canvas::Canvas;
use crate::gui::view::View;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::{Rect, Ui};

/// A tool that not every cart has, at a place of its own on the site.
#[derive(Debug)]
pub struct OwnPlace {
    /// What can be pointed at.
    pub area: Rect,
    /// How it looks, in words.
    pub looks: fn(&View) -> Message,
    /// What can be done with it: each control gives exactly one action.
    pub hands: fn(&mut Ui, &View, &mut Vec<Action>),
    /// Draws it.
    pub draw: fn(&Canvas, &View),
    /// The key of the caution that belongs to it.
    pub caution: &'static str,
}
