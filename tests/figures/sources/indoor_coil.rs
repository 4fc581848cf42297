//! What the indoor coil does to the air: how much of it is drying, and how far it cools.

use super::rated::{Rated, of_both};
use super::{Asked, Class, Figure, Source};
use coldbench::job::Overrides;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "indoor_coil",
    origin: "At 80/67 °F a share of 0.70 to 0.80 of the coil's work is sensible, and the air \
        leaves it 16 to 22 °F colder; drier air leaves it colder still (common practice, no \
        source). At 80/57 °F the coil stays dry: AHRI 210/240, tests C and D, ask for a wet bulb \
        of 57 °F or less to that end.",
    class: Class::CommonPractice,
    why_not: "",
    missed: &[],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    of_both(|name, unit| of_unit(name, unit).to_vec())
}

fn of_unit(name: &str, unit: &Rated) -> [Figure; 5] {
    let at = |wet_bulb| {
        unit.settle(&Overrides {
            indoor_wet_bulb: Some(Temperature::from_fahrenheit(wet_bulb)),
            ..Overrides::default()
        })
    };
    let [dry, rated, damp] = [57.0, 67.0, 72.0].map(at);
    let split = |wider: f64, narrower: f64| wider - narrower;
    [
        Figure::within(
            format!("{name}, 80/67 °F: sensible share"),
            "ratio",
            (0.70, 0.80),
            rated.sensible_share,
        ),
        Figure::within(
            format!("{name}, 80/67 °F: drop of the air"),
            "°F",
            (16.0, 22.0),
            rated.evaporator_air_drop_f,
        ),
        Figure::asked(
            format!("{name}, 80/57 °F: sensible share"),
            "ratio",
            Asked::AtLeast(0.999),
            dry.sensible_share,
        )
        .of_class(Class::Derived),
        Figure::asked(
            format!("{name}, 80/57 °F: drop of the air, more by"),
            "°F",
            Asked::AtLeast(1.0),
            split(dry.evaporator_air_drop_f, rated.evaporator_air_drop_f),
        ),
        Figure::asked(
            format!("{name}, 80/72 °F: drop of the air, less by"),
            "°F",
            Asked::AtLeast(1.0),
            split(rated.evaporator_air_drop_f, damp.evaporator_air_drop_f),
        ),
    ]
}
