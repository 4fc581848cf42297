//! Every kind of criterion against courses built by hand: met, missed, at the boundary, and what
//! the evidence says.

mod events;
mod hold;
mod page;
mod recorder;
mod score;
mod state;
mod story;
