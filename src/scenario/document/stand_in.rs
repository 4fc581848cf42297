//! A value that answers whatever serde asks for.
//!
//! It stands in for a value that is missing or wrong, so that the rest of a file can be read on
//! and its other errors found. Nothing made with a stand-in leaves this module's parent.

use super::problem::Failure;
use serde::de::value::StrDeserializer;
use serde::de::{
    DeserializeSeed, Deserializer, EnumAccess, IntoDeserializer, MapAccess, SeqAccess,
    VariantAccess, Visitor,
};

/// The stand-in, with how deep it still goes into values that hold values of their own kind.
#[derive(Debug, Clone, Copy)]
pub(super) struct StandIn(pub(super) u8);

impl StandIn {
    /// A fresh one.
    pub(super) const NEW: Self = Self(16);

    fn deeper(self) -> Result<Self, Failure> {
        match self.0.checked_sub(1) {
            Some(left) => Ok(Self(left)),
            None => Err(serde::de::Error::custom("a type without end")),
        }
    }
}

macro_rules! answers {
    ($($method:ident => $visit:ident $value:expr;)+) => {
        $(fn $method<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
            visitor.$visit($value)
        })+
    };
}

impl<'de> Deserializer<'de> for StandIn {
    type Error = Failure;

    answers! {
        deserialize_bool => visit_bool false;
        deserialize_i8 => visit_i8 1;
        deserialize_i16 => visit_i16 1;
        deserialize_i32 => visit_i32 1;
        deserialize_i64 => visit_i64 1;
        deserialize_u8 => visit_u8 1;
        deserialize_u16 => visit_u16 1;
        deserialize_u32 => visit_u32 1;
        deserialize_u64 => visit_u64 1;
        // In every range that a share or a quantity of ours has.
        deserialize_f32 => visit_f32 0.5;
        deserialize_f64 => visit_f64 0.5;
        deserialize_char => visit_char 'x';
        // Any text will do, but where one names a refrigerant it must be a known one.
        deserialize_str => visit_borrowed_str "R-22";
        deserialize_string => visit_borrowed_str "R-22";
        deserialize_bytes => visit_borrowed_bytes b"";
        deserialize_byte_buf => visit_borrowed_bytes b"";
        deserialize_identifier => visit_borrowed_str "";
    }

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_unit()
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_unit()
    }

    fn deserialize_unit<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_unit()
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_none()
    }

    fn deserialize_unit_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Failure> {
        visitor.visit_unit()
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Failure> {
        visitor.visit_newtype_struct(self.deeper()?)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_seq(Several(self, 0))
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Failure> {
        visitor.visit_map(Named(self, &[]))
    }

    fn deserialize_tuple<V: Visitor<'de>>(
        self,
        length: usize,
        visitor: V,
    ) -> Result<V::Value, Failure> {
        visitor.visit_seq(Several(self.deeper()?, length))
    }

    fn deserialize_tuple_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        length: usize,
        visitor: V,
    ) -> Result<V::Value, Failure> {
        self.deserialize_tuple(length, visitor)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Failure> {
        visitor.visit_map(Named(self.deeper()?, fields))
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        variants: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Failure> {
        visitor.visit_enum(First(self.deeper()?, variants))
    }
}

/// So many stand-ins in a row.
struct Several(StandIn, usize);

impl<'de> SeqAccess<'de> for Several {
    type Error = Failure;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Failure> {
        if self.1 == 0 {
            return Ok(None);
        }
        self.1 -= 1;
        seed.deserialize(self.0).map(Some)
    }
}

/// A stand-in for each of these fields.
struct Named(StandIn, &'static [&'static str]);

impl<'de> MapAccess<'de> for Named {
    type Error = Failure;

    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, Failure> {
        let Some((first, rest)) = self.1.split_first() else {
            return Ok(None);
        };
        self.1 = rest;
        let name: StrDeserializer<'_, Failure> = (*first).into_deserializer();
        seed.deserialize(name).map(Some)
    }

    fn next_value_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<T::Value, Failure> {
        seed.deserialize(self.0)
    }
}

/// The first of these variants, with stand-ins for what it holds.
struct First(StandIn, &'static [&'static str]);

impl<'de> EnumAccess<'de> for First {
    type Error = Failure;
    type Variant = StandIn;

    fn variant_seed<T: DeserializeSeed<'de>>(
        self,
        seed: T,
    ) -> Result<(T::Value, StandIn), Failure> {
        let first = self.1.first().copied().unwrap_or_default();
        let name: StrDeserializer<'_, Failure> = first.into_deserializer();
        Ok((seed.deserialize(name)?, self.0))
    }
}

impl<'de> VariantAccess<'de> for StandIn {
    type Error = Failure;

    fn unit_variant(self) -> Result<(), Failure> {
        Ok(())
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Failure> {
        seed.deserialize(self)
    }

    fn tuple_variant<V: Visitor<'de>>(
        self,
        length: usize,
        visitor: V,
    ) -> Result<V::Value, Failure> {
        self.deserialize_tuple(length, visitor)
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Failure> {
        self.deserialize_struct("", fields, visitor)
    }
}
