//! The refrigerant tables.
//!
//! Source: `CoolProp` 8 with the equation of state that each `data/coolprop_*.csv` names; what else
//! is checked holds of any fluid.

use coldbench::fluid::refrigerant::Refrigerant;

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
    Refrigerant::all().iter()
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

/// A pressure comes back from its temperature.
#[test]
fn saturation_goes_both_ways() {
    for refrigerant in all() {
        for t in (0..400).map(|k| refrigerant.coldest() + 0.25 * f64::from(k)) {
            let t = t.min(refrigerant.hottest() - 0.01);
            let bubble = refrigerant.bubble_temperature(refrigerant.bubble_pressure(t));
            let dew = refrigerant.dew_temperature(refrigerant.dew_pressure(t));
            for back in [bubble, dew] {
                let name = refrigerant.name();
                assert!((back - t).abs() < 1e-9, "{name} {t} K came back as {back}");
            }
        }
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
