//! The window's own widgets. Each is painted here and tells the accessibility tree what it is.

mod choice;
mod dial;
mod display;
mod hold;
mod settle;

pub use choice::choice;
pub use dial::{Dial, dial};
pub use display::{bar, display};
pub use hold::{ask_for_focus, first_takes_focus, take_focus};
pub use settle::{Setting, setting};
