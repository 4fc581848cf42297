//! The page of all figures, and that each source has its file of checks.

use std::path::Path;

use coldbench::figures::{Figure, Source, page};

use crate::held::figures;

/// The page in `assets` names the same figures, with the same published values and verdicts; our
/// own values on it may be older in their last digits.
#[test]
fn the_page_of_figures_is_up_to_date() {
    let without_ours = |page: &str| {
        let lines = page.lines().map(|line| {
            let mut cells: Vec<_> = line.split('|').map(str::trim).collect();
            if cells.len() == 7 {
                cells.remove(4);
                let verdict = &mut cells[4];
                *verdict = verdict.split(" by ").next().unwrap_or_default();
            }
            cells.join("|")
        });
        lines.collect::<Vec<_>>()
    };
    let all: Vec<(Source, Vec<Figure>)> = Source::ALL
        .into_iter()
        .map(|source| (source, figures(&source).to_vec()))
        .collect();
    let kept = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/assets/figures.md"));
    let kept = without_ours(&kept.expect("the page is in assets"));
    let made = without_ours(&page(&all));
    for (kept, made) in kept.iter().zip(&made) {
        assert_eq!(
            kept, made,
            "run `coldbench figures --markdown > assets/figures.md`"
        );
    }
    assert_eq!(kept.len(), made.len());
}

#[test]
fn every_source_is_checked_in_a_file_of_its_name() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/published");
    let main = std::fs::read_to_string(folder.join("main.rs")).expect("it is there");
    for source in Source::ALL {
        let name = source.name;
        let file = folder.join(name).with_extension("rs");
        let text = std::fs::read_to_string(&file).unwrap_or_else(|why| panic!("{name}: {why}"));
        assert!(text.contains("//! Source: "), "{name} names no source");
        assert!(text.contains("holds("), "{name} holds nothing");
        assert!(
            text.contains(&format!("\"{name}\"")),
            "{name} holds another"
        );
        assert!(main.contains(&format!("mod {name};")), "{name} is not run");
    }
}
