//! Deep vacuum: dry, wet, leaking.

use crate::common::Bench;
use coldbench::plant::network::{
    Amounts, Boundary, ElementId, End, Fill, Law, NodeId, NodeSpec, Path, Restriction,
};
use coldbench::plant::{Link, Section, TICK};
use coldbench::units::{ATMOSPHERE, MICRON};

/// The indoor side alone, full of moist air, with a pump behind a hose.
struct Vacuum {
    bench: Bench,
    tee: NodeId,
    pump: ElementId,
    valve: ElementId,
}

const PUMP: Law = Law::Pump {
    displacement: 2.36e-3,
    ultimate: 2.0,
};

impl Vacuum {
    fn over(bench: Bench, hose: &[Restriction]) -> Self {
        let mut bench = bench;
        let t = bench.conditions.outdoor.t;
        let suction = bench.plant.node(Section::SuctionLine);
        let network = bench.plant.network_mut();
        let outside = network.add_boundary(Boundary {
            pressure: ATMOSPHERE,
            temperature: t,
            moles: [0.0, 1.0, 0.0],
        });
        let tee = network.add_node(NodeSpec {
            volume: 3e-5,
            wall: 30.0,
            to_ambient: 0.5,
            fill: Fill::MoistAir,
        });
        let law = Law::Path(Path::through(hose));
        let valve = network.add_element(End::Node(suction), End::Node(tee), law);
        let pump = network.add_element(End::Node(tee), End::Boundary(outside), PUMP);
        Self {
            bench,
            tee,
            pump,
            valve,
        }
    }

    fn at_tee(&self) -> f64 {
        self.bench.plant.network().node(self.tee).pressure / MICRON
    }

    fn at(&self, place: Section) -> f64 {
        self.bench.node(place).pressure / MICRON
    }
}

/// The unit with the line set and indoor side emptied of refrigerant and full of room air.
fn opened(water: f64) -> Bench {
    let mut bench = Bench::r22();
    bench.cool_on();
    bench.run(900.0);
    bench.plant.set_opening(Link::LiquidValve, 0.0);
    let mut seconds = 0;
    while bench.pressure(Section::SuctionLine) > 0.0 && seconds < 300 {
        bench.run(1.0);
        seconds += 1;
    }
    bench.plant.set_opening(Link::SuctionValve, 0.0);
    bench.off();
    bench.run(600.0);
    if water > 0.0 {
        let node = bench.plant.node(Section::Evaporator);
        bench.plant.network_mut().add(node, Amounts::water(water));
    }
    bench
}

fn wide() -> Vec<Restriction> {
    vec![Restriction::tube(9.5e-3, 0.9)]
}

#[test]
fn a_dry_tight_circuit_pulls_down_and_holds() {
    let mut vacuum = Vacuum::over(opened(0.0), &wide());
    vacuum.bench.run(1200.0);
    println!(
        "dry: tee {:.0} coil {:.0}",
        vacuum.at_tee(),
        vacuum.at(Section::Evaporator)
    );
    assert!(vacuum.at(Section::Evaporator) < 300.0);
    vacuum
        .bench
        .plant
        .network_mut()
        .set_law(vacuum.pump, Law::Shut);
    vacuum.bench.run(60.0);
    let first = vacuum.at_tee();
    vacuum.bench.run(600.0);
    println!("decay {first:.0} to {:.0}", vacuum.at_tee());
    assert!(vacuum.at_tee() < first + 20.0, "flat: tight and dry");
}

#[test]
fn water_boils_off_and_levels_off_at_its_vapour_pressure() {
    let mut vacuum = Vacuum::over(opened(5e-3), &wide());
    let mut marks = Vec::new();
    for minute in 1..=40 {
        vacuum.bench.run(60.0);
        if minute % 5 == 0 {
            let node = vacuum.bench.node(Section::Evaporator);
            marks.push((
                minute,
                vacuum.at_tee().round(),
                vacuum.at(Section::Evaporator).round(),
                (node.free_water * 1e6).round(),
                (node.free_water_temperature() - 273.15).round(),
            ));
        }
    }
    println!("wet: minute, tee, coil, mg left, °C {marks:?}");
    let mut vacuum = Vacuum::over(opened(5e-3), &wide());
    vacuum.bench.run(300.0);
    vacuum
        .bench
        .plant
        .network_mut()
        .set_law(vacuum.pump, Law::Shut);
    let mut decay = Vec::new();
    for _ in 0..20 {
        vacuum.bench.run(60.0);
        decay.push(vacuum.at_tee().round());
    }
    let node = vacuum.bench.node(Section::Evaporator);
    let boils = vacuum
        .bench
        .plant
        .network()
        .water_pressure(node.free_water_temperature())
        / MICRON;
    println!(
        "decay {decay:?}; water {:.2} g at {:.1} °C: {boils:.0} micron",
        node.free_water * 1e3,
        node.free_water_temperature() - 273.15
    );
    assert!(node.free_water > 0.0, "water is left");
    let last = decay[decay.len() - 1];
    assert!(decay[0] < 0.5 * last, "it rises: {decay:?}");
    let late = last - decay[decay.len() - 5];
    let early = decay[4] - decay[0];
    assert!(late < 0.5 * early, "and levels off: {decay:?}");
    assert!(
        (last / boils - 1.0).abs() < 0.25,
        "at the vapour pressure of what is left"
    );
}

