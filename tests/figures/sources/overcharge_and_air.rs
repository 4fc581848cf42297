//! What too much refrigerant and what air do to a running unit.

use super::rated::of_both;
use super::{Asked, Class, Figure, Source};
use coldbench::plant::Fault;
use coldbench::units::{Fraction, Mass};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "overcharge_and_air",
    origin: "Head pressure and power rise with an overcharge and with air inside (published fits \
        agree on the direction only; common practice, no source).",
    class: Class::CommonPractice,
    why_not: "",
    missed: &[],
    rows: figures,
};

fn figures() -> Vec<Figure> {
    let faults = [
        ("20 % too much", Fault::Overcharge(Fraction::clamped(0.2))),
        ("10 g of air", Fault::AirInside(Mass::from_grams(10.0))),
    ];
    of_both(|name, unit| {
        let sound = unit.at_rating();
        let of_fault = |(what, fault)| {
            let stands = unit.with_fault(fault);
            let head = stands.liquid_psig - sound.liquid_psig;
            let power = stands.power_w - sound.power_w;
            let least = |what: String, unit, least, ours| {
                Figure::asked(what, unit, Asked::AtLeast(least), ours)
            };
            [
                least(format!("{name}, {what}: head pressure"), "psi", 1.0, head),
                least(format!("{name}, {what}: power"), "W", 10.0, power),
            ]
        };
        faults.into_iter().flat_map(of_fault).collect()
    })
}
