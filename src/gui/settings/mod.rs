//! What a person chose once and finds again: language, units, gauge scale, colours, size of text.

mod panel;
mod settings_file;

pub use panel::settings_ui;
pub use settings_file::SettingsFile;

use crate::fluid::refrigerant::Refrigerant;
use crate::gui::theme::Colours;
use crate::gui::view::System;
use crate::text::Language;
use serde::{Deserialize, Serialize};

/// What a person chose.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Settings {
    /// The version of this format: 1.
    pub version: u32,
    /// The language.
    pub language: Language,
    /// The units of measure.
    pub units: System,
    /// The refrigerant whose saturation scale is on the gauges; without it, none is.
    pub gauge_scale: Option<Scale>,
    /// The colours.
    pub colours: Colours,
    /// The size of all text.
    pub text: TextSize,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            version: 1,
            language: Language::default(),
            units: System::default(),
            gauge_scale: Refrigerant::all().first().map(Scale),
            colours: Colours::default(),
            text: TextSize::default(),
        }
    }
}

/// A refrigerant, written by its name.
#[derive(Debug, Clone, Copy, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Scale(pub &'static Refrigerant);

impl PartialEq for Scale {
    fn eq(&self, other: &Self) -> bool {
        self.0.name() == other.0.name()
    }
}

impl From<Scale> for String {
    fn from(scale: Scale) -> Self {
        scale.0.name().to_owned()
    }
}

impl TryFrom<String> for Scale {
    type Error = String;

    fn try_from(name: String) -> Result<Self, String> {
        Refrigerant::named(&name).map(Self).ok_or_else(|| {
            let known = Refrigerant::names().join(", ");
            format!("there is no refrigerant \"{name}\"; it is one of {known}")
        })
    }
}

/// The size of all text and of what is drawn, as a percentage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "u32", into = "u32")]
pub struct TextSize(u32);

impl TextSize {
    /// The sizes to choose from.
    pub const ALL: [Self; 4] = [Self(100), Self(125), Self(150), Self(200)];

    /// As a percentage.
    pub const fn percent(self) -> u32 {
        self.0
    }

    /// As a factor.
    pub const fn factor(self) -> f32 {
        self.0 as f32 / 100.0
    }
}

impl Default for TextSize {
    fn default() -> Self {
        Self(100)
    }
}

impl From<TextSize> for u32 {
    fn from(size: TextSize) -> Self {
        size.0
    }
}

impl TryFrom<u32> for TextSize {
    type Error = String;

    fn try_from(percent: u32) -> Result<Self, String> {
        let known = Self::ALL.into_iter().find(|size| size.0 == percent);
        known.ok_or_else(|| format!("text is 100, 125, 150 or 200 percent, found {percent}"))
    }
}
