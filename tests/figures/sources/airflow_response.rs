//! How capacity and power change with the air over the indoor coil.

use super::data::rows;
use super::rated::{Rated, of_both, response};
use super::{Class, Figure, Source};
use coldbench::job::Settled;
use coldbench::plant::Fault;
use coldbench::units::{Fraction, MassFlow};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "airflow_response",
    origin: "Share of the indoor air against capacity and power per capacity, wet coil: \
        NREL/TP-5500-56354.",
    class: Class::Curve,
    why_not: "The piston machine of the R-22 unit pumps less as its suction falls with \
        the air.",
    missed: &[("R-22 orifice, 0.6 of its air: capacity", 0.0053)],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    of_both(|name, unit| {
        let rated = unit.at_rating();
        rows(include_str!("../data/airflow_response.csv"))
            .flat_map(|row| {
                let share = row.number("airflow_fraction");
                let what = format!("{name}, {share} of its air");
                response(&what, &row, &rated, &with_air(unit, share))
            })
            .collect()
    })
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
