//! What must be so in a scenario beyond the types of its values.
//!
//! Each check reads its own part of the file. A part that cannot be read is passed over: reading
//! the whole file has told of it.

mod dimension;
mod rubric;
mod weather;

pub(crate) use dimension::check_bound;

use super::units::{unit_names, unit_text};
use super::{Diagnostic, Located, diagnostic::did_you_mean};
use crate::plant::{Fault, FaultKind};
use crate::units::{Fraction, Length, Mass, Temperature, Volume};
use std::collections::BTreeSet;

/// Checks a whole scenario.
pub(super) fn check_scenario(file: Located<'_>) -> Vec<Diagnostic> {
    let mut wrong = Vec::new();
    check_version(file, &mut wrong);
    for name in ["title", "trains"] {
        check_not_empty(file.field(name), name, &mut wrong);
    }
    for name in ["name", "place", "complaint"] {
        check_not_empty(file.field("customer").field(name), name, &mut wrong);
    }
    if let Some(level) = file.field("level").read::<u8>()
        && !(1..=5).contains(&level)
    {
        let message = format!("level must lie in 1..=5, found {level}");
        wrong.push(
            file.field("level")
                .error_with_hint(message, "1 is easy, 5 is hard"),
        );
    }
    check_unit(file.field("unit"), &mut wrong);
    check_site(file.field("site"), &mut wrong);
    check_faults(file.field("faults"), &mut wrong);
    check_cart(file.field("cart"), &mut wrong);
    check_costs(file.field("costs"), &mut wrong);
    if file.field("pass").read::<Fraction>() == Some(Fraction::ZERO) {
        let message = "pass must be above 0: any attempt would pass";
        wrong.push(file.field("pass").error(message));
    }
    rubric::check_rubric(file, &mut wrong);
    wrong
}

/// Checks the version of a file of ours: all are at 1.
pub(crate) fn check_version(file: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let version = file.field("version");
    if let Some(found) = version.read::<u32>()
        && found != 1
    {
        let message = format!("version {found} of this format is not known");
        wrong.push(version.error_with_hint(message, "write version: 1"));
    }
}

/// Checks that a text says something.
pub(crate) fn check_not_empty(text: Located<'_>, name: &str, wrong: &mut Vec<Diagnostic>) {
    if text.read::<String>().is_some_and(|t| t.trim().is_empty()) {
        wrong.push(text.error(format!("{name} must not be empty")));
    }
}

fn check_unit(unit: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let Some(name) = unit.read::<String>() else {
        return;
    };
    if unit_text(&name).is_none() {
        let names = unit_names();
        let hint = match did_you_mean(&name, &names) {
            Some(near) => format!("did you mean \"{near}\"?"),
            None => format!("it is one of {}", names.join(", ")),
        };
        wrong.push(unit.error_with_hint(format!("there is no unit \"{name}\""), hint));
    }
}

/// Checks that a number, told in `unit`, lies in a range.
fn check_range(
    place: Located<'_>,
    name: &str,
    found: Option<f64>,
    (least, most): (f64, f64),
    unit: &str,
    wrong: &mut Vec<Diagnostic>,
) {
    if let Some(found) = found
        && !(least..=most).contains(&found)
    {
        let message = format!("{name} is out of the plausible, found {found:.1} {unit}");
        let hint = format!("from {least} to {most} {unit}");
        wrong.push(place.error_with_hint(message, hint));
    }
}

