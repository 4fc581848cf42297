//! Vapour pressure of water and of ice.

use super::data::rows;
use super::{Figure, Source};
use crate::fluid::water;
use crate::units::{Pressure, Temperature};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "water",
    origin: "Vapour pressure: of liquid water by IAPWS-IF97, of ice by IAPWS 2011.",
    why_not: "",
    rows: figures,
};

/// Share by which a figure may be off: the published ones are rounded to 0.05 %.
const TOLERANCE: f64 = 0.002;

fn figures() -> Vec<Figure> {
    let table = include_str!("../../tests/published/data/water.csv");
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
