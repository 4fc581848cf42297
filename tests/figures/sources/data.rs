//! A reader for the tables of published values: `#` lines name the source, then come the names of
//! the columns, then rows.

/// One row, with the names of its columns.
#[derive(Debug, Clone)]
pub(super) struct Row {
    names: Vec<&'static str>,
    cells: Vec<&'static str>,
}

impl Row {
    /// The text under `column`.
    pub fn text(&self, column: &str) -> &'static str {
        let place = self.names.iter().position(|name| *name == column);
        let cell = place.and_then(|place| self.cells.get(place));
        cell.copied().unwrap_or_default()
    }

    /// The number under `column`; not a number where the cell is empty, so that no comparison
    /// with it can be met.
    pub fn number(&self, column: &str) -> f64 {
        self.text(column).parse().unwrap_or(f64::NAN)
    }

    /// The columns after the first that hold a number, with their names.
    pub fn rest(&self) -> impl Iterator<Item = (&'static str, f64)> + '_ {
        let cells = self.names.iter().zip(&self.cells).skip(1);
        cells.filter_map(|(name, cell)| Some((*name, cell.parse().ok()?)))
    }
}

/// The rows of a table.
pub(super) fn rows(table: &'static str) -> impl Iterator<Item = Row> {
    let mut lines = table
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty());
    let names: Vec<_> = lines.next().unwrap_or_default().split(',').collect();
    lines.map(move |line| Row {
        names: names.clone(),
        cells: line.split(',').collect(),
    })
}
