//! How capacity and power change with the weather.

use super::data::rows;
use super::rated::Rated;
use super::{Figure, Source};
use crate::job::Settled;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "outdoor_response",
    origin: "Residential split units, indoors 80/67 °F, relative to 95 °F outdoors: Cutler et \
        al., NREL/TP-5500-56354.",
    rows: figures,
};

/// Chosen: at every temperature the tolerance that test B against test A is held to.
const CAPACITY: f64 = 0.02;
const POWER: f64 = 0.03;

fn figures() -> Vec<Figure> {
    let units = [
        ("R-22 orifice", Rated::orifice()),
        ("R-410A valve", Rated::valve()),
    ];
    units
        .iter()
        .flat_map(|(name, unit)| of_unit(name, unit))
        .collect()
}

fn of_unit(name: &str, unit: &Rated) -> Vec<Figure> {
    let per_capacity = |s: &Settled| s.power_w / s.capacity_btu_h;
    let rated = unit.at_rating();
    let mut figures = Vec::new();
    for row in rows(include_str!(
        "../../tests/published/data/outdoor_response.csv"
    )) {
        let outdoor = row.number("outdoor_db_f");
        let stands = unit.at_outdoor(outdoor);
        figures.push(Figure::near(
            format!("{name} at {outdoor} °F: capacity"),
            "ratio",
            row.number("capacity"),
            CAPACITY,
            stands.capacity_btu_h / rated.capacity_btu_h,
        ));
        figures.push(Figure::near(
            format!("{name} at {outdoor} °F: power per capacity"),
            "ratio",
            row.number("power_per_capacity"),
            POWER,
            per_capacity(&stands) / per_capacity(&rated),
        ));
    }
    figures
}
