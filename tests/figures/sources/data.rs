//! A reader for the tables of values: `#` lines name the source, then come the names of the
//! columns, then rows.

use csv::{ReaderBuilder, StringRecord};

/// One row, with the names of its columns.
#[derive(Debug, Clone)]
pub(super) struct Row {
    names: StringRecord,
    cells: StringRecord,
}

impl Row {
    /// The text under `column`.
    pub fn text(&self, column: &str) -> &str {
        let place = self.names.iter().position(|name| name == column);
        let cell = place.and_then(|place| self.cells.get(place));
        cell.unwrap_or_default()
    }

    /// The number under `column`; not a number where the cell is empty, so that no comparison
    /// with it can be met.
    pub fn number(&self, column: &str) -> f64 {
        self.text(column).parse().unwrap_or(f64::NAN)
    }

    /// The columns after the first that hold a number, with their names.
    pub fn rest(&self) -> impl Iterator<Item = (&str, f64)> {
        let cells = self.names.iter().zip(&self.cells).skip(1);
        cells.filter_map(|(name, cell)| Some((name, cell.parse().ok()?)))
    }
}

/// The rows of a table.
pub(super) fn rows(table: &'static str) -> impl Iterator<Item = Row> {
    let mut reader = ReaderBuilder::new()
        .comment(Some(b'#'))
        .flexible(true)
        .from_reader(table.as_bytes());
    let names = reader.headers().cloned().expect("a table has a head");
    reader.into_records().map(move |cells| Row {
        names: names.clone(),
        cells: cells.expect("a table is a list of rows"),
    })
}
