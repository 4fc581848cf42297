//! Gauge pressures of a unit with an expansion valve by the weather.

use super::data::rows;
use super::rated::Rated;
use super::{Class, Figure, Source};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "expansion_valve_pressures",
    origin: "R-410A, 3 tons, expansion valve: usual gauge pressures by outdoor temperature, \
        published service data, 10 psi \
        either way for the liquid and 5 for the suction.",
    class: Class::Published,
    why_not: "The coil of this unit boils 2 to 3 °F colder than that of the service \
        data. Within 12 psi for the liquid and 10 for the suction all are met.",
    missed: &[
        ("suction at 75 °F outdoors", 1.78),
        ("suction at 85 °F outdoors", 2.88),
        ("suction at 95 °F outdoors", 1.87),
        ("suction at 105 °F outdoors", 1.74),
        ("liquid at 115 °F outdoors", 0.248),
        ("suction at 115 °F outdoors", 0.476),
    ],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/expansion_valve_pressures.csv");
    let unit = Rated::valve();
    let mut figures = Vec::new();
    for row in rows(table) {
        let outdoor = row.number("outdoor_f");
        let stands = unit.at_outdoor(outdoor);
        let sides = [
            ("liquid", "liquid_psig", 10.0, stands.liquid_psig),
            ("suction", "suction_psig", 5.0, stands.suction_psig),
        ];
        for (side, column, tolerance, ours) in sides {
            let what = format!("{side} at {outdoor} °F outdoors");
            let published = row.number(column);
            figures.push(Figure::near(what, "psig", published, tolerance, ours));
        }
    }
    figures
}
