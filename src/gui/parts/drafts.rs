//! What is half entered and not yet done.

use crate::units::Torque;

/// What is half entered and not yet done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drafts {
    /// The torque to make a joint up to.
    pub torque: Torque,
}

impl Default for Drafts {
    fn default() -> Self {
        Self {
            torque: Torque::from_foot_pounds(10.0),
        }
    }
}
