//! Gauge pressures of R-410A units by the weather and their size.

use super::data::rows;
use super::rated::Rated;
use super::{Class, Figure, Source};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "outdoor_pressures_410a",
    origin: "R-410A units of 14 SEER, indoors 80/67 °F: suction and liquid pressure by outdoor dry \
        bulb, service manual of one maker (LRP14AC series), p. 23, table 10. Tolerance 6 psi of \
        suction, 15 of liquid.",
    class: Class::Published,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// The units by their nominal size, kBtu/h.
const UNITS: [(f64, &str); 2] = [(24.0, "r410a_2ton_orifice"), (36.0, "r410a_3ton_txv")];

fn figures() -> Vec<Figure> {
    let mut figures = Vec::new();
    for (size, name) in UNITS {
        let unit = Rated::shipped(name);
        let table = include_str!("../data/outdoor_pressures_410a.csv");
        for row in rows(table).filter(|row| row.number("size_kbtuh") == size) {
            let outdoor = row.number("outdoor_f");
            let stands = unit.at_outdoor(outdoor);
            for (side, tolerance, ours) in [
                ("suction", 6.0, stands.suction_psig),
                ("liquid", 15.0, stands.liquid_psig),
            ] {
                let published = row.number(&format!("{side}_psig"));
                let what = format!("{name}: {side} at {outdoor} °F outdoors");
                figures.push(Figure::near(what, "psig", published, tolerance, ours));
            }
        }
    }
    figures
}
