//! The air side of the indoor coil at any airflow: dry, wet, iced.

use crate::common::{Bench, R22, R410A, RECEIVER, humidity, kelvin};
use coldbench::plant::{Link, Unit};
use coldbench::units::Mass;

/// Shares of the full air, from a blower that hardly turns to one that turns too fast.
const AIRFLOWS: [f64; 5] = [0.05, 0.15, 0.35, 0.7, 1.2];

/// Rooms: dry and wet bulb, °F. A dry one, the rating point, a damp one.
const ROOMS: [(f64, f64); 3] = [(80.0, 57.0), (80.0, 67.0), (76.0, 72.0)];

/// What the coil's two sides say of it.
#[derive(Debug)]
struct Seen {
    /// Supply air and the coldest surface that it can touch, K.
    supply: f64,
    surface: f64,
    /// Heat that the air gives and that the refrigerant takes, W.
    air: f64,
    refrigerant: f64,
}

/// The coil after a run, averaged over its last minute.
fn seen(bench: &mut Bench) -> Seen {
    let (mut air, mut refrigerant) = (0.0, 0.0);
    let ticks = 600;
    for _ in 0..ticks {
        bench.run(bench.dt);
        let network = bench.plant.network();
        let energy = |link: Link| network.flux(bench.plant.link(link)).energy;
        refrigerant += energy(Link::CoilOutlet) - energy(Link::Metering);
        air += bench.plant.operating().capacity;
    }
    let operating = bench.plant.operating();
    let boils = bench
        .node(coldbench::plant::Section::Evaporator)
        .temperature;
    Seen {
        supply: operating.indoor_air_out,
        surface: boils.min(operating.fin_temperature),
        air: air / f64::from(ticks),
        refrigerant: refrigerant / f64::from(ticks),
    }
}

fn running(unit: &str, charge: f64, air: f64, room: (f64, f64)) -> Bench {
    let unit = Unit::from_ron(unit).expect("the shipped unit reads");
    let full = unit.nameplate.charge.kilograms();
    let mut bench = Bench::of(&unit, Mass::from_kilograms(charge * full), 95.0);
    bench.conditions.indoor.t = kelvin(room.0);
    bench.conditions.indoor.w = humidity(room.0, room.1);
    bench.cool_on();
    bench.conditions.blower = air;
    bench.run(1_500.0);
    bench
}

/// Source: the second law, air that is cooled by a surface does not become colder than it; and
/// the balance of energy at rest.
#[test]
fn supply_air_is_never_colder_than_the_coil_and_both_sides_agree() {
    let mut wrong = Vec::new();
    for (name, unit) in [("R-22", R22), ("R-410A", R410A), ("cold room", RECEIVER)] {
        for room in ROOMS {
            for charge in [0.4, 1.0, 1.4] {
                for air in AIRFLOWS {
                    let mut bench = running(unit, charge, air, room);
                    let seen = seen(&mut bench);
                    let frozen = bench.plant.operating().frost > 1e-3;
                    let off = (seen.air / seen.refrigerant - 1.0).abs();
                    // Frost that grows keeps the coil from a rest; then only the bound holds.
                    let unbalanced = !frozen && off > 0.005;
                    if seen.supply < seen.surface - 0.01 || unbalanced {
                        wrong.push(format!(
                            "{name}, {room:?}, {charge} of its charge, {air} of its air: {seen:?}"
                        ));
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}\n{}", wrong.len(), wrong.join("\n"));
}
