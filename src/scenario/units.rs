//! The units that come with the program.

/// Each unit's name and the text of its file.
const SHIPPED: [(&str, &str); 1] = [(
    "r22_3ton_orifice",
    // The one place where a unit's text is plugged in.
    "",
)];

/// The text of a unit's file.
pub(super) fn unit_text(name: &str) -> Option<&'static str> {
    let found = SHIPPED.iter().find(|(shipped, _)| *shipped == name);
    found.map(|(_, text)| *text)
}

/// The names of the units that come with the program.
pub(super) fn unit_names() -> Vec<&'static str> {
    SHIPPED.iter().map(|(name, _)| *name).collect()
}
