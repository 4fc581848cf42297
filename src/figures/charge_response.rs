//! What a unit with an expansion valve loses with its charge.

use super::data::rows;
use super::rated::Rated;
use super::{Figure, Source};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "charge_response",
    origin: "R-410A with an expansion valve, 95 °F outdoors: power by NIST Technical Note 1848; \
        capacity by the middle of that fit and two of NREL/Purdue, its tolerance their spread.",
    rows: figures,
};

/// Change of the charge, %, with the middle of the three fits' capacities and their spread.
const CAPACITY: [(f64, f64, f64); 3] = [
    (-30.0, 0.79, 0.025),
    (-20.0, 0.88, 0.02),
    (-10.0, 0.95, 0.015),
];

fn figures() -> Vec<Figure> {
    let unit = Rated::valve();
    let rated = unit.at_rating();
    let mut figures = Vec::new();
    for row in rows(include_str!(
        "../../tests/published/data/charge_response.csv"
    )) {
        let change = row.number("charge_change_percent");
        let stands = unit.at_charge(1.0 + change / 100.0);
        let capacity = stands.capacity_btu_h / rated.capacity_btu_h;
        let fits = CAPACITY.iter().find(|fit| fit.0 == change);
        let (middle, spread) = fits.map_or((f64::NAN, 0.0), |fit| (fit.1, fit.2));
        let what = format!("{change} % of charge: capacity");
        figures.push(Figure::near(what, "ratio", middle, spread, capacity));
        let power = stands.power_w / rated.power_w;
        let what = format!("{change} % of charge: power");
        figures.push(Figure::near(
            what,
            "ratio",
            row.number("power"),
            0.03,
            power,
        ));
    }
    figures
}
