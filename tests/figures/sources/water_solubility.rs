//! Water that dissolves in liquid refrigerant.

use super::data::rows;
use super::{Class, Figure, Source};
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "water_solubility",
    origin: "ASHRAE Handbook - Refrigeration, control of moisture, table of solubility. The \
        program interpolates this table, so this holds it to its copy.",
    class: Class::SelfCheck,
    why_not: "",
    missed: &[],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/water_solubility.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let fahrenheit = row.number("fahrenheit");
        let t = Temperature::from_fahrenheit(fahrenheit).kelvin();
        for (name, column) in [("R-22", "r22"), ("R-134a", "r134a")] {
            let published = row.number(column);
            let what = format!("{name} at {fahrenheit} °F");
            let ours = Refrigerant::named(name).expect(name).dissolves_water(t);
            figures.push(Figure::near(what, "ppm", published, 0.5, ours));
        }
    }
    figures
}
