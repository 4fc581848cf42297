//! The job sheet: what the apprentice wrote, and when.

use crate::words::{Diagnosis, Level, Quantity, SheetField};
use std::collections::BTreeMap;

/// One value on the sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Entry {
    /// The tick at which it was written.
    pub tick: u64,
    /// What was written.
    pub value: Level,
    /// What the instruments gave for this blank at that moment, if they gave anything.
    pub instruments: Option<Quantity>,
}

/// What the apprentice wrote. A blank written again keeps the last value.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct JobSheet {
    pub(super) entries: BTreeMap<SheetField, Entry>,
    pub(super) diagnosis: Option<(u64, Diagnosis)>,
}

impl JobSheet {
    /// What stands in a blank.
    pub fn entry(&self, field: SheetField) -> Option<&Entry> {
        self.entries.get(&field)
    }

    /// The diagnosis and the tick at which it was written.
    pub const fn diagnosis(&self) -> Option<(u64, Diagnosis)> {
        self.diagnosis
    }
}
