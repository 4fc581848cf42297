//! Just enough of Rust's grammar to see which texts a source uses, and what fills their blanks.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// A piece of source.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Token {
    /// A literal string, without its quotes.
    Text(String),
    /// Any other character that is not white.
    Sign(char),
}

/// Every source under a folder, by its path, in pieces.
pub fn sources(folder: &str) -> Vec<(String, Vec<Token>)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = Vec::new();
    let mut folders = vec![root.join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).expect("a folder of sources") {
            let path = entry.expect("an entry of the folder").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let inside = path.strip_prefix(root).expect("it lies under the root");
                let source = fs::read_to_string(&path).expect("a source is text");
                found.push((inside.display().to_string(), tokens(&source)));
            }
        }
    }
    found.sort_by(|(a, _), (b, _)| a.cmp(b));
    found
}

/// A source in pieces, without its comments and without the tests at its end.
pub fn tokens(source: &str) -> Vec<Token> {
    let source = source.split("#[cfg(test)]").next().unwrap_or_default();
    let chars: Vec<char> = source.chars().collect();
    let mut tokens = Vec::new();
    let mut i = 0;
    while i < chars.len() {
        let next = chars.get(i + 1).copied();
        match chars[i] {
            '/' if next == Some('/') => {
                while i < chars.len() && chars[i] != '\n' {
                    i += 1;
                }
            }
            '"' => {
                let (text, end) = literal(&chars, i + 1);
                tokens.push(Token::Text(text));
                i = end;
            }
            // A character, not a lifetime.
            '\'' if next == Some('\\') => i += 4,
            '\'' if chars.get(i + 2) == Some(&'\'') => i += 3,
            // The mark of a raw string, which has no quotes inside it in this tree.
            'r' if next == Some('"') => i += 1,
            c => {
                if !c.is_whitespace() {
                    tokens.push(Token::Sign(c));
                }
                i += 1;
            }
        }
    }
    tokens
}

/// A literal string from behind its first quote, and where the source goes on.
fn literal(chars: &[char], from: usize) -> (String, usize) {
    let mut text = String::new();
    let mut i = from;
    while i < chars.len() && chars[i] != '"' {
        if chars[i] != '\\' {
            text.push(chars[i]);
            i += 1;
            continue;
        }
        i += 2;
        // A line that goes on begins at its first word.
        if chars.get(i - 1) == Some(&'\n') {
            while chars.get(i).is_some_and(|c| c.is_whitespace()) {
                i += 1;
            }
        }
    }
    (text, i + 1)
}

/// Each key that a source names, with the names of the blanks that are filled in where it does.
pub fn uses(tokens: &[Token], prefixes: &[String]) -> Vec<(String, BTreeSet<String>)> {
    let is_key = |text: &str| {
        // What the keys of a tool's words begin with is no key: tests of derived keys hold those.
        !text.ends_with('-')
            && prefixes.iter().any(|prefix| text.starts_with(prefix))
            && text
                .chars()
                .all(|c| c.is_ascii_alphanumeric() || c == '-' || c == '_')
    };
    let mut found = Vec::new();
    for (i, token) in tokens.iter().enumerate() {
        if let Token::Text(key) = token
            && is_key(key)
        {
            found.push((key.clone(), filled(&tokens[i + 1..])));
        }
    }
    found
}

/// The names in the chain of `.with("name", …)` that follows a key's closing bracket.
fn filled(mut rest: &[Token]) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    // A long argument ends its line with a comma.
    rest = skip(rest, ",").unwrap_or(rest);
    if rest.first() != Some(&Token::Sign(')')) {
        return names;
    }
    rest = &rest[1..];
    loop {
        if let Some(after) = skip(rest, ".the()") {
            rest = after;
        } else if let Some(after) = skip(rest, ".with(") {
            if let Some(Token::Text(name)) = after.first() {
                names.insert(name.clone());
            }
            rest = past_the_bracket(after);
        } else {
            return names;
        }
    }
}

fn skip<'a>(tokens: &'a [Token], signs: &str) -> Option<&'a [Token]> {
    let wanted: Vec<Token> = signs.chars().map(Token::Sign).collect();
    tokens.strip_prefix(wanted.as_slice())
}

/// What follows the bracket that closes the one just opened.
fn past_the_bracket(tokens: &[Token]) -> &[Token] {
    let mut depth = 1_usize;
    for (i, token) in tokens.iter().enumerate() {
        match token {
            Token::Sign('(') => depth += 1,
            Token::Sign(')') => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return &tokens[i + 1..];
        }
    }
    &[]
}
