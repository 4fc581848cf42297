//! Leak rates in grams a year, standard cubic centimetres a second, and Pa m³/s.

use super::data::rows;
use super::{Class, Figure, Source};
use coldbench::fluid::gas::R_UNIVERSAL;
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::units::{ATMOSPHERE, MassFlow};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "leak_units",
    origin: "A leak of 1 std cm³/s (0 °C, 101325 Pa) in grams a year, and 5 grams a year in \
        Pa m³/s at 20 °C, from the molar mass.",
    class: Class::Derived,
    why_not: "",
    missed: &[],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/leak_units.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let name = row.text("gas");
        let molar_mass = Refrigerant::named(name).map_or(f64::NAN, Refrigerant::molar_mass);
        let standard = ATMOSPHERE * 1e-6 / (R_UNIVERSAL * 273.15);
        let yearly = MassFlow::from_kilograms_per_second(standard * molar_mass);
        let five = MassFlow::from_grams_per_year(5.0).kilograms_per_second();
        let throughput = five / molar_mass * R_UNIVERSAL * 293.15;
        let published = row.number("grams_per_year_per_sccs");
        figures.push(Figure::near(
            format!("{name}, 1 std cm³/s"),
            "g/yr",
            published,
            1e-3 * published,
            yearly.grams_per_year(),
        ));
        let published = row.number("pa_m3_s_for_5_g_per_year");
        figures.push(Figure::near(
            format!("{name}, 5 g/yr"),
            "1e-6 Pa m³/s",
            1e6 * published,
            5e-3 * 1e6 * published,
            1e6 * throughput,
        ));
    }
    figures
}
