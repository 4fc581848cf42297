//! The bubble pressure of R-454B as charts print it.

use super::data::rows;
use super::{Class, Figure, Source};
use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::units::{ATMOSPHERE, PSI, Temperature};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "r454b_chart",
    origin: "Pressure-temperature chart of R-454B that names the maker as its source (trade page): \
        bubble pressure within 0.5 psi or 0.2 %; the ends of another chart; normal boiling point, \
        trade chart page.",
    class: Class::Published,
    why_not: "The mixture with the pair of Akasaka 2013 lies up to 0.5 % below the \
        chart from 135 °F on; beyond its end the table goes on evenly.",
    missed: &[
        ("bubble pressure at 135 °F", 0.0554),
        ("bubble pressure at 145 °F", 3.45),
        ("bubble pressure at 150 °F", 8.13),
        ("another chart: bubble at 150 °F", 5.69),
        ("normal boiling point", 0.102),
    ],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let fluid = Refrigerant::named("R-454B").expect("its table is in the program");
    let kelvin = |fahrenheit| Temperature::from_fahrenheit(fahrenheit).kelvin();
    let psig = |pascals: f64| (pascals - ATMOSPHERE) / PSI;
    let mut figures: Vec<Figure> = rows(include_str!("../data/r454b_chart.csv"))
        .map(|row| {
            let (fahrenheit, published) = (row.number("fahrenheit"), row.number("bubble_psig"));
            let ours = psig(fluid.bubble_pressure(kelvin(fahrenheit)));
            let what = format!("bubble pressure at {fahrenheit} °F");
            let tolerance = 0.5_f64.max(0.002 * published);
            Figure::near(what, "psig", published, tolerance, ours)
        })
        .collect();
    let dew = psig(fluid.dew_pressure(kelvin(-40.0)));
    let bubble = psig(fluid.bubble_pressure(kelvin(150.0)));
    let boils = Temperature::from_kelvin(fluid.bubble_temperature(ATMOSPHERE)).celsius();
    figures.extend([
        Figure::near("another chart: dew at -40 °F", "psig", 8.8, 0.5, dew),
        Figure::near(
            "another chart: bubble at 150 °F",
            "psig",
            581.4,
            5.0,
            bubble,
        ),
        Figure::near("normal boiling point", "°C", -50.9, 0.3, boils),
    ]);
    figures
}
