//! The liquid receiver: what the charge does and does not show, and pumping down into it.
//!
//! What is expected is *common practice, no source* unless a source is named.

use crate::common::Bench;
use coldbench::plant::network::{Amounts, Phase};
use coldbench::plant::{Link, Section};

/// The unit after so many seconds of running with a share of its charge.
fn running(share: f64, seconds: f64) -> Bench {
    let mut bench = Bench::cold_room(share);
    bench.cool_on();
    bench.run(seconds);
    bench
}

fn level(bench: &Bench) -> f64 {
    let level = bench.plant.receiver_level();
    level.expect("this unit has a receiver")
}

fn assert_balanced(bench: &Bench) {
    let imbalance = bench.imbalance();
    assert!(imbalance[..4].iter().all(|&x| x < 1e-9), "{imbalance:?}");
    assert!(imbalance[4] < 1e-6, "{imbalance:?}");
}

/// The receiver takes up what is too much and gives what is missing: pressures and capacity stay.
#[test]
fn between_three_quarters_and_five_quarters_the_charge_does_not_show() {
    let benches = [0.75, 1.0, 1.25].map(|share| running(share, 3600.0));
    let levels = benches.each_ref().map(level);
    println!("levels {levels:.2?}, {}", benches[1].line());
    assert!(
        levels[0] + 0.1 < levels[1] && levels[1] + 0.1 < levels[2],
        "{levels:.2?}"
    );
    let capacity = |bench: &Bench| bench.plant.operating().capacity;
    for bench in &benches {
        let share = capacity(bench) / capacity(&benches[1]);
        assert!((share - 1.0).abs() < 0.005, "capacity {share:.4}");
        for place in [Section::SuctionLine, Section::Condenser] {
            let change = bench.pressure(place) - benches[1].pressure(place);
            assert!(change.abs() < 0.5, "{place:?} {change:.2} psi");
        }
        assert_balanced(bench);
    }
}

/// A free surface: liquid and vapour at one temperature, nothing to subcool.
#[test]
fn liquid_over_a_level_is_saturated() {
    let bench = running(1.0, 3600.0);
    let receiver = bench.node(Section::Receiver);
    assert_eq!(receiver.phase, Phase::TwoPhase);
    let fluid = bench.plant.network().refrigerant();
    let subcooled = fluid.bubble_temperature(receiver.pressure) - receiver.temperature;
    assert!(subcooled.abs() < 0.05, "{subcooled} K");
    // The coil drains: it keeps no liquid zone in front of a free outlet.
    let zone = bench.plant.operating().liquid_zone;
    assert!(zone < 0.03, "{zone}");
    // What the valve takes is liquid all the same.
    let line = bench.node(Section::LiquidLine);
    assert!(line.quality < 0.01, "quality {}", line.quality);
}

/// Too little to keep a level: vapour goes along to the valve, the capacity falls.
#[test]
fn an_empty_receiver_lets_vapour_into_the_liquid_line() {
    let (full, starved) = (running(1.0, 3600.0), running(0.4, 3600.0));
    println!("{}\n{}", full.line(), starved.line());
    assert!(level(&starved) < 0.02, "{}", level(&starved));
    assert!(starved.node(Section::LiquidLine).quality > 0.02);
    let share = starved.plant.operating().capacity / full.plant.operating().capacity;
    assert!(share < 0.95, "capacity {share:.2}");
    assert!(starved.plant.operating().coil_superheat > full.plant.operating().coil_superheat + 1.0);
}

