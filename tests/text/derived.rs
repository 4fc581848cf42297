//! Keys that a word of a tool gives: each has its text, with every form that is asked of its kind,
//! and an action fills all blanks of its text.

use crate::files::texts_of;
use coldbench::kit::tools::{Action, Finding, Milestone, Name, Reading, Status};
use coldbench::text::Language;
use coldbench::words;
use std::collections::BTreeMap;
use strum::VariantArray;

/// Every derived key, with the forms that its text must have.
pub fn keys() -> BTreeMap<&'static str, Vec<&'static str>> {
    let thought = ["aim", "way", "goal"];
    let names = <Name as VariantArray>::VARIANTS.iter();
    let finding = |finding: Finding| {
        let is_thought_of = finding.row().stage.is_some();
        let thought: &[&str] = if is_thought_of { &thought } else { &[] };
        ["why"].into_iter().chain(thought.iter().copied()).collect()
    };
    names
        .map(|name| (name.key(), vec!["the", "on"]))
        .chain(Action::samples().map(|action| (action.key(), vec![])))
        .chain(Reading::all().map(|reading| (reading.key(), vec!["the"])))
        .chain(Milestone::all().map(|milestone| (milestone.key(), thought.to_vec())))
        .chain(Status::all().map(|status| (status.key(), vec!["not"])))
        .chain(Finding::all().map(|one| (one.key(), finding(one))))
        .collect()
}

/// Keys of switches: of tools that can be switched on.
pub fn switches() -> impl Iterator<Item = &'static str> {
    let texts = texts_of(Language::English);
    let names = <Name as VariantArray>::VARIANTS.iter();
    names
        .map(|name| name.switch_key())
        .filter(move |key| texts.contains_key(*key))
}

#[test]
fn every_word_of_a_tool_has_its_text_with_all_its_forms() {
    let texts = texts_of(Language::English);
    let mut wrong = Vec::new();
    for (key, forms) in keys() {
        let Some(text) = texts.get(key) else {
            wrong.push(format!("there is no text {key}"));
            continue;
        };
        let lacks = forms.iter().filter(|&&form| !text.forms.contains_key(form));
        wrong.extend(lacks.map(|form| format!("{key} lacks .{form}")));
        let more = text.forms.keys().filter(|form| !form.is_empty());
        let idle = more.filter(|form| !forms.contains(&form.as_str()));
        wrong.extend(idle.map(|form| format!("nothing says {key}.{form}")));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_action_on_a_tool_fills_all_blanks_of_its_text() {
    for language in Language::ALL {
        for action in Action::samples() {
            let said = words::Action::Tool(action).words().in_language(language);
            assert!(!said.contains("{$"), "{}: {said}", action.key());
            assert!(!said.trim().is_empty() && said != action.key());
        }
    }
}
