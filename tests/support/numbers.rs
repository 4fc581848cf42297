//! The numbers in a text of RON: where each stands, and the text with another in its place.

use std::ops::Range;

/// A number as it is written.
#[derive(Debug, Clone)]
pub struct Number {
    /// Its bytes in the text.
    pub at: Range<usize>,
    /// What is written.
    pub written: String,
}

impl Number {
    /// Its line, counted from 1.
    pub fn line(&self, text: &str) -> usize {
        text[..self.at.start].matches('\n').count() + 1
    }

    /// The text with something else in its place.
    pub fn replaced_in(&self, text: &str, new: &str) -> String {
        format!("{}{new}{}", &text[..self.at.start], &text[self.at.end..])
    }

    /// The text with a quantity in its place: its unit is replaced as well, if it has one.
    pub fn with_unit_replaced_in(&self, text: &str, unit: &str, new: &str) -> String {
        let before = &text[..self.at.start];
        if unit.is_empty() || !before.ends_with('(') {
            return self.replaced_in(text, new);
        }
        let word = before[..before.len() - 1].trim_end_matches(char::is_alphanumeric);
        format!("{word}{unit}({new}{}", &text[self.at.end..])
    }
}

/// The numbers of a text, outside of comments and of texts in quotes.
pub fn numbers_of(text: &str) -> Vec<Number> {
    let mut numbers = Vec::new();
    let bytes = text.as_bytes();
    let mut at = 0;
    let mut is_word = false;
    while at < bytes.len() {
        let rest = &bytes[at..];
        let skipped = match rest[0] {
            b'"' => {
                let mut end = 1;
                while rest[end] != b'"' {
                    end += if rest[end] == b'\\' { 2 } else { 1 };
                }
                end + 1
            }
            b'/' if rest.starts_with(b"//") => rest
                .iter()
                .position(|&byte| byte == b'\n')
                .unwrap_or(rest.len()),
            b'-' | b'0'..=b'9' if !is_word => {
                let is_part = |byte: &u8| byte.is_ascii_alphanumeric() || b"+-._".contains(byte);
                let length = rest.iter().position(|byte| !is_part(byte));
                let at = at..at + length.unwrap_or(rest.len());
                let written = text[at.clone()].to_owned();
                numbers.push(Number { at, written });
                length.unwrap_or(rest.len())
            }
            _ => 1,
        };
        is_word = rest[0].is_ascii_alphanumeric() || rest[0] == b'_';
        at += skipped;
    }
    numbers
}
