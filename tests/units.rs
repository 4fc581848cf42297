//! The units that come with the program: each runs at its rating points as such a unit does.

use coldbench::job::charging_chart::target_superheat;
use coldbench::job::{Overrides, Settled, settle};
use coldbench::plant::{MeteringData, Target, Unit};
use coldbench::scenario::Scenario;
use coldbench::units::Temperature;
use std::fs;
use std::path::{Path, PathBuf};

/// Every file under `assets/units`, in the order of its name.
fn files() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/units");
    let mut files: Vec<_> = fs::read_dir(folder)
        .expect("the folder is there")
        .map(|entry| entry.expect("it can be read").path())
        .collect();
    files.sort();
    files
}

/// The unit settled in the room in which it is rated.
fn at(scenario: &Scenario, outdoor_f: f64) -> Settled {
    let overrides = Overrides {
        outdoor: Some(Temperature::from_fahrenheit(outdoor_f)),
        ..Overrides::default()
    };
    settle(scenario, &overrides)
}

fn within(what: &str, unit: &Unit, value: f64, band: std::ops::RangeInclusive<f64>) {
    assert!(
        band.contains(&value),
        "{}: {what} {value:.1}, wanted {band:?}",
        unit.name
    );
}

#[test]
fn every_unit_is_read_and_is_known_by_its_name() {
    for path in files() {
        let alone = Scenario::of_unit_file(&path).unwrap();
        let shipped = Scenario::of_shipped_unit(&alone.name).expect("registered");
        assert_eq!(shipped.unit, alone.unit);
    }
}

/// Whether a unit cools a cold room.
fn is_cold_room(unit: &Unit) -> bool {
    unit.nameplate.room.dry_bulb.fahrenheit() < 50.0
}

/// Evaporating at 35–50 °F by the dew line for comfort; in a cold room 8–16 °F under its air, as
/// design goes by 10–15 °F where goods must not dry out (common practice, no source).
fn evaporating(unit: &Unit) -> std::ops::RangeInclusive<f64> {
    let room = unit.nameplate.room.dry_bulb.fahrenheit();
    if is_cold_room(unit) {
        room - 16.0..=room - 8.0
    } else {
        35.0..=50.0
    }
}

/// Capacity within 5 % of nominal at the point A; condensing 15–35 °F over the outdoor air (common
/// practice, no source). Behind a receiver the liquid comes saturated, less what the line loses.
#[test]
fn every_unit_runs_plausibly_at_its_rating_points() {
    for path in files() {
        let scenario = Scenario::of_unit_file(&path).unwrap();
        let unit = &scenario.unit;
        for outdoor in [95.0, 82.0] {
            let s = at(&scenario, outdoor);
            assert!(s.settled, "{} at {outdoor} °F", unit.name);
            within("evaporating", unit, s.evaporating_f, evaporating(unit));
            let over = s.condensing_f - outdoor;
            within("condensing over outdoor", unit, over, 15.0..=35.0);
            within("superheat", unit, s.superheat_f, 5.0..=25.0);
            let nominal = unit.nameplate.capacity.btu_per_hour();
            let share = 100.0 * s.capacity_btu_h / nominal;
            if outdoor == 95.0 {
                within("capacity", unit, share, 95.0..=105.0);
                let usual = if unit.receiver.is_some() {
                    0.0..=5.0
                } else {
                    6.0..=13.0
                };
                within("subcooling", unit, s.subcooling_f, usual);
                within("superheat", unit, s.superheat_f, 8.0..=22.0);
                let rated = 3600.0 * unit.nameplate.rated_flow.kilograms_per_second();
                within("flow", unit, 100.0 * s.flow_kg_h / rated, 90.0..=110.0);
                let amps = unit.electrics.rated.amps();
                within("amps", unit, s.compressor_amps / amps, 0.6..=1.0);
            } else {
                within("capacity", unit, share, 100.0..=115.0);
            }
        }
    }
}

/// With an expansion valve the superheat hardly moves with the weather; with an orifice it grows
/// as the day cools (common practice, no source).
#[test]
fn superheat_follows_the_weather_only_behind_an_orifice() {
    for path in files() {
        let scenario = Scenario::of_unit_file(&path).unwrap();
        let [hot, mild] = [95.0, 82.0].map(|outdoor| at(&scenario, outdoor).superheat_f);
        match scenario.unit.metering {
            MeteringData::FixedOrifice { .. } => {
                within("rise of superheat", &scenario.unit, mild - hot, 0.5..=15.0);
            }
            MeteringData::ExpansionValve { .. } => {
                within(
                    "change of superheat",
                    &scenario.unit,
                    mild - hot,
                    -3.0..=3.0,
                );
            }
        }
    }
}

/// The nameplate's charge gives what the nameplate aims at, at the point A. Tolerances of the
/// installer: 5 °F of superheat, 3 °F of subcooling (common practice, no source).
#[test]
fn the_charge_of_the_nameplate_meets_its_target() {
    for path in files() {
        let scenario = Scenario::of_unit_file(&path).unwrap();
        let unit = &scenario.unit;
        let s = at(&scenario, 95.0);
        match unit.nameplate.target {
            Target::SuperheatByChart => {
                let [outdoor, wet_bulb] = [95.0, 67.0].map(Temperature::from_fahrenheit);
                let chart = target_superheat(outdoor, wet_bulb).unwrap().fahrenheit();
                within("superheat", unit, s.superheat_f, chart - 5.0..=chart + 5.0);
            }
            Target::Subcooling(aim) => {
                let aim = aim.fahrenheit();
                within("subcooling", unit, s.subcooling_f, aim - 3.0..=aim + 3.0);
            }
            Target::Superheat(aim) => {
                let aim = aim.fahrenheit();
                within("superheat", unit, s.superheat_f, aim - 5.0..=aim + 5.0);
            }
        }
    }
}

/// A receiver takes the whole charge, pumped down, with a fifth of its volume left for warmth
/// (common practice, no source).
#[test]
fn a_receiver_holds_the_charge_of_the_nameplate() {
    let mut receivers = 0;
    for path in files() {
        let unit = Scenario::of_unit_file(&path).unwrap().unit;
        let Some(receiver) = &unit.receiver else {
            continue;
        };
        let density = unit.refrigerant.get().at(313.15).rho_l;
        let filled = unit.nameplate.charge.kilograms() / density / receiver.volume.cubic_metres();
        within("share of the receiver", &unit, filled, 0.3..=0.8);
        receivers += 1;
    }
    assert!(receivers > 0, "no unit has one");
}
