//! What must be so in a unit's file: each number in its range, and the numbers beside each other.

use super::super::{Diagnostic, Located};
use super::check_text;
use super::range::{
    AMPS, FAHRENHEIT, GRAMS, JOULES_PER_KELVIN, KELVINS, KILOGRAMS, KILOGRAMS_PER_SECOND, LITRES,
    LITRES_PER_SECOND, METRES, MILLIMETRES, Measure, PLAIN, PSIG, SECONDS, SQUARE_MILLIMETRES,
    VOLTS, WATTS, WATTS_PER_KELVIN, check_range,
};
use crate::plant::{KnownRefrigerant, Unit};
use crate::units::{Current, GaugePressure, Mass, Temperature, Volume};

/// The range of one number: its way through the file, its unit, least and most.
type Row = (&'static str, Measure, f64, f64);

/// The range of every number in a unit's file.
///
/// Chosen: from a bar cooler to a roof unit of 40 tons; a number outside is a slip of the pen.
/// `tests/ranges.rs` holds that every number of every shipped unit has its row here, and that the
/// model stays finite at both ends of each.
const RANGES: &[Row] = &[
    ("nameplate.charge", KILOGRAMS, 0.1, 100.0),
    ("nameplate.covers", METRES, 0.0, 100.0),
    ("nameplate.per_metre", GRAMS, 0.0, 1000.0),
    ("nameplate.low_side_test", PSIG, 10.0, 2000.0),
    ("nameplate.high_side_test", PSIG, 50.0, 3000.0),
    ("nameplate.capacity", WATTS, 300.0, 150_000.0),
    ("nameplate.rated_flow", KILOGRAMS_PER_SECOND, 0.001, 1.0),
    ("nameplate.room.dry_bulb", FAHRENHEIT, -40.0, 120.0),
    ("nameplate.room.wet_bulb", FAHRENHEIT, -40.0, 100.0),
    ("nameplate.target.0", KELVINS, 0.5, 30.0),
    ("electrics.supply", VOLTS, 90.0, 700.0),
    ("electrics.power_factor", PLAIN, 0.3, 1.0),
    ("electrics.rated", AMPS, 0.3, 300.0),
    ("electrics.locked_rotor", AMPS, 1.0, 2000.0),
    ("electrics.high_switch.opens", PSIG, 20.0, 2000.0),
    ("electrics.high_switch.closes", PSIG, 20.0, 2000.0),
    ("electrics.low_switch.opens", PSIG, -12.0, 300.0),
    ("electrics.low_switch.closes", PSIG, -12.0, 300.0),
    ("compressor.kind.built_in", PLAIN, 1.2, 6.0),
    ("compressor.displacement", LITRES_PER_SECOND, 0.1, 50.0),
    ("compressor.clearance", PLAIN, 0.0, 0.2),
    ("compressor.index", PLAIN, 1.02, 1.5),
    ("compressor.efficiency", PLAIN, 0.2, 0.95),
    ("compressor.best_ratio", PLAIN, 1.2, 10.0),
    ("compressor.efficiency_fall", PLAIN, 0.0, 0.2),
    ("compressor.idle", WATTS, 0.0, 2000.0),
    ("compressor.shell_share", PLAIN, 0.0, 0.9),
    ("compressor.shell", LITRES, 0.3, 100.0),
    ("compressor.shell_wall", JOULES_PER_KELVIN, 200.0, 200_000.0),
    ("compressor.shell_to_air", WATTS_PER_KELVIN, 0.0, 100.0),
    ("compressor.discharge", LITRES, 0.02, 20.0),
    (
        "compressor.discharge_wall",
        JOULES_PER_KELVIN,
        20.0,
        20_000.0,
    ),
    (
        "compressor.discharge_to_shell",
        WATTS_PER_KELVIN,
        0.0,
        200.0,
    ),
    ("compressor.oil", KILOGRAMS, 0.05, 20.0),
    ("compressor.oil_lag", SECONDS, 5.0, 3600.0),
    ("condenser.volume", LITRES, 0.2, 100.0),
    ("condenser.wall", JOULES_PER_KELVIN, 30.0, 50_000.0),
    ("condenser.condensing", WATTS_PER_KELVIN, 20.0, 50_000.0),
    ("condenser.vapour", WATTS_PER_KELVIN, 5.0, 20_000.0),
    ("condenser.liquid", WATTS_PER_KELVIN, 5.0, 20_000.0),
    ("condenser.air", KILOGRAMS_PER_SECOND, 0.02, 50.0),
    ("condenser.fan", WATTS, 0.0, 5000.0),
    ("condenser.gas_spoils", PLAIN, 0.0, 1.0),
    ("condenser.still", PLAIN, 0.0, 1.0),
    ("receiver.volume", LITRES, 0.1, 100.0),
    ("receiver.wall", JOULES_PER_KELVIN, 50.0, 50_000.0),
    ("receiver.to_air", WATTS_PER_KELVIN, 0.0, 100.0),
    ("receiver.inlet", SQUARE_MILLIMETRES, 2.0, 2000.0),
    ("liquid_line.volume", LITRES, 0.05, 50.0),
    ("liquid_line.wall", JOULES_PER_KELVIN, 20.0, 50_000.0),
    ("liquid_line.to_air", WATTS_PER_KELVIN, 0.0, 100.0),
    ("liquid_line.valve", SQUARE_MILLIMETRES, 2.0, 2000.0),
    ("drier.area", SQUARE_MILLIMETRES, 2.0, 2000.0),
    ("drier.capacity", GRAMS, 0.1, 500.0),
    ("metering.bore", MILLIMETRES, 0.3, 10.0),
    ("metering.length", MILLIMETRES, 1.0, 100.0),
    ("metering.area", SQUARE_MILLIMETRES, 0.05, 100.0),
    ("metering.static_superheat", KELVINS, 0.0, 15.0),
    ("metering.range", KELVINS, 0.5, 20.0),
    ("metering.lag", SECONDS, 1.0, 600.0),
    ("metering.bleed", PLAIN, 0.0, 0.5),
    ("evaporator.volume", LITRES, 0.2, 100.0),
    ("evaporator.wall", JOULES_PER_KELVIN, 30.0, 50_000.0),
    ("evaporator.fins", JOULES_PER_KELVIN, 100.0, 100_000.0),
    (
        "evaporator.refrigerant_side",
        WATTS_PER_KELVIN,
        20.0,
        50_000.0,
    ),
    ("evaporator.rated_flow", KILOGRAMS_PER_SECOND, 0.001, 1.0),
    ("evaporator.air_units", PLAIN, 0.2, 6.0),
    ("evaporator.superheating", WATTS_PER_KELVIN, 5.0, 20_000.0),
    ("evaporator.air", KILOGRAMS_PER_SECOND, 0.02, 50.0),
    ("evaporator.blower", WATTS, 0.0, 5000.0),
    ("evaporator.still", PLAIN, 0.0, 1.0),
    ("evaporator.frost_full", KILOGRAMS, 0.05, 50.0),
    ("coil_outlet", SQUARE_MILLIMETRES, 2.0, 5000.0),
    ("suction_line.volume", LITRES, 0.05, 50.0),
    ("suction_line.wall", JOULES_PER_KELVIN, 20.0, 50_000.0),
    ("suction_line.to_air", WATTS_PER_KELVIN, 0.0, 100.0),
    ("suction_line.valve", SQUARE_MILLIMETRES, 2.0, 5000.0),
];

/// Checks a whole unit.
pub(in crate::scenario) fn check_unit_file(file: Located<'_>) -> Vec<Diagnostic> {
    let mut wrong = Vec::new();
    check_text(file.field("name"), "name", &mut wrong);
    for (way, measure, least, most) in RANGES {
        let place = along(file, way);
        let name = way.trim_end_matches(".0");
        let name = name.rsplit('.').next().unwrap_or(name);
        check_range(place, name, *measure, (*least, *most), &mut wrong);
    }
    if wrong.is_empty() {
        check_nameplate(file.field("nameplate"), &mut wrong);
        check_electrics(file, &mut wrong);
        check_charge(file, &mut wrong);
    }
    wrong
}

/// The value at the end of a way of fields; a number is a place in parentheses.
fn along<'d>(file: Located<'d>, way: &str) -> Located<'d> {
    way.split('.').fold(file, |place, step| match step.parse() {
        Ok(number) => place.item(number),
        Err(_) => place.field(step).inside_some(),
    })
}

