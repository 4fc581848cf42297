//! The window's own widgets. Each is painted here and tells the accessibility tree what it is.

mod buttons;
mod choice;
mod dial;
mod display;
mod focus;
mod key_button;
pub mod keys;
mod quarter_turns;
mod setting;
mod switch;

pub use buttons::{act, offer};
pub use choice::choice;
pub use dial::{Dial, dial};
pub use display::{bar, display};
pub use focus::{ask_for_focus, first_takes_focus, take_focus};
pub use key_button::{Look, key_button};
pub use quarter_turns::quarter_turns;
pub use setting::{Setting, setting};
pub use switch::{Halves, switch};
