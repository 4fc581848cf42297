//! The house rules that a compiler does not hold: imports point down, the drawing library stays in
//! the window, files and lines stay short, and no file names a machine.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// The modules in the order of the architecture: each may import only those before it.
const ORDER: [&str; 15] = [
    "units", "files", "fluid", "plant", "kit", "text", "words", "scenario", "job", "attempt",
    "marking", "coach", "report", "cli", "gui",
];

/// Modules that stand side by side: neither imports the other.
const SIDE_BY_SIDE: [[&str; 2]; 1] = [["cli", "gui"]];

/// The most lines in a file.
const LINES_MAX: usize = 600;

/// The most characters in a line.
const COLUMNS_MAX: usize = 100;

#[test]
fn imports_point_down() {
    let mut wrong = Vec::new();
    for (path, text) in sources(&["src"]) {
        let Some(place) = Place::of(&path) else {
            continue;
        };
        for (line, code) in code_lines(&text).enumerate() {
            for target in targets(&code, place.depth) {
                if points_up(&place.module, &target) {
                    let (path, line) = (path.display(), line + 1);
                    wrong.push(format!("{path}:{line}: {} -> {target}", place.module));
                }
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "arrows that point up:\n{}",
        wrong.join("\n")
    );
}

#[test]
fn every_module_has_its_place_in_the_order() {
    let list = fs::read_to_string(root().join("src/lib.rs")).expect("the list of modules");
    for module in list
        .lines()
        .filter_map(|line| line.strip_prefix("pub mod "))
    {
        let module = module.trim_end_matches(';');
        assert!(
            ORDER.contains(&module),
            "{module} has no place in the order"
        );
    }
}

#[test]
fn the_drawing_library_stays_in_the_window() {
    let mut wrong = Vec::new();
    for (path, text) in sources(&["src"]) {
        if path.starts_with("src/gui") || path == Path::new("src/gui.rs") {
            continue;
        }
        for (line, code) in code_lines(&text).enumerate() {
            if names_the_drawing_library(&code) {
                wrong.push(format!("{}:{}", path.display(), line + 1));
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "egui outside src/gui:\n{}",
        wrong.join("\n")
    );
}

#[test]
fn files_and_lines_stay_short() {
    let mut wrong = Vec::new();
    for (path, text) in sources(&["src", "tests", "benches"]) {
        let path = path.display();
        let lines = text.lines().count();
        if lines > LINES_MAX {
            wrong.push(format!("{path}: {lines} lines"));
        }
        for (i, line) in text.lines().enumerate() {
            let columns = line.chars().count();
            if columns > COLUMNS_MAX {
                wrong.push(format!("{path}:{}: {columns} columns", i + 1));
            }
        }
    }
    assert!(wrong.is_empty(), "too long:\n{}", wrong.join("\n"));
}

#[test]
fn no_file_names_a_machine() {
    let mut wrong = Vec::new();
    let mut files = Vec::new();
    collect(&root(), &mut files);
    for path in files {
        // Pictures and tables of bytes are not text.
        let Ok(text) = fs::read_to_string(&path) else {
            continue;
        };
        for (i, line) in text.lines().enumerate() {
            if let Some(found) = machine_path(line) {
                wrong.push(format!("{}:{}: {found}", path.display(), i + 1));
            }
        }
    }
    assert!(wrong.is_empty(), "machine paths:\n{}", wrong.join("\n"));
}

#[test]
fn every_crate_comes_from_the_one_registry() {
    let lock = fs::read_to_string(root().join("Cargo.lock")).expect("the lock file");
    let sources: BTreeSet<&str> = lock
        .lines()
        .filter_map(|line| line.strip_prefix("source = "))
        .collect();
    let registry = "\"registry+https://github.com/rust-lang/crates.io-index\"";
    assert_eq!(sources.into_iter().collect::<Vec<_>>(), [registry]);
}

// The scanner.

/// Where a source file stands among the modules.
struct Place {
    /// The module under the crate's root.
    module: String,
    /// How many modules lie between the crate's root and the file's own names.
    depth: usize,
}

impl Place {
    /// Of a path from the root of the project; `None` for the roots of library and program.
    fn of(path: &Path) -> Option<Self> {
        let inside = path.strip_prefix("src").ok()?.with_extension("");
        let mut parts: Vec<String> = inside
            .iter()
            .map(|part| part.to_string_lossy().into_owned())
            .collect();
        if parts.last().is_some_and(|last| last == "mod") {
            parts.pop();
        }
        let module = parts.first()?.clone();
        let is_root = parts.len() == 1 && (module == "lib" || module == "main");
        let depth = parts.len();
        (!is_root).then_some(Self { module, depth })
    }
}

/// Whether an import of `target` in `module` goes against the order.
fn points_up(module: &str, target: &str) -> bool {
    let rank = |name: &str| ORDER.iter().position(|&m| m == name);
    let is_beside = SIDE_BY_SIDE
        .iter()
        .any(|pair| pair.contains(&module) && pair.contains(&target));
    match (rank(module), rank(target)) {
        (Some(from), Some(to)) => module != target && (to > from || is_beside),
        // A name that is no module of the list: an item at the root, or a typing error that the
        // compiler finds.
        _ => false,
    }
}

/// The modules under the crate's root that a line of code names, by `crate::x`, `crate::{x, y}`,
/// or by as many `super::` as the file is deep.
fn targets(code: &str, depth: usize) -> Vec<String> {
    let mut found = Vec::new();
    let up = "super::".repeat(depth);
    for root in ["crate::", up.as_str()] {
        for (at, _) in code.match_indices(root) {
            let before = code[..at].chars().next_back();
            if before.is_some_and(|c| c.is_alphanumeric() || c == '_' || c == ':') {
                continue;
            }
            let rest = &code[at + root.len()..];
            match rest.strip_prefix('{') {
                Some(group) => found.extend(group_heads(group)),
                None => found.extend(identifier(rest)),
            }
        }
    }
    found
}

/// The first names of the paths in a group, up to the brace that closes it.
fn group_heads(group: &str) -> Vec<String> {
    let mut depth = 0_usize;
    let mut is_head = true;
    let mut heads = Vec::new();
    for (at, c) in group.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth == 0 => break,
            '}' => depth -= 1,
            ',' if depth == 0 => is_head = true,
            c if is_head && (c.is_alphabetic() || c == '_') => {
                heads.extend(identifier(&group[at..]));
                is_head = false;
            }
            _ => {}
        }
    }
    heads
}

fn identifier(text: &str) -> Option<String> {
    let name: String = text
        .chars()
        .take_while(|c| c.is_alphanumeric() || *c == '_')
        .collect();
    (!name.is_empty()).then_some(name)
}

/// The lines of a source without their comments. A group of imports that runs over lines is put
/// on the line where it begins.
fn code_lines(text: &str) -> impl Iterator<Item = String> {
    let mut lines: Vec<String> = Vec::new();
    let mut group: Option<usize> = None;
    for line in text.lines() {
        let code = line.split("//").next().unwrap_or_default();
        lines.push(String::new());
        let here = group.unwrap_or(lines.len() - 1);
        lines[here].push_str(code);
        let begins = code
            .trim_start()
            .trim_start_matches("pub ")
            .starts_with("use ");
        group = (begins || group.is_some())
            .then_some(here)
            .filter(|_| !code.contains(';'));
    }
    lines.into_iter()
}

fn names_the_drawing_library(code: &str) -> bool {
    code.split(|c: char| !c.is_alphanumeric() && c != '_')
        .any(|word| word == "eframe" || word == "egui" || word.starts_with("egui_"))
}

/// A path in a line that only one machine has, if there is one.
fn machine_path(line: &str) -> Option<&'static str> {
    // Written with a gap, so that this file does not find itself.
    const ROOTS: [(&str, &str); 6] = [
        ("/ho", "me/"),
        ("/wo", "rk/"),
        ("/ro", "ot/"),
        ("/Us", "ers/"),
        ("/tm", "p/"),
        ("C:", "\\"),
    ];
    let found = ROOTS.iter().find(|(a, b)| {
        let root = format!("{a}{b}");
        line.match_indices(&root).any(|(at, _)| {
            let before = line[..at].chars().next_back();
            !before.is_some_and(|c| c.is_alphanumeric() || "._-/}".contains(c))
        })
    });
    found.map(|(a, _)| *a)
}

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Every Rust source under some directories, by its path from the root, with its text.
fn sources(directories: &[&str]) -> Vec<(PathBuf, String)> {
    let mut files = Vec::new();
    for directory in directories {
        collect(&root().join(directory), &mut files);
    }
    files.retain(|path| path.extension().is_some_and(|e| e == "rs"));
    assert!(!files.is_empty(), "no sources in {directories:?}");
    files
        .into_iter()
        .map(|path| {
            let text = fs::read_to_string(&path).expect("a source is text");
            let inside = path.strip_prefix(root()).expect("it lies under the root");
            (inside.to_owned(), text)
        })
        .collect()
}

/// Files of a directory and of those in it, in the order of their names; none of what is built or
/// recorded.
fn collect(directory: &Path, files: &mut Vec<PathBuf>) {
    const LEFT_OUT: [&str; 3] = [".git", "target", "attempts"];
    let Ok(entries) = fs::read_dir(directory) else {
        return;
    };
    let mut paths: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).collect();
    paths.sort();
    for path in paths {
        let is_left_out = path
            .file_name()
            .is_some_and(|name| LEFT_OUT.iter().any(|&left| name == left));
        if is_left_out {
            continue;
        }
        if path.is_dir() {
            collect(&path, files);
        } else {
            files.push(path);
        }
    }
}

