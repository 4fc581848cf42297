//! How files write the words of tools.
//!
//! In the program an enum of the words has one variant for all tools:
//! `Tool(Nitrogen(Valve(true)))`. A file leaves `Tool` out: `Nitrogen(Valve(true))`. The reader
//! takes the first word, sees whether it names a tool, and gives the rest to the tool's own enum. A
//! word of an earlier version of the files, `NitrogenValve(true)`, is read as the word of today.

use super::tools::Name;
use serde::de::value::{EnumAccessDeserializer, StrDeserializer};
use serde::de::{
    Deserialize, DeserializeSeed, Deserializer, EnumAccess, Error, IntoDeserializer, VariantAccess,
    Visitor,
};
use std::fmt;
use std::marker::PhantomData;

/// A word of earlier files, the tool that it is of, and the tool's word for it today.
pub type Earlier = (&'static str, Name, &'static str);

/// An enum of the words with one variant for all tools.
pub trait Plain: Sized {
    /// What the enum is called, for errors.
    const NAME: &'static str;

    /// Words of earlier files.
    const EARLIER: &'static [Earlier];

    /// The words of its own variants.
    const OWN: &'static [&'static str];

    /// Every word that a file may write today: its own, then the tools'.
    fn words() -> &'static [&'static str];

    /// Reads one of its own variants.
    fn read_own<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error>;

    /// Reads what follows the name of a tool; `word` is the tool's word, if it does not follow.
    fn read_tool<'de, A: VariantAccess<'de>>(
        tool: Name,
        word: Option<&'static str>,
        rest: A,
    ) -> Result<Self, A::Error>;
}

/// Reads a word of the enum.
pub fn read<'de, T: Plain, D: Deserializer<'de>>(deserializer: D) -> Result<T, D::Error> {
    deserializer.deserialize_enum(T::NAME, T::words(), Reader(PhantomData))
}

struct Reader<T>(PhantomData<T>);

impl<'de, T: Plain> Visitor<'de> for Reader<T> {
    type Value = T;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "a word of {}", T::NAME)
    }

    fn visit_enum<A: EnumAccess<'de>>(self, data: A) -> Result<T, A::Error> {
        let (word, rest) = data.variant_seed(Word)?;
        let earlier = T::EARLIER.iter().find(|(old, ..)| *old == word);
        if let Some(&(_, tool, new)) = earlier {
            T::read_tool(tool, Some(new), rest)
        } else if let Some(tool) = Name::of_word(&word)
            && T::words().contains(&word.as_str())
        {
            T::read_tool(tool, None, rest)
        } else if T::OWN.contains(&word.as_str()) {
            let word = &word;
            T::read_own(EnumAccessDeserializer::new(Replayed { word, rest }))
        } else {
            Err(A::Error::unknown_variant(&word, T::words()))
        }
    }
}

/// Reads the rest of a tool's word: all of it, or what follows a word that is known already.
pub fn read_rest<'de, T: Deserialize<'de>, A: VariantAccess<'de>>(
    word: Option<&'static str>,
    rest: A,
) -> Result<T, A::Error> {
    match word {
        None => rest.newtype_variant(),
        Some(word) => T::deserialize(EnumAccessDeserializer::new(Replayed { word, rest })),
    }
}

/// The first word of an enum that was read already, with what follows it.
struct Replayed<'w, A> {
    word: &'w str,
    rest: A,
}

impl<'de, A: VariantAccess<'de>> EnumAccess<'de> for Replayed<'_, A> {
    type Error = A::Error;
    type Variant = A;

    fn variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<(S::Value, A), A::Error> {
        let word: StrDeserializer<'_, A::Error> = self.word.into_deserializer();
        Ok((seed.deserialize(word)?, self.rest))
    }
}

/// Reads the first word of an enum.
struct Word;

impl<'de> DeserializeSeed<'de> for Word {
    type Value = String;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<String, D::Error> {
        deserializer.deserialize_identifier(self)
    }
}

impl Visitor<'_> for Word {
    type Value = String;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a word")
    }

    fn visit_str<E: Error>(self, word: &str) -> Result<String, E> {
        Ok(word.to_owned())
    }
}

/// Ties an enum of the words to its plain form. The enum derives serde with `remote = "Self"` and
/// `strum::VariantNames`, and its variant `Tool`, which serde skips, holds the tools' enum.
macro_rules! plain {
    ($Kind:ident, $Tools:ty, earlier: [$($old:literal => $Name:ident $new:literal),* $(,)?]) => {
        impl crate::kit::plain::Plain for $Kind {
            const NAME: &'static str = stringify!($Kind);

            const EARLIER: &'static [crate::kit::plain::Earlier] =
                &[$(($old, crate::kit::tools::Name::$Name, $new)),*];

            const OWN: &'static [&'static str] = <Self as strum::VariantNames>::VARIANTS
                .split_last()
                .expect("its last variant is that of the tools")
                .1;

            fn words() -> &'static [&'static str] {
                static WORDS: std::sync::LazyLock<Vec<&'static str>> =
                    std::sync::LazyLock::new(|| {
                        let own = <$Kind as crate::kit::plain::Plain>::OWN.iter().copied();
                        own.chain(<$Tools>::words()).collect()
                    });
                &WORDS
            }

            fn read_own<'de, D: serde::Deserializer<'de>>(
                deserializer: D,
            ) -> Result<Self, D::Error> {
                // The function that serde derives beside the trait.
                Self::deserialize(deserializer)
            }

            fn read_tool<'de, A: serde::de::VariantAccess<'de>>(
                tool: crate::kit::tools::Name,
                word: Option<&'static str>,
                rest: A,
            ) -> Result<Self, A::Error> {
                <$Tools>::read(tool, word, rest).map(Self::Tool)
            }
        }

        impl serde::Serialize for $Kind {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                if let Self::Tool(of_tool) = self {
                    of_tool.serialize(serializer)
                } else {
                    Self::serialize(self, serializer)
                }
            }
        }

        impl<'de> serde::Deserialize<'de> for $Kind {
            fn deserialize<D: serde::Deserializer<'de>>(
                deserializer: D,
            ) -> Result<Self, D::Error> {
                crate::kit::plain::read(deserializer)
            }
        }
    };
}
pub(crate) use plain;
