//! Gives the values of a split text to serde, so that every error has the place of its value.

use super::problem::{At, Failure, Problem};
use super::split::{Field, Node, NodeId, Shape, Tree};
use super::stand_in::StandIn;
use serde::de::value::StrDeserializer;
use serde::de::{
    DeserializeOwned, DeserializeSeed, Deserializer, EnumAccess, Error, IntoDeserializer,
    MapAccess, SeqAccess, VariantAccess, Visitor,
};
use std::collections::{BTreeMap, BTreeSet};

/// What earlier readings found wrong, and how this one gets past it.
#[derive(Debug, Default)]
pub(super) struct Mended {
    /// Wrong values: a stand-in answers for each.
    values: BTreeSet<NodeId>,
    /// Fields that do not belong in their struct: passed over.
    passed_over: BTreeSet<(NodeId, usize)>,
    /// Fields that a struct lacks: a stand-in answers for each.
    missing: BTreeMap<NodeId, Vec<&'static str>>,
}

impl Mended {
    /// Gets past a failure; gives false when that was tried already.
    pub(super) fn mend(&mut self, failure: &Failure) -> bool {
        match (failure.at, &failure.problem) {
            (Some(At::Node(node)), Problem::Missing(field)) => self.add(node, field),
            (Some(At::Node(node)), _) => self.values.insert(node),
            (Some(At::Field(node, number)), _) => self.pass_over(node, number),
            (None, _) => false,
        }
    }

    /// Adds a field that a struct lacks; gives false when it was added already.
    pub(super) fn add(&mut self, node: NodeId, field: &'static str) -> bool {
        let missing = self.missing.entry(node).or_default();
        let is_new = !missing.contains(&field);
        if is_new {
            missing.push(field);
        }
        is_new
    }

    /// Passes over a field of a struct; gives false when it was passed over already.
    pub(super) fn pass_over(&mut self, node: NodeId, number: usize) -> bool {
        self.passed_over.insert((node, number))
    }
}

/// One value, to be read.
#[derive(Clone, Copy)]
pub(super) struct ValueReader<'d> {
    pub(super) text: &'d str,
    pub(super) tree: &'d Tree,
    pub(super) mended: &'d Mended,
    pub(super) node: NodeId,
    /// The word before the parentheses is that of the variant around this value.
    pub(super) word_is_spent: bool,
}

impl<'d> ValueReader<'d> {
    fn of(self, node: NodeId) -> Self {
        Self {
            node,
            word_is_spent: false,
            ..self
        }
    }

    fn node(self) -> &'d Node {
        &self.tree.nodes[self.node]
    }

    fn written(self) -> &'d str {
        &self.text[self.node().span.clone()]
    }

    fn stands_in(self) -> bool {
        self.mended.values.contains(&self.node)
    }

    /// What stands here, for a message.
    fn found(self) -> String {
        match self.node().shape {
            Shape::Leaf if self.written().chars().count() <= 40 => format!("`{}`", self.written()),
            Shape::Leaf => "a long text".to_owned(),
            Shape::List(_) => "a list".to_owned(),
            Shape::Tuple { .. } => "values in parentheses".to_owned(),
            Shape::Struct { .. } => "named fields".to_owned(),
        }
    }

    fn expected<T>(self, what: &str) -> Result<T, Failure> {
        Err(Failure::custom(format_args!(
            "expected {what}, found {}",
            self.found()
        )))
    }

    fn placed<T>(self, result: Result<T, Failure>) -> Result<T, Failure> {
        result.map_err(|failure| failure.placed(At::Node(self.node)))
    }

    /// Reads a number, a text or a word; ron itself reads what is written.
    fn leaf<T: DeserializeOwned>(self, what: &str) -> Result<T, Failure> {
        let is_leaf = matches!(self.node().shape, Shape::Leaf);
        match ron::from_str(self.written()) {
            Ok(value) if is_leaf => Ok(value),
            _ => self.expected(what),
        }
    }

    /// A text. One that runs over several lines of the file is one line.
    fn prose(self) -> Result<String, Failure> {
        let text: String = self.leaf("a text in quotes")?;
        if !text.contains('\n') {
            return Ok(text);
        }
        let lines: Vec<&str> = text.lines().map(str::trim).collect();
        Ok(lines.join(" "))
    }

    fn number(self) -> Result<f64, Failure> {
        let number: f64 = self.leaf("a number")?;
        if number.is_finite() {
            Ok(number)
        } else {
            self.expected("a finite number")
        }
    }

    fn fields<V: Visitor<'d>>(self, visitor: V) -> Result<V::Value, Failure> {
        let shape = &self.node().shape;
        let fields = shape.fields();
        let is_empty = matches!(shape, Shape::Tuple { items, .. } if items.is_empty());
        if fields.is_empty() && !is_empty {
            return self.expected("fields in parentheses, `(name: value, …)`");
        }
        visitor.visit_map(FieldsReader {
            of: self,
            fields,
            next: 0,
            missing: self.mended.missing.get(&self.node).map_or(&[], |m| m),
            value: None,
        })
    }

    fn items<V: Visitor<'d>>(self, items: &'d [NodeId], visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_seq(ItemsReader { of: self, items })
    }

    fn tuple<V: Visitor<'d>>(self, length: usize, visitor: V) -> Result<V::Value, Failure> {
        match self.node().shape.items() {
            Some(items) if items.len() == length => self.items(items, visitor),
            Some(items) => Err(Failure::custom(format_args!(
                "expected {length} values in parentheses, found {}",
                items.len()
            ))),
            None => self.expected(&format!("{length} values in parentheses")),
        }
    }

    fn option<V: Visitor<'d>>(self, visitor: V) -> Result<V::Value, Failure> {
        let shape = &self.node().shape;
        if self.written() == "None" {
            return visitor.visit_none();
        }
        if shape.word(self.text) != "Some" || !shape.fields().is_empty() {
            return visitor.visit_some(self);
        }
        match shape.only_item() {
            Some(only) => visitor.visit_some(self.of(only)),
            None => self.expected("one value in `Some(…)`"),
        }
    }

    /// The word of a variant.
    fn word(self, units: bool, words: &'static [&'static str]) -> Result<&'d str, Failure> {
        let word = match &self.node().shape {
            Shape::Leaf => self.written(),
            shape => shape.word(self.text),
        };
        match word.chars().next() {
            Some('"') => self.expected("a word without quotes"),
            Some(c) if c.is_alphabetic() || c == '_' => Ok(word),
            Some(_) => Err(Failure::new(Problem::BareNumber { words, units })),
            None if units => self.expected("a quantity with its unit"),
            None => self.expected(&format!("one of {}", words.join(", "))),
        }
    }
}

