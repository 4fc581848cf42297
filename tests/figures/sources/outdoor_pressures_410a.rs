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
    why_not: "The 2-ton unit has a fixed orifice, which starves its coil as it gets \
        mild outdoors, and a long line set. The 3-ton unit condenses lower than this packaged \
        one: 110 °F at 95 °F outdoors, as the split unit of expansion_valve_pressures does, \
        where the manual has 116 °F.",
    missed: &[
        ("r410a_2ton_orifice: suction at 65 °F outdoors", 6.89),
        ("r410a_2ton_orifice: suction at 70 °F outdoors", 5.07),
        ("r410a_2ton_orifice: suction at 75 °F outdoors", 3.38),
        ("r410a_2ton_orifice: suction at 80 °F outdoors", 2.81),
        ("r410a_2ton_orifice: suction at 82 °F outdoors", 1.8),
        ("r410a_2ton_orifice: suction at 85 °F outdoors", 2.33),
        ("r410a_2ton_orifice: suction at 90 °F outdoors", 1.93),
        ("r410a_2ton_orifice: suction at 95 °F outdoors", 2.6),
        ("r410a_2ton_orifice: suction at 100 °F outdoors", 2.32),
        ("r410a_2ton_orifice: suction at 105 °F outdoors", 2.08),
        ("r410a_2ton_orifice: suction at 110 °F outdoors", 1.87),
        ("r410a_2ton_orifice: suction at 115 °F outdoors", 1.68),
        ("r410a_2ton_orifice: liquid at 115 °F outdoors", 0.635),
        ("r410a_3ton_txv: suction at 65 °F outdoors", 0.57),
        ("r410a_3ton_txv: suction at 70 °F outdoors", 1.19),
        ("r410a_3ton_txv: suction at 75 °F outdoors", 2.78),
        ("r410a_3ton_txv: liquid at 75 °F outdoors", 4.12),
        ("r410a_3ton_txv: suction at 80 °F outdoors", 3.34),
        ("r410a_3ton_txv: liquid at 80 °F outdoors", 8.77),
        ("r410a_3ton_txv: suction at 82 °F outdoors", 3.76),
        ("r410a_3ton_txv: liquid at 82 °F outdoors", 10.4),
        ("r410a_3ton_txv: suction at 85 °F outdoors", 3.88),
        ("r410a_3ton_txv: liquid at 85 °F outdoors", 12.5),
        ("r410a_3ton_txv: suction at 90 °F outdoors", 5.39),
        ("r410a_3ton_txv: liquid at 90 °F outdoors", 14.3),
        ("r410a_3ton_txv: suction at 95 °F outdoors", 5.87),
        ("r410a_3ton_txv: liquid at 95 °F outdoors", 15.3),
        ("r410a_3ton_txv: suction at 100 °F outdoors", 6.32),
        ("r410a_3ton_txv: liquid at 100 °F outdoors", 15.3),
        ("r410a_3ton_txv: suction at 105 °F outdoors", 5.74),
        ("r410a_3ton_txv: liquid at 105 °F outdoors", 13.5),
        ("r410a_3ton_txv: suction at 110 °F outdoors", 6.13),
        ("r410a_3ton_txv: liquid at 110 °F outdoors", 11.8),
        ("r410a_3ton_txv: suction at 115 °F outdoors", 5.48),
        ("r410a_3ton_txv: liquid at 115 °F outdoors", 8.25),
    ],
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
