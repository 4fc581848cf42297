//! A coil that freezes up: with little air, with little refrigerant; and how it thaws.

use super::bare::Bare;
use super::rated::Rated;
use super::{Asked, Class, Figure, Source};
use coldbench::plant::Operating;
use coldbench::units::Mass;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "frost",
    origin: "An indoor coil that boils below 0 °C grows ice, which takes its air and its \
        capacity; the fan alone thaws it. With all its air and charge it stays free (common \
        practice, no source). Frost is ice from the air's own moisture: none below its dew point.",
    class: Class::CommonPractice,
    why_not: "The R-22 unit at half its charge boils just above the ice: its piston \
        machine draws the coil down to 32.7 °F and no further. At a quarter of its air it ices.",
    missed: &[
        ("half its charge: fins", 0.747),
        ("half its charge: ice after 4 h", 0.2),
        ("half its charge: capacity left", 0.213),
        ("half its charge: air left", 0.2),
    ],
    rows: figures,
};

/// The mild day and the damp room in which coils freeze: outdoors, room and its wet bulb, °F.
const OUTDOOR: f64 = 75.0;
const INDOOR: (f64, f64) = (74.0, 64.0);
/// How long it runs, s.
const RUNS: f64 = 4.0 * 3600.0;
/// How long the fan runs alone, s.
const THAWS: f64 = 2.0 * 3600.0;

fn figures() -> Vec<Figure> {
    let unit = Rated::orifice();
    let mut sound = running(&unit, 1.0, 1.0);
    sound.run(RUNS);
    let mut figures = vec![Figure::asked(
        "all its air and charge: ice after 4 h",
        "kg",
        Asked::AtMost(0.0),
        sound.plant.operating().frost,
    )];
    for (name, charge, blower) in [
        ("a quarter of its air", 1.0, 0.25),
        ("half its charge", 0.5, 1.0),
    ] {
        figures.extend(frozen(name, running(&unit, charge, blower)));
    }
    figures
}

/// A unit with a share of its charge and of its air, after five minutes of cooling.
fn running(unit: &Rated, charge: f64, blower: f64) -> Bare {
    let full = unit.unit().nameplate.charge.kilograms();
    let charge = Mass::from_kilograms(charge * full);
    let mut bare = Bare::with_charge(unit.unit(), charge, OUTDOOR, INDOOR);
    bare.cool(true);
    bare.conditions.blower = blower;
    bare.run(300.0);
    bare
}

fn frozen(name: &str, mut bare: Bare) -> [Figure; 5] {
    let clean = *bare.plant.operating();
    bare.run(RUNS);
    let iced = *bare.plant.operating();
    bare.cool(false);
    bare.conditions.blower = 1.0;
    bare.run(THAWS);
    let thawed = bare.plant.operating().frost;
    let share = |of: fn(&Operating) -> f64| of(&iced) / of(&clean);
    let ask =
        |what: &str, unit, asked, ours| Figure::asked(format!("{name}: {what}"), unit, asked, ours);
    [
        ask(
            "fins",
            "°F",
            Asked::AtMost(32.0),
            1.8 * clean.fin_temperature - 459.67,
        ),
        ask("ice after 4 h", "kg", Asked::AtLeast(0.2), iced.frost),
        ask(
            "capacity left",
            "ratio",
            Asked::AtMost(0.8),
            share(|o| o.capacity),
        ),
        ask(
            "air left",
            "ratio",
            Asked::AtMost(0.8),
            share(|o| o.indoor_air),
        ),
        ask(
            "ice after 2 h of fan alone",
            "kg",
            Asked::AtMost(0.0),
            thawed,
        ),
    ]
}
