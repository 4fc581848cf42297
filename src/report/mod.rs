//! What leaves the program: the printable page of an attempt, a class as a table or for the
//! gradebook, and rows for other programs.

mod class;
mod csv;
mod json;
mod page;
mod wrap;

pub use class::class_table;
pub use csv::class_csv;
pub use json::{AssessorRow, EvidenceRow, FindingRow, MarkRow, ReportRows};
pub use page::Page;
