//! The refrigerant tables against their equation of state and against published charts.

use coldbench::fluid::refrigerant::Refrigerant;
use coldbench::units::{GaugePressure, Temperature};

use crate::table::{self, Line};

fn named(name: &str) -> &'static Refrigerant {
    Refrigerant::named(name).unwrap_or_else(|| panic!("no table of {name}"))
}

/// The check values of one refrigerant that lie in `phase`.
fn checks(refrigerant: &Refrigerant, phase: &str) -> Vec<Line> {
    let file = format!(
        "coolprop_{}.csv",
        refrigerant.name().replace('-', "").to_lowercase()
    );
    let mut lines = table::read(&file);
    lines.retain(|line| line.text("phase") == phase);
    assert!(!lines.is_empty(), "{file} has no {phase}");
    lines
}

fn all() -> impl Iterator<Item = &'static Refrigerant> {
    Refrigerant::names().iter().map(|name| named(name))
}

/// Within `share` of density and `joules` per kg of enthalpy.
fn meets(line: &Line, rho: f64, h: f64, share: f64, joules: f64) -> Result<(), String> {
    let off_rho = rho / line.number("rho") - 1.0;
    let off_h = h - line.number("h");
    if off_rho.abs() <= share && off_h.abs() <= joules {
        return Ok(());
    }
    let (p, t) = (line.number("p"), line.number("t"));
    Err(format!(
        "{t} K, {p} Pa: density off by {:.3} %, enthalpy by {off_h:.0} J/kg",
        off_rho * 1e2
    ))
}

/// Source: `CoolProp` 8, `data/coolprop_*.csv`; from −40 °C to 5 K under the critical point.
#[test]
fn saturation_pressure_within_0_05_percent() {
    for refrigerant in all() {
        let name = refrigerant.name();
        for line in checks(refrigerant, "bubble") {
            let (p, t) = (line.number("p"), line.number("t"));
            let found = refrigerant.bubble_pressure(t);
            assert!(
                (found / p - 1.0).abs() < 5e-4,
                "{name} {t} K: {found}, {p} Pa"
            );
            let back = refrigerant.bubble_temperature(found);
            assert!((back - t).abs() < 1e-9, "{name} {t} K came back as {back}");
        }
        for line in checks(refrigerant, "dew") {
            let (p, t) = (line.number("p"), line.number("t"));
            let found = refrigerant.dew_pressure(t);
            assert!(
                (found / p - 1.0).abs() < 5e-4,
                "{name} {t} K: {found}, {p} Pa"
            );
            let back = refrigerant.dew_temperature(found);
            assert!((back - t).abs() < 1e-9, "{name} {t} K came back as {back}");
        }
    }
}

/// Source: `CoolProp` 8. Density within 0.5 %, enthalpy within 0.5 kJ/kg.
#[test]
fn saturated_and_two_phase_states() {
    for refrigerant in all() {
        let name = refrigerant.name();
        for phase in ["bubble", "dew", "two-phase"] {
            for line in checks(refrigerant, phase) {
                let x = match phase {
                    "bubble" => 0.0,
                    "dew" => 1.0,
                    _ => line.number("quality"),
                };
                let curves = refrigerant.at(line.number("t"));
                let rho = 1.0 / ((1.0 - x) / curves.rho_l + x / curves.rho_g);
                let h = curves.h_l + x * (curves.h_g - curves.h_l);
                meets(&line, rho, h, 5e-3, 500.0).unwrap_or_else(|off| panic!("{name} {off}"));
            }
        }
    }
}

/// Source: `CoolProp` 8. To 30 K of subcooling density within 0.5 %, enthalpy within 0.5 kJ/kg.
#[test]
fn subcooled_liquid() {
    for refrigerant in all() {
        for line in checks(refrigerant, "liquid") {
            let (p, t) = (line.number("p"), line.number("t"));
            let (rho, h) = (
                refrigerant.liquid_density(t, p),
                refrigerant.liquid_enthalpy(t, p),
            );
            meets(&line, rho, h, 5e-3, 500.0)
                .unwrap_or_else(|off| panic!("{} {off}", refrigerant.name()));
        }
    }
}

