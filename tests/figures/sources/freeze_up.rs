//! Water that freezes at the metering device, on and off.

use super::bare::Bare;
use super::rated::Rated;
use super::{Asked, Class, Figure, Source};
use coldbench::plant::Section;
use coldbench::plant::network::Amounts;
use coldbench::units::{GaugePressure, Mass};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "freeze_up",
    origin: "Free water freezes where the refrigerant turns cold: the suction pressure falls \
        towards a vacuum, comes back when the throat thaws, and falls again; a rest clears it. \
        Never above freezing, and never where the liquid dissolves all the water (ASHRAE Handbook \
        - Refrigeration, control of moisture); the rest is common practice, no source.",
    class: Class::CommonPractice,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// A room on a mild day: outdoors, the room and its wet bulb, °F.
const OUTDOOR: f64 = 75.0;
const INDOOR: (f64, f64) = (70.0, 60.0);
/// Water that is more than the liquid dissolves, kg.
const WET: f64 = 8e-3;
/// Water that all of the charge dissolves at the coldest place, share of the charge.
const DISSOLVES: f64 = 1e-4;
/// How long it runs, min.
const MINUTES: u32 = 180;

/// A unit that boils below freezing, and one that does not: shares of its charge and its air.
const COLD: (f64, f64) = (0.85, 0.5);
const WARM: (f64, f64) = (1.0, 1.0);

fn figures() -> Vec<Figure> {
    let unit = Rated::orifice();
    let dry = watch(&unit, COLD, 0.0);
    let wet = watch(&unit, COLD, WET);
    let damp = watch(
        &unit,
        COLD,
        DISSOLVES * unit.unit().nameplate.charge.kilograms(),
    );
    let warm = watch(&unit, WARM, WET);
    let at_most = |what, unit, most, ours| Figure::asked(what, unit, Asked::AtMost(most), ours);
    let at_least = |what, unit, least, ours| Figure::asked(what, unit, Asked::AtLeast(least), ours);
    vec![
        at_most("dry: lowest suction, saturation", "°F", 32.0, dry.coldest),
        at_most("dry: throat shut", "ratio", 0.0, dry.most),
        at_least("wet: throat shut", "ratio", 0.9, wet.most),
        at_most("wet: lowest suction", "psig", 0.0, wet.lowest),
        at_least("wet: it comes back in 3 h", "times", 2.0, wet.returns(&dry)),
        at_most(
            "wet, after 30 min of rest: throat shut",
            "ratio",
            0.0,
            wet.rested,
        ),
        at_most("all water dissolved: throat shut", "ratio", 0.0, damp.most),
        at_least("wet, above freezing: saturation", "°F", 32.0, warm.coldest),
        at_most("wet, above freezing: throat shut", "ratio", 0.0, warm.most),
    ]
}

/// What was seen.
struct Seen {
    /// Suction pressure, psig, every six seconds from the sixth minute on.
    suction: Vec<f64>,
    /// The lowest of them, and what it is as a temperature, °F.
    lowest: f64,
    coldest: f64,
    /// The most of the throat that was shut, and what was after half an hour of rest.
    most: f64,
    rested: f64,
}

impl Seen {
    /// How often the suction fell below half of what it is in a dry unit and came back.
    fn returns(&self, dry: &Self) -> f64 {
        let mut is_down = false;
        let mut count = 0.0;
        for suction in &self.suction {
            if *suction < 0.5 * dry.lowest {
                is_down = true;
            } else if is_down && *suction > 0.8 * dry.lowest {
                is_down = false;
                count += 1.0;
            }
        }
        count
    }
}

/// Runs a unit with water in its liquid line, kg, and no desiccant to take it up, for some hours,
/// and lets it rest.
fn watch(unit: &Rated, (charge, air): (f64, f64), water: f64) -> Seen {
    let unit = unit.unit();
    let charge = Mass::from_kilograms(charge * unit.nameplate.charge.kilograms());
    let mut bare = Bare::with_charge(unit, charge, OUTDOOR, INDOOR);
    bare.plant.take_out_desiccant();
    let line = bare.plant.node(Section::LiquidLine);
    bare.plant.network_mut().add(line, Amounts::water(water));
    // What dissolves has the time to.
    bare.run(3600.0);
    bare.cool(true);
    bare.conditions.blower = air;
    bare.run(300.0);
    let mut suction = Vec::new();
    let mut most: f64 = 0.0;
    for _ in 0..10 * MINUTES {
        bare.run(6.0);
        suction.push(bare.psig(Section::SuctionLine));
        most = most.max(bare.plant.operating().throat_ice);
    }
    bare.cool(false);
    bare.run(1800.0);
    let lowest = suction.iter().copied().fold(f64::INFINITY, f64::min);
    let boils = unit
        .refrigerant
        .get()
        .saturation(GaugePressure::from_psig(lowest));
    Seen {
        suction,
        lowest,
        coldest: boils.1.fahrenheit(),
        most,
        rested: bare.plant.operating().throat_ice,
    }
}
