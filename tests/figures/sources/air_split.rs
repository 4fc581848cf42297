//! How far the indoor coil cools the air, by the room's wet bulb.

use super::data::rows;
use super::rated::of_both;
use super::{Class, Figure, Source};
use coldbench::job::Overrides;
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "air_split",
    origin: "Sensible capacity of one maker's table at 95 °F outdoors, 80 °F dry bulb indoors and \
        400 cfm a ton, quoted on a trade page; the drop of the air is that over 1.08 cfm. \
        Tolerance 1 °F.",
    class: Class::Published,
    why_not: "At 57 °F wet bulb the coil of this unit is dry and cools the air by 1.6 \
        °F more than the table.",
    missed: &[("R-410A valve: drop of the air at 57 °F wet bulb", 0.528)],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    of_both(|name, unit| {
        rows(include_str!("../data/air_split.csv"))
            .map(|row| {
                let wet_bulb = row.number("wet_bulb_f");
                let stands = unit.settle(&Overrides {
                    indoor_wet_bulb: Some(Temperature::from_fahrenheit(wet_bulb)),
                    ..Overrides::default()
                });
                let what = format!("{name}: drop of the air at {wet_bulb} °F wet bulb");
                let ours = stands.evaporator_air_drop_f;
                Figure::near(what, "°F", row.number("drop_f"), 1.0, ours)
            })
            .collect()
    })
}
