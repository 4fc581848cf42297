//! What faults and the weather do inside the circuit.

use crate::common::{Bench, R22, kelvin, psig};
use coldbench::plant::network::{Amounts, Boundary, End, Fill, Law, NodeSpec, Path, Restriction};
use coldbench::plant::{Link, Section, Unit};
use coldbench::units::{ATMOSPHERE, Mass, PSI};

fn digest(bench: &Bench) -> u64 {
    let mut sum = 0xcbf2_9ce4_8422_2325_u64;
    bench.plant.visit_state(&mut |value: f64| {
        sum = (sum ^ value.to_bits()).wrapping_mul(0x0100_0000_01b3);
    });
    sum
}

#[test]
fn two_equal_runs_have_equal_bits() {
    let run = || {
        let mut bench = Bench::r22();
        bench.cool_on();
        bench.run(300.0);
        bench.plant.set_opening(Link::LiquidValve, 0.0);
        bench.run(60.0);
        bench.off();
        bench.run(60.0);
        bench
    };
    let (one, two) = (run(), run());
    println!("digest {:016x}", digest(&one));
    assert_eq!(digest(&one), digest(&two));
    let (mut copy, mut original) = (one.clone(), one);
    copy.run(60.0);
    original.run(60.0);
    assert_eq!(digest(&copy), digest(&original));
}

#[test]
fn a_wet_circuit_freezes_at_the_throat_and_thaws_at_rest() {
    let unit = Unit::from_ron(R22).expect("the shipped unit reads");
    let mut bench = Bench::of(&unit, Mass::from_kilograms(2.6), 75.0);
    bench.conditions.indoor.t = kelvin(70.0);
    bench.conditions.indoor.w = 0.006;
    // A drier that can take no more.
    bench.plant.set_desiccant_water(9e-3);
    let node = bench.plant.node(Section::Evaporator);
    bench.plant.network_mut().add(node, Amounts::water(8e-3));
    bench.cool_on();
    bench.conditions.blower = 0.6;
    let mut most: f64 = 0.0;
    for minute in 0..60 {
        bench.run(60.0);
        let operating = bench.plant.operating();
        most = most.max(operating.throat_ice);
        if minute % 15 == 0 {
            println!(
                "{minute}: iced {:.2} free {:.2} g frost {:.2} kg {}",
                operating.throat_ice,
                bench.node(Section::Evaporator).free_water * 1e3,
                operating.frost,
                bench.line()
            );
        }
    }
    assert!(most > 0.9, "iced {most:.2}");
    bench.off();
    bench.run(1800.0);
    assert!(bench.plant.operating().throat_ice < 0.1);
    let imbalance = bench.imbalance();
    assert!(imbalance[3] < 1e-9 && imbalance[4] < 1e-6, "{imbalance:?}");
}

#[test]
fn little_air_over_the_indoor_coil_frosts_it() {
    let unit = Unit::from_ron(R22).expect("the shipped unit reads");
    let mut bench = Bench::of(&unit, unit.nameplate.charge, 75.0);
    bench.conditions.blower = 0.2;
    bench.conditions.compressor_powered = true;
    bench.conditions.condenser_fan = 1.0;
    bench.run(3600.0);
    let operating = *bench.plant.operating();
    println!("frost {:.2} kg {}", operating.frost, bench.line());
    assert!(operating.frost > 0.1, "{:.3} kg", operating.frost);
    bench.off();
    bench.conditions.blower = 1.0;
    bench.run(3600.0);
    assert!(bench.plant.operating().frost < 0.01, "it thaws");
}

