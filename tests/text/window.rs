//! No sentence of a language stands in the window's source: what is shown comes from the files.

use crate::files::texts_of;
use crate::rust::{Token, sources};
use coldbench::text::Language;

/// What a string that is not shown follows: names of blanks, of panels and plots, reasons.
const NOT_SHOWN: [&str; 18] = [
    "form_of(tool.key(),",
    "alias=",
    "include_bytes!(",
    ".with(",
    ".with((",
    ".id_salt(",
    "Panel::top(",
    "Panel::bottom(",
    "Panel::right(",
    "Grid::new(",
    "Id::unique(",
    "Id::unique((",
    ".indent(",
    "strip(",
    "reason=",
    ".expect(",
    "debug_struct(",
    "run_native(",
];

/// What is alike in every language: names and units.
const ALIKE: [&str; 27] = [
    // The file of settings, its ending while it is written, and a type.
    "settings.ron",
    "new",
    "String",
    "Coldbench",
    "coldbench",
    "Hack",
    "Open Sans",
    "Open Sans SemiBold",
    "semibold",
    "psig, °F",
    "kPa, °C",
    "psig",
    "psi",
    "oz",
    "min",
    "lb",
    "kg",
    "ft",
    "in",
    "ft·lb",
    "N·m",
    "in Hg",
    "°F",
    "°C",
    "start",
    "bar",
    "setting",
];

/// Files that speak elsewhere than in the window.
const ELSEWHERE: [&str; 1] = [
    // To the terminal, where there is no window.
    "src/gui/no_window.rs",
];

/// Still in English, each with its reason.
const LEFT: [&str; 6] = [
    // The name of a platform, to choose the folder of the settings.
    "macos",
    // What is wrong in the file of settings, which is written by hand in English.
    "there is no refrigerant ; it is one of",
    "text is 100, 125, 150 or 200 percent, found",
    // Troubles with files are told in the words of the errors that are passed on.
    "there is no folder for attempts",
    "it is not in the list of this program",
    // The path of a scenario, for the journal.
    "scenarios/.ron",
];

#[test]
fn no_sentence_stands_in_the_windows_source() {
    let texts = texts_of(Language::English);
    let mut wrong = Vec::new();
    let mut seen = 0;
    for (path, tokens) in sources("src/gui") {
        if ELSEWHERE.contains(&path.as_str()) {
            continue;
        }
        for (i, token) in tokens.iter().enumerate() {
            let Token::Text(text) = token else {
                continue;
            };
            seen += 1;
            let words = words_of(text);
            let is_key = texts.contains_key(text);
            let is_alike = ALIKE.contains(&words.as_str()) || LEFT.contains(&words.as_str());
            if has_word(&words) && !is_key && !is_alike && !is_not_shown(&tokens[..i]) {
                wrong.push(format!("{path}: {text:?}"));
            }
        }
    }
    assert!(seen > 0, "the scanner sees nothing");
    assert!(
        wrong.is_empty(),
        "not from the files:\n{}",
        wrong.join("\n")
    );
}

/// A string without what is filled in, and without the figures before a unit.
fn words_of(text: &str) -> String {
    let mut words = String::new();
    let mut depth = 0_usize;
    for c in text.chars() {
        match c {
            '{' => depth += 1,
            '}' => depth = depth.saturating_sub(1),
            c if depth == 0 => words.push(c),
            _ => {}
        }
    }
    words
        .trim_matches(|c: char| c.is_whitespace() || c.is_ascii_digit() || c == '/')
        .to_owned()
}

/// Two letters together are a word; one is a mark, as on a hose.
fn has_word(text: &str) -> bool {
    let letters: Vec<bool> = text.chars().map(char::is_alphabetic).collect();
    letters.windows(2).any(|pair| pair[0] && pair[1])
}

fn is_not_shown(before: &[Token]) -> bool {
    let signs: String = before
        .iter()
        .rev()
        .take(24)
        .map_while(|token| match token {
            Token::Sign(c) => Some(*c),
            Token::Text(_) => None,
        })
        .collect();
    let signs: String = signs.chars().rev().collect();
    NOT_SHOWN.iter().any(|context| signs.ends_with(context))
}

#[test]
fn the_scanner_tells_sentences_from_names_and_units() {
    assert!(has_word(&words_of("Take the hose off")));
    assert!(has_word(&words_of("{name} of {most}")));
    assert!(!has_word(&words_of("{shown}: {value:.1} %")));
    assert!(!has_word("L"));
    assert_eq!(words_of("{value:.2} lb"), "lb");
    assert_eq!(words_of("3/8 in"), "in");
}
