//! Splits the text of a RON file into its values, each with its place in the text.

use std::ops::Range;

/// Values may be nested this deep; no file of ours goes beyond ten.
const DEPTH_MAX: usize = 64;

/// The place of a value in [`Tree::nodes`].
pub(super) type NodeId = usize;

/// The values of a text.
#[derive(Debug)]
pub(super) struct Tree {
    pub(super) nodes: Vec<Node>,
    pub(super) root: NodeId,
}

/// One value.
#[derive(Debug)]
pub(super) struct Node {
    /// Its bytes in the text, its name included.
    pub(super) span: Range<usize>,
    pub(super) shape: Shape,
}

/// How a value is written.
#[derive(Debug)]
pub(super) enum Shape {
    /// A number, a string, a word alone: `7.5`, `"Fox"`, `Liquid`.
    Leaf,
    /// Values in parentheses, with or without a word before: `Psig(0.5)`.
    Tuple {
        name: Range<usize>,
        items: Vec<NodeId>,
    },
    /// Named values in parentheses, with or without a word before: `Leak(at: …, hole: …)`.
    Struct {
        name: Range<usize>,
        fields: Vec<Field>,
    },
    /// Values in brackets.
    List(Vec<NodeId>),
}

impl Shape {
    /// The named values; of any other shape none.
    pub(super) fn fields(&self) -> &[Field] {
        match self {
            Self::Struct { fields, .. } => fields,
            Self::Leaf | Self::Tuple { .. } | Self::List(_) => &[],
        }
    }

    /// The values without names, in parentheses or in brackets.
    pub(super) fn items(&self) -> Option<&[NodeId]> {
        match self {
            Self::Tuple { items, .. } | Self::List(items) => Some(items),
            Self::Leaf | Self::Struct { .. } => None,
        }
    }

    /// The only value in parentheses.
    pub(super) fn only_item(&self) -> Option<NodeId> {
        match self {
            Self::Tuple { items, .. } => match items[..] {
                [only] => Some(only),
                [] | [_, _, ..] => None,
            },
            Self::Leaf | Self::List(_) | Self::Struct { .. } => None,
        }
    }

    /// The word before the parentheses; empty where there is none.
    pub(super) fn word<'t>(&self, text: &'t str) -> &'t str {
        match self {
            Self::Tuple { name, .. } | Self::Struct { name, .. } => &text[name.clone()],
            Self::Leaf | Self::List(_) => "",
        }
    }
}

/// A named value of a struct.
#[derive(Debug)]
pub(super) struct Field {
    /// The bytes of its name.
    pub(super) name: Range<usize>,
    pub(super) value: NodeId,
}

/// Where the text stops being RON, and why.
#[derive(Debug)]
pub(super) struct SyntaxError {
    pub(super) at: usize,
    pub(super) message: String,
    pub(super) hint: Option<&'static str>,
}

/// Splits a text.
pub(super) fn split(text: &str) -> Result<Tree, SyntaxError> {
    let mut splitter = Splitter {
        text,
        at: 0,
        nodes: Vec::new(),
    };
    splitter.skip_blanks()?;
    let root = splitter.value(0)?;
    splitter.skip_blanks()?;
    if splitter.at < text.len() {
        return splitter.fail("nothing may follow the value of the file", None);
    }
    Ok(Tree {
        nodes: splitter.nodes,
        root,
    })
}

struct Splitter<'t> {
    text: &'t str,
    at: usize,
    nodes: Vec<Node>,
}

