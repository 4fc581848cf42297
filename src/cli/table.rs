//! Tables for people: columns as wide as their widest cell.

/// A table with a head.
#[derive(Debug)]
pub(super) struct Table {
    rows: Vec<Vec<String>>,
}

impl Table {
    /// A table with the names of its columns.
    pub(super) fn with_head(head: &[&str]) -> Self {
        let head = head.iter().map(|cell| (*cell).to_owned()).collect();
        Self { rows: vec![head] }
    }

    /// Adds a row.
    pub(super) fn row(&mut self, cells: impl IntoIterator<Item = String>) {
        self.rows.push(cells.into_iter().collect());
    }

    /// The table as text: numbers to the right, words to the left.
    pub(super) fn text(&self) -> String {
        let columns = self.rows.iter().map(Vec::len).max().unwrap_or(0);
        let widths: Vec<usize> = (0..columns)
            .map(|column| {
                let cells = self.rows.iter().filter_map(|row| row.get(column));
                cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
            })
            .collect();
        let mut text = String::new();
        for row in &self.rows {
            let cells = row.iter().zip(&widths).map(|(cell, &width)| {
                let is_number = cell.starts_with(|c: char| c.is_ascii_digit() || c == '-');
                if is_number {
                    format!("{cell:>width$}")
                } else {
                    format!("{cell:<width$}")
                }
            });
            let line = cells.collect::<Vec<_>>().join("  ");
            text.push_str(line.trim_end());
            text.push('\n');
        }
        text
    }
}
