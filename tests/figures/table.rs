//! A reader for the small tables of `data/`: `#` lines name the source, then come names, then rows.

use std::path::Path;

/// One line of a table, with the names of its columns.
pub struct Line {
    names: Vec<String>,
    cells: Vec<String>,
}

impl Line {
    /// The text under `column`.
    pub fn text(&self, column: &str) -> &str {
        let place = self.names.iter().position(|name| name == column);
        &self.cells[place.unwrap_or_else(|| panic!("no column {column}"))]
    }

    /// The number under `column`.
    pub fn number(&self, column: &str) -> f64 {
        let text = self.text(column);
        text.parse()
            .unwrap_or_else(|_| panic!("{column} is not a number: {text}"))
    }
}

/// All lines of `data/<file>`.
pub fn read(file: &str) -> Vec<Line> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/figures/data")
        .join(file);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{file}: {error}"));
    assert!(text.starts_with('#'), "{file} does not name its source");
    let split = |line: &str| line.split(',').map(str::to_owned).collect::<Vec<_>>();
    let mut lines = text
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty());
    let names = split(lines.next().expect("a line of names"));
    let lines: Vec<Line> = lines
        .map(|line| Line {
            names: names.clone(),
            cells: split(line),
        })
        .collect();
    assert!(!lines.is_empty(), "{file} is empty");
    lines
}
