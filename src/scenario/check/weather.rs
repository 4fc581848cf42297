//! Checks of what the air does as time goes on: the weather's course, the room's load, the
//! thermostat.

use super::range::{
    FAHRENHEIT, FAHRENHEIT_DEGREES, HOURS, KILOGRAMS_PER_HOUR, KILOJOULES_PER_KELVIN, WATTS,
    WATTS_PER_KELVIN, WATTS_PER_SQUARE_METRE, check_range,
};
use crate::scenario::document::ERRORS_MAX;
use crate::scenario::{Diagnostic, IndoorAir, Located, Space};
use crate::units::Time;

/// The most sun on a surface, W/m²: the solar constant at the top of the air is 1,361 (from
/// memory), and less comes down.
const SUN_MAX: f64 = 1_200.0;

/// The longest course of the weather, h. Chosen: a job lasts a working day at the most.
const HOURS_MAX: f64 = 48.0;

/// What a site says of its air later on.
pub(super) fn check_weather(site: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    check_sun(site, wrong);
    let mut last = 0.0;
    for point in site.field("course").items() {
        if wrong.len() >= ERRORS_MAX {
            break;
        }
        let after = point.field("after");
        let found = after.read().map(Time::seconds);
        check_range(after, "after", HOURS, (0.0, HOURS_MAX), wrong);
        if let Some(found) = found {
            if found <= last {
                let message = "this point of the course is not later than the one before";
                let hint = "the points stand in the order of time, the first after the start";
                wrong.push(after.error_with_hint(message, hint));
            }
            last = found;
        }
        let outdoor = point.field("outdoor");
        check_range(outdoor, "outdoor", FAHRENHEIT, (-20.0, 130.0), wrong);
        check_sun(point, wrong);
    }
    check_load(site, wrong);
    let thermostat = site.field("thermostat");
    let setpoint = thermostat.field("setpoint").inside_some();
    check_range(setpoint, "setpoint", FAHRENHEIT, (-20.0, 110.0), wrong);
    let differential = thermostat.field("differential");
    // Chosen: from an electronic thermostat to a cold room's control.
    let range = (0.2, 20.0);
    check_range(
        differential,
        "differential",
        FAHRENHEIT_DEGREES,
        range,
        wrong,
    );
}

fn check_sun(at: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let sun = at.field("sun");
    check_range(sun, "sun", WATTS_PER_SQUARE_METRE, (0.0, SUN_MAX), wrong);
}

/// The load of a room, which must be a room.
fn check_load(site: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let place = site.field("indoor_air");
    let load = match place.read() {
        // A variant that holds a struct need not double its parentheses.
        Some(IndoorAir::Drifts(_)) if place.field("walls").is_there() => place,
        Some(IndoorAir::Drifts(_)) => place.item(0),
        Some(IndoorAir::Held) | None => return,
    };
    if site.field("indoor_space").read() == Some(Space::OpenAir) {
        let message = "the open air has no load that the unit could cool against";
        let hint = "give `indoor_space` as a Room, or leave `indoor_air` out";
        wrong.push(place.error_with_hint(message, hint));
    }
    // Chosen: from a cupboard to a hall.
    let ranges = [
        ("walls", WATTS_PER_KELVIN, (0.0, 1e5)),
        ("gains", WATTS, (0.0, 1e6)),
        ("capacity", KILOJOULES_PER_KELVIN, (0.0, 1e7)),
        ("moisture", KILOGRAMS_PER_HOUR, (0.0, 1e3)),
    ];
    for (name, measure, range) in ranges {
        check_range(load.field(name), name, measure, range, wrong);
    }
}
