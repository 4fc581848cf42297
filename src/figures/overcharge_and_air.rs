//! What too much refrigerant and what air do to a running unit.

use super::rated::Rated;
use super::{Asked, Figure, Source};
use crate::plant::Fault;
use crate::units::{Fraction, Mass};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "overcharge_and_air",
    origin: "Head pressure and power rise with an overcharge and with air inside (published fits \
        agree on the direction only; common practice, no source).",
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let faults = [
        ("20 % too much", Fault::Overcharge(Fraction::clamped(0.2))),
        ("10 g of air", Fault::AirInside(Mass::from_grams(10.0))),
    ];
    let units = [
        ("R-22 orifice", Rated::orifice()),
        ("R-410A valve", Rated::valve()),
    ];
    let mut figures = Vec::new();
    for (name, unit) in &units {
        let sound = unit.at_rating();
        for (what, fault) in faults {
            let stands = unit.with_fault(fault);
            let head = stands.liquid_psig - sound.liquid_psig;
            let power = stands.power_w - sound.power_w;
            let head_what = format!("{name}, {what}: head pressure");
            figures.push(Figure::asked(head_what, "psi", Asked::AtLeast(1.0), head));
            let power_what = format!("{name}, {what}: power");
            figures.push(Figure::asked(power_what, "W", Asked::AtLeast(10.0), power));
        }
    }
    figures
}
