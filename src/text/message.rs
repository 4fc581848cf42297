//! A sentence without a language.

use super::{Language, files};
use fluent_bundle::{FluentArgs, FluentValue};
use std::fmt;

/// Something to say, to be put into words where it is shown. It displays itself in English.
///
/// Keys are written out at the place of use, with all that fills their blanks, so that
/// `tests/text.rs` can hold each use to the files.
///
/// ```
/// use coldbench::text::{Language, Message};
///
/// let sign = Message::new("window-practice-only");
/// assert_eq!(sign.to_string(), sign.in_language(Language::English));
/// assert_ne!(sign.to_string(), sign.in_language(Language::Spanish));
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Message(Kind);

#[derive(Debug, Clone, PartialEq, Eq)]
enum Kind {
    /// A form of a text of the files: a name with its article, what is said of a thing.
    Form(&'static str, &'static str),
    /// A text of the files, with what fills its blanks.
    Text {
        key: &'static str,
        args: Vec<(&'static str, Message)>,
    },
    /// A count, which can decide between singular and plural.
    Count(u64),
    /// The same in every language.
    Verbatim(String),
    /// A text of a scenario: the files have those of the shipped ones in other languages.
    Scenario(String),
    /// Several, one after the other, with what stands between. In a box, for a message is carried
    /// by errors and shall be small.
    List(Box<(Vec<Message>, &'static str)>),
}

impl Message {
    /// A text of the files.
    pub const fn new(key: &'static str) -> Self {
        Self(Kind::Text {
            key,
            args: Vec::new(),
        })
    }

    /// What is the same in every language: a number with its unit, a person's own words.
    pub fn verbatim(text: impl Into<String>) -> Self {
        Self(Kind::Verbatim(text.into()))
    }

    /// A text of a scenario, in other languages where the files have it.
    pub fn of_scenario(text: impl Into<String>) -> Self {
        Self(Kind::Scenario(text.into()))
    }

    /// Several messages, with something between each two.
    pub fn list(items: Vec<Self>, between: &'static str) -> Self {
        Self(Kind::List(Box::new((items, between))))
    }

    /// Fills a blank. Only a text of the files has blanks; anything else stays as it is.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Self>) -> Self {
        if let Kind::Text { args, .. } = &mut self.0 {
            args.push((name, value.into()));
        }
        self
    }

    /// The name of a thing with its article, as a sentence needs it; a name has no blanks.
    #[must_use]
    pub fn the(self) -> Self {
        match self.0 {
            Kind::Text { key, .. } => Self(Kind::Form(key, "the")),
            other => Self(other),
        }
    }

    /// Another form of a text, as `why` or `goal`; it has no blanks.
    pub const fn form_of(key: &'static str, form: &'static str) -> Self {
        Self(Kind::Form(key, form))
    }

    /// The message in a language.
    pub fn in_language(&self, language: Language) -> String {
        match &self.0 {
            Kind::Form(key, form) => {
                language.joined_up(language.formatted(key, Some(form), &FluentArgs::new()))
            }
            Kind::Text { key, args } => {
                let mut filled = FluentArgs::with_capacity(args.len());
                for (name, value) in args {
                    filled.set(*name, value.filling(language));
                }
                language.joined_up(language.formatted(key, None, &filled))
            }
            Kind::Count(count) => count.to_string(),
            Kind::Verbatim(text) => text.clone(),
            Kind::Scenario(text) => {
                files::of_scenario(language, text).unwrap_or_else(|| text.clone())
            }
            Kind::List(list) => {
                let (items, between) = &**list;
                let items: Vec<String> = items.iter().map(|m| m.in_language(language)).collect();
                items.join(between)
            }
        }
    }

    /// The message as what fills a blank of another one.
    fn filling(&self, language: Language) -> FluentValue<'static> {
        match &self.0 {
            Kind::Count(count) => FluentValue::from(*count),
            _ => FluentValue::from(self.in_language(language)),
        }
    }
}

impl fmt::Display for Message {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.in_language(Language::English))
    }
}

impl From<u64> for Message {
    fn from(count: u64) -> Self {
        Self(Kind::Count(count))
    }
}

impl From<u32> for Message {
    fn from(count: u32) -> Self {
        Self(Kind::Count(count.into()))
    }
}

impl From<usize> for Message {
    fn from(count: usize) -> Self {
        Self(Kind::Count(count as u64))
    }
}

/// Text that a person or a number wrote; a key would be `&'static str`, and is no filling.
impl From<String> for Message {
    fn from(text: String) -> Self {
        Self(Kind::Verbatim(text))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_missing_text_shows_its_key_and_stops_nobody() {
        let missing = Message::new("there is no such key").with("blank", 3_u64);
        for language in Language::ALL {
            assert_eq!(missing.in_language(language), "there is no such key");
        }
    }

    /// Source: Real Academia Española, Ortografía de la lengua española (2010), on `al` and `del`.
    #[test]
    fn spanish_contracts_its_prepositions_with_the_article_and_not_with_the_pronoun() {
        let spanish = |text: &str| Language::Spanish.joined_up(text.to_owned());
        assert_eq!(spanish("la tapa de el vástago"), "la tapa del vástago");
        assert_eq!(spanish("va a el puerto"), "va al puerto");
        assert_eq!(spanish("la tapa de él"), "la tapa de él");
        assert_eq!(spanish("de ella, a ella"), "de ella, a ella");
    }

    #[test]
    fn a_list_and_a_persons_own_words_are_said_as_they_are() {
        let items = vec![Message::verbatim("6 psi"), Message::from(2_u64)];
        let list = Message::list(items, "; ");
        assert_eq!(list.in_language(Language::Spanish), "6 psi; 2");
    }

    #[test]
    fn a_teachers_own_scenario_stays_in_its_own_words() {
        let own = Message::of_scenario("A text that no shipped scenario has");
        assert_eq!(own.in_language(Language::Spanish), own.to_string());
    }
}
