//! The compressor's law beside three points of a published map.

use super::data::rows;
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "compressor_spot",
    origin: "A reciprocating compressor for R-22 of 35 kBtu/h nominal, EnergyPlus data set \
        RefrigerationCompressorCurves, ERF1-0311-TAC: return gas of 18.3 °C, no subcooling. \
        Tolerance of a published map: 5 %, AHRI 540, from memory. The unit has a compressor of \
        this size and of another make: its power is held to how the map's changes.",
    class: Class::Curve,
    why_not: "The unit stands for map G, whose filling falls more with the suction \
        than that of this machine.",
    missed: &[("-10/40 °C: flow", 2.37)],
    rows: figures,
};

/// Temperature of the gas at the suction, °C.
const RETURN_GAS: f64 = 18.3;
/// How far a published map may be off.
const TOLERANCE: f64 = 0.05;

/// One point, as published and as the unit's compressor does it.
struct Spot {
    name: String,
    flow: f64,
    effect: f64,
    power: f64,
    ours: [f64; 3],
}

fn figures() -> Vec<Figure> {
    let orifice = Rated::orifice();
    let table = include_str!("../data/compressor_spot.csv");
    let spots: Vec<Spot> = rows(table).map(|row| spot(&orifice, &row)).collect();
    let mut figures = Vec::new();
    for spot in &spots {
        let what = format!("{}: refrigerating effect", spot.name);
        // The map's capacity is rounded to a watt, its flow to 0.05 %.
        let near = |what, unit, published: f64, share, ours| {
            Figure::near(what, unit, published, share * published, ours)
        };
        figures.push(near(what, "kJ/kg", spot.effect, 2e-3, spot.ours[1]));
        let what = format!("{}: flow", spot.name);
        figures.push(near(what, "kg/h", spot.flow, TOLERANCE, spot.ours[0]));
    }
    // The last is nearest to the point that the unit is sized for.
    if let Some((rated, others)) = spots.split_last() {
        for spot in others {
            let what = format!("{}: power against {}", spot.name, rated.name);
            let (published, ours) = (spot.power / rated.power, spot.ours[2] / rated.ours[2]);
            let tolerance = TOLERANCE * published;
            figures.push(Figure::near(what, "ratio", published, tolerance, ours));
        }
    }
    figures
}

fn spot(unit: &Rated, row: &super::data::Row) -> Spot {
    let fluid = unit.unit().refrigerant.get();
    let kelvin = |c| Temperature::from_celsius(c).kelvin();
    let (suction, discharge) = (row.number("suction_c"), row.number("discharge_c"));
    let low = fluid.dew_pressure(kelvin(suction));
    let high = fluid.dew_pressure(kelvin(discharge));
    let gas = kelvin(RETURN_GAS);
    let density = fluid.vapour_density(low, gas);
    let (flow, power) = unit.unit().compressor.pumps(density, low, high);
    let liquid = fluid.at(kelvin(discharge)).h_l;
    let effect = fluid.vapour_enthalpy(low, gas) - liquid;
    Spot {
        name: format!("{suction}/{discharge} °C"),
        flow: row.number("flow_kg_h"),
        effect: 3.6 * row.number("capacity_w") / row.number("flow_kg_h"),
        power: row.number("power_w"),
        ours: [3600.0 * flow, effect / 1e3, power],
    }
}
