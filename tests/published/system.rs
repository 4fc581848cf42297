//! The running unit against published behaviour of such units.

use std::fmt::Write;

use coldbench::plant::{Place, Unit};
use coldbench::units::Mass;

use crate::bench::{Bench, R22, R410A, fahrenheit, humidity, kelvin};
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
    let charge = Mass::from_kilograms(charge * unit.nameplate.charge.kilograms());
    let mut bench = Bench::of(&unit, charge, outdoor);
    bench.conditions.indoor.t = kelvin(indoor);
    bench.conditions.indoor.w = humidity(indoor, wet_bulb);
    bench.cool_on();
    change(&mut bench);
    bench.run(2400.0);
    bench
}

/// Evaporating temperature, superheat, condensing temperature, subcooling, discharge, air rise and
/// drop, °F.
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
            "condenser_fouling" => bench.conditions.condenser_fan = 0.4,
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
            let mark = if ok { "" } else { " (WRONG)" };
            write!(told, " {name} {change:+.2}{mark}").expect("a string takes it");
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
            write!(told, " {wet_bulb}: {:.1} ({wanted})", bench.superheat())
                .expect("a string takes it");
        }
        println!("{outdoor} °F outdoors:{told}");
    }
    let rms = (squares / f64::from(count)).sqrt();
    println!("{within} of {count} cells within 5 °F, rms {rms:.2} °F");
    assert!(rms <= 3.0, "rms {rms:.2} °F");
    assert!(within == count, "{within} of {count} cells within 5 °F");
}

/// Capacity and power per capacity at an outdoor temperature, °F.
fn output(text: &str, outdoor: f64) -> (f64, f64) {
    let unit = Unit::from_ron(text).expect("the shipped unit reads");
    let mut bench = Bench::of(&unit, unit.nameplate.charge, outdoor);
    bench.cool_on();
    bench.run(2400.0);
    let operating = bench.plant.operating();
    (
        operating.net_capacity,
        operating.power / operating.net_capacity,
    )
}

/// Source: `data/outdoor_response.csv`, NREL/TP-5500-56354: capacity ±0.02, power/capacity ±0.03
/// at 82 °F against 95 °F.
#[test]
fn capacity_and_power_follow_the_weather() {
    let rated = output(R410A, 95.0);
    for line in table::read("outdoor_response.csv") {
        let outdoor = line.number("outdoor_db_f");
        let found = output(R410A, outdoor);
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

/// The same figure is not met by the unit with a fixed orifice: it starves its coil on a mild day
/// and gains 0.024 less capacity at 82 °F than the fit to residential units. The test holds it
/// to how far it is off, so that a better one shows.
#[test]
fn capacity_in_mild_weather_where_the_figure_is_not_met() {
    let (rated, mild) = (output(R22, 95.0), output(R22, 82.0));
    let short = 1.065 - mild.0 / rated.0;
    let above = mild.1 / rated.1 - 0.797;
    println!("fixed orifice: capacity {short:.3} short, power/capacity {above:.3} above");
    assert!(short > 0.02 && short < 0.03, "capacity {short:.3} short");
    assert!(
        above > 0.03 && above < 0.06,
        "power/capacity {above:.3} above"
    );
}

/// Source: `data/expansion_valve_pressures.csv`; liquid within 12 psi, suction within 10.
#[test]
fn a_valve_unit_shows_the_usual_pressures() {
    let unit = Unit::from_ron(R410A).expect("the shipped unit reads");
    for line in table::read("expansion_valve_pressures.csv") {
        let outdoor = line.number("outdoor_f");
        let mut bench = Bench::of(&unit, unit.nameplate.charge, outdoor);
        bench.cool_on();
        bench.run(2400.0);
        let found = [
            bench.pressure(Place::LiquidLine),
            bench.pressure(Place::SuctionLine),
        ];
        let published = [line.number("liquid_psig"), line.number("suction_psig")];
        println!("{outdoor} °F: {found:.1?} ({published:?}) psig");
        assert!(
            (found[0] - published[0]).abs() <= 12.0,
            "liquid {found:.1?}, {published:?}"
        );
        assert!(
            (found[1] - published[1]).abs() <= 10.0,
            "suction {found:.1?}, {published:?}"
        );
        if outdoor == 95.0 {
            let (superheat, subcooling) = (bench.superheat(), bench.subcooling());
            assert!(
                (8.0..=16.0).contains(&superheat),
                "superheat {superheat:.1} °F"
            );
            assert!(
                (6.0..=12.0).contains(&subcooling),
                "subcooling {subcooling:.1} °F"
            );
            let capacity = bench.plant.operating().net_capacity * 3.412_142e-3;
            assert!((35.0..=37.0).contains(&capacity), "{capacity:.1} kBtu/h");
        }
    }
}

/// Source: `data/charge_response.csv`, NIST Technical Note 1848 and two others; capacity at -10,
/// -20, -30 % within 0.015, 0.02, 0.025 of 0.95, 0.88, 0.79; power within 0.03.
#[test]
fn a_valve_unit_loses_capacity_with_charge_as_published() {
    let unit = Unit::from_ron(R410A).expect("the shipped unit reads");
    let at = |share: f64| {
        let charge = Mass::from_kilograms(share * unit.nameplate.charge.kilograms());
        let mut bench = Bench::of(&unit, charge, 95.0);
        bench.cool_on();
        bench.run(2400.0);
        let operating = bench.plant.operating();
        (operating.net_capacity, operating.power)
    };
    let rated = at(1.0);
    let bands = [
        (-30.0, 0.79, 0.025),
        (-20.0, 0.88, 0.02),
        (-10.0, 0.95, 0.015),
    ];
    for line in table::read("charge_response.csv") {
        let change = line.number("charge_change_percent");
        let found = at(1.0 + change / 100.0);
        let (capacity, power) = (found.0 / rated.0, found.1 / rated.1);
        println!("{change} %: capacity {capacity:.3}, power {power:.3}");
        let band = bands
            .iter()
            .find(|band| band.0 == change)
            .expect("a band for each line");
        assert!(
            (capacity - band.1).abs() <= band.2,
            "capacity {capacity:.3}"
        );
        assert!(
            (power - line.number("power")).abs() <= 0.03,
            "power {power:.3}"
        );
    }
}
