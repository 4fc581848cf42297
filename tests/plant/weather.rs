//! The weather and the room around a unit.

use crate::common::{Bench, R22, kelvin};
use coldbench::plant::network::Amounts;
use coldbench::plant::{Section, Unit};
use coldbench::units::Mass;

/// Every section of a unit without a receiver.
const SECTIONS: [Section; 7] = [
    Section::Shell,
    Section::Discharge,
    Section::Condenser,
    Section::LiquidLine,
    Section::AfterDrier,
    Section::Evaporator,
    Section::SuctionLine,
];

/// An empty unit under nitrogen, at rest in the air around it.
fn under_nitrogen() -> Bench {
    let unit = Unit::from_ron(R22).expect("the shipped unit reads");
    let mut bench = Bench::of(&unit, Mass::from_kilograms(0.0), 70.0);
    bench.conditions.indoor.t = kelvin(70.0);
    for section in SECTIONS {
        let node = bench.plant.node(section);
        let network = bench.plant.network_mut();
        let litres = 1e3 * network.node(node).volume;
        network.add(node, Amounts::nitrogen(0.008 * litres));
    }
    bench.run(7_200.0);
    bench
}

/// Source: the law of ideal gases at constant volume, `p2 = p1 T2 / T1` in absolute units, as a
/// technician corrects a pressure test for the weather.
#[test]
fn nitrogen_follows_the_temperature_of_the_air_around_it() {
    let mut bench = under_nitrogen();
    let before = bench.node(Section::LiquidLine).pressure;
    assert!(before > 5e5, "{before} Pa is no test pressure");
    bench.conditions.outdoor.t = kelvin(90.0);
    bench.conditions.indoor.t = kelvin(90.0);
    bench.run(4.0 * 3_600.0);
    let after = bench.node(Section::LiquidLine).pressure;
    let expected = before * kelvin(90.0) / kelvin(70.0);
    assert!(
        (after / expected - 1.0).abs() < 0.001,
        "{before} Pa became {after} Pa for {expected} Pa"
    );
}

/// Only what is out of doors warms: the pressure rises, and by less than if all of it did.
#[test]
fn only_the_part_in_the_sun_warms() {
    let mut bench = under_nitrogen();
    let before = bench.node(Section::LiquidLine).pressure;
    bench.conditions.sun = 5.0;
    bench.run(4.0 * 3_600.0);
    let rise = bench.node(Section::LiquidLine).pressure / before - 1.0;
    let whole = 5.0 / kelvin(70.0);
    assert!(
        0.2 * whole < rise && rise < 0.95 * whole,
        "{rise} of {whole}"
    );
    let coil = bench.node(Section::Evaporator).temperature;
    assert!((coil - kelvin(70.0)).abs() < 0.1, "{coil}");
}
