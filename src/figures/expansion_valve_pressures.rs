//! Gauge pressures of a unit with an expansion valve by the weather.

use super::data::rows;
use super::rated::Rated;
use super::{Figure, Source};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "expansion_valve_pressures",
    origin: "R-410A, 3 tons, expansion valve: usual gauge pressures by outdoor temperature, \
        published service data.",
    why_not: "",
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let table = include_str!("../../tests/published/data/expansion_valve_pressures.csv");
    let unit = Rated::valve();
    let mut figures = Vec::new();
    for row in rows(table) {
        let outdoor = row.number("outdoor_f");
        let stands = unit.at_outdoor(outdoor);
        let sides = [
            ("liquid", "liquid_psig", 12.0, stands.liquid_psig),
            ("suction", "suction_psig", 10.0, stands.suction_psig),
        ];
        for (side, column, tolerance, ours) in sides {
            let what = format!("{side} at {outdoor} °F outdoors");
            let published = row.number(column);
            figures.push(Figure::near(what, "psig", published, tolerance, ours));
        }
    }
    figures
}
