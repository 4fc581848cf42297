//! The speed of a vacuum pump behind a hose, and how long it takes.

use super::bare::Bare;
use super::data::rows;
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::plant::TICK;
use coldbench::plant::network::gas::R_UNIVERSAL;
use coldbench::plant::network::{Amounts, Boundary, End, Fill, Law, NodeId, NodeSpec, Restriction};
use coldbench::units::{ATMOSPHERE, Length, MICRON};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "vacuum",
    origin: "Conductance of tubes by the vacuum technology handbooks, viscous and molecular, for \
        air at 20 °C; 10 L of dry air from one atmosphere to 500 micron; pump 2.36 L/s (5 cfm).",
    class: Class::Derived,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// Where the speed is taken: the column of the table, micron.
const MARKS: [(&str, f64); 4] = [
    ("speed_at_20000_micron", 20_000.0),
    ("speed_at_5000", 5000.0),
    ("speed_at_1000", 1000.0),
    ("speed_at_500", 500.0),
];

/// Volume that is pumped down, L.
const LITRES: f64 = 10.0;

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/vacuum.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let length = Length::from_inches(row.number("length_in")).metres();
        // Bores as the source assumes them.
        let (name, hose) = match row.text("hose") {
            "1/4 in" => ("1/4 in hose", Some(Restriction::tube(4.8e-3, length))),
            "3/8 in" => ("3/8 in hose", Some(Restriction::tube(9.5e-3, length))),
            _ => ("no hose", None),
        };
        let (speeds, seconds) = pull_down(hose);
        for ((column, microns), ours) in MARKS.into_iter().zip(speeds) {
            let published = row.number(column);
            let what = format!("{name}, speed at {microns} micron");
            let tolerance = 0.1 * published;
            figures.push(Figure::near(what, "L/s", published, tolerance, ours));
        }
        let published = row.number("pull_down_s");
        let what = format!("{name}, one atmosphere to 500 micron");
        figures.push(Figure::near(what, "s", published, 0.1 * published, seconds));
    }
    figures
}

/// Speeds at the marks, L/s, and the time to the last, s.
fn pull_down(hose: Option<Restriction>) -> ([f64; 4], f64) {
    let orifice = Rated::orifice();
    let mut bare = Bare::at_rest(orifice.unit(), 68.0, (68.0, 58.0));
    let tank = bare.add_vessel(NodeSpec {
        volume: 1e-3 * LITRES,
        wall: 2000.0,
        to_ambient: 10.0,
        fill: Fill::Evacuated,
    });
    let amount = ATMOSPHERE * 1e-3 * LITRES / (R_UNIVERSAL * 293.15);
    let air = Amounts {
        gas: [0.0, amount, 0.0],
        ..Amounts::NOTHING
    };
    bare.plant.network_mut().add(tank, air);
    let inlet = hose.map_or(tank, |hose| behind(&mut bare, tank, hose));
    bare.run(120.0);
    let network = bare.plant.network_mut();
    let outside = network.add_boundary(Boundary {
        pressure: ATMOSPHERE,
        temperature: 293.15,
        moles: [0.0, 1.0, 0.0],
    });
    let pump = Law::Pump {
        displacement: 2.36e-3,
        ultimate: 0.2,
    };
    network.add_element(End::Node(inlet), End::Boundary(outside), pump);
    let mut speeds = [f64::NAN; 4];
    let (mut reached, mut ticks) = (0, 0_u32);
    while reached < MARKS.len() && ticks < 20_000 {
        let before = bare.plant.network().node(tank).pressure;
        bare.run(TICK);
        ticks += 1;
        let after = bare.plant.network().node(tank).pressure;
        if after / MICRON < MARKS[reached].1 {
            speeds[reached] = LITRES * libm::log(before / after) / TICK;
            reached += 1;
        }
    }
    (speeds, f64::from(ticks) * TICK)
}

/// The pump's tee, at the far end of a hose.
fn behind(bare: &mut Bare, tank: NodeId, hose: Restriction) -> NodeId {
    let tee = bare.add_vessel(NodeSpec {
        volume: 3e-5,
        wall: 40.0,
        to_ambient: 0.5,
        fill: Fill::Evacuated,
    });
    bare.join(tank, tee, hose);
    tee
}
