//! Texts from outside that may be shown: a person's name, the name of a file.
//!
//! They come from a command line, a text field or a journal that somebody else wrote. They go to a
//! terminal, a printed page, a gradebook and the window. So they are one line of limited width with
//! nothing in it that drives a terminal or turns the text around it.

use serde::{Deserialize, Serialize};
use std::fmt;
use unicode_width::UnicodeWidthChar as _;

/// The most columns of a person's name.
const NAME_COLUMNS: usize = 60;

/// The most letters that take no column of their own, such as accents: two for each column.
const MARKS_PER_COLUMN: usize = 2;

/// A text in one line of at most `columns` columns. A longer one ends with an ellipsis.
///
/// White space of any kind becomes one blank. Control characters and those that turn the direction
/// of writing are left out.
pub fn plain(text: &str, columns: usize) -> String {
    let mut line = String::new();
    let (mut used, mut marks, mut is_apart) = (0, 0, false);
    for letter in text.chars() {
        if letter.is_whitespace() || is_line_end(letter) {
            is_apart = !line.is_empty();
            continue;
        }
        if letter.is_control() || is_unseen(letter) {
            continue;
        }
        let width = letter.width().unwrap_or(0);
        if width == 0 {
            marks += 1;
            // A mark stands on a letter, and no letter carries hundreds of them.
            if line.is_empty() || is_apart || marks > MARKS_PER_COLUMN * used {
                continue;
            }
        }
        if used + width + usize::from(is_apart) > columns {
            return shortened(line, used, columns);
        }
        if is_apart {
            line.push(' ');
            used += 1;
            is_apart = false;
        }
        line.push(letter);
        used += width;
    }
    line
}

/// The line with an ellipsis at its end, still within its columns.
fn shortened(mut line: String, mut used: usize, columns: usize) -> String {
    while used + 1 > columns {
        let Some(last) = line.pop() else {
            return line;
        };
        used -= last.width().unwrap_or(0);
    }
    line.push('…');
    line
}

/// The line and paragraph separators of Unicode.
const fn is_line_end(letter: char) -> bool {
    matches!(letter, '\u{2028}' | '\u{2029}')
}

/// Letters that are not seen: those that turn the direction of writing, blanks without width, tags,
/// and the sign that makes the letter before it a picture.
/// The joiners of Persian and of Indic scripts stay.
const fn is_unseen(letter: char) -> bool {
    matches!(
        letter,
        '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{200b}' | '\u{200e}' | '\u{200f}'
            | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}'
            | '\u{fe0f}'
            | '\u{feff}'
            | '\u{fff9}'..='\u{fffb}'
            | '\u{e0000}'..='\u{e007f}'
    )
}

/// The name of the person whose attempt it is. Empty: it does not say.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(from = "String", into = "String")]
pub struct PersonName(String);

impl PersonName {
    /// The name in any text.
    pub fn of(text: &str) -> Self {
        Self(plain(text, NAME_COLUMNS))
    }

    /// The name as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether there is none.
    pub const fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

impl From<String> for PersonName {
    fn from(text: String) -> Self {
        Self::of(&text)
    }
}

impl From<PersonName> for String {
    fn from(name: PersonName) -> Self {
        name.0
    }
}

impl fmt::Display for PersonName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use unicode_width::UnicodeWidthStr as _;

    #[test]
    fn a_usual_name_stays_as_it_is() {
        for name in [
            "Ann \"B\" O'Neil",
            "-2+3",
            "Zoë Ångström",
            "李小龙",
            "محمد علی",
            "Dvořák-Müller, Jr.",
            "",
        ] {
            assert_eq!(PersonName::of(name).as_str(), name);
        }
    }

    #[test]
    fn a_name_is_one_line_without_anything_that_drives_a_terminal() {
        let of = |text: &str| PersonName::of(text).0;
        assert_eq!(of("  Ann\r\n\tB \u{2028} C  "), "Ann B C");
        assert_eq!(of("\u{1b}[2J\u{7}Ann\u{9b}31m"), "[2JAnn31m");
        assert_eq!(of("a\u{202e}b\u{2066}c\u{200f}\u{feff}d"), "abcd");
        assert_eq!(of("\0\u{1}\u{7f}"), "");
    }

    #[test]
    fn a_long_name_is_cut_by_the_columns_that_it_takes() {
        for (letter, most) in [('x', 60), ('李', 60), ('🔧', 60)] {
            let name = PersonName::of(&letter.to_string().repeat(10_000)).0;
            assert!(name.ends_with('…'), "{name}");
            assert!(name.width() <= most && name.width() >= most - 1, "{name}");
        }
        // An accent on an accent on an accent.
        let name = PersonName::of(&format!("e{}", "\u{301}".repeat(10_000))).0;
        assert!(name.chars().count() <= 3, "{}", name.chars().count());
        let exact = "y".repeat(60);
        assert_eq!(PersonName::of(&exact).as_str(), exact);
    }

    #[test]
    fn a_text_of_any_letters_keeps_to_its_columns() {
        for start in (0..0x11_0000_u32).step_by(97) {
            let letters = (start..start + 97).filter_map(char::from_u32);
            let text: String = letters.collect();
            for columns in [0, 1, 2, 22, 60] {
                let line = plain(&text, columns);
                assert!(line.width() <= columns, "{start:x} in {columns}: {line:?}");
                assert!(!line.chars().any(char::is_control));
            }
        }
    }
}