fn check_nameplate(nameplate: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let low = nameplate.field("low_side_test");
    let high = nameplate.field("high_side_test").read::<GaugePressure>();
    if let (Some(found), Some(high)) = (low.read::<GaugePressure>(), high)
        && found > high
    {
        let message = "the low side is tested above the high side";
        wrong.push(low.error_with_hint(message, "low_side_test is at most high_side_test"));
    }
    let room = nameplate.field("room").inside_some();
    let wet = room.field("wet_bulb");
    if let (Some(dry), Some(found)) = (
        room.field("dry_bulb").read::<Temperature>(),
        wet.read::<Temperature>(),
    ) && found > dry
    {
        let message = "the wet bulb is above the dry bulb";
        wrong.push(wet.error_with_hint(message, "at most they are equal, in fog"));
    }
}

fn check_electrics(file: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let electrics = file.field("electrics");
    let locked = electrics.field("locked_rotor");
    if let (Some(rated), Some(found)) = (
        electrics.field("rated").read::<Current>(),
        locked.read::<Current>(),
    ) && found <= rated
    {
        let message = "the locked-rotor amps are not above the rated amps";
        wrong.push(locked.error_with_hint(message, "they are three to eight times as many"));
    }
    let pressures = |name: &str| {
        let switch = electrics.field(name).inside_some();
        let (opens, closes) = (switch.field("opens"), switch.field("closes"));
        Some((
            opens,
            opens.read::<GaugePressure>()?,
            closes.read::<GaugePressure>()?,
        ))
    };
    if let Some((place, opens, closes)) = pressures("high_switch") {
        if opens <= closes {
            let message = "the high-pressure switch must open above where it closes";
            wrong.push(place.error(message));
        }
        let refrigerant = file.field("refrigerant").read::<KnownRefrigerant>();
        let critical = refrigerant.map(|known| known.get().critical_pressure());
        if critical.is_some_and(|critical| opens.absolute().pascals() > critical) {
            let message =
                "the high-pressure switch opens above the refrigerant's critical pressure";
            wrong.push(place.error_with_hint(message, "so high it protects nothing"));
        }
    }
    if let Some((place, opens, closes)) = pressures("low_switch")
        && opens >= closes
    {
        let message = "the low-pressure switch must open below where it closes";
        wrong.push(place.error(message));
    }
}

/// The liquid of twice the charge must fit: a fault can double it.
fn check_charge(file: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let Some(unit) = file.read::<Unit>() else {
        return;
    };
    let receiver = unit.receiver.as_ref().map_or(0.0, |r| r.volume.litres());
    let litres = [
        unit.compressor.shell,
        unit.compressor.discharge,
        unit.condenser.volume,
        unit.liquid_line.volume,
        unit.evaporator.volume,
        unit.suction_line.volume,
    ];
    let volume = receiver + litres.map(Volume::litres).iter().sum::<f64>();
    // Liquid at 25 °C; room for its vapour and for warmth stays in the other half.
    let density = unit.refrigerant.get().at(298.15).rho_l;
    let most = Mass::from_kilograms(0.5 * volume * 1e-3 * density).kilograms();
    let charge = unit.nameplate.charge.kilograms();
    if charge > most {
        let place = file.field("nameplate").field("charge");
        let message =
            format!("the circuit of {volume:.1} L cannot hold a charge of {charge:.1} kg");
        let hint = format!("half full of liquid it holds {most:.1} kg");
        wrong.push(place.error_with_hint(message, hint));
    }
}
