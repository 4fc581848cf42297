//! The window, worked by label, role, pointer and key as a person works it, without a screen.

mod coach;
#[path = "../support/folder.rs"]
mod folder;
#[path = "../support/forge.rs"]
mod forge;
mod hands;
mod job;
mod keyboard;
mod language;
mod recovery;
mod rooms;
mod session;
mod settings;
#[path = "../support/window.rs"]
mod support;
