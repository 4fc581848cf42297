//! Nothing is missing in any language: the files agree with each other, with the source that uses
//! them, and with the scenarios that they translate.

mod derived;
mod files;
mod rust;
mod window;

use coldbench::scenario::{Rule, Scenario, shipped_names};
use coldbench::text::{Language, Message};
use files::{Text, files_of, texts_of};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource};
use rust::{Token, sources, uses};
use std::collections::{BTreeMap, BTreeSet};

#[test]
fn every_file_can_be_read_and_its_keys_begin_with_its_name() {
    for language in Language::ALL {
        let mut seen = BTreeSet::new();
        for file in files_of(language) {
            assert_eq!(file.troubles, Vec::<String>::new(), "{}", file.path);
            for key in file.texts.keys() {
                assert!(
                    key.starts_with(&format!("{}-", file.name)),
                    "{}: {key}",
                    file.path
                );
                assert!(seen.insert(key.clone()), "{}: {key} twice", file.path);
            }
        }
        assert!(!seen.is_empty());
    }
}

#[test]
fn every_language_has_the_same_files_keys_forms_and_blanks() {
    let english = texts_of(Language::English);
    let mut wrong = Vec::new();
    for language in Language::ALL {
        let texts = texts_of(language);
        let code = language.code();
        for (key, text) in &english {
            match texts.get(key) {
                None => wrong.push(format!("{code} lacks {key}")),
                Some(other) if other.blanks() != text.blanks() => {
                    let (here, there) = (other.blanks(), text.blanks());
                    wrong.push(format!("{code}: {key} has {here:?}, in English {there:?}"));
                }
                Some(_) => {}
            }
        }
        let more = texts.keys().filter(|key| !english.contains_key(*key));
        wrong.extend(more.map(|key| format!("{code} alone has {key}")));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn what_lies_in_the_folder_is_built_into_the_program() {
    for language in Language::ALL {
        for (key, text) in texts_of(language) {
            if text.blanks().values().all(BTreeSet::is_empty) {
                assert_ne!(
                    language.say(&key),
                    key,
                    "{} is not built in",
                    language.code()
                );
            }
        }
    }
}

/// A reference to a text that is not there, or a blank that is not filled in, is an error of the
/// reference library.
#[test]
fn every_text_can_be_filled_in() {
    for language in Language::ALL {
        let mut bundle = FluentBundle::new(vec![language.code().parse().expect("a language")]);
        for file in files_of(language) {
            let resource = FluentResource::try_new(file.source).expect("it was read before");
            bundle.add_resource(resource).expect("no key stands twice");
        }
        for (key, text) in texts_of(language) {
            for (form, blanks) in text.blanks() {
                for number in [0, 1, 2] {
                    let mut args = FluentArgs::new();
                    for blank in &blanks {
                        args.set(blank.as_str(), number);
                    }
                    let message = bundle.get_message(&key).expect("it was read before");
                    let pattern = if form.is_empty() {
                        message.value().expect("it has a value")
                    } else {
                        message
                            .get_attribute(&form)
                            .expect("it has the form")
                            .value()
                    };
                    let mut errors = Vec::new();
                    let said = bundle.format_pattern(pattern, Some(&args), &mut errors);
                    assert!(errors.is_empty(), "{key} {form}: {errors:?}");
                    assert!(!said.trim().is_empty(), "{key} {form} says nothing");
                }
            }
        }
    }
}

#[test]
fn every_use_in_the_source_has_its_text_and_fills_its_blanks() {
    let texts = texts_of(Language::English);
    let mut wrong = Vec::new();
    let mut count = 0;
    for (path, tokens) in sources("src") {
        for (key, filled) in uses(&tokens, &prefixes()) {
            count += 1;
            match texts.get(&key) {
                None => wrong.push(format!("{path}: there is no text {key}")),
                Some(text) if text.all_blanks() != filled => {
                    let asked = text.all_blanks();
                    wrong.push(format!("{path}: {key} has {asked:?}, filled in {filled:?}"));
                }
                Some(_) => {}
            }
        }
    }
    assert!(count > 0, "the scanner sees no use");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_text_is_used() {
    let mut used = BTreeSet::new();
    for (_, tokens) in sources("src") {
        used.extend(tokens.into_iter().filter_map(|token| match token {
            Token::Text(text) => Some(text),
            Token::Sign(_) => None,
        }));
    }
    used.extend(derived::keys().into_keys().map(str::to_owned));
    used.extend(derived::switches().map(str::to_owned));
    let texts = texts_of(Language::English);
    let idle: Vec<&String> = texts
        .keys()
        .filter(|key| !key.starts_with("scenario-") && !used.contains(*key))
        .collect();
    assert!(idle.is_empty(), "nothing says {idle:#?}");
}

/// A name stands in sentences, so it has a form with its article.
#[test]
fn every_name_has_a_form_with_its_article() {
    for language in Language::ALL {
        for (key, text) in texts_of(language) {
            if key.starts_with("name-") {
                assert!(text.forms.contains_key("the"), "{} {key}", language.code());
            }
        }
    }
}

/// The words that a technician says alike in both languages; any other that is alike was
/// forgotten.
const ALIKE: [&str; 1] = ["caption-detector"];

#[test]
fn every_text_is_translated() {
    let english = texts_of(Language::English);
    let spanish = texts_of(Language::Spanish);
    let alike: Vec<&String> = english
        .iter()
        .filter(|(key, text)| {
            let has_words = text.words();
            has_words
                && spanish
                    .get(*key)
                    .is_some_and(|other| other.source == text.source)
        })
        .map(|(key, _)| key)
        .filter(|key| !ALIKE.contains(&key.as_str()))
        .collect();
    assert!(alike.is_empty(), "alike in both languages: {alike:#?}");
}

/// Every text of every shipped scenario, with where it stands.
fn texts_of_scenarios() -> BTreeMap<String, String> {
    let mut texts = BTreeMap::new();
    for name in shipped_names() {
        let file = Scenario::shipped(name).expect("it is shipped").file;
        let customer = file.customer;
        let mut put = |what: &str, text: &str| {
            texts.insert(flowing(text), format!("{name}: {what}"));
        };
        put("title", &file.title);
        put("trains", &file.trains);
        put("place", &customer.place);
        put("complaint", &customer.complaint);
        for hint in &file.hints {
            put("a hint", hint);
        }
        for criterion in &file.rubric {
            put("a criterion", &criterion.text);
            if let Rule::Judgement { question } = &criterion.rule {
                put("a question", question);
            }
        }
    }
    texts
}

#[test]
fn every_shipped_scenario_is_translated_and_nothing_else_is() {
    let wanted = texts_of_scenarios();
    let mut wrong = Vec::new();
    for (text, place) in &wanted {
        let message = Message::of_scenario(text.clone());
        for language in [Language::Spanish] {
            if message.in_language(language) == *text {
                wrong.push(format!("{place} has no {language:?}: {text}"));
            }
        }
    }
    for (key, text) in texts_of(Language::English) {
        let says = flowing(&Language::English.say(&key));
        if key.starts_with("scenario-") && !wanted.contains_key(&says) {
            wrong.push(format!("no scenario says {key}: {}", text.source));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn flowing(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// What the keys that a source names begin with: those of scenarios are found by their words.
fn prefixes() -> Vec<String> {
    let names = files_of(Language::English)
        .into_iter()
        .map(|file| file.name);
    let named = names.filter(|name| name != "scenario");
    named.map(|name| format!("{name}-")).collect()
}

// The scanner is held to what it must see.

#[test]
fn the_scanner_sees_keys_and_what_fills_them() {
    let source = r#"
        // say("window-comment") is no use
        let c = '"'; let lifetime: &'static str = "window is no key";
        view.say("window-plain");
        Message::new("window-filled")
            .the()
            .with("one", Message::new("window-inner").with("deep", format!("{}", 1)))
            .with("two", pair(1, (2, 3)));
        let word = if dark { "window-loose" } else { r"window-raw" };
    "#;
    let set = |names: &[&str]| {
        names
            .iter()
            .map(ToString::to_string)
            .collect::<BTreeSet<_>>()
    };
    let found = uses(&rust::tokens(source), &["window-".to_owned()]);
    let wanted = [
        ("window-plain", set(&[])),
        ("window-filled", set(&["one", "two"])),
        ("window-inner", set(&["deep"])),
        ("window-loose", set(&[])),
        ("window-raw", set(&[])),
    ];
    assert_eq!(found.len(), wanted.len(), "{found:?}");
    for ((key, filled), (wanted, blanks)) in found.iter().zip(&wanted) {
        assert_eq!((key.as_str(), filled), (*wanted, blanks));
    }
}

#[test]
fn the_reader_sees_forms_and_blanks_in_every_corner() {
    let source =
        "k-a = { $x } { $n ->\n    [one] { $y }\n   *[other] b\n }\n    .the = the { $z }\n";
    let texts = files::read(source).0;
    let Text { forms, .. } = &texts["k-a"];
    let names = |form: &str| forms[form].iter().map(String::as_str).collect::<Vec<_>>();
    assert_eq!(names(""), ["n", "x", "y"]);
    assert_eq!(names("the"), ["z"]);
    assert!(!files::read("k-a = {").1.is_empty());
}
