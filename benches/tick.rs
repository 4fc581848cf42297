//! How long a lookup and a tick take. `cargo bench --no-default-features --bench tick`.

use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::plant::network::{Boundary, End, Fill, Law, NodeSpec, Path, Restriction};
use coldbench::plant::{Air, Conditions, Place, Plant, Unit};
use coldbench::units::ATMOSPHERE;
use divan::{Bencher, black_box};

const R22: &str = include_str!("../assets/units/r22_3ton_orifice.ron");

fn main() {
    divan::main();
}

fn running() -> (Plant, Conditions) {
    let unit = Unit::from_ron(R22).expect("the shipped unit reads");
    let conditions = Conditions {
        compressor_powered: true,
        condenser_fan: 1.0,
        blower: 1.0,
        outdoor: Air {
            t: 308.15,
            w: 0.012,
        },
        indoor: Air {
            t: 299.82,
            w: 0.0112,
        },
    };
    let mut plant = Plant::new(&unit, &conditions, unit.nameplate.charge);
    for _ in 0..9000 {
        plant.tick(&conditions);
    }
    (plant, conditions)
}

#[divan::bench]
fn saturation_curves(bencher: Bencher) {
    let fluid = Refrigerant::named("R-22").expect("R-22 is known");
    bencher.bench(|| fluid.at_with_slopes(black_box(290.3)));
}

#[divan::bench]
fn tick_of_the_bare_unit(bencher: Bencher) {
    let (mut plant, conditions) = running();
    bencher.bench_local(|| plant.tick(&conditions));
}

#[divan::bench]
fn tick_with_the_kit_on(bencher: Bencher) {
    let (mut plant, conditions) = running();
    let ends = [Place::LiquidLine, Place::SuctionLine].map(|place| plant.node(place));
    let network = plant.network_mut();
    let outside = network.add_boundary(Boundary {
        pressure: ATMOSPHERE,
        temperature: 308.15,
        moles: [0.0, 0.98, 0.02],
    });
    let small = NodeSpec {
        volume: 6e-5,
        wall: 40.0,
        to_ambient: 0.5,
        fill: Fill::MoistAir,
    };
    let [high, low, centre, tee, spare] = [0; 5].map(|_| network.add_node(small));
    let hose = Law::Path(Path::through(&[
        Restriction::core(),
        Restriction::tube(4.8e-3, 1.5),
    ]));
    let valve = Law::Path(Path::through(&[Restriction::opening(1.8e-5)]));
    network.add_element(End::Node(ends[0]), End::Node(high), hose);
    network.add_element(End::Node(ends[1]), End::Node(low), hose);
    network.add_element(End::Node(high), End::Node(centre), Law::Shut);
    network.add_element(End::Node(low), End::Node(centre), Law::Shut);
    network.add_element(End::Node(centre), End::Node(tee), hose);
    network.add_element(End::Node(tee), End::Node(spare), valve);
    network.add_element(End::Node(tee), End::Boundary(outside), Law::Shut);
    for _ in 0..3000 {
        plant.tick(&conditions);
    }
    bencher.bench_local(|| plant.tick(&conditions));
}
