//! The pages of the project that tell the figures.

use crate::held::figures;
use crate::sources::{Class, Figure, Source, count, page};

fn compared() -> Vec<(Source, Vec<Figure>)> {
    let all = Source::ALL.into_iter();
    all.map(|source| (source, figures(&source).to_vec()))
        .collect()
}

fn read(file: &str) -> String {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join(file);
    std::fs::read_to_string(&path).unwrap_or_else(|why| panic!("{file}: {why}"))
}

/// The page in `assets` names the same figures, with the same values asked and the same verdicts;
/// our own values on it may be older in their last digits.
#[test]
fn the_page_of_figures_is_up_to_date() {
    let without_ours = |page: &str| {
        let lines = page.lines().map(|line| {
            let mut cells: Vec<_> = line.split('|').map(str::trim).collect();
            if cells.len() == 8 {
                cells.remove(5);
                let verdict = &mut cells[5];
                *verdict = verdict.split(" by ").next().unwrap_or_default();
            }
            cells.join("|")
        });
        lines.collect::<Vec<_>>()
    };
    let kept = without_ours(&read("assets/figures.md"));
    let made = without_ours(&page(&compared()));
    for (kept, made) in kept.iter().zip(&made) {
        assert_eq!(kept, made, "run `cargo run --example figures -- --write`");
    }
    assert_eq!(kept.len(), made.len());
}

/// The headline of the README is the count of the published class, and of no other.
#[test]
fn the_headline_counts_what_is_published() {
    let (met, all) = count(&compared(), Class::Published);
    let headline = format!("{met} of {all} published figures are met");
    assert!(read("README.md").contains(&headline), "{headline}");
}
