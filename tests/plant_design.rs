//! The bare unit at its design point and away from it.

mod plant_common;

use coldbench::plant::Place;
use plant_common::{Bench, fahrenheit, psig};

#[test]
fn the_unit_meets_its_design_point() {
    let mut bench = Bench::r22();
    bench.cool_on();
    for _ in 0..24 {
        bench.run(150.0);
    }
    let suction = psig(bench.node(Place::SuctionLine).pressure);
    let liquid = psig(bench.node(Place::LiquidLine).pressure);
    let operating = bench.plant.operating();
    assert!(
        (68.0..=76.0).contains(&suction),
        "suction {suction:.1} psig"
    );
    assert!((240.0..=280.0).contains(&liquid), "liquid {liquid:.1} psig");
    let superheat = bench.superheat();
    assert!(
        (10.0..=15.0).contains(&superheat),
        "superheat {superheat:.1} °F"
    );
    let subcooling = bench.subcooling();
    assert!(
        (8.0..=12.0).contains(&subcooling),
        "subcooling {subcooling:.1} °F"
    );
    let capacity = operating.net_capacity * 3.412_142e-3;
    assert!(
        (35.0..=37.0).contains(&capacity),
        "capacity {capacity:.1} kBtu/h"
    );
    let power = operating.power / 1e3;
    assert!((3.4..=3.9).contains(&power), "power {power:.2} kW");
    assert!(fahrenheit(operating.liquid_temperature) > 95.0);
}
