//! The running unit against published behaviour of such units.

use coldbench::plant::{Place, Unit};
use coldbench::units::Mass;

use crate::bench::{Bench, R22, fahrenheit, humidity, kelvin};
use crate::table;

fn unit() -> Unit {
    Unit::from_ron(R22).expect("the shipped unit reads")
}

/// A unit that has run for half an hour in this weather, °F.
fn settled(outdoor: f64, indoor: f64, wet_bulb: f64, change: impl FnOnce(&mut Bench)) -> Bench {
    settled_with(1.0, outdoor, indoor, wet_bulb, change)
}

fn settled_with(
    charge: f64,
    outdoor: f64,
    indoor: f64,
    wet_bulb: f64,
    change: impl FnOnce(&mut Bench),
) -> Bench {
    let unit = unit();
    let charge = Mass::from_kilograms(charge * unit.charge.kilograms());
    let mut bench = Bench::of(&unit, charge, outdoor);
    bench.conditions.indoor.t = kelvin(indoor);
    bench.conditions.indoor.w = humidity(indoor, wet_bulb);
    bench.cool_on();
    change(&mut bench);
    bench.run(2400.0);
    bench
}

/// Evaporating and condensing temperature, superheat, subcooling, discharge, air rise and drop, °F.
fn signs(bench: &Bench) -> [f64; 7] {
    let fluid = bench.plant.network().refrigerant();
    let operating = bench.plant.operating();
    let evaporating = fluid.dew_temperature(bench.node(Place::Evaporator).pressure);
    let condensing = fluid.bubble_temperature(bench.node(Place::Condenser).pressure);
    [
        fahrenheit(evaporating),
        1.8 * operating.coil_superheat,
        fahrenheit(condensing),
        1.8 * (condensing - operating.liquid_temperature),
        fahrenheit(bench.node(Place::Discharge).temperature),
        1.8 * (operating.outdoor_air_out - bench.conditions.outdoor.t),
        1.8 * (bench.conditions.indoor.t - operating.indoor_air_out),
    ]
}

/// Source: `data/fault_signs.csv`, Rossi & Braun 1997; each change at least 0.2 °F.
#[test]
fn faults_change_the_temperatures_as_published() {
    let names = [
        "evaporating_temperature",
        "superheat",
        "condensing_temperature",
        "subcooling",
        "discharge_temperature",
        "condenser_air_rise",
        "evaporator_air_drop",
    ];
    let sound = signs(&settled(95.0, 80.0, 67.0, |_| {}));
    let (mut right, mut all) = (0, 0);
    for line in table::read("fault_signs.csv") {
        let fault = line.text("fault").to_owned();
        let charge = if fault == "refrigerant_leak" {
            0.8
        } else {
            1.0
        };
        let bench = settled_with(charge, 95.0, 80.0, 67.0, |bench| match fault.as_str() {
            "compressor_valve_leakage" => bench.plant.set_valve_leak(1.0e-6),
            "liquid_line_restriction" => bench.plant.set_drier_clogging(0.93),
            "condenser_fouling" => bench.conditions.condenser_fan = 0.5,
            "evaporator_fouling" => bench.conditions.blower = 0.7,
            _ => {}
        });
        let found = signs(&bench);
        let mut told = String::new();
        for (k, name) in names.iter().enumerate() {
            let change = found[k] - sound[k];
            let wanted = line.text(name);
            let ok = if wanted == "+" {
                change >= 0.2
            } else {
                change <= -0.2
            };
            all += 1;
            right += u32::from(ok);
            told += &format!(" {name} {change:+.2}{}", if ok { "" } else { " (WRONG)" });
        }
        println!("{fault}:{told}");
    }
    println!("{right} of {all} signs");
    assert!(right == all, "{right} of {all} signs");
}

/// Source: `data/target_superheat.csv`; cells of 5 to 25 °F within ±5 °F, rms at most 3.
#[test]
fn superheat_follows_the_charging_chart() {
    let (mut squares, mut count, mut within) = (0.0, 0u32, 0u32);
    for line in table::read("target_superheat.csv") {
        let outdoor = line.number("outdoor_db");
        if outdoor < 75.0 {
            continue;
        }
        let mut told = String::new();
        for name in line.names().iter().skip(1) {
            let Ok(wanted) = line.text(name).parse::<f64>() else {
                continue;
            };
            let wet_bulb: f64 = name.parse().expect("columns are wet bulbs");
            if !(5.0..=25.0).contains(&wanted) {
                continue;
            }
            let bench = settled(outdoor, 80.0, wet_bulb, |_| {});
            let off = bench.superheat() - wanted;
            squares += off * off;
            count += 1;
            within += u32::from(off.abs() <= 5.0);
            told += &format!(" {wet_bulb}: {:.1} ({wanted})", bench.superheat());
        }
        println!("{outdoor} °F outdoors:{told}");
    }
    let rms = (squares / f64::from(count)).sqrt();
    println!("{within} of {count} cells within 5 °F, rms {rms:.2} °F");
    assert!(rms <= 3.0, "rms {rms:.2} °F");
    assert!(within == count, "{within} of {count} cells within 5 °F");
}

/// Source: `data/outdoor_response.csv`, NREL/TP-5500-56354: capacity ±0.02, power/capacity ±0.03
/// at 82 °F against 95 °F.
#[test]
fn capacity_and_power_follow_the_weather() {
    let at = |outdoor: f64| {
        let bench = settled(outdoor, 80.0, 67.0, |_| {});
        let operating = *bench.plant.operating();
        (
            operating.net_capacity,
            operating.power / operating.net_capacity,
        )
    };
    let rated = at(95.0);
    for line in table::read("outdoor_response.csv") {
        let outdoor = line.number("outdoor_db_f");
        let found = at(outdoor);
        let (capacity, power) = (found.0 / rated.0, found.1 / rated.1);
        let (c, p) = (line.number("capacity"), line.number("power_per_capacity"));
        println!("{outdoor} °F: capacity {capacity:.3} ({c}), power/capacity {power:.3} ({p})");
        if outdoor == 82.0 {
            assert!(
                (capacity - c).abs() <= 0.02,
                "capacity {capacity:.3}, published {c}"
            );
            assert!(
                (power - p).abs() <= 0.03,
                "power/capacity {power:.3}, published {p}"
            );
        }
    }
}
