//! Whether a fixed orifice, at one fixed charge, follows the charging chart.

use super::data::rows;
use super::rated::Rated;
use super::{Asked, Figure, Source};
use crate::job::Overrides;
use crate::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "target_superheat",
    origin: "Widely published field charging chart for fixed orifices, by outdoor dry bulb and \
        indoor wet bulb at 80 °F; the installer's tolerance of California Title 24, RA3.2.",
    rows: figures,
};

/// The cells that a unit is charged by, °F of superheat.
const CELLS: std::ops::RangeInclusive<f64> = 5.0..=25.0;

fn figures() -> Vec<Figure> {
    let unit = Rated::orifice();
    let table = include_str!("../../tests/published/data/target_superheat.csv");
    let mut figures = Vec::new();
    let mut squares = 0.0;
    for row in rows(table) {
        let outdoor = row.number("outdoor_db");
        let cells = row.rest().filter(|(_, target)| CELLS.contains(target));
        for (column, target) in cells {
            let wet_bulb = column.parse().unwrap_or(f64::NAN);
            let stands = unit.settle(&Overrides {
                outdoor: Some(Temperature::from_fahrenheit(outdoor)),
                indoor_wet_bulb: Some(Temperature::from_fahrenheit(wet_bulb)),
                ..Overrides::default()
            });
            let off = stands.superheat_f - target;
            squares += off * off;
            let what = format!("{outdoor} °F outdoors, {wet_bulb} °F wet bulb");
            figures.push(Figure::near(what, "°F", target, 5.0, stands.superheat_f));
        }
    }
    let rms = (squares / figures.len() as f64).sqrt();
    let what = "root mean square of all cells";
    figures.push(Figure::asked(what, "°F", Asked::AtMost(3.0), rms));
    figures
}
