//! Units: those that come with the program, and those of a file.

use super::check::check_unit_file;
use super::diagnostic::did_you_mean;
use super::load::digest;
use super::{Diagnostic, Document, Located, in_order};
use crate::files;
use crate::plant::Unit;
use std::path::Path;

/// Each unit's name and the text of its file.
const SHIPPED: [(&str, &str); 7] = [
    (
        "r22_3ton_orifice",
        include_str!("../../assets/units/r22_3ton_orifice.ron"),
    ),
    (
        "r410a_3ton_txv",
        include_str!("../../assets/units/r410a_3ton_txv.ron"),
    ),
    (
        "r410a_2ton_orifice",
        include_str!("../../assets/units/r410a_2ton_orifice.ron"),
    ),
    (
        "r32_2ton_txv",
        include_str!("../../assets/units/r32_2ton_txv.ron"),
    ),
    (
        "r454b_3ton_txv",
        include_str!("../../assets/units/r454b_3ton_txv.ron"),
    ),
    (
        "r407c_5ton_txv",
        include_str!("../../assets/units/r407c_5ton_txv.ron"),
    ),
    (
        "r134a_receiver_txv",
        include_str!("../../assets/units/r134a_receiver_txv.ron"),
    ),
];

/// The text of a unit's file.
pub(super) fn unit_text(name: &str) -> Option<&'static str> {
    let found = SHIPPED.iter().find(|(shipped, _)| *shipped == name);
    found.map(|(_, text)| *text)
}

/// The unit of this name.
pub(super) fn unit_named(name: &str) -> Option<Unit> {
    unit_text(name).map(|text| Unit::from_ron(text).expect("a test reads every shipped unit"))
}

/// The unit that a scenario names and the digest of its file: a shipped one by its name, or an own
/// one by its file, `"my_unit.ron"`, which stands beside the scenario. `scenario` is the path of
/// the scenario.
pub(super) fn unit_of(
    place: Located<'_>,
    scenario: &str,
) -> Result<(Unit, String), Vec<Diagnostic>> {
    let Some(name) = place.read::<String>() else {
        // That it is missing or no text is told by the reader of the whole file.
        return Err(Vec::new());
    };
    if let (Some(unit), Some(text)) = (unit_named(&name), unit_text(&name)) {
        return Ok((unit, digest(text.as_bytes())));
    }
    let ending = Path::new(&name).extension();
    if ending.is_none_or(|ending| ending != "ron") {
        let names = unit_names();
        let hint = match did_you_mean(&name, &names) {
            Some(near) => format!("did you mean \"{near}\"?"),
            None => format!(
                "it is one of {}, or the file of a unit beside this scenario, \"my_unit.ron\"",
                names.join(", ")
            ),
        };
        return Err(vec![
            place.error_with_hint(format!("there is no unit \"{name}\""), hint),
        ]);
    }
    let file = Path::new(scenario).with_file_name(&name);
    let shown = file.display().to_string();
    let bytes = files::read(&file, files::TEXT_MAX).map_err(|error| {
        let message = format!("the unit \"{name}\" cannot be read: {error}");
        let hint = format!("it is looked for beside this scenario, as {shown}");
        vec![place.error_with_hint(message, hint)]
    })?;
    Ok((read_unit(&shown, &bytes)?, digest(&bytes)))
}

/// The unit of a file's bytes, or everything that is wrong with it; `path` is what the person calls
/// the file.
pub(super) fn read_unit(path: &str, bytes: &[u8]) -> Result<Unit, Vec<Diagnostic>> {
    let document = Document::split(path, bytes).map_err(|wrong| vec![wrong])?;
    let read = document.read::<Unit>();
    let mut wrong = check_unit_file(document.root());
    match read {
        Ok(unit) if wrong.is_empty() => Ok(unit),
        Ok(_) => Err(in_order(wrong)),
        Err(unread) => {
            wrong.extend(unread);
            Err(in_order(wrong))
        }
    }
}

/// The names of the units that come with the program.
pub fn unit_names() -> Vec<&'static str> {
    SHIPPED.iter().map(|(name, _)| *name).collect()
}
