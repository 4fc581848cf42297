//! The refrigerant tables against the equations of state that they were made from.

use super::data::{Row, rows};
use super::{Asked, Class, Figure, Source};
use coldbench::fluid::refrigerant::Refrigerant;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "property_tables",
    origin: "CoolProp 8, equation of state of each refrigerant as its file of check values names \
        it; from -40 °C to 5 K under the critical point, 30 K of subcooling and 80 K of \
        superheat. The figure is that of the worst state.",
    class: Class::Derived,
    why_not: "The vapour's virial has two terms beyond the ideal gas; near the \
        critical point they do not suffice.",
    missed: &[
        ("R-410A density of superheated vapour", 0.0375),
        ("R-32 density of superheated vapour", 0.434),
        ("R-32 enthalpy of superheated vapour", 0.587),
    ],
    rows: figures,
};

/// The check values of each refrigerant.
const CHECKS: [(&str, &str); 8] = [
    ("R-22", include_str!("../data/coolprop_r22.csv")),
    ("R-410A", include_str!("../data/coolprop_r410a.csv")),
    ("R-32", include_str!("../data/coolprop_r32.csv")),
    ("R-454B", include_str!("../data/coolprop_r454b.csv")),
    ("R-134a", include_str!("../data/coolprop_r134a.csv")),
    ("R-407C", include_str!("../data/coolprop_r407c.csv")),
    ("R-404A", include_str!("../data/coolprop_r404a.csv")),
    ("R-290", include_str!("../data/coolprop_r290.csv")),
];

fn figures() -> Vec<Figure> {
    CHECKS.into_iter().flat_map(of_refrigerant).collect()
}

fn of_refrigerant((name, table): (&'static str, &'static str)) -> Vec<Figure> {
    let fluid = Refrigerant::named(name).expect("a table of each is in the program");
    let states: Vec<Row> = rows(table).collect();
    let in_phase =
        |phase: &'static str| states.iter().filter(move |row| row.text("phase") == phase);
    let worst = |phase, off: &dyn Fn(&Row) -> f64| in_phase(phase).map(off).fold(0.0, f64::max);
    let mut figures = Vec::new();
    let mut ask = |what: &str, unit, most, ours| {
        let what = format!("{name} {what}");
        figures.push(Figure::asked(what, unit, Asked::AtMost(most), ours));
    };
    let pressure = |of: fn(&Refrigerant, f64) -> f64| {
        move |row: &Row| percent(of(fluid, row.number("t")), row.number("p"))
    };
    ask(
        "pressure of bubbling liquid",
        "%",
        0.05,
        worst("bubble", &pressure(Refrigerant::bubble_pressure)),
    );
    ask(
        "pressure of dew",
        "%",
        0.05,
        worst("dew", &pressure(Refrigerant::dew_pressure)),
    );
    for (phase, what) in [
        ("bubble", "bubbling liquid"),
        ("dew", "dew"),
        ("two-phase", "mixture"),
        ("liquid", "subcooled liquid"),
        ("vapour", "superheated vapour"),
    ] {
        let density = |row: &Row| percent(state(fluid, row).0, row.number("rho"));
        let enthalpy = |row: &Row| (state(fluid, row).1 - row.number("h")).abs() / 1e3;
        ask(
            &format!("density of {what}"),
            "%",
            0.5,
            worst(phase, &density),
        );
        ask(
            &format!("enthalpy of {what}"),
            "kJ/kg",
            0.5,
            worst(phase, &enthalpy),
        );
    }
    figures
}

/// Density and enthalpy of a state by the program's table.
fn state(fluid: &Refrigerant, row: &Row) -> (f64, f64) {
    let (p, t) = (row.number("p"), row.number("t"));
    let quality = match row.text("phase") {
        "liquid" => return (fluid.liquid_density(t, p), fluid.liquid_enthalpy(t, p)),
        "vapour" => return (fluid.vapour_density(p, t), fluid.vapour_enthalpy(p, t)),
        "bubble" => 0.0,
        "dew" => 1.0,
        _ => row.number("quality"),
    };
    let curves = fluid.at(t);
    let rho = 1.0 / ((1.0 - quality) / curves.rho_l + quality / curves.rho_g);
    (rho, curves.h_l + quality * (curves.h_g - curves.h_l))
}

fn percent(found: f64, published: f64) -> f64 {
    100.0 * (found / published - 1.0).abs()
}
