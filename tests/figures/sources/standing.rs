//! A circuit that stands: saturation while liquid is left, and what air adds.

use super::bare::Bare;
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::plant::network::Amounts;
use coldbench::plant::network::gas::R_UNIVERSAL;
use coldbench::plant::{Link, Section};
use coldbench::units::{PSI, Temperature};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "standing",
    origin: "Thermodynamics: saturation pressure at the temperature of the air while liquid is \
        left, less when none is; air adds n R T / V where it is (Dalton).",
    class: Class::SelfCheck,
    why_not: "A shut expansion valve lets little through: what the oil takes up of the \
        low side's vapour comes through its seat only in the course of hours.",
    missed: &[("R-410A at rest at 95 °F, 2 h", 0.704)],
    rows: figures,
};

/// How long it rests, h: a look after two, and after a night.
const RESTS: [f64; 2] = [2.0, 8.0];

fn figures() -> Vec<Figure> {
    let mut figures = Vec::new();
    for unit in [Rated::orifice(), Rated::valve()] {
        let unit = unit.unit();
        for fahrenheit in [70.0, 95.0] {
            let mut bare = Bare::at_rest(unit, fahrenheit, (fahrenheit, fahrenheit - 15.0));
            let fluid = unit.refrigerant.get();
            let (bubble, _) = fluid.pressure(Temperature::from_fahrenheit(fahrenheit));
            let mut rested = 0.0;
            for hours in RESTS {
                bare.run(3600.0 * (hours - rested));
                rested = hours;
                let what = format!("{} at rest at {fahrenheit} °F, {hours} h", fluid.name());
                let ours = bare.psig(Section::SuctionLine);
                figures.push(Figure::near(what, "psig", bubble.psig(), 1.0, ours));
            }
        }
    }
    figures.push(with_air());
    figures
}

/// 20 g of air in an outdoor coil that holds liquid: what the gauge shows above saturation.
fn with_air() -> Figure {
    let orifice = Rated::orifice();
    let mut bare = Bare::at_rest(orifice.unit(), 95.0, (95.0, 80.0));
    bare.plant.set_opening(Link::LiquidValve, 0.0);
    bare.run(3600.0);
    let coil = bare.plant.node(Section::Condenser);
    bare.plant.network_mut().add(coil, Amounts::air(0.02));
    bare.run(3600.0);
    let node = bare.plant.network().node(coil);
    let dalton = node.gas[1] * R_UNIVERSAL * node.temperature / node.vapour_volume;
    let fluid = orifice.unit().refrigerant.get();
    let above = node.pressure - fluid.bubble_pressure(node.temperature);
    let what = "R-22 with 20 g of air in the outdoor coil, above saturation";
    Figure::near(what, "psi", dalton / PSI, 1.0, above / PSI)
}