// The scanner is held to what it must see.

#[test]
fn the_scanner_sees_every_way_to_name_a_module() {
    let all = |text: &str, depth| -> Vec<String> {
        code_lines(text)
            .flat_map(|code| targets(&code, depth))
            .collect()
    };
    assert_eq!(all("use crate::job::Job;", 1), ["job"]);
    assert_eq!(all("let x = crate::report::Page::new();", 2), ["report"]);
    assert_eq!(
        all("use crate::{job::{A, B}, kit, words::C};", 2),
        ["job", "kit", "words"]
    );
    assert_eq!(
        all("use crate::{\n    job::Job,\n    gui,\n};", 2),
        ["job", "gui"]
    );
    assert_eq!(all("use super::super::cli::Answer;", 2), ["cli"]);
    assert_eq!(all("use super::cli;", 1), ["cli"]);
    assert!(all("// see crate::gui", 1).is_empty());
    assert!(all("use other_crate::gui;", 1).is_empty());
    assert!(all("use super::sibling;", 2).is_empty());
}

#[test]
fn the_scanner_knows_up_from_down() {
    assert!(points_up("plant", "job"));
    assert!(points_up("cli", "gui") && points_up("gui", "cli"));
    assert!(!points_up("job", "plant"));
    assert!(!points_up("job", "job"));
    assert!(!points_up("marking", "attempt"));
}

#[test]
fn the_scanner_knows_where_a_file_stands() {
    let place = |path: &str| Place::of(Path::new(path)).map(|p| (p.module, p.depth));
    assert_eq!(place("src/units.rs"), Some(("units".to_owned(), 1)));
    assert_eq!(place("src/job/mod.rs"), Some(("job".to_owned(), 1)));
    assert_eq!(
        place("src/job/actions/pump.rs"),
        Some(("job".to_owned(), 3))
    );
    assert_eq!(place("src/lib.rs"), None);
    assert_eq!(place("src/main.rs"), None);
}

#[test]
fn the_scanner_sees_drawing_and_machines() {
    assert!(names_the_drawing_library("use egui::Ui;"));
    assert!(names_the_drawing_library("eframe::run_native("));
    assert!(names_the_drawing_library("egui_plot::Plot::new"));
    assert!(!names_the_drawing_library("use crate::gui;"));
    let gap = ["open(\"/ho", "me/me/x\")"].concat();
    assert!(machine_path(&gap).is_some());
    let gap = ["path = C:", "\\bench"].concat();
    assert!(machine_path(&gap).is_some());
    assert!(machine_path("https://example.org/home/page and src/work/file").is_none());
}
