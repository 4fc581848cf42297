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
    why_not: "The R-22 unit has a piston machine, whose power rises less with the head \
        than the curve asks: so do map G and the 41 machines of compressor_bands. The R-410A \
        unit's scroll keeps 1 % under it at 115 °F.",
    missed: &[
        ("R-22 orifice at 75 °F: power per capacity", 0.0621),
        ("R-22 orifice at 82 °F: power per capacity", 0.0434),
        ("R-22 orifice at 105 °F: power per capacity", 0.0561),
        ("R-22 orifice at 115 °F: power per capacity", 0.153),
        ("R-410A valve at 115 °F: power per capacity", 0.0115),
    ],
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
