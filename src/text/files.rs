//! The files in `assets/text`, built into the program.

use super::Language;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use std::collections::BTreeMap;
use std::sync::OnceLock;
use unic_langid::LanguageIdentifier;

/// The files of each language: one for each idea. The keys of a file begin with its name.
macro_rules! files {
    ($($name:literal),+ $(,)?) => {
        const ENGLISH: &[&str] =
            &[$(include_str!(concat!("../../assets/text/en/", $name, ".ftl"))),+];
        const SPANISH: &[&str] =
            &[$(include_str!(concat!("../../assets/text/es/", $name, ".ftl"))),+];
    };
}

files![
    "action",
    "attempt",
    "back",
    "caption",
    "caution",
    "coach",
    "face",
    "fault",
    "field",
    "finding",
    "hand",
    "keys",
    "log",
    "mark",
    "name",
    "narrow",
    "nitrogen",
    "part",
    "plate",
    "reading",
    "recovery",
    "reference",
    "refrigerant_cylinder",
    "refusal",
    "room",
    "scenario",
    "settings",
    "sheet",
    "thought",
    "time",
    "vacuum_pump",
    "window",
];

/// The texts of the shipped scenarios as their files have them.
const OF_SCENARIOS: &str = include_str!("../../assets/text/en/scenario.ftl");

/// The texts of a language, ready to be filled in.
struct Texts(FluentBundle<FluentResource>);

impl Texts {
    fn read(language: Language) -> Self {
        let code: LanguageIdentifier = language.code().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![code]);
        // Marks of direction around what fills a blank: nothing here runs from right to left.
        bundle.set_use_isolating(false);
        let sources = match language {
            Language::English => ENGLISH,
            Language::Spanish => SPANISH,
        };
        for &source in sources {
            // What cannot be read is left out here and found by tests/text.rs.
            let resource =
                FluentResource::try_new(source.to_owned()).unwrap_or_else(|(readable, _)| readable);
            bundle.add_resource_overriding(resource);
        }
        Self(bundle)
    }

    fn of(language: Language) -> &'static Self {
        static TEXTS: [OnceLock<Texts>; Language::ALL.len()] =
            [const { OnceLock::new() }; Language::ALL.len()];
        TEXTS[language as usize].get_or_init(|| Self::read(language))
    }
}

/// A text with its blanks filled in; `None` where the language has none of this key and form.
pub(super) fn text(
    language: Language,
    key: &str,
    form: Option<&str>,
    args: &FluentArgs,
) -> Option<String> {
    let bundle = &Texts::of(language).0;
    let message = bundle.get_message(key)?;
    let pattern = match form {
        None => message.value()?,
        Some(form) => message.get_attribute(form)?.value(),
    };
    // A blank that is not filled in shows its name; tests/text.rs finds it.
    let mut errors = Vec::new();
    let text = bundle.format_pattern(pattern, Some(args), &mut errors);
    Some(text.into_owned())
}

/// A text of a shipped scenario in another language, found by its English words; however the
/// scenario's file breaks them into lines.
pub(super) fn of_scenario(language: Language, english: &str) -> Option<String> {
    static KEYS: OnceLock<BTreeMap<String, &'static str>> = OnceLock::new();
    if language == Language::English {
        return None;
    }
    let keys = KEYS.get_or_init(|| {
        let args = FluentArgs::new();
        let keys = OF_SCENARIOS.lines().filter_map(|line| {
            let (key, _) = line.split_once(" =")?;
            key.starts_with("scenario-").then_some(key)
        });
        keys.filter_map(|key| Some((flowing(&text(Language::English, key, None, &args)?), key)))
            .collect()
    });
    let key = keys.get(&flowing(english))?;
    text(language, key, None, &FluentArgs::new()).map(|text| flowing(&text))
}

fn flowing(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