macro_rules! whole_numbers {
    ($($method:ident $visit:ident $type:ty;)+) => {
        $(fn $method<V: Visitor<'d>>(self, visitor: V) -> Result<V::Value, Failure> {
            if self.stands_in() {
                return StandIn::NEW.$method(visitor);
            }
            let range = format!("a whole number from {} to {}", <$type>::MIN, <$type>::MAX);
            self.placed(self.leaf(&range).and_then(|value| visitor.$visit(value)))
        })+
    };
}

/// Reads with `$read` unless a stand-in answers.
macro_rules! reads {
    ($($method:ident($($arg:ident: $type:ty),*) |$me:ident, $visitor:ident| $read:expr;)+) => {
        $(fn $method<V: Visitor<'d>>(self, $($arg: $type,)* visitor: V)
            -> Result<V::Value, Failure>
        {
            if self.stands_in() {
                return StandIn::NEW.$method($($arg,)* visitor);
            }
            let ($me, $visitor) = (self, visitor);
            self.placed($read)
        })+
    };
}

impl<'d> Deserializer<'d> for ValueReader<'d> {
    type Error = Failure;

    whole_numbers! {
        deserialize_i8 visit_i8 i8;
        deserialize_i16 visit_i16 i16;
        deserialize_i32 visit_i32 i32;
        deserialize_i64 visit_i64 i64;
        deserialize_u8 visit_u8 u8;
        deserialize_u16 visit_u16 u16;
        deserialize_u32 visit_u32 u32;
        deserialize_u64 visit_u64 u64;
    }

    reads! {
        deserialize_bool() |me, v| me.leaf("true or false").and_then(|b| v.visit_bool(b));
        deserialize_f32() |me, v| me.number().and_then(|n| v.visit_f64(n));
        deserialize_f64() |me, v| me.number().and_then(|n| v.visit_f64(n));
        deserialize_char() |me, v| me.leaf("a letter").and_then(|c| v.visit_char(c));
        deserialize_str() |me, v| me.prose().and_then(|t| v.visit_string(t));
        deserialize_string() |me, v| me.prose().and_then(|t| v.visit_string(t));
        deserialize_bytes() |me, _v| me.expected("no bytes");
        deserialize_byte_buf() |me, _v| me.expected("no bytes");
        deserialize_unit() |me, v| me.leaf("`()`").and_then(|()| v.visit_unit());
        deserialize_unit_struct(_name: &'static str) |me, v| {
            me.leaf("`()`").and_then(|()| v.visit_unit())
        };
        deserialize_option() |me, v| me.option(v);
        deserialize_newtype_struct(_name: &'static str) |me, v| {
            let only = me.node().shape.only_item();
            v.visit_newtype_struct(only.map_or(me, |only| me.of(only)))
        };
        deserialize_seq() |me, v| match &me.node().shape {
            Shape::List(items) => me.items(items, v),
            Shape::Leaf | Shape::Tuple { .. } | Shape::Struct { .. } => {
                me.expected("a list, `[…]`")
            }
        };
        deserialize_tuple(length: usize) |me, v| me.tuple(length, v);
        deserialize_tuple_struct(_name: &'static str, length: usize) |me, v| me.tuple(length, v);
        deserialize_map() |me, v| me.fields(v);
        deserialize_struct(name: &'static str, _fields: &'static [&'static str]) |me, v| {
            let word = me.node().shape.word(me.text);
            if me.word_is_spent || word.is_empty() || word == name {
                me.fields(v)
            } else {
                me.expected(&format!("the fields of `{name}` in parentheses"))
            }
        };
        deserialize_enum(name: &'static str, words: &'static [&'static str]) |me, v| {
            // A quantity of `units` is written by its macro's `Written`; `Level` is any of them.
            me.word(matches!(name, "Written" | "Level"), words)
                .and_then(|word| v.visit_enum(VariantReader { of: me, word }))
        };
        deserialize_identifier() |me, v| v.visit_borrowed_str(me.written());
        deserialize_any() |me, v| match &me.node().shape {
            Shape::List(items) => me.items(items, v),
            Shape::Leaf if me.written().starts_with('"') => {
                me.prose().and_then(|text| v.visit_string(text))
            }
            Shape::Leaf => me.number().and_then(|n| v.visit_f64(n)),
            Shape::Tuple { .. } | Shape::Struct { .. } => me.fields(v),
        };
        deserialize_ignored_any() |_me, v| v.visit_unit();
    }
}

struct FieldsReader<'d> {
    of: ValueReader<'d>,
    fields: &'d [Field],
    next: usize,
    missing: &'d [&'static str],
    /// The value that belongs to the name just given; none: a stand-in.
    value: Option<NodeId>,
}

