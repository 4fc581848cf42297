//! Whether a fixed orifice, at one fixed charge, follows the charging chart.

use super::data::rows;
use super::rated::Rated;
use super::{Asked, Class, Figure, Source};
use coldbench::job::Overrides;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "target_superheat",
    origin: "Widely published field charging chart for fixed orifices, by outdoor dry bulb and \
        indoor wet bulb at 80 °F; the installer's tolerance of California Title 24, RA3.2.",
    class: Class::Published,
    why_not: "At 80 °F dry bulb the coil is dry below some 57 °F wet bulb (AHRI \
        210/240 wants no more in its dry tests C and D), so no superheat follows the wet bulb \
        there. The chart names no dry bulb; at 70 °F the row of 55 °F comes within 6 °F, and \
        wetter cells get worse. At 76 °F wet bulb the chart asks on mild days for gas of 80 °F, \
        the room's own, at the temperature at which this coil boils.",
    missed: &[
        ("55 °F outdoors, 50 °F wet bulb", 9.11),
        ("55 °F outdoors, 52 °F wet bulb", 6.11),
        ("55 °F outdoors, 54 °F wet bulb", 4.11),
        ("55 °F outdoors, 56 °F wet bulb", 1.11),
        ("55 °F outdoors, 74 °F wet bulb", 0.0056),
        ("55 °F outdoors, 76 °F wet bulb", 1.73),
        ("65 °F outdoors, 52 °F wet bulb", 2.92),
        ("65 °F outdoors, 74 °F wet bulb", 0.421),
        ("65 °F outdoors, 76 °F wet bulb", 2.9),
        ("75 °F outdoors, 60 °F wet bulb", 0.634),
        ("75 °F outdoors, 74 °F wet bulb", 0.214),
        ("75 °F outdoors, 76 °F wet bulb", 2.43),
        ("85 °F outdoors, 76 °F wet bulb", 1.49),
        ("95 °F outdoors, 76 °F wet bulb", 0.227),
        ("115 °F outdoors, 76 °F wet bulb", 0.165),
        ("root mean square of all 63 cells", 1.19),
    ],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let unit = Rated::orifice();
    let table = include_str!("../data/target_superheat.csv");
    let mut figures = Vec::new();
    let mut squares = 0.0;
    let mut ours = Vec::new();
    for row in rows(table) {
        let outdoor = row.number("outdoor_db");
        for (column, target) in row.rest() {
            let wet_bulb = column.parse().unwrap_or(f64::NAN);
            let superheat = superheat(&unit, outdoor, wet_bulb);
            ours.push(Cell {
                outdoor,
                wet_bulb,
                superheat,
            });
            squares += (superheat - target) * (superheat - target);
            let what = format!("{outdoor} °F outdoors, {wet_bulb} °F wet bulb");
            figures.push(Figure::near(what, "°F", target, 5.0, superheat));
        }
    }
    let rms = (squares / figures.len() as f64).sqrt();
    let what = "root mean square of all 63 cells";
    // Chosen: of an installer's 5 °F, what a scatter leaves.
    let rms = Figure::asked(what, "°F", Asked::AtMost(3.0), rms);
    figures.push(rms.of_class(Class::Derived));
    figures.extend(monotony(&ours));
    figures
}

/// A cell of the chart as the unit gives it, °F.
struct Cell {
    outdoor: f64,
    wet_bulb: f64,
    superheat: f64,
}

fn superheat(unit: &Rated, outdoor: f64, wet_bulb: f64) -> f64 {
    let stands = unit.settle(&Overrides {
        outdoor: Some(Temperature::from_fahrenheit(outdoor)),
        indoor_wet_bulb: Some(Temperature::from_fahrenheit(wet_bulb)),
        ..Overrides::default()
    });
    stands.superheat_f
}

/// In all of the chart superheat rises with the wet bulb and falls as it gets hotter outdoors:
/// the largest step the other way, up to what a settled run may still move.
fn monotony(cells: &[Cell]) -> [Figure; 2] {
    let largest = |steps: &dyn Fn(&Cell, &Cell) -> Option<f64>| {
        let pairs = cells.iter().flat_map(|a| cells.iter().map(move |b| (a, b)));
        pairs
            .filter_map(|(a, b)| steps(a, b))
            .fold(f64::NEG_INFINITY, f64::max)
    };
    let damper = largest(&|a, b| {
        let is_next = a.outdoor == b.outdoor && b.wet_bulb > a.wet_bulb;
        is_next.then_some(a.superheat - b.superheat)
    });
    let hotter = largest(&|a, b| {
        let is_next = a.wet_bulb == b.wet_bulb && b.outdoor > a.outdoor;
        is_next.then_some(b.superheat - a.superheat)
    });
    [
        ("most that superheat falls with a higher wet bulb", damper),
        ("most that superheat rises with hotter weather", hotter),
    ]
    .map(|(what, step)| {
        Figure::asked(what, "°F", Asked::AtMost(0.1), step).of_class(Class::Derived)
    })
}
