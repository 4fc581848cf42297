//! What must be so in a scenario beyond the types of its values.
//!
//! Each check reads its own part of the file. A part that cannot be read is passed over: reading
//! the whole file has told of it.

mod dimension;
mod range;
mod rubric;
mod unit;
mod values;
mod weather;

pub(crate) use dimension::check_bound;
pub(super) use unit::check_unit_file;
pub(crate) use values::check_values;

use super::document::ERRORS_MAX;
use super::{Diagnostic, Located};
use crate::kit::tools::Name;
use crate::plant::{Fault, FaultKind};
use crate::units::{Fraction, Temperature};
use range::{
    AN_HOUR, CUBIC_METRES, FAHRENHEIT, FEET, KILOGRAMS, METRES, MILLIMETRES, PLAIN, check_range,
};

/// Checks a whole scenario.
pub(super) fn check_scenario(file: Located<'_>) -> Vec<Diagnostic> {
    let mut wrong = Vec::new();
    check_version(file, &mut wrong);
    for name in ["title", "trains"] {
        check_text(file.field(name), name, &mut wrong);
    }
    for name in ["name", "place", "complaint"] {
        check_text(file.field("customer").field(name), name, &mut wrong);
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
    check_site(file.field("site"), &mut wrong);
    check_faults(file.field("faults"), &mut wrong);
    check_cart(file.field("cart"), &mut wrong);
    check_costs(file.field("costs"), &mut wrong);
    if file.field("pass").read::<Fraction>() == Some(Fraction::ZERO) {
        let message = "pass must be above 0: any attempt would pass";
        wrong.push(file.field("pass").error(message));
    }
    for hint in file.field("hints").items() {
        if wrong.len() >= ERRORS_MAX {
            break;
        }
        check_text(hint, "a hint", &mut wrong);
    }
    rubric::check_rubric(file, &mut wrong);
    check_values(file.field("rubric"), &mut wrong);
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

/// The most letters of a text. Chosen: a screenful.
const LETTERS_MAX: usize = 2000;

/// Checks that a text says something, at no great length, and that it cannot drive a terminal.
pub(crate) fn check_text(text: Located<'_>, name: &str, wrong: &mut Vec<Diagnostic>) {
    let Some(found) = text.read::<String>() else {
        return;
    };
    let letters = found.chars().count();
    if found.trim().is_empty() {
        wrong.push(text.error(format!("{name} must not be empty")));
    } else if letters > LETTERS_MAX {
        let message = format!("{name} has {letters} letters; the most is {LETTERS_MAX}");
        wrong.push(text.error(message));
    } else if found.chars().any(char::is_control) {
        let message = format!("{name} has a control character in it");
        wrong.push(text.error_with_hint(message, "write letters, digits and signs only"));
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
        check_range(place, name, FAHRENHEIT, range, wrong);
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
    // Chosen: what residential line sets come in (common practice, no source).
    check_range(line_set, "line_set", FEET, (5.0, 250.0), wrong);
    for name in ["outdoor_space", "indoor_space"] {
        check_space(site.field(name), wrong);
    }
    weather::check_weather(site, wrong);
}

fn check_space(space: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    // Chosen: from a cupboard to a hall, from shut up to a machinery room's emergency fan.
    let volume = space.field("volume");
    check_range(volume, "volume", CUBIC_METRES, (1.0, 1e5), wrong);
    let changes = space.field("air_changes");
    check_range(changes, "air_changes", AN_HOUR, (0.0, 60.0), wrong);
}

fn check_faults(faults: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let mut planted: Vec<Fault> = Vec::new();
    for place in faults.items() {
        if wrong.len() >= ERRORS_MAX {
            return;
        }
        let Some(fault) = place.read::<Fault>() else {
            continue;
        };
        let sheet = fault.kind().sheet();
        if !fault.is_in_range() {
            let (least, most) = sheet.range;
            wrong.push(place.error_with_hint(
                format!(
                    "{} of size {} is out of range",
                    fault.kind().label(),
                    fault.size()
                ),
                format!("{} from {least} to {most}", sheet.unit),
            ));
        }
        if planted.iter().any(|other| other.is_at_the_place_of(fault)) {
            wrong.push(place.error(format!("{} is planted twice", fault.kind().label())));
        }
        planted.push(fault);
        let charge = [FaultKind::Undercharge, FaultKind::Overcharge];
        let is_planted = |kind| planted.iter().any(|other| other.kind() == kind);
        if charge.contains(&fault.kind()) && charge.into_iter().all(is_planted) {
            wrong.push(place.error("the charge cannot be both too small and too large"));
        }
    }
}

fn check_cart(cart: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    // Chosen: what one person brings on a cart (common practice, no source).
    let refrigerant = cart.field("refrigerant");
    check_range(refrigerant, "refrigerant", KILOGRAMS, (0.0, 60.0), wrong);
    let hose = cart.field("hose");
    check_range(hose, "hose", METRES, (0.2, 20.0), wrong);
    let bore = cart.field("hose_bore");
    check_range(bore, "hose_bore", MILLIMETRES, (2.0, 20.0), wrong);
    let thermometers = cart.field("thermometers");
    check_range(thermometers, "thermometers", PLAIN, (0.0, 24.0), wrong);
    check_tools(cart.field("tools"), wrong);
}

/// Checks the tools that not every cart has: no other is named, and none twice.
fn check_tools(tools: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let mut named: Vec<Name> = Vec::new();
    for tool in tools.items() {
        let Some(name) = tool.read::<Name>() else {
            continue;
        };
        if !name.is_extra() {
            let message = format!("{name:?} is on every cart");
            wrong.push(tool.error_with_hint(message, "leave it out"));
        } else if named.contains(&name) {
            let message = format!("{name:?} is named twice");
            wrong.push(tool.error_with_hint(message, "leave one out"));
        } else {
            named.push(name);
        }
    }
}

fn check_costs(costs: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    check_text(costs.field("money"), "money", wrong);
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
        check_range(place, name, PLAIN, (0.0, 1e6), wrong);
    }
}
