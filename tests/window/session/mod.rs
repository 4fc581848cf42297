//! Time and memory of the practise room: waits, the strip chart, attempts that are taken up again,
//! moments that are gone back to.

#![expect(
    clippy::disallowed_methods,
    reason = "that nobody waits in front of the screen is measured on the wall"
)]

mod back;
mod chart;
mod resume;
mod room;
mod waits;
