//! The speed of a pump through hoses against what vacuum technology computes.

use coldbench::plant::network::{Boundary, End, Fill, Law, NodeSpec, Path, Restriction};
use coldbench::units::{ATMOSPHERE, MICRON, Mass};

use crate::bench::{self, Bench};
use crate::table;

/// 10 L of dry air behind a hose: speeds at the four pressures, L/s, and the pull-down, s.
fn pull_down(hose: Option<Restriction>) -> ([f64; 4], f64) {
    let unit = coldbench::plant::Unit::from_ron(bench::R22).expect("the shipped unit reads");
    let mut bench = Bench::of(&unit, Mass::from_kilograms(3.0), 68.0);
    let network = bench.plant.network_mut();
    let air = Boundary {
        pressure: ATMOSPHERE,
        temperature: 293.15,
        moles: [0.0, 1.0, 0.0],
    };
    let outside = network.add_boundary(air);
    let tank = network.add_node(NodeSpec {
        volume: 10e-3,
        wall: 2000.0,
        to_ambient: 10.0,
        fill: Fill::Evacuated,
    });
    let inlet = network.add_element(
        End::Boundary(outside),
        End::Node(tank),
        Law::Path(Path::through(&[Restriction::opening(1e-4)])),
    );
    let pump_law = Law::Pump {
        displacement: 2.36e-3,
        ultimate: 0.2,
    };
    let pump = if let Some(hose) = hose {
        let tee = network.add_node(NodeSpec {
            volume: 3e-5,
            wall: 40.0,
            to_ambient: 0.5,
            fill: Fill::Evacuated,
        });
        let law = Law::Path(Path::through(&[hose]));
        network.add_element(End::Node(tank), End::Node(tee), law);
        network.add_element(End::Node(tee), End::Boundary(outside), Law::Shut)
    } else {
        network.add_element(End::Node(tank), End::Boundary(outside), Law::Shut)
    };
    bench.run(60.0);
    let network = bench.plant.network_mut();
    network.set_law(inlet, Law::Shut);
    network.set_law(pump, pump_law);
    let mut speeds = [0.0; 4];
    let marks = [20_000.0, 5000.0, 1000.0, 500.0];
    let (mut reached, mut seconds) = (0, 0.0);
    while reached < 4 && seconds < 2000.0 {
        let before = bench.plant.network().node(tank).pressure;
        bench.run(0.1);
        seconds += 0.1;
        let after = bench.plant.network().node(tank).pressure;
        if after / MICRON < marks[reached] {
            speeds[reached] = 10.0 * libm::log(before / after) / 0.1;
            reached += 1;
        }
    }
    (speeds, seconds)
}

/// Source: `data/vacuum.csv`; effective speed within 10 %, and so the pull-down.
#[test]
fn speeds_through_hoses_are_those_of_vacuum_technology() {
    for line in table::read("vacuum.csv") {
        let length = line.number("length_in") * 0.0254;
        let hose = match line.text("hose") {
            "1/4 in" => Some(Restriction::tube(4.8e-3, length)),
            "3/8 in" => Some(Restriction::tube(9.5e-3, length)),
            _ => None,
        };
        let (speeds, seconds) = pull_down(hose);
        let names = [
            "speed_at_20000_micron",
            "speed_at_5000",
            "speed_at_1000",
            "speed_at_500",
        ];
        let published = names.map(|name| line.number(name));
        let wanted = line.number("pull_down_s");
        println!(
            "{}: {speeds:.3?} ({published:?}) L/s, {seconds:.0} ({wanted}) s",
            line.text("hose")
        );
        for (found, published) in speeds.iter().zip(published) {
            let off = (found / published - 1.0).abs();
            assert!(
                off <= 0.10,
                "{}: {found:.3}, computed {published}",
                line.text("hose")
            );
        }
        assert!(
            (seconds / wanted - 1.0).abs() <= 0.10,
            "{seconds:.0} s, computed {wanted}"
        );
    }
}
