//! The site as the hand meets it.

use crate::gui::canvas::Canvas;
use crate::gui::view::View;
use crate::units::Torque;

/// The site as the hand meets it.
pub struct Site<'a> {
    /// The sheet.
    pub canvas: &'a Canvas,
    /// What may be seen.
    pub view: &'a View<'a>,
    /// What the torque wrench is set to.
    pub torque: Torque,
}
