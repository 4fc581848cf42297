//! The stand test: nitrogen shut in a vessel follows the temperature of its wall.

use super::bare::Bare;
use super::data::rows;
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::plant::network::gas::{MOLAR_MASS, R_UNIVERSAL};
use coldbench::plant::network::{Amounts, Fill, NodeSpec};
use coldbench::units::{GaugePressure, Temperature};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "nitrogen",
    origin: "p2 = p1 T2/T1 (absolute) for the ideal gas; the real gas by CoolProp 8, which the \
        network leaves out: half a psi.",
    class: Class::Derived,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// Volume of the vessel, m³.
const VOLUME: f64 = 10e-3;

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/nitrogen.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let (start, from, to) = (
            row.number("start_psig"),
            row.number("start_f"),
            row.number("end_f"),
        );
        let ours = stand(start, from, to);
        let what = format!("{start} psig at {from} °F, then {to} °F");
        let (ideal, real) = (row.number("ideal_psig"), row.number("real_psig"));
        let ideal = Figure::near(format!("{what}, ideal gas"), "psig", ideal, 0.05, ours);
        let real = Figure::near(format!("{what}, real gas"), "psig", real, 0.5, ours);
        figures.extend([ideal, real]);
    }
    figures
}

/// The gauge pressure, psig, in a vessel filled at one temperature, after a rest at another, °F.
fn stand(psig: f64, from: f64, to: f64) -> f64 {
    let orifice = Rated::orifice();
    let mut bare = Bare::at_rest(orifice.unit(), from, (from, from - 10.0));
    let vessel = bare.add_vessel(NodeSpec {
        volume: VOLUME,
        wall: 2000.0,
        to_ambient: 10.0,
        fill: Fill::Evacuated,
    });
    let kelvin = |f| Temperature::from_fahrenheit(f).kelvin();
    let pressure = GaugePressure::from_psig(psig).absolute().pascals();
    // The vessel begins with a residue of 10 Pa.
    let amount = (pressure - 10.0) * VOLUME / (R_UNIVERSAL * kelvin(from));
    let nitrogen = Amounts::nitrogen(amount * MOLAR_MASS[0]);
    bare.plant.network_mut().add(vessel, nitrogen);
    bare.run(1800.0);
    bare.conditions.outdoor.t = kelvin(to);
    bare.run(5400.0);
    bare.psig_in(vessel)
}