/// Hoses, a manifold and a cylinder on the unit: random play with all of it.
#[test]
fn random_play_with_hoses_stays_finite_and_balanced() {
    for seed in 1..=4u64 {
        let mut bench = Bench::r22();
        let ends = [Section::LiquidLine, Section::SuctionLine].map(|place| bench.plant.node(place));
        let network = bench.plant.network_mut();
        let small = NodeSpec {
            volume: 6e-5,
            wall: 40.0,
            to_ambient: 0.5,
            fill: Fill::MoistAir,
        };
        let [high, low, centre, tee] = [0; 4].map(|_| network.add_node(small));
        let cylinder = network.add_node(NodeSpec {
            volume: 13.4e-3,
            wall: 3000.0,
            to_ambient: 3.0,
            fill: Fill::Refrigerant {
                mass: 8.0,
                temperature: kelvin(95.0),
            },
        });
        let outside = network.add_boundary(Boundary {
            pressure: ATMOSPHERE,
            temperature: kelvin(95.0),
            moles: [0.0, 0.98, 0.02],
        });
        let nitrogen = network.add_boundary(Boundary {
            pressure: ATMOSPHERE + 150.0 * PSI,
            temperature: kelvin(95.0),
            moles: [1.0, 0.0, 0.0],
        });
        let hose = Law::Path(Path::through(&[
            Restriction::core(),
            Restriction::tube(4.8e-3, 1.5),
        ]));
        let valve = Law::Path(Path::through(&[Restriction::opening(1.8e-5)]));
        let leak = Law::Path(Path::through(&[Restriction::opening(2e-7)]));
        let pump = Law::Pump {
            displacement: 2.36e-3,
            ultimate: 2.0,
        };
        let node = |id| End::Node(id);
        let joins = [
            (node(ends[0]), node(high), hose),
            (node(ends[1]), node(low), hose),
            (node(high), node(centre), valve),
            (node(low), node(centre), valve),
            (node(centre), node(tee), hose),
            (node(cylinder), node(tee), valve),
            (node(tee), End::Boundary(outside), pump),
            (node(centre), End::Boundary(outside), leak),
            (End::Boundary(nitrogen), node(tee), valve),
        ];
        let elements = joins.map(|(from, to, _)| network.add_element(from, to, Law::Shut));
        let mut state = seed.wrapping_mul(0x9E37_79B9_7F4A_7C15);
        let mut random = || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            (state >> 11) as f64 / (1u64 << 53) as f64
        };
        let mut highest: f64 = 0.0;
        for round in 0..180 {
            for (k, element) in elements.iter().enumerate() {
                if random() < 0.3 {
                    let on = random() < if k == 8 { 0.05 } else { 0.5 };
                    let law = if on { joins[k].2 } else { Law::Shut };
                    bench.plant.network_mut().set_law(*element, law);
                }
            }
            for link in [Link::LiquidValve, Link::SuctionValve] {
                if random() < 0.2 {
                    bench
                        .plant
                        .set_opening(link, if random() < 0.3 { 0.0 } else { random() });
                }
            }
            if random() < 0.3 {
                bench.conditions.compressor_powered = random() < 0.6;
                bench.conditions.condenser_fan = if random() < 0.7 { 1.0 } else { 0.0 };
                bench.conditions.blower = if random() < 0.7 { 1.0 } else { 0.0 };
            }
            for _ in 0..100 {
                bench.run(0.1);
                let network = bench.plant.network();
                let places = Section::ALL.map(|place| bench.plant.node(place));
                for id in places.iter().chain(&[high, low, centre, tee, cylinder]) {
                    let node = network.node(*id);
                    let sound = node.pressure.is_finite() && node.energy.is_finite();
                    assert!(sound, "seed {seed} round {round}: {node:?}");
                    let least = node.gas.iter().fold(node.refrigerant, |a, &b| a.min(b));
                    assert!(least >= -1e-15, "seed {seed} round {round}: {least}");
                    highest = highest.max(psig(node.pressure));
                }
            }
        }
        let imbalance = bench.imbalance();
        println!("seed {seed}: highest {highest:.0} psig, {imbalance:?}");
        assert!(imbalance[..4].iter().all(|&x| x < 1e-9), "{imbalance:?}");
        assert!(imbalance[4] < 1e-6, "{imbalance:?}");
    }
}
