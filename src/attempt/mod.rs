//! The recording of one person's actions in one job: the journal, its chain, the replay.
//!
//! A job is a pure function of scenario, seed and actions. So an attempt stores no states: it
//! stores the actions with the tick at which each was done, and digests of the physics, so that a
//! replay that strays is caught at the line where it strays.
//!
//! ```text
//! coldbench attempt 2                                            chain
//! program "0.1.0"                                                chain
//! ...the head: scenario, unit, digests, seed, who, mode...       chain
//!    tick  physics digest    entry                               chain
//!       0  9f2c...           do Protect(true)                    chain
//!     600  03aa...           mark                                chain
//!     731  77d1...           do Purge(Low)                       chain
//!     731  77d1...           refused "The hose is on nothing."   chain
//!    1204  5b0e...           closed                              chain
//! ```
//!
//! It ends `closed`, or `left` when the job is not handed back but tried again from a moment. A job
//! that is to be gone on with is put `aside`; one that was cut says nothing, and both go on with
//! `resumed`.
//!
//! The chain of a line is the SHA-256 of the chain before it and the line's own text, cut to 16
//! bytes. A byte changed anywhere shows at its line. The last chain is the fingerprint of the
//! attempt. Who rewrites a whole file can compute a new chain, but not the same fingerprint: write
//! the fingerprint down when the attempt is handed in.

mod catch_up;
mod chain;
mod head;
mod journal;
mod line;
mod mode;
mod observer;
mod place;
mod recorder;
mod replay;
mod unfinished;

pub use catch_up::CatchUp;
pub use head::{Branch, Head, Opening};
pub use journal::{End, Journal, NotGenuine};
pub use line::{JournalEntry, JournalLine};
pub use mode::Mode;
pub use observer::{Both, Observer};
pub use place::{DIRECTORY, ENDING};
pub use recorder::{Closed, RecordError, Recorder};
pub use replay::{Lookup, ReplayError, Replayed, replay};
pub use unfinished::{Unfinished, unfinished};

/// The version of the journal's format that is written; the first is read as well.
pub const FORMAT: u32 = 2;

/// Ticks between two marks: each simulated minute.
pub const TICKS_BETWEEN_MARKS: u64 = 60 * crate::job::TICKS_PER_SECOND;