/// Source: `CoolProp` 8. To 80 K of superheat density within 0.5 %, enthalpy within 0.5 kJ/kg.
///
/// Not met by R-32 above 275 psig, and by R-410A within a kelvin of 5.5 K under its critical
/// temperature: see the next test.
#[test]
fn superheated_vapour() {
    for refrigerant in all() {
        for line in checks(refrigerant, "vapour") {
            if known_miss(refrigerant, &line).is_some() {
                continue;
            }
            let (p, t) = (line.number("p"), line.number("t"));
            let (rho, h) = (
                refrigerant.vapour_density(p, t),
                refrigerant.vapour_enthalpy(p, t),
            );
            meets(&line, rho, h, 5e-3, 500.0)
                .unwrap_or_else(|off| panic!("{} {off}", refrigerant.name()));
        }
    }
}

/// Where 0.5 % and 500 J/kg are not met, what is met instead.
fn known_miss(refrigerant: &Refrigerant, line: &Line) -> Option<(f64, f64)> {
    let (p, t) = (line.number("p"), line.number("t"));
    let under_critical = refrigerant.critical_temperature() - t;
    match refrigerant.name() {
        "R-32" if p > 2e6 => Some((9.5e-3, 1100.0)),
        "R-410A" if (4.5..6.5).contains(&under_critical) && p > 2e6 => Some((5.5e-3, 500.0)),
        _ => None,
    }
}

/// The misses as they stand: R-32 by up to 0.95 % and 1.1 kJ/kg, R-410A 0.55 % of density.
#[test]
fn superheated_vapour_where_the_figure_is_not_met() {
    for name in ["R-32", "R-410A"] {
        let refrigerant = named(name);
        let mut missed = 0;
        for line in checks(refrigerant, "vapour") {
            let Some((share, joules)) = known_miss(refrigerant, &line) else {
                continue;
            };
            let (p, t) = (line.number("p"), line.number("t"));
            let (rho, h) = (
                refrigerant.vapour_density(p, t),
                refrigerant.vapour_enthalpy(p, t),
            );
            missed += usize::from(meets(&line, rho, h, 5e-3, 500.0).is_err());
            meets(&line, rho, h, share, joules).unwrap_or_else(|off| panic!("{name} {off}"));
        }
        assert!(
            missed > 0,
            "{name} meets the figure now: drop the exception"
        );
    }
}

/// Source: `CoolProp` 8 down to 1 Pa; the ideal gas law in the limit.
#[test]
fn an_ideal_gas_in_the_deep_vacuum() {
    for refrigerant in all() {
        for line in checks(refrigerant, "vacuum") {
            let (p, t) = (line.number("p"), line.number("t"));
            let (rho, h) = (
                refrigerant.vapour_density(p, t),
                refrigerant.vapour_enthalpy(p, t),
            );
            meets(&line, rho, h, 1e-3, 50.0)
                .unwrap_or_else(|off| panic!("{} {off}", refrigerant.name()));
            if p <= 1.0 {
                let ideal = p / (refrigerant.gas_constant() * t);
                assert!((rho / ideal - 1.0).abs() < 1e-6, "{rho}, ideal {ideal}");
            }
        }
        assert_eq!(refrigerant.vapour_density(0.0, 300.0), 0.0);
        let thin = refrigerant.vapour_enthalpy(1e-6, 300.0);
        assert!((refrigerant.vapour_enthalpy(0.0, 300.0) - thin).abs() < 1e-3);
    }
}

/// The vapour meets the dew line at every row: no step where a node dries out.
#[test]
fn vapour_is_exact_on_the_dew_line() {
    for refrigerant in all() {
        let rows = ((refrigerant.hottest() - refrigerant.coldest()) * 4.0) as usize;
        for row in 0..=rows {
            let t = refrigerant.coldest() + row as f64 / 4.0;
            let curves = refrigerant.at(t);
            let p = refrigerant.vapour_pressure_at(t, curves.rho_g);
            assert!(
                (p / curves.p_dew - 1.0).abs() < 1e-9,
                "{t} K: {p}, {}",
                curves.p_dew
            );
            let u = refrigerant.vapour_energy(&curves, t, curves.rho_g);
            assert!((u - curves.u_g).abs() < 1e-3, "{t} K: {u}, {}", curves.u_g);
        }
    }
}

/// A gas never gets denser and thinner at once: density rises with pressure along an isotherm.
#[test]
fn isotherms_of_the_gas_rise() {
    for refrigerant in all() {
        for t in (0..=900).map(|k| refrigerant.coldest() + 0.3 * f64::from(k)) {
            let curves = refrigerant.at(t);
            let top = curves
                .p_dew
                .min(refrigerant.dew_pressure(refrigerant.hottest()));
            let mut last = 0.0;
            for share in 1..=20 {
                let rho = refrigerant.vapour_density(top * f64::from(share) / 20.0, t);
                assert!(
                    rho > last,
                    "{} {t} K: {rho} after {last}",
                    refrigerant.name()
                );
                last = rho;
            }
        }
    }
}