fn check_site(site: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    // Chosen: weather in which somebody lives, rooms from a freezer to a boiler house, in °F.
    let plausible = [
        ("outdoor", (-20.0, 130.0)),
        ("indoor", (-20.0, 110.0)),
        ("indoor_wet_bulb", (-20.0, 100.0)),
    ];
    for (name, range) in plausible {
        let place = site.field(name);
        let found = place.read().map(Temperature::fahrenheit);
        check_range(place, name, found, range, "°F", wrong);
    }
    let indoor = site.field("indoor").read::<Temperature>();
    let wet_bulb = site.field("indoor_wet_bulb");
    if let (Some(dry), Some(wet)) = (indoor, wet_bulb.read::<Temperature>())
        && wet > dry
    {
        let message = format!(
            "the wet bulb, {:.1} °F, is above the dry bulb, {:.1} °F",
            wet.fahrenheit(),
            dry.fahrenheit()
        );
        wrong.push(wet_bulb.error_with_hint(message, "at most they are equal, in fog"));
    }
    let line_set = site.field("line_set");
    let found = line_set.read().map(Length::feet);
    // Chosen: what residential line sets come in (common practice, no source).
    check_range(line_set, "line_set", found, (5.0, 250.0), "ft", wrong);
    for name in ["outdoor_space", "indoor_space"] {
        check_space(site.field(name), wrong);
    }
    weather::check_weather(site, wrong);
}

fn check_space(space: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    // Chosen: from a cupboard to a hall, from shut up to a machinery room's emergency fan.
    let volume = space.field("volume");
    let found = volume.read().map(Volume::cubic_metres);
    check_range(volume, "volume", found, (1.0, 1e5), "m³", wrong);
    let changes = space.field("air_changes");
    let found = changes.read::<f64>();
    check_range(changes, "air_changes", found, (0.0, 60.0), "an hour", wrong);
}

fn check_faults(faults: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let mut planted = BTreeSet::new();
    for place in faults.items() {
        let Some(fault) = place.read::<Fault>() else {
            continue;
        };
        let sheet = fault.kind().sheet();
        if !fault.is_in_range() {
            let (least, most) = sheet.range;
            wrong.push(place.error_with_hint(
                format!("{} of size {} is out of range", sheet.label, fault.size()),
                format!("{} from {least} to {most}", sheet.unit),
            ));
        }
        if !planted.insert((fault.kind(), fault.spot(), line_of(fault))) {
            wrong.push(place.error(format!("{} is planted twice", sheet.label)));
        }
        let opposite = match fault.kind() {
            FaultKind::Undercharge => Some(FaultKind::Overcharge),
            FaultKind::Overcharge => Some(FaultKind::Undercharge),
            _ => None,
        };
        if opposite.is_some_and(|kind| planted.contains(&(kind, None, None))) {
            wrong.push(place.error("the charge cannot be both too small and too large"));
        }
    }
}

fn line_of(fault: Fault) -> Option<crate::plant::Line> {
    match fault {
        Fault::LeakingSeat { at, .. } => Some(at),
        _ => None,
    }
}

fn check_cart(cart: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    // Chosen: what one person brings on a cart (common practice, no source).
    let refrigerant = cart.field("refrigerant");
    let found = refrigerant.read().map(Mass::kilograms);
    check_range(refrigerant, "refrigerant", found, (0.0, 60.0), "kg", wrong);
    let hose = cart.field("hose");
    let found = hose.read().map(Length::metres);
    check_range(hose, "hose", found, (0.2, 20.0), "m", wrong);
    let bore = cart.field("hose_bore");
    let found = bore.read().map(Length::millimetres);
    check_range(bore, "hose_bore", found, (2.0, 20.0), "mm", wrong);
}

fn check_costs(costs: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    check_not_empty(costs.field("money"), "money", wrong);
    if let Some(money) = costs.field("money").read::<String>()
        && money.chars().count() > 8
    {
        let message = format!("money is a sign or a short word, found \"{money}\"");
        wrong.push(costs.field("money").error(message));
    }
    // Chosen: nothing is given away with money, nothing costs as much as a house.
    let prices = [
        "refrigerant",
        "compressor",
        "micron_gauge",
        "drier",
        "pump_oil",
        "hour",
    ];
    for name in prices {
        let place = costs.field(name);
        check_range(place, name, place.read(), (0.0, 1e6), "", wrong);
    }
}