/// The valve at its outlet shut, the compressor empties the low side into it; at most 80 % of a
/// receiver may be liquid.
#[test]
fn shutting_the_king_valve_pumps_the_charge_into_the_receiver() {
    let mut bench = running(1.0, 1800.0);
    let before = level(&bench);
    bench.plant.set_opening(Link::LiquidValve, 0.0);
    let mut seconds = 0.0;
    while bench.pressure(Section::SuctionLine) > 0.0 && seconds < 600.0 {
        bench.run(1.0);
        seconds += 1.0;
    }
    let charge = bench.plant.inside().refrigerant;
    let behind: f64 = [Section::Receiver, Section::Condenser]
        .into_iter()
        .map(|place| bench.node(place).refrigerant)
        .sum();
    let share = behind / charge;
    println!(
        "{seconds} s, level {before:.2} to {:.2}, {:.1} % behind the valve, {}",
        level(&bench),
        100.0 * share,
        bench.line()
    );
    assert!(seconds < 300.0, "{seconds} s");
    assert!((0.90..1.0).contains(&share), "{share:.3}");
    assert!(level(&bench) > before + 0.1 && level(&bench) < 0.80);
    // A standing receiver keeps it; the low side comes up by what the oil gives off alone.
    bench.off();
    bench.run(600.0);
    assert!(bench.pressure(Section::SuctionLine) < 35.0);
    assert!(bench.pressure(Section::Receiver) > 90.0);
    assert_balanced(&bench);
}

/// A standing unit of one temperature shows saturation and keeps its liquid. The expansion valve
/// is shut: until the low side lacks its static superheat, nothing comes through to it.
#[test]
fn a_standing_receiver_keeps_saturation() {
    let mut bench = Bench::cold_room(1.0);
    bench.conditions.indoor.t = bench.conditions.outdoor.t;
    let before = level(&bench);
    bench.run(7200.0);
    let fluid = bench.plant.network().refrigerant();
    let saturated = |t: f64| crate::common::psig(fluid.dew_pressure(t));
    let t = bench.conditions.outdoor.t;
    for place in [Section::Receiver, Section::Condenser, Section::LiquidLine] {
        let shown = bench.pressure(place);
        assert!((shown - saturated(t)).abs() < 1.0, "{place:?}: {shown:.1}");
    }
    let low = bench.pressure(Section::SuctionLine);
    let held = saturated(t - 3.0)..=saturated(t) + 0.5;
    assert!(held.contains(&low), "{low:.1} psig, {held:.1?}");
    assert!((level(&bench) - before).abs() < 0.1);
}

/// Valves, compressor and fans at random, with nitrogen and water put in between: nothing is
/// lost, nothing is negative, and no pressure exceeds what could make it.
#[test]
fn random_valve_play_keeps_every_balance() {
    let mut bench = Bench::cold_room(1.1);
    let mut state = 0x9E37_79B9_7F4A_7C15_u64;
    let mut random = || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state >> 11) as f64 / (1u64 << 53) as f64
    };
    for round in 0..240 {
        for link in [Link::LiquidValve, Link::Drier, Link::SuctionValve] {
            if random() < 0.3 {
                let shut = random() < 0.4;
                let share = if shut { 0.0 } else { random() };
                bench.plant.set_opening(link, share);
            }
        }
        if random() < 0.3 {
            bench.conditions.compressor_powered = random() < 0.6;
            bench.conditions.condenser_fan = random().round();
            bench.conditions.blower = random().round();
            bench.conditions.outdoor.t = 270.0 + 45.0 * random();
        }
        if random() < 0.03 {
            let node = bench.plant.node(Section::Receiver);
            let network = bench.plant.network_mut();
            network.add(node, Amounts::nitrogen(2e-3));
            network.add(node, Amounts::water(1e-3));
        }
        bench.run(10.0);
        for place in bench.plant.places().collect::<Vec<_>>() {
            let node = bench.node(place);
            assert!(node.pressure.is_finite(), "round {round}: {place:?}");
            assert!(node.refrigerant >= 0.0, "round {round}: {place:?}");
            assert!(bench.pressure(place) < 1500.0, "round {round}: {place:?}");
        }
    }
    assert_balanced(&bench);
}

/// The steady state must not hang on the step.
#[test]
fn the_step_does_not_show_behind_a_receiver() {
    let states = [0.05, 0.1, 0.5].map(|dt| {
        let mut bench = Bench::cold_room(1.0);
        bench.dt = dt;
        bench.cool_on();
        bench.run(2400.0);
        [Section::SuctionLine, Section::Condenser].map(|place| bench.pressure(place))
    });
    for state in states {
        assert!((state[0] - states[0][0]).abs() < 0.05, "{states:?}");
        assert!((state[1] - states[0][1]).abs() < 0.1, "{states:?}");
    }
}
