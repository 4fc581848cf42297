//! The coach: for practice, the next thought and what a mistake would have cost.
//!
//! It knows the state of the job and the rubric and nothing of any one scenario. Each criterion
//! that is not met yet *wants* something ([`Want`]); the earliest in the order of the work is the
//! next thought ([`outlook`]). A thought has three depths: the aim, as a question; the principle
//! and the instrument that tells; what is to be reached, with the value of the rubric. None of
//! them says where to put a hand, and none gives the diagnosis away.
//!
//! It is silent while somebody is assessed; that is for who shows it to see to.

mod cost;
mod guard;
mod next;
mod signs;
mod stage;
mod sums;
mod text;
mod thought;
mod want;

pub use cost::{Happening, Price, happenings, lost, price};
pub use next::{Outlook, outlook};
pub use stage::{Stage, exercises};
pub use sums::{Slip, slips};
pub use thought::{Depth, Teller};
pub use want::{Situation, Want};
