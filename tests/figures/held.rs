//! Holds every figure of a source to what is asked of it.
//!
//! A figure that is not met is listed with its source, with its miss as measured: so it stays in
//! sight, and the test fails when it is met at last, or missed by more or by less.

use std::fmt::Write;
use std::sync::OnceLock;

use crate::sources::{Figure, Source};

const COUNT: usize = Source::ALL.len();

/// The figures of a source, worked out once for all tests.
pub fn figures(source: &Source) -> &'static [Figure] {
    static ALL: [OnceLock<Vec<Figure>>; COUNT] = [const { OnceLock::new() }; COUNT];
    let mut names = Source::ALL.iter();
    let place = names.position(|other| other.name == source.name);
    ALL[place.expect("a source is one of all")].get_or_init(|| source.figures())
}

/// Checks every figure of a source.
pub fn holds(name: &str) {
    let source = Source::named(name).unwrap_or_else(|| panic!("no source {name}"));
    let figures = figures(&source);
    assert!(!figures.is_empty(), "{name} has no figure");
    assert_eq!(
        source.why_not.is_empty(),
        source.missed.is_empty(),
        "{name}: what is not met has its reason"
    );
    for (what, _) in source.missed {
        let is_there = figures.iter().any(|figure| figure.what == *what);
        assert!(is_there, "no figure `{what}` of {name}");
    }
    let told: String = figures
        .iter()
        .filter_map(|figure| surprise(figure, source.missed))
        .collect();
    assert!(told.is_empty(), "{name} ({}):\n{told}", source.origin);
}

/// What is not as the list says.
fn surprise(figure: &Figure, missed: &[(&str, f64)]) -> Option<String> {
    let listed = missed.iter().find(|(what, _)| *what == figure.what);
    let as_listed = listed.map_or(figure.is_met(), |(_, miss)| {
        !figure.is_met() && (figure.miss() - miss).abs() <= 0.05 * miss + 1e-3
    });
    if as_listed {
        return None;
    }
    let (what, asked, ours) = (&figure.what, figure.asked_text(), figure.ours_text());
    let was = listed.map_or("met".to_owned(), |l| format!("missed by {}", l.1));
    let verdict = figure.verdict();
    let mut told = String::new();
    writeln!(
        told,
        "{what}: asked {asked}, ours {ours}: {verdict}; was {was}"
    )
    .ok()?;
    Some(told)
}
