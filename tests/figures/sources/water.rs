//! Vapour pressure of water and of ice.

use super::data::rows;
use super::{Class, Figure, Source};
use coldbench::fluid::water;
use coldbench::units::{Pressure, Temperature};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "water",
    origin: "Vapour pressure: of liquid water by IAPWS-IF97, of ice by IAPWS 2011.",
    class: Class::Derived,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// Share by which a figure may be off: the published ones are rounded to 0.05 %.
const TOLERANCE: f64 = 0.002;

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/water.csv");
    rows(table)
        .map(|row| {
            let celsius = row.number("celsius");
            let t = Temperature::from_celsius(celsius).kelvin();
            let ours = Pressure::from_pascals(water::vapour_pressure(t)).microns();
            let published = row.number("micron");
            let what = format!("{} at {celsius} °C", row.text("phase"));
            Figure::near(what, "micron", published, TOLERANCE * published, ours)
        })
        .collect()
}
