//! The files of a language, read with the reference parser of their notation.

use coldbench::text::Language;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser::parse;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// One file.
pub struct File {
    pub path: String,
    pub name: String,
    pub source: String,
    pub texts: BTreeMap<String, Text>,
    pub troubles: Vec<String>,
}

/// One text: its blanks by form, and its words as they stand.
pub struct Text {
    pub forms: BTreeMap<String, BTreeSet<String>>,
    pub source: String,
}

impl Text {
    /// The blanks of each form.
    pub fn blanks(&self) -> BTreeMap<String, BTreeSet<String>> {
        self.forms.clone()
    }

    /// The blanks of all forms together.
    pub fn all_blanks(&self) -> BTreeSet<String> {
        self.forms.values().flatten().cloned().collect()
    }

    /// Whether anything in it is a word of a language, beside blanks, numbers and units.
    pub fn words(&self) -> bool {
        self.source.chars().filter(|c| c.is_alphabetic()).count() > 3
    }
}

/// Every file of a language, in the order of their names.
pub fn files_of(language: Language) -> Vec<File> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("assets/text")
        .join(language.code());
    let mut paths: Vec<_> = fs::read_dir(&folder)
        .expect("the folder of the language")
        .map(|entry| entry.expect("an entry of the folder").path())
        .collect();
    paths.sort();
    paths
        .into_iter()
        .map(|path| {
            let source = fs::read_to_string(&path).expect("a file of text");
            let (texts, troubles) = read(&source);
            let name = path.file_stem().expect("it has a name");
            File {
                path: format!("{}/{}", language.code(), name.display()),
                name: name.to_string_lossy().into_owned(),
                source,
                texts,
                troubles,
            }
        })
        .collect()
}

/// Every text of a language.
pub fn texts_of(language: Language) -> BTreeMap<String, Text> {
    files_of(language)
        .into_iter()
        .flat_map(|file| file.texts)
        .collect()
}

/// The texts of a source, and what cannot be read in it.
pub fn read(source: &str) -> (BTreeMap<String, Text>, Vec<String>) {
    let (resource, errors) = match parse(source) {
        Ok(resource) => (resource, Vec::new()),
        Err((resource, errors)) => (resource, errors),
    };
    let troubles = errors.iter().map(|error| format!("{error:?}")).collect();
    let mut texts = BTreeMap::new();
    for entry in &resource.body {
        let Entry::Message(message) = entry else {
            continue;
        };
        let mut forms = BTreeMap::new();
        let mut words = String::new();
        let value = message.value.iter().map(|pattern| ("", pattern));
        let attributes = message.attributes.iter().map(|a| (a.id.name, &a.value));
        for (form, pattern) in value.chain(attributes) {
            let mut blanks = BTreeSet::new();
            gather(pattern, &mut blanks, &mut words);
            forms.insert(form.to_owned(), blanks);
        }
        let source = words;
        texts.insert(message.id.name.to_owned(), Text { forms, source });
    }
    (texts, troubles)
}

fn gather(pattern: &Pattern<&str>, blanks: &mut BTreeSet<String>, words: &mut String) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => words.push_str(value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => gather_inline(inline, blanks, words),
                Expression::Select { selector, variants } => {
                    gather_inline(selector, blanks, words);
                    for variant in variants {
                        gather(&variant.value, blanks, words);
                    }
                }
            },
        }
    }
}

fn gather_inline(
    inline: &InlineExpression<&str>,
    blanks: &mut BTreeSet<String>,
    words: &mut String,
) {
    match inline {
        InlineExpression::VariableReference { id } => {
            blanks.insert(id.name.to_owned());
        }
        InlineExpression::StringLiteral { value } => words.push_str(value),
        InlineExpression::Placeable { expression } => match &**expression {
            Expression::Inline(inner) => gather_inline(inner, blanks, words),
            Expression::Select { selector, .. } => gather_inline(selector, blanks, words),
        },
        _ => {}
    }
}