impl<'d> MapAccess<'d> for FieldsReader<'d> {
    type Error = Failure;

    fn next_key_seed<K: DeserializeSeed<'d>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, Failure> {
        let struct_node = self.of.node;
        let passed_over = &self.of.mended.passed_over;
        while passed_over.contains(&(struct_node, self.next)) {
            self.next += 1;
        }
        let (name, place) = if let Some(field) = self.fields.get(self.next) {
            self.value = Some(field.value);
            self.next += 1;
            let place = At::Field(struct_node, self.next - 1);
            (&self.of.text[field.name.clone()], place)
        } else if let Some((first, rest)) = self.missing.split_first() {
            self.value = None;
            self.missing = rest;
            (*first, At::Node(struct_node))
        } else {
            return Ok(None);
        };
        let name: StrDeserializer<'d, Failure> = name.into_deserializer();
        match seed.deserialize(name) {
            Ok(key) => Ok(Some(key)),
            Err(failure) => Err(failure.placed(place)),
        }
    }

    fn next_value_seed<T: DeserializeSeed<'d>>(&mut self, seed: T) -> Result<T::Value, Failure> {
        match self.value {
            Some(node) => {
                let value = self.of.of(node);
                value.placed(seed.deserialize(value))
            }
            None => seed.deserialize(StandIn::NEW),
        }
    }
}

struct ItemsReader<'d> {
    of: ValueReader<'d>,
    items: &'d [NodeId],
}

impl<'d> SeqAccess<'d> for ItemsReader<'d> {
    type Error = Failure;

    fn next_element_seed<T: DeserializeSeed<'d>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Failure> {
        let Some((first, rest)) = self.items.split_first() else {
            return Ok(None);
        };
        self.items = rest;
        let value = self.of.of(*first);
        value.placed(seed.deserialize(value)).map(Some)
    }
}

struct VariantReader<'d> {
    of: ValueReader<'d>,
    word: &'d str,
}

impl<'d> EnumAccess<'d> for VariantReader<'d> {
    type Error = Failure;
    type Variant = Self;

    fn variant_seed<T: DeserializeSeed<'d>>(self, seed: T) -> Result<(T::Value, Self), Failure> {
        let word: StrDeserializer<'d, Failure> = self.word.into_deserializer();
        Ok((seed.deserialize(word)?, self))
    }
}

impl<'d> VariantAccess<'d> for VariantReader<'d> {
    type Error = Failure;

    fn unit_variant(self) -> Result<(), Failure> {
        match &self.of.node().shape {
            Shape::Leaf => Ok(()),
            Shape::Tuple { .. } | Shape::Struct { .. } | Shape::List(_) => Err(Failure::custom(
                format_args!("`{}` takes nothing in parentheses", self.word),
            )),
        }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'d>>(self, seed: T) -> Result<T::Value, Failure> {
        let shape = &self.of.node().shape;
        if let Some(only) = shape.only_item() {
            let value = self.of.of(only);
            return value.placed(seed.deserialize(value));
        }
        // A variant that holds a struct need not double its parentheses.
        if !shape.fields().is_empty() {
            return seed.deserialize(ValueReader {
                word_is_spent: true,
                ..self.of
            });
        }
        Err(Failure::custom(format_args!(
            "`{}` takes one value in parentheses",
            self.word
        )))
    }

    fn tuple_variant<V: Visitor<'d>>(self, length: usize, visitor: V) -> Result<V::Value, Failure> {
        self.of.tuple(length, visitor)
    }

    fn struct_variant<V: Visitor<'d>>(
        self,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Failure> {
        self.of.fields(visitor)
    }
}
