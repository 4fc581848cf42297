//! What the instruments show at the rating point.

use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::job::Settled;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "design_point",
    origin: "A 3-ton split unit at AHRI 210/240 test A, 95 °F outdoors and 80/67 °F indoors: \
        usual figures, common practice, no source.",
    class: Class::CommonPractice,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// A figure with its usual range and how it is read off.
type Usual = (&'static str, &'static str, (f64, f64), fn(&Settled) -> f64);

const ORIFICE: [Usual; 6] = [
    ("suction", "psig", (68.0, 76.0), |s| s.suction_psig),
    ("liquid", "psig", (240.0, 280.0), |s| s.liquid_psig),
    ("superheat", "°F", (10.0, 15.0), |s| s.superheat_f),
    ("subcooling", "°F", (8.0, 12.0), |s| s.subcooling_f),
    ("capacity", "kBtu/h", (35.0, 37.0), |s| {
        s.capacity_btu_h / 1e3
    }),
    ("power", "kW", (3.4, 3.9), |s| s.power_w / 1e3),
];

const VALVE: [Usual; 5] = [
    ("suction", "psig", (125.0, 145.0), |s| s.suction_psig),
    ("liquid", "psig", (350.0, 400.0), |s| s.liquid_psig),
    ("superheat", "°F", (8.0, 16.0), |s| s.superheat_f),
    ("subcooling", "°F", (6.0, 12.0), |s| s.subcooling_f),
    ("capacity", "kBtu/h", (35.0, 37.0), |s| {
        s.capacity_btu_h / 1e3
    }),
];

fn figures() -> Vec<Figure> {
    let orifice = of_unit("R-22 orifice", &Rated::orifice(), &ORIFICE);
    let valve = of_unit("R-410A valve", &Rated::valve(), &VALVE);
    orifice.into_iter().chain(valve).collect()
}

fn of_unit(name: &str, unit: &Rated, usual: &[Usual]) -> Vec<Figure> {
    let stands = unit.at_rating();
    let figure = |&(what, unit, range, read): &Usual| {
        Figure::within(format!("{name}: {what}"), unit, range, read(&stands))
    };
    usual.iter().map(figure).collect()
}
