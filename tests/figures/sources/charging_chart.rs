//! The charging chart that the program shows and marks by.

use super::data::rows;
use super::{Asked, Class, Figure, Source};
use coldbench::job::charging_chart::target_superheat;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "charging_chart",
    origin: "Widely published field charging chart for fixed orifices; Title 24, table RA3.2-2 \
        rounds to the same. The figure is that of the worst cell of a row.",
    class: Class::SelfCheck,
    why_not: "",
    missed: &[],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/target_superheat.csv");
    rows(table)
        .map(|row| {
            let outdoor = row.number("outdoor_db");
            let off = row.rest().map(|(column, published)| {
                let wet_bulb = column.parse().unwrap_or(f64::NAN);
                let ours = target_superheat(
                    Temperature::from_fahrenheit(outdoor),
                    Temperature::from_fahrenheit(wet_bulb),
                );
                ours.map_or(f64::INFINITY, |ours| (ours.fahrenheit() - published).abs())
            });
            let what = format!("chart at {outdoor} °F outdoors");
            let worst = off.fold(0.0, f64::max);
            Figure::asked(what, "°F", Asked::AtMost(0.5), worst)
        })
        .collect()
}
