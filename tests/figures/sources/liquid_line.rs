//! The charging chart by subcooling: what pressure a subcooled liquid line has.

use super::data::rows;
use super::{Class, Figure, Source};
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "liquid_line",
    origin: "R-22 liquid pressure that gives a subcooling at a liquid temperature: published \
        charging chart, in whole psi.",
    class: Class::Published,
    why_not: "",
    missed: &[],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let fluid = Refrigerant::named("R-22").expect("its table is in the program");
    let pressure = |fahrenheit| {
        let (bubble, _) = fluid.pressure(Temperature::from_fahrenheit(fahrenheit));
        bubble.psig()
    };
    // Tolerance: the chart's own rounding and the half psi within which its makers' property
    // tables agree with each other.
    let table = include_str!("../data/liquid_line.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let liquid = row.number("liquid_f");
        for (column, published) in row.rest() {
            let subcooling: f64 = column
                .trim_start_matches("subcooling_")
                .parse()
                .unwrap_or(f64::NAN);
            let what = format!("liquid at {liquid} °F with {subcooling} °F of subcooling");
            let ours = pressure(liquid + subcooling);
            figures.push(Figure::near(what, "psig", published, 1.0, ours));
        }
    }
    figures
}
