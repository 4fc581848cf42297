//! What a unit with an expansion valve loses with its charge.

use super::data::rows;
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::job::Overrides;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "charge_response",
    origin: "R-410A with an expansion valve, 95 °F outdoors: power by NIST Technical Note 1848; \
        capacity by the middle of that fit and two of NREL/Purdue, its tolerance their spread. \
        Other weather and rooms are held to the same, chosen.",
    class: Class::Curve,
    why_not: "The fits are of a room of 80/67 °F. With less load the valve's reserve \
        lasts longer, with more of it less long.",
    missed: &[
        ("95 °F outdoors, 75/63 °F, -20 % of charge: capacity", 0.01),
        (
            "95 °F outdoors, 75/63 °F, -10 % of charge: capacity",
            0.0014,
        ),
        (
            "95 °F outdoors, 80/72 °F, -30 % of charge: capacity",
            0.0209,
        ),
    ],
    rows: figures,
};

/// Change of the charge, %, with the middle of the three fits' capacities and their spread.
const CAPACITY: [(f64, f64, f64); 3] = [
    (-30.0, 0.79, 0.025),
    (-20.0, 0.88, 0.02),
    (-10.0, 0.95, 0.015),
];

/// Outdoors, room and its wet bulb, °F: the fits' own first.
const WEATHER: [(f64, f64, f64); 7] = [
    (95.0, 80.0, 67.0),
    (75.0, 80.0, 67.0),
    (88.0, 80.0, 67.0),
    (100.0, 80.0, 67.0),
    (110.0, 80.0, 67.0),
    (95.0, 75.0, 63.0),
    (95.0, 80.0, 72.0),
];

fn figures() -> Vec<Figure> {
    let unit = Rated::valve();
    let in_weather = |weather| in_weather(&unit, weather);
    WEATHER.into_iter().flat_map(in_weather).collect()
}

fn in_weather(unit: &Rated, (outdoor, indoor, wet_bulb): (f64, f64, f64)) -> Vec<Figure> {
    let at = |share| {
        let fahrenheit = |f| Some(Temperature::from_fahrenheit(f));
        unit.settle(&Overrides {
            outdoor: fahrenheit(outdoor),
            indoor: fahrenheit(indoor),
            indoor_wet_bulb: fahrenheit(wet_bulb),
            charge: Some(share),
            ..Overrides::default()
        })
    };
    let rated = at(1.0);
    let is_of_the_fits = (outdoor, indoor, wet_bulb) == WEATHER[0];
    let place = format!("{outdoor} °F outdoors, {indoor}/{wet_bulb} °F");
    let mut figures = Vec::new();
    for row in rows(include_str!("../data/charge_response.csv")) {
        let change = row.number("charge_change_percent");
        let stands = at(1.0 + change / 100.0);
        let fits = CAPACITY.iter().find(|fit| fit.0 == change);
        let (middle, spread) = fits.map_or((f64::NAN, 0.0), |fit| (fit.1, fit.2));
        let mut ask = |what, published, tolerance, ours| {
            let what = format!("{place}, {change} % of charge: {what}");
            let figure = Figure::near(what, "ratio", published, tolerance, ours);
            figures.push(if is_of_the_fits {
                figure
            } else {
                figure.of_class(Class::SelfCheck)
            });
        };
        let capacity = stands.capacity_btu_h / rated.capacity_btu_h;
        ask("capacity", middle, spread, capacity);
        let power = stands.power_w / rated.power_w;
        ask("power", row.number("power"), 0.03, power);
    }
    figures
}