#[test]
fn pulled_too_fast_water_freezes_and_passes_falsely() {
    let mut bench = opened(20e-3);
    // A cold day makes it easy.
    bench.conditions.outdoor.t = 278.15;
    bench.conditions.indoor.t = 278.15;
    let mut vacuum = Vacuum::over(bench, &[Restriction::tube(16e-3, 0.3)]);
    let mut seen = Vec::new();
    for _ in 0..20 {
        vacuum.bench.run(60.0);
        let node = vacuum.bench.node(Section::Evaporator);
        seen.push((
            vacuum.at_tee().round(),
            (node.free_water_temperature() - 273.15).round(),
            (node.ice() * 1e3).round(),
        ));
    }
    println!("fast: tee, °C, g of ice {seen:?}");
    let node = vacuum.bench.node(Section::Evaporator);
    assert!(node.ice() > 1e-3, "ice {:.3} g", node.ice() * 1e3);
    let low = vacuum.at_tee();
    vacuum
        .bench
        .plant
        .network_mut()
        .set_law(vacuum.pump, Law::Shut);
    vacuum.bench.run(1800.0);
    println!("from {low:.0} it comes back to {:.0}", vacuum.at_tee());
    assert!(vacuum.at_tee() > 3.0 * low, "the decay shows it");
}

#[test]
fn a_leak_rises_straight_and_a_small_one_is_not_seen() {
    let mut rises = Vec::new();
    // 5 g of R-22 a year at 70 psig is a hole of some 0.2 µm²·10⁻³; a loose flare is far more.
    for area in [2e-15, 2e-10] {
        let mut vacuum = Vacuum::over(opened(0.0), &wide());
        vacuum.bench.run(1800.0);
        let suction = vacuum.bench.plant.node(Section::SuctionLine);
        let network = vacuum.bench.plant.network_mut();
        network.set_law(vacuum.pump, Law::Shut);
        network.set_law(vacuum.valve, Law::Shut);
        let outside = network.add_boundary(Boundary {
            pressure: ATMOSPHERE,
            temperature: 308.15,
            moles: [0.0, 1.0, 0.0],
        });
        let hole = Law::Path(Path::through(&[Restriction {
            length: 1e-3,
            ..Restriction::opening(area)
        }]));
        network.add_element(End::Node(suction), End::Boundary(outside), hole);
        vacuum.bench.run(60.0);
        let mut readings = vec![vacuum.at(Section::SuctionLine)];
        for _ in 0..2 {
            vacuum.bench.run(300.0);
            readings.push(vacuum.at(Section::SuctionLine));
        }
        println!("hole {area:e}: {readings:.3?}");
        rises.push([readings[1] - readings[0], readings[2] - readings[1]]);
    }
    assert!(
        rises[0][0].abs() + rises[0][1].abs() < 0.05,
        "not seen: {rises:?}"
    );
    assert!(
        rises[1][0] > 50.0 && (rises[1][1] / rises[1][0] - 1.0).abs() < 0.1,
        "{rises:?}"
    );
}

#[test]
fn a_drier_takes_water_from_the_refrigerant_and_gives_it_back_in_vacuum() {
    let mut bench = Bench::r22();
    let node = bench.plant.node(Section::Evaporator);
    bench.plant.network_mut().add(node, Amounts::water(1e-3));
    bench.cool_on();
    for _ in 0..6 {
        bench.run(1200.0);
        println!(
            "desiccant {:.3} g, free in the coil {:.3} g, {}",
            bench.plant.desiccant_water() * 1e3,
            bench.node(Section::Evaporator).free_water * 1e3,
            bench.line()
        );
    }
    let held = bench.plant.desiccant_water();
    assert!(held > 0.5e-3, "the drier holds {:.3} g", held * 1e3);
    assert!(bench.imbalance()[3] < 1e-9);
    // A drier that is full holds the microns up; a fresh one does not.
    let settled = [0.05e-3, 7.5e-3].map(|water| {
        let mut vacuum = Vacuum::over(opened(0.0), &wide());
        vacuum.bench.plant.set_desiccant_water(water);
        vacuum.bench.run(1800.0);
        vacuum
            .bench
            .plant
            .network_mut()
            .set_law(vacuum.pump, Law::Shut);
        vacuum.bench.run(600.0);
        (vacuum.at_tee(), vacuum.bench.plant.desiccant_water() * 1e3)
    });
    println!("fresh and wet drier after 10 min of decay {settled:.1?} (tick {TICK} s)");
    assert!(settled[1].0 > settled[0].0 + 500.0, "{settled:?}");
}

#[test]
fn a_drier_in_humid_air_takes_half_its_capacity_in_an_hour() {
    let mut bench = opened(0.0);
    let humid = 0.6 * bench.plant.network().water_pressure(303.15);
    for _ in 0..36_000 {
        bench.plant.expose_desiccant(humid, TICK);
    }
    let share = bench.plant.desiccant_water() / bench.plant.desiccant_capacity();
    println!("after an hour in humid air {share:.2} of its capacity");
    assert!((0.4..0.9).contains(&share), "{share}");
    assert!(bench.imbalance()[3] < 1e-9);
}