/// The temperature of a vapour comes back from its enthalpy.
#[test]
fn temperature_from_enthalpy() {
    for refrigerant in all() {
        for line in checks(refrigerant, "vapour") {
            let (p, t) = (line.number("p"), line.number("t"));
            let h = refrigerant.vapour_enthalpy(p, t);
            let back = refrigerant.vapour_temperature_from_enthalpy(p, h, t - 15.0);
            assert!(
                (back - t).abs() < 1e-3,
                "{} {t} K: {back}",
                refrigerant.name()
            );
        }
    }
}

/// The specific heat is the slope of the enthalpy within a cell of the table.
#[test]
fn specific_heat_is_the_slope_of_enthalpy() {
    for refrigerant in all() {
        for (p, t) in [(1e5, 280.1), (5e5, 300.1), (2e6, 350.1), (10.0, 290.1)] {
            let up = refrigerant.vapour_enthalpy(p, t + 0.01);
            let slope = (up - refrigerant.vapour_enthalpy(p, t - 0.01)) / 0.02;
            let found = refrigerant.vapour_specific_heat(p, t);
            assert!(
                (found / slope - 1.0).abs() < 1e-4,
                "{}: {found}, {slope}",
                refrigerant.name()
            );
        }
    }
    // Source: NIST REFPROP, R-22 vapour at 0.1 MPa and 25 °C, from memory: 0.66 kJ/(kg K).
    let found = named("R-22").vapour_specific_heat(1e5, 298.15);
    assert!((found - 660.0).abs() < 10.0, "{found}");
}

/// Half a psi or half a per cent.
fn on_the_card(found: f64, published: f64) -> bool {
    (found - published).abs() <= 0.5_f64.max(0.005 * published)
}

fn bubble_psig(refrigerant: &Refrigerant, fahrenheit: f64) -> f64 {
    refrigerant
        .pressure(Temperature::from_fahrenheit(fahrenheit))
        .0
        .psig()
}

/// Source: pressure-temperature cards as makers print them, from memory. °F, psig.
#[test]
fn pressure_temperature_card_of_r22() {
    const CARD: [(f64, f64); 9] = [
        (-40.0, 0.5),
        (0.0, 24.0),
        (20.0, 43.0),
        (40.0, 68.5),
        (60.0, 101.6),
        (80.0, 143.6),
        (100.0, 195.9),
        (120.0, 259.9),
        (140.0, 337.3),
    ];
    for (fahrenheit, published) in CARD {
        let found = bubble_psig(named("R-22"), fahrenheit);
        assert!(
            on_the_card(found, published),
            "{fahrenheit} °F: {found}, {published}"
        );
    }
}

/// Source: a card in whole psi, from memory. Its own rounding of half a psi counts: at 105 °F the
/// table is 1.9 psi, 0.55 %, above the printed 340.
#[test]
fn pressure_temperature_card_of_r410a() {
    for (fahrenheit, published) in [
        (45.0, 130.0),
        (100.0, 317.0),
        (105.0, 340.0),
        (120.0, 418.0),
    ] {
        let found = bubble_psig(named("R-410A"), fahrenheit);
        let nearest: f64 = found.clamp(published - 0.5, published + 0.5);
        assert!(
            on_the_card(found, nearest),
            "{fahrenheit} °F: {found}, {published}"
        );
    }
}

/// Source: a published chart of R-454B, bubble pressure by Celsius in kPa absolute. The chart goes
/// to 60 °C; the table ends 2.4 K below that.
#[test]
fn bubble_pressure_of_r454b() {
    let chart = [
        (-17.778, 413.66),
        (4.444, 872.85),
        (25.0, 1570.8),
        (37.778, 2175.27),
        (50.0, 2902.0),
    ];
    for (celsius, published) in chart {
        let t = Temperature::from_celsius(celsius).kelvin();
        let found = named("R-454B").bubble_pressure(t) / 1e3;
        assert!(
            (found / published - 1.0).abs() < 1e-3,
            "{celsius} °C: {found}, {published}"
        );
    }
}

/// Source: makers' cards of R-134a, from memory: 6.5, 35.0, 71.1, 124.2 psig at 0, 40, 70, 100 °F.
#[test]
fn pressure_temperature_card_of_r134a() {
    for (fahrenheit, published) in [(0.0, 6.5), (40.0, 35.0), (70.0, 71.1), (100.0, 124.2)] {
        let found = bubble_psig(named("R-134a"), fahrenheit);
        assert!(
            on_the_card(found, published),
            "{fahrenheit} °F: {found}, {published}"
        );
    }
}

