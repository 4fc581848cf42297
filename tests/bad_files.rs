//! Files that are wrong in every way that people find, and what they must be told.
//!
//! Each `tests/bad/*.ron` says in comments `// error: LINE:COLUMN text` all that is wrong with it:
//! these errors at these places and no others, with the text in message or hint. A file whose
//! name starts with `procedure` is read as a procedure, with `unit` as a unit, any other as a
//! scenario.

use coldbench::job::procedure::Procedure;
use coldbench::scenario::{Diagnostic, Scenario};
use std::path::{Path, PathBuf};

fn bad_files() -> Vec<PathBuf> {
    let entries = std::fs::read_dir("tests/bad").expect("the folder is there");
    let mut files: Vec<PathBuf> = entries.map(|e| e.expect("readable").path()).collect();
    files.sort();
    files
}

fn errors_of(path: &Path) -> Vec<Diagnostic> {
    let name = path.file_name().expect("named").to_string_lossy();
    if name.starts_with("procedure") {
        Procedure::load(path).err().unwrap_or_default()
    } else if name.starts_with("unit") {
        Scenario::of_unit_file(path).err().unwrap_or_default()
    } else {
        Scenario::load(path).err().unwrap_or_default()
    }
}

/// The errors that a file promises: place and text.
fn promised(text: &str) -> Vec<(String, String)> {
    let lines = text
        .lines()
        .filter_map(|line| line.trim().strip_prefix("// error: "));
    lines
        .map(|line| line.split_once(' ').expect("`// error: LINE:COLUMN text`"))
        .map(|(place, text)| (place.to_owned(), text.to_owned()))
        .collect()
}

#[test]
fn each_bad_file_is_told_all_that_is_wrong_with_it_and_nothing_else() {
    let files = bad_files();
    assert!(files.len() >= 100, "{} files", files.len());
    let mut failures = Vec::new();
    for path in files {
        let text = std::fs::read_to_string(&path).expect("readable");
        let promised = promised(&text);
        let errors = errors_of(&path);
        let are_all_told = promised.len() == errors.len()
            && promised.iter().zip(&errors).all(|((place, text), error)| {
                let hint = error.hint.as_deref().unwrap_or_default();
                *place == format!("{}:{}", error.line, error.column)
                    && (error.message.contains(text) || hint.contains(text))
            });
        if !are_all_told || promised.is_empty() {
            let told: Vec<String> = errors.iter().map(ToString::to_string).collect();
            failures.push(format!("{} tells:\n{}", path.display(), told.join("\n")));
        }
    }
    assert!(failures.is_empty(), "{}", failures.join("\n\n"));
}

#[test]
fn an_error_is_printed_with_file_place_and_hint() {
    let path = Path::new("tests/bad/procedure_opening.ron");
    let errors = errors_of(path);
    let printed = errors[0].to_string();
    assert_eq!(
        printed,
        "tests/bad/procedure_opening.ron:6:37: error: open must lie in 0..=1, found 1.5"
    );
}
