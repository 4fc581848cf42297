//! Service work on the bare circuit: pumping down, opening, nitrogen, evacuation.

use crate::common::{Bench, fahrenheit, kelvin, psig};
use coldbench::plant::network::{
    Amounts, Boundary, BoundaryId, ElementId, End, Law, Path, Restriction,
};
use coldbench::plant::{Link, Section};
use coldbench::units::{ATMOSPHERE, MICRON};

/// An opening from a place to humid air, shut at first.
fn air(bench: &mut Bench) -> BoundaryId {
    let t = bench.conditions.outdoor.t;
    let network = bench.plant.network_mut();
    let water = 0.5 * network.water_pressure(t) / ATMOSPHERE;
    network.add_boundary(Boundary {
        pressure: ATMOSPHERE,
        temperature: t,
        moles: [0.0, 1.0 - water, water],
    })
}

fn hole(bench: &mut Bench, place: Section, outside: BoundaryId) -> ElementId {
    let node = bench.plant.node(place);
    bench
        .plant
        .network_mut()
        .add_element(End::Node(node), End::Boundary(outside), Law::Shut)
}

fn open(area: f64) -> Law {
    Law::Path(Path::through(&[Restriction::opening(area)]))
}

/// Refrigerant that is not in the outdoor coil and the discharge, kg.
fn low_side(bench: &Bench) -> f64 {
    [
        Section::LiquidLine,
        Section::AfterDrier,
        Section::Evaporator,
        Section::SuctionLine,
        Section::Shell,
    ]
    .iter()
    .map(|&place| bench.node(place).contents().refrigerant)
    .sum()
}

fn pump_down(bench: &mut Bench) -> f64 {
    bench.plant.set_opening(Link::LiquidValve, 0.0);
    let mut seconds = 0.0;
    while bench.pressure(Section::SuctionLine) > 0.0 && seconds < 600.0 {
        bench.run(1.0);
        seconds += 1.0;
    }
    seconds
}

/// common practice, no source: an empty evaporator within 30 s to 3 min, 3 to 8 % of the charge
/// left on the low side, then the refrigerant in the oil brings back 10 to 35 psig in 10 min.
#[test]
fn front_seating_the_liquid_valve_pumps_the_low_side_down() {
    let mut bench = Bench::r22();
    bench.cool_on();
    bench.run(1800.0);
    let seconds = pump_down(&mut bench);
    let left = low_side(&bench) / 3.108;
    println!(
        "pump-down {seconds} s, {:.1} % left, {}",
        100.0 * left,
        bench.line()
    );
    assert!((30.0..=180.0).contains(&seconds), "{seconds} s");
    assert!((0.03..=0.08).contains(&left), "{:.1} % left", 100.0 * left);
    let mut rebounds = Vec::new();
    for _ in 0..3 {
        bench.off();
        bench.run(600.0);
        rebounds.push(bench.pressure(Section::SuctionLine));
        bench.cool_on();
        pump_down(&mut bench);
    }
    println!("rebounds {rebounds:.1?}");
    assert!((10.0..=35.0).contains(&rebounds[0]), "{rebounds:.1?} psig");
    assert!(
        rebounds[1] < rebounds[0] && rebounds[2] < rebounds[1],
        "{rebounds:.1?} psig"
    );
    assert!(
        bench.imbalance().iter().all(|&x| x < 1e-9),
        "{:?}",
        bench.imbalance()
    );
}

#[test]
fn a_standing_circuit_shows_saturation_while_liquid_is_left() {
    let mut bench = Bench::r22();
    bench.conditions.indoor.t = bench.conditions.outdoor.t;
    bench.run(7200.0);
    let saturated = bench
        .plant
        .network()
        .refrigerant()
        .dew_pressure(kelvin(95.0));
    println!(
        "standing {:.2}, saturated {:.2}",
        bench.pressure(Section::SuctionLine),
        psig(saturated)
    );
    assert!((psig(saturated) - bench.pressure(Section::SuctionLine)).abs() < 1.0);
    let node = bench.plant.node(Section::Condenser);
    bench.plant.network_mut().add(node, Amounts::nitrogen(0.02));
    bench.run(3600.0);
    assert!(bench.pressure(Section::Condenser) > psig(saturated) + 3.0);
}

