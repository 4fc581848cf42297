//! How capacity and power change with the air over the indoor coil.

use super::data::rows;
use super::rated::Rated;
use super::{Figure, Source};
use crate::job::Settled;
use crate::plant::Fault;
use crate::units::{Fraction, MassFlow};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "airflow_response",
    origin: "Share of the indoor air against capacity and power per capacity, wet coil: \
        NREL/TP-5500-56354.",
    rows: figures,
};

/// Chosen: what the response to the outdoor temperature is held to.
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
        "../../tests/published/data/airflow_response.csv"
    )) {
        let share = row.number("airflow_fraction");
        let stands = with_air(unit, share);
        figures.push(Figure::near(
            format!("{name}, {share} of its air: capacity"),
            "ratio",
            row.number("capacity"),
            CAPACITY,
            stands.capacity_btu_h / rated.capacity_btu_h,
        ));
        figures.push(Figure::near(
            format!("{name}, {share} of its air: power per capacity"),
            "ratio",
            row.number("power_per_capacity"),
            POWER,
            per_capacity(&stands) / per_capacity(&rated),
        ));
    }
    figures
}

/// Less air is a dirty filter; more is a blower set higher.
fn with_air(unit: &Rated, share: f64) -> Settled {
    if share <= 1.0 {
        return unit.with_fault(Fault::DirtyFilter(Fraction::clamped(1.0 - share)));
    }
    let higher = unit.clone().with(|unit| {
        let air = share * unit.evaporator.air.kilograms_per_second();
        unit.evaporator.air = MassFlow::from_kilograms_per_second(air);
    });
    higher.at_rating()
}
