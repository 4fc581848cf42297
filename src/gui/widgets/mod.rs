//! The window's own widgets. Each is painted here and tells the accessibility tree what it is.

mod choice;
mod dial;
mod display;
mod settle;

pub use choice::choice;
pub use dial::{Dial, dial};
pub use display::{bar, display};
pub use settle::{Setting, setting};