/// Source: the chemistry pages of NIST, propane, from memory: 111.1, 474.5, 836.5 and
/// 1369.4 kPa at -40, 0, 20 and 40 °C.
#[test]
fn saturation_pressure_of_r290() {
    for (celsius, published) in [(-40.0, 111.1), (0.0, 474.5), (20.0, 836.5), (40.0, 1369.4)] {
        let t = Temperature::from_celsius(celsius).kelvin();
        let found = named("R-290").bubble_pressure(t) / 1e3;
        assert!(
            (found / published - 1.0).abs() < 2e-3,
            "{celsius} °C: {found}, {published} kPa"
        );
    }
}

/// Source: makers' sheets of R-404A, from memory: it bubbles at -46.2 to -46.6 °C at the
/// atmosphere.
#[test]
fn normal_boiling_point_of_r404a() {
    let found = named("R-404A").bubble_temperature(101_325.0) - 273.15;
    assert!((-46.7..=-46.1).contains(&found), "{found} °C");
}

/// Glide between bubble and dew at the same pressure. Source: makers' sheets, from memory: R-407C
/// 4 to 7 K, R-454B 1 to 1.7 K, R-404A 0.2 to 0.9 K, R-410A under 0.2 K; none where there is one
/// substance.
#[test]
fn glide_of_the_blends() {
    let sheets = [
        ("R-407C", 4.0, 7.0),
        ("R-454B", 1.0, 1.7),
        ("R-404A", 0.2, 0.9),
        ("R-410A", 0.0, 0.2),
    ];
    for (name, least, most) in sheets {
        for psig in [60.0, 130.0, 300.0] {
            let (bubble, dew) = named(name).saturation(GaugePressure::from_psig(psig));
            let glide = (dew - bubble).kelvins();
            assert!(
                (least..=most).contains(&glide),
                "{name} {psig} psig: {glide} K"
            );
        }
    }
    for name in ["R-22", "R-32", "R-134a", "R-290"] {
        let (bubble, dew) = named(name).saturation(GaugePressure::from_psig(100.0));
        assert_eq!(bubble, dew, "{name}");
    }
}

/// *Common practice, no source*: on R-22 68.5 psig is 40 °F, and 61.5 psig is 35 °F.
#[test]
fn a_gauge_reads_as_temperature() {
    for (psig, fahrenheit) in [(68.5, 40.0), (61.5, 35.0)] {
        let (bubble, dew) = named("R-22").saturation(GaugePressure::from_psig(psig));
        assert!(
            (bubble.fahrenheit() - fahrenheit).abs() < 0.3,
            "{}",
            bubble.fahrenheit()
        );
        assert_eq!(bubble, dew);
    }
}

/// Source: `data/liquid_line.csv`, a published charging chart of R-22.
#[test]
fn liquid_line_pressure_for_a_subcooling() {
    let refrigerant = named("R-22");
    for line in table::read("liquid_line.csv") {
        for column in line
            .names()
            .iter()
            .filter(|name| name.starts_with("subcooling_"))
        {
            let subcooling: f64 = column["subcooling_".len()..].parse().expect("a number");
            let saturation = line.number("liquid_f") + subcooling;
            let (found, published) = (bubble_psig(refrigerant, saturation), line.number(column));
            assert!(
                on_the_card(found, published),
                "{saturation} °F: {found}, {published}"
            );
        }
    }
}

/// Nothing a caller passes makes a curve infinite or stops the program.
#[test]
fn nonsense_gives_finite_values() {
    let odd = [
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        0.0,
        -5.0,
        1e300,
        5e-324,
    ];
    for refrigerant in all() {
        for x in odd {
            assert!(refrigerant.bubble_pressure(x).is_finite());
            assert!(refrigerant.dew_pressure(x).is_finite());
            assert!(refrigerant.bubble_temperature(x).is_finite());
            assert!(refrigerant.dew_temperature(x).is_finite());
            assert!(refrigerant.at(x).h_g.is_finite() && refrigerant.slopes(x).h_g.is_finite());
            assert!(refrigerant.vapour_density(x, 300.0).is_finite());
            assert!(refrigerant.vapour_density(5e5, x).is_finite());
            assert!(
                refrigerant
                    .vapour_temperature_from_enthalpy(x, 4e5, x)
                    .is_finite()
            );
            assert!(
                refrigerant
                    .vapour_temperature_from_enthalpy(5e5, x, 300.0)
                    .is_finite()
            );
        }
    }
}