impl Splitter<'_> {
    fn rest(&self) -> &str {
        &self.text[self.at..]
    }

    fn next(&self) -> Option<char> {
        self.rest().chars().next()
    }

    fn fail<T>(&self, message: &str, hint: Option<&'static str>) -> Result<T, SyntaxError> {
        Err(SyntaxError {
            at: self.at,
            message: message.to_owned(),
            hint,
        })
    }

    /// Fails because something else stands here.
    fn expected<T>(&self, what: &str) -> Result<T, SyntaxError> {
        match self.next() {
            Some(found) => self.fail(&format!("expected {what}, found `{found}`"), None),
            None => self.fail(&format!("expected {what}, but the file ends here"), None),
        }
    }

    fn take(&mut self, wanted: char) -> bool {
        let found = self.next() == Some(wanted);
        if found {
            self.at += wanted.len_utf8();
        }
        found
    }

    fn take_while(&mut self, wanted: impl Fn(char) -> bool) -> Range<usize> {
        let start = self.at;
        let rest = self.rest();
        self.at += rest.find(|c| !wanted(c)).unwrap_or(rest.len());
        start..self.at
    }

    /// Skips white space and comments.
    fn skip_blanks(&mut self) -> Result<(), SyntaxError> {
        loop {
            self.take_while(char::is_whitespace);
            if self.rest().starts_with("//") {
                self.take_while(|c| c != '\n');
            } else if self.rest().starts_with("/*") {
                self.skip_block_comment()?;
            } else {
                return Ok(());
            }
        }
    }

    fn skip_block_comment(&mut self) -> Result<(), SyntaxError> {
        let start = self.at;
        let mut depth = 0_usize;
        loop {
            if self.rest().starts_with("/*") {
                depth += 1;
                self.at += 2;
            } else if self.rest().starts_with("*/") {
                depth -= 1;
                self.at += 2;
                if depth == 0 {
                    return Ok(());
                }
            } else if let Some(c) = self.next() {
                self.at += c.len_utf8();
            } else {
                self.at = start;
                return self.fail("this comment is not closed", Some("close it with `*/`"));
            }
        }
    }

    fn value(&mut self, depth: usize) -> Result<NodeId, SyntaxError> {
        if depth > DEPTH_MAX {
            return self.fail("values are nested too deep", None);
        }
        let start = self.at;
        let shape = match self.next() {
            Some('(') => self.parentheses(start..start, depth)?,
            Some('[') => self.brackets(depth)?,
            Some('"') => self.string()?,
            Some(c) if is_word_start(c) => {
                let name = self.take_while(is_word_part);
                let after = self.at;
                self.skip_blanks()?;
                if self.next() == Some('(') {
                    self.parentheses(name, depth)?
                } else {
                    self.at = after;
                    Shape::Leaf
                }
            }
            Some(c) if c.is_ascii_digit() || "+-.".contains(c) => {
                self.take_while(|c| is_word_part(c) || "+-.".contains(c));
                Shape::Leaf
            }
            _ => return self.expected("a value"),
        };
        self.nodes.push(Node {
            span: start..self.at,
            shape,
        });
        Ok(self.nodes.len() - 1)
    }

    fn string(&mut self) -> Result<Shape, SyntaxError> {
        let start = self.at;
        self.at += 1;
        loop {
            self.take_while(|c| c != '"' && c != '\\');
            if self.take('"') {
                return Ok(Shape::Leaf);
            }
            // A backslash and what it stands before; ron reads the escape itself.
            self.take('\\');
            let Some(c) = self.next() else {
                self.at = start;
                return self.fail("this text is not closed", Some("close it with `\"`"));
            };
            self.at += c.len_utf8();
        }
    }

    fn brackets(&mut self, depth: usize) -> Result<Shape, SyntaxError> {
        let start = self.at;
        self.at += 1;
        let mut items = Vec::new();
        while !self.closes(']', start)? {
            items.push(self.value(depth + 1)?);
            self.separates(']', start)?;
        }
        Ok(Shape::List(items))
    }

    fn parentheses(&mut self, name: Range<usize>, depth: usize) -> Result<Shape, SyntaxError> {
        let start = self.at;
        self.at += 1;
        let mut items = Vec::new();
        let mut fields = Vec::new();
        while !self.closes(')', start)? {
            match self.field_name()? {
                Some(field) if items.is_empty() => fields.push(Field {
                    name: field,
                    value: self.value(depth + 1)?,
                }),
                None if fields.is_empty() => items.push(self.value(depth + 1)?),
                Some(_) => return self.expected("a value without a name, as those before it"),
                None => return self.expected("a field, `name: value`"),
            }
            self.separates(')', start)?;
        }
        Ok(if fields.is_empty() {
            Shape::Tuple { name, items }
        } else {
            Shape::Struct { name, fields }
        })
    }

    /// Reads `name:` if that is what stands here.
    fn field_name(&mut self) -> Result<Option<Range<usize>>, SyntaxError> {
        let start = self.at;
        if self.next().is_some_and(is_word_start) {
            let name = self.take_while(is_word_part);
            self.skip_blanks()?;
            if self.take(':') {
                self.skip_blanks()?;
                return Ok(Some(name));
            }
        }
        self.at = start;
        Ok(None)
    }

    /// Whether the closing bracket stands here; then it is passed.
    fn closes(&mut self, bracket: char, opened: usize) -> Result<bool, SyntaxError> {
        self.skip_blanks()?;
        if self.next().is_none() {
            self.at = opened;
            return self.fail(&format!("this is not closed: `{bracket}` is missing"), None);
        }
        Ok(self.take(bracket))
    }

    /// Passes the comma after a value; before the closing bracket there need be none.
    fn separates(&mut self, bracket: char, opened: usize) -> Result<(), SyntaxError> {
        self.skip_blanks()?;
        match self.next() {
            Some(',') => self.at += 1,
            Some(c) if c == bracket => {}
            Some(found) => {
                let message = format!("expected `,` or `{bracket}`, found `{found}`");
                return self.fail(&message, Some("is a comma missing before this?"));
            }
            None => {
                self.closes(bracket, opened)?;
            }
        }
        Ok(())
    }
}

fn is_word_start(c: char) -> bool {
    c.is_alphabetic() || c == '_'
}

fn is_word_part(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}