#[test]
fn a_whole_repair_keeps_every_balance() {
    let mut bench = Bench::r22();
    bench.cool_on();
    bench.run(1800.0);
    let before = bench.line();
    let pumped = pump_down(&mut bench);
    println!("{before}\npumped {pumped} s");
    bench.plant.set_opening(Link::SuctionValve, 0.0);
    bench.off();
    bench.run(120.0);
    let outside = air(&mut bench);
    let suction_hole = hole(&mut bench, Section::SuctionLine, outside);
    let drier_hole = hole(&mut bench, Section::AfterDrier, outside);
    let kit = bench.plant.network_mut();
    kit.set_law(suction_hole, open(5e-5));
    kit.set_law(drier_hole, open(2e-5));
    bench.run(300.0);
    let nitrogen = bench.plant.network_mut().add_boundary(Boundary {
        pressure: ATMOSPHERE + 100.0 * coldbench::units::PSI,
        temperature: kelvin(95.0),
        moles: [1.0, 0.0, 0.0],
    });
    let node = bench.plant.node(Section::SuctionLine);
    let fill =
        bench
            .plant
            .network_mut()
            .add_element(End::Boundary(nitrogen), End::Node(node), Law::Shut);
    let pump =
        bench
            .plant
            .network_mut()
            .add_element(End::Node(node), End::Boundary(outside), Law::Shut);
    let network = bench.plant.network_mut();
    network.set_law(suction_hole, Law::Shut);
    network.set_law(drier_hole, Law::Shut);
    network.set_law(fill, open(5e-6));
    bench.run(120.0);
    let filled = bench.pressure(Section::Evaporator);
    assert!((filled - 100.0).abs() < 0.5, "{filled} psig");
    bench.plant.network_mut().set_law(fill, Law::Shut);
    bench.run(600.0);
    bench
        .plant
        .network_mut()
        .set_law(suction_hole, open(1.8e-5));
    bench.run(120.0);
    assert!(bench.pressure(Section::Evaporator) < 0.5);
    let network = bench.plant.network_mut();
    network.set_law(suction_hole, Law::Shut);
    network.set_law(
        pump,
        Law::Pump {
            displacement: 2.36e-3,
            ultimate: 2.0,
        },
    );
    bench.run(3600.0);
    let vacuum = bench.node(Section::SuctionLine).pressure / MICRON;
    assert!(vacuum < 500.0, "{vacuum} micron");
    bench.plant.network_mut().set_law(pump, Law::Shut);
    bench.plant.set_opening(Link::LiquidValve, 1.0);
    bench.plant.set_opening(Link::SuctionValve, 1.0);
    bench.run(120.0);
    bench.cool_on();
    bench.run(3600.0);
    println!("{}", bench.line());
    let imbalance = bench.imbalance();
    assert!(imbalance[..4].iter().all(|&x| x < 1e-9), "{imbalance:?}");
    assert!(imbalance[4] < 1e-6, "{imbalance:?}");
    assert!(fahrenheit(bench.node(Section::Evaporator).temperature) > 32.0);
}

/// Fuzz: random valves and compressor for hours give no NaN and nothing negative.
#[test]
fn random_valve_play_stays_finite_and_positive() {
    for seed in 1..=4u64 {
        let mut bench = Bench::r22();
        bench.dt = [0.1, 0.2, 0.5, 0.05][(seed % 4) as usize];
        let outside = air(&mut bench);
        let holes = [
            Section::LiquidLine,
            Section::Evaporator,
            Section::SuctionLine,
        ]
        .map(|place| hole(&mut bench, place, outside));
        let mut state = seed.wrapping_mul(0x9E37_79B9_7F4A_7C15);
        let mut random = || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            (state >> 11) as f64 / (1u64 << 53) as f64
        };
        for round in 0..120 {
            for link in [
                Link::LiquidValve,
                Link::Drier,
                Link::SuctionValve,
                Link::CoilOutlet,
            ] {
                if random() < 0.3 {
                    let share = if random() < 0.5 { random() } else { 1.0 };
                    bench
                        .plant
                        .set_opening(link, if random() < 0.3 { 0.0 } else { share });
                }
            }
            for hole in holes {
                let law = if random() < 0.1 {
                    open(1e-5 * random())
                } else {
                    Law::Shut
                };
                bench.plant.network_mut().set_law(hole, law);
            }
            if random() < 0.3 {
                bench.conditions.compressor_powered = random() < 0.6;
                bench.conditions.condenser_fan = if random() < 0.7 { 1.0 } else { 0.0 };
                bench.conditions.blower = if random() < 0.7 { 1.0 } else { 0.0 };
            }
            if random() < 0.05 {
                let node = bench.plant.node(Section::Evaporator);
                bench.plant.network_mut().add(node, Amounts::water(2e-3));
            }
            if bench.plant.network().contents().refrigerant < 2.0 {
                let node = bench.plant.node(Section::SuctionLine);
                bench
                    .plant
                    .network_mut()
                    .add(node, Amounts::refrigerant(0.05));
            }
            bench.run(10.0);
            for place in Section::ALL {
                let node = bench.node(place);
                let sound = node.pressure.is_finite() && node.energy.is_finite();
                assert!(sound, "seed {seed} round {round}: {place:?} {node:?}");
                let least = node.gas.iter().fold(node.refrigerant, |a, &b| a.min(b));
                assert!(
                    least >= -1e-15,
                    "seed {seed} round {round}: {place:?} has {least}"
                );
                assert!(
                    psig(node.pressure) < 1500.0,
                    "seed {seed} round {round}: {place:?} {node:?}"
                );
            }
        }
        let imbalance = bench.imbalance();
        println!("seed {seed}: {imbalance:?} {}", bench.line());
        assert!(imbalance[..4].iter().all(|&x| x < 1e-9), "{imbalance:?}");
        assert!(imbalance[4] < 1e-6, "{imbalance:?}");
    }
}

#[test]
fn the_steady_state_does_not_hang_on_the_step() {
    let states = [0.05, 0.1, 0.2, 0.5].map(|dt| {
        let mut bench = Bench::r22();
        bench.dt = dt;
        bench.cool_on();
        bench.run(2400.0);
        println!("{dt}: {}", bench.line());
        [
            bench.pressure(Section::SuctionLine),
            bench.pressure(Section::Condenser),
        ]
    });
    for state in states {
        assert!((state[0] - states[0][0]).abs() < 0.02, "{states:?}");
        assert!((state[1] - states[0][1]).abs() < 0.05, "{states:?}");
    }
}
