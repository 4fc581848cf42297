//! Checks of what the air does as time goes on: the weather's course, the room's load, the
//! thermostat.

use super::check_range;
use crate::scenario::{Diagnostic, IndoorAir, Located, Space};
use crate::units::{Irradiance, Temperature, TemperatureDifference, Time};

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
        let after = point.field("after");
        let found = after.read().map(Time::seconds);
        let hours = found.map(|seconds| seconds / 3600.0);
        check_range(after, "after", hours, (0.0, HOURS_MAX), "h", wrong);
        if let Some(found) = found {
            if found <= last {
                let message = "this point of the course is not later than the one before";
                let hint = "the points stand in the order of time, the first after the start";
                wrong.push(after.error_with_hint(message, hint));
            }
            last = found;
        }
        let outdoor = point.field("outdoor");
        let found = outdoor.read().map(Temperature::fahrenheit);
        check_range(outdoor, "outdoor", found, (-20.0, 130.0), "°F", wrong);
        check_sun(point, wrong);
    }
    check_load(site, wrong);
    let thermostat = site.field("thermostat");
    let setpoint = thermostat.field("setpoint");
    if let Some(Some(found)) = setpoint.read::<Option<Temperature>>() {
        let found = Some(found.fahrenheit());
        check_range(setpoint, "setpoint", found, (-20.0, 110.0), "°F", wrong);
    }
    let differential = thermostat.field("differential");
    let found = differential.read().map(TemperatureDifference::fahrenheit);
    // Chosen: from an electronic thermostat to a cold room's control.
    check_range(
        differential,
        "differential",
        found,
        (0.2, 20.0),
        "°F",
        wrong,
    );
}

fn check_sun(at: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let sun = at.field("sun");
    let found = sun.read().map(Irradiance::watts_per_square_metre);
    check_range(sun, "sun", found, (0.0, SUN_MAX), "W/m²", wrong);
}

/// The load of a room, which must be a room.
fn check_load(site: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let place = site.field("indoor_air");
    let Some(IndoorAir::Drifts(load)) = place.read() else {
        return;
    };
    if site.field("indoor_space").read() == Some(Space::OpenAir) {
        let message = "the open air has no load that the unit could cool against";
        let hint = "give `indoor_space` as a Room, or leave `indoor_air` out";
        wrong.push(place.error_with_hint(message, hint));
    }
    // Chosen: from a cupboard to a hall.
    let ranges = [
        ("walls", load.walls.watts_per_kelvin(), (0.0, 1e5), "W/K"),
        ("gains", load.gains.watts(), (0.0, 1e6), "W"),
        (
            "capacity",
            load.capacity.kilojoules_per_kelvin(),
            (0.0, 1e7),
            "kJ/K",
        ),
        (
            "moisture",
            load.moisture.kilograms_per_hour(),
            (0.0, 1e3),
            "kg/h",
        ),
    ];
    for (name, found, range, unit) in ranges {
        check_range(place, name, Some(found), range, unit, wrong);
    }
}
