//! The languages.

use super::files;
use fluent_bundle::FluentArgs;
use serde::{Deserialize, Serialize};

/// A language in which the program speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Language {
    /// English, in which the program was written.
    #[default]
    English,
    /// Spanish, as technicians in the Americas speak it.
    Spanish,
}

impl Language {
    /// Every language.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// What the language is called in itself.
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// Its code (BCP 47), which is also its folder in `assets/text`.
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The text of a key that has no blanks to fill in.
    pub fn say(self, key: &str) -> String {
        self.formatted(key, None, &FluentArgs::new())
    }

    /// A text with its blanks filled in; `form` names another form of it, as with an article.
    ///
    /// A text that is missing is said in English, and one that is missing there by its key: it
    /// then stands on the screen as what it is, a mistake, and stops nobody's work.
    pub(super) fn formatted(self, key: &str, form: Option<&str>, args: &FluentArgs) -> String {
        files::text(self, key, form, args)
            .or_else(|| files::text(Self::English, key, form, args))
            .unwrap_or_else(|| key.to_owned())
    }

    /// What the spelling of the language asks for where texts were put together.
    pub(super) fn joined_up(self, text: String) -> String {
        match self {
            Self::English => text,
            // Real Academia Española, Ortografía (2010): `de` and `a` contract with the article
            // `el`; the pronoun `él` has its accent.
            Self::Spanish => {
                let mut text = text;
                for (apart, together) in [
                    (" de el ", " del "),
                    (" a el ", " al "),
                    ("De el ", "Del "),
                    ("A el ", "Al "),
                ] {
                    if text.contains(apart) {
                        text = text.replace(apart, together);
                    }
                }
                text
            }
        }
    }
}
