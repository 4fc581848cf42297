//! Time and memory of the practise room: waits, the strip chart, attempts that are taken up again,
//! moments that are gone back to.

mod back;
mod chart;
#[path = "../support/folder.rs"]
mod folder;
#[path = "../support/forge.rs"]
mod forge;
mod resume;
mod room;
mod waits;
