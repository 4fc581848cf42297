//! Single published values of a running unit, each with its own source.

use super::bare::Bare;
use super::rated::{Rated, of_both};
use super::{Asked, Class, Figure, Source};
use coldbench::fluid::moist_air;
use coldbench::job::{Overrides, Settled};
use coldbench::plant::Fault;
use coldbench::units::Fraction;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "single_values",
    origin: "Half the indoor air: Rodriguez, O'Neal et al., Energy and Buildings 24 (1996) 195, \
        abstract. Coil and condensing temperature at test A: trade article on charge without \
        gauges. Discharge line in summer cooling, Florida: trade article. Efficiency by the \
        charge: Home Energy, May/June 2002. Thawing: trade column no. 186. Locked-rotor against \
        rated amps: data sheet 38YDA, 3 tons. Vapour above R-407C: service manual, p. 64. Water in \
        air of 25 °C and 50 %: IAPWS, derived.",
    class: Class::Published,
    why_not: "The sources of a coil at 40 °F and of 125 °F condensing contradict the \
        service data of expansion_valve_pressures, which these units follow. The gas of the \
        R-22 unit is hotter than in the field data, its charge costs less efficiency, and half \
        the air takes 0.4 % more off its power. Liquid and vapour of a blend have one \
        composition in the model.",
    missed: &[
        ("R-22 orifice: power at half the indoor air", 0.359),
        ("R-22 orifice: coil at test A", 1.47),
        ("R-22 orifice: condensing at test A", 1.04),
        ("R-22 orifice: discharge line at test A", 9.17),
        ("R-410A valve: coil at test A", 4.84),
        ("R-410A valve: condensing at test A", 9.27),
        ("R-22 orifice, 15 % too little: efficiency", 1.32),
        ("R-407C, vapour above the liquid: R-32", 8.0),
        ("R-407C, vapour above the liquid: R-125", 6.0),
        ("R-407C, vapour above the liquid: R-134a", 16.0),
    ],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let mut figures = of_both(of_unit);
    figures.push(charge_of_the_orifice());
    figures.push(thawing());
    // Of a blend the model has one composition: what is in the file, in liquid and vapour alike.
    for (part, published, ours) in [
        ("R-32", 33.0, 23.0),
        ("R-125", 33.0, 25.0),
        ("R-134a", 34.0, 52.0),
    ] {
        let what = format!("R-407C, vapour above the liquid: {part}");
        figures.push(Figure::near(what, "mass %", published, 2.0, ours));
    }
    let w = moist_air::humidity_ratio_from_relative(298.15, 0.5);
    let density = 101_325.0 / (287.055 * 298.15 * (1.0 + 1.608 * w));
    let what = "water in air of 25 °C, 50 %";
    figures.push(Figure::near(what, "g/m³", 11.5, 0.2, 1e3 * w * density).of_class(Class::Derived));
    figures
}

fn of_unit(name: &str, unit: &Rated) -> Vec<Figure> {
    let rated = unit.at_rating();
    let half = unit.with_fault(Fault::DirtyFilter(Fraction::clamped(0.5)));
    let data = &unit.unit().electrics;
    let locked = data.locked_rotor.amps() / data.rated.amps();
    vec![
        Figure::within(
            format!("{name}: power at half the indoor air"),
            "%",
            (-4.0, 0.0),
            100.0 * (half.power_w / rated.power_w - 1.0),
        ),
        Figure::near(
            format!("{name}: coil at test A"),
            "°F",
            40.0,
            3.0,
            rated.evaporating_f,
        ),
        Figure::near(
            format!("{name}: condensing at test A"),
            "°F",
            125.0,
            5.0,
            rated.condensing_f,
        ),
        Figure::within(
            format!("{name}: discharge line at test A"),
            "°C",
            (71.0, 82.0),
            (rated.discharge_f - 32.0) / 1.8,
        ),
        Figure::near(
            format!("{name}: locked-rotor over rated-load amps"),
            "ratio",
            5.11,
            0.6,
            locked,
        ),
    ]
}

/// An orifice with 15 % too little.
fn charge_of_the_orifice() -> Figure {
    let unit = Rated::orifice();
    let efficiency = |s: &Settled| s.capacity_btu_h / s.power_w;
    let short = unit.settle(&Overrides {
        charge: Some(0.85),
        ..Overrides::default()
    });
    let change = 100.0 * (efficiency(&short) / efficiency(&unit.at_rating()) - 1.0);
    let what = "R-22 orifice, 15 % too little: efficiency";
    Figure::near(what, "%", -11.0, 3.0, change)
}

/// An iced coil with the compressor off and the fan on: when it is free.
fn thawing() -> Figure {
    let unit = Rated::orifice();
    let mut bare = Bare::at_rest(unit.unit(), 75.0, (74.0, 64.0));
    bare.cool(true);
    bare.conditions.blower = 0.25;
    bare.run(4.0 * 3600.0);
    bare.cool(false);
    bare.conditions.blower = 1.0;
    let mut minutes = 0.0;
    while bare.plant.operating().frost > 0.0 && minutes < 240.0 {
        bare.run(60.0);
        minutes += 1.0;
    }
    let asked = Asked::Within {
        least: 20.0,
        most: 60.0,
    };
    let what = "R-22 orifice, iced for 4 h at a quarter of its air: free after";
    Figure::asked(what, "min", asked, minutes)
}
