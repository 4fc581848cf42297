//! How capacity and power change with the weather.

use super::data::rows;
use super::rated::{of_both, response};
use super::{Class, Figure, Source};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "outdoor_response",
    origin: "Residential split units, indoors 80/67 °F, relative to 95 °F outdoors: Cutler et \
        al., NREL/TP-5500-56354.",
    class: Class::Curve,
    why_not: "A fixed orifice starves its coil on a mild day.",
    missed: &[("R-22 orifice at 75 °F: capacity", 0.0099)],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    of_both(|name, unit| {
        let rated = unit.at_rating();
        rows(include_str!("../data/outdoor_response.csv"))
            .flat_map(|row| {
                let outdoor = row.number("outdoor_db_f");
                let what = format!("{name} at {outdoor} °F");
                response(&what, &row, &rated, &unit.at_outdoor(outdoor))
            })
            .collect()
    })
}
