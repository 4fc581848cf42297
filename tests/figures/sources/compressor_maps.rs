//! Each unit's compressor beside a published map of its kind.

use super::data::{Row, rows};
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::units::Temperature;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "compressor_maps",
    origin: "Performance polynomials of compressors in the form of AHRI 540 (ACHP project; makers' \
        coefficient files in the python-hvac project; EnergyPlus data set \
        RefrigerationCompressorCurves), as ratio to the rating point of the same map; -10 to 12 °C \
        evaporating, 35 to 60 °C condensing. Tolerance 6 % of the flow and 8 % of the power. The \
        R-407C unit is beside a scroll for R-22: no map of its own was found.",
    class: Class::Curve,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// Each unit with the map that it stands for and the state of its suction gas.
const UNITS: [(&str, &str, Suction); 7] = [
    ("r22_3ton_orifice", "G", Suction::At(18.3)),
    ("r410a_3ton_txv", "A", Suction::Above(11.1)),
    ("r410a_2ton_orifice", "A", Suction::Above(11.1)),
    ("r32_2ton_txv", "C", Suction::Above(10.0)),
    ("r454b_3ton_txv", "D", Suction::Above(10.0)),
    ("r134a_receiver_txv", "F", Suction::Above(10.0)),
    ("r407c_5ton_txv", "E", Suction::Above(10.0)),
];

/// The suction gas of a map: at one temperature, °C, or so far above saturation, K.
#[derive(Debug, Clone, Copy)]
enum Suction {
    At(f64),
    Above(f64),
}

fn figures() -> Vec<Figure> {
    UNITS.into_iter().flat_map(of_unit).collect()
}

fn of_unit((name, map, suction): (&str, &str, Suction)) -> Vec<Figure> {
    let unit = Rated::shipped(name);
    let table = include_str!("../data/compressor_maps.csv");
    let points: Vec<Row> = rows(table).filter(|row| row.text("map") == map).collect();
    // The first point of a map is its rating point.
    let rating = pumps(&unit, &points[0], suction);
    let mut figures = Vec::new();
    for row in points.iter().skip(1).filter(|row| is_in_range(row)) {
        let (flow, power) = pumps(&unit, row, suction);
        let (evaporating, condensing) = (row.number("evap_c"), row.number("cond_c"));
        let place = format!("{name}, map {map}, {evaporating}/{condensing} °C");
        let mut ask = |what, column, share, ours| {
            let (what, published) = (format!("{place}: {what}"), row.number(column));
            let tolerance = share * published;
            figures.push(Figure::near(what, "ratio", published, tolerance, ours));
        };
        ask("flow", "flow_ratio", 0.06, flow / rating.0);
        ask("power", "power_ratio", 0.08, power / rating.1);
    }
    figures
}

fn is_in_range(row: &Row) -> bool {
    (-10.0..=12.0).contains(&row.number("evap_c")) && (35.0..=60.0).contains(&row.number("cond_c"))
}

/// Flow and power of a unit's compressor at a point of a map.
fn pumps(unit: &Rated, row: &Row, suction: Suction) -> (f64, f64) {
    let fluid = unit.unit().refrigerant.get();
    let kelvin = |c| Temperature::from_celsius(c).kelvin();
    let evaporating = kelvin(row.number("evap_c"));
    let low = fluid.dew_pressure(evaporating);
    let high = fluid.dew_pressure(kelvin(row.number("cond_c")));
    let gas = match suction {
        Suction::At(celsius) => kelvin(celsius),
        Suction::Above(superheat) => evaporating + superheat,
    };
    let density = fluid.vapour_density(low, gas);
    unit.unit().compressor.pumps(density, low, high)
}
