//! The piston compressors beside the spread of whole families of such machines.

use super::data::{Row, rows};
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "compressor_bands",
    origin: "Smallest and largest ratio to 7.2/40 °C over families of welded hermetic piston \
        compressors for air conditioning: EnergyPlus data set RefrigerationCompressorCurves, 41 \
        for R-22 and 7 for R-134a; return gas of 18.3 °C, no subcooling.",
    class: Class::Curve,
    why_not: "The R-134a machine stands for map F, which lies at the edge of the \
        family: its power falls more as the head falls.",
    missed: &[
        ("r134a_receiver_txv, 0/40 °C: power", 0.0026),
        ("r134a_receiver_txv, 7.2/30 °C: power", 0.0412),
    ],
    rows: figures,
};

/// Temperature of the gas at the suction, °C.
const RETURN_GAS: f64 = 18.3;

fn figures() -> Vec<Figure> {
    [
        ("R-22", "r22_3ton_orifice"),
        ("R-134a", "r134a_receiver_txv"),
    ]
    .into_iter()
    .flat_map(|(refrigerant, name)| of_unit(refrigerant, name))
    .collect()
}

fn of_unit(refrigerant: &str, name: &str) -> Vec<Figure> {
    let unit = Rated::shipped(name);
    let rating = does(&unit, 7.2, 40.0);
    let is_of_it =
        |row: &Row| row.text("kind") == "reciprocating" && row.text("refrigerant") == refrigerant;
    let table = include_str!("../data/compressor_bands.csv");
    let mut figures = Vec::new();
    for row in rows(table).filter(is_of_it) {
        let (evaporating, condensing) = (row.number("evap_c"), row.number("cond_c"));
        let point = does(&unit, evaporating, condensing);
        for (what, ours) in [
            ("capacity", point.0 / rating.0),
            ("power", point.1 / rating.1),
        ] {
            let end = |end| row.number(&format!("{what}_{end}"));
            let band = (end("min"), end("max"));
            let what = format!("{name}, {evaporating}/{condensing} °C: {what}");
            figures.push(Figure::within(what, "ratio", band, ours));
        }
    }
    figures
}

/// Capacity and power at a point, °C.
fn does(unit: &Rated, evaporating: f64, condensing: f64) -> (f64, f64) {
    let fluid = unit.unit().refrigerant.get();
    let kelvin = |c| Temperature::from_celsius(c).kelvin();
    let low = fluid.dew_pressure(kelvin(evaporating));
    let high = fluid.dew_pressure(kelvin(condensing));
    let gas = kelvin(RETURN_GAS);
    let density = fluid.vapour_density(low, gas);
    let (flow, power) = unit.unit().compressor.pumps(density, low, high);
    let effect = fluid.vapour_enthalpy(low, gas) - fluid.at(kelvin(condensing)).h_l;
    (flow * effect, power)
}
