//! Everything that the program says, in each of its languages.
//!
//! The words stand in `assets/text/<language>/*.ftl`, in the notation of Project Fluent, and are
//! built into the program. A [`Message`] is a sentence without a language: whoever shows it gives
//! it one. What is written down (journal, JSON, printed page, command line) is English, which is
//! how a message displays itself.

mod files;
mod language;
mod message;

pub use language::Language;
pub use message::Message;
