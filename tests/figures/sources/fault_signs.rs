//! Which way each fault moves each temperature.

use super::data::rows;
use super::rated::Rated;
use super::{Asked, Class, Figure, Source};
use coldbench::job::Settled;
use coldbench::plant::Fault;
use coldbench::units::{Area, Fraction};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "fault_signs",
    origin: "Direction of change against the sound unit, fixed orifice, cooling: Rossi & Braun \
        1997, HVAC&R Research 3(1), rule table; 0.2 °F at least, at a size that shows.",
    class: Class::Published,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// A temperature of the table and how it is read off.
type Sign = (&'static str, fn(&Settled) -> f64);

const SIGNS: [Sign; 7] = [
    ("evaporating_temperature", |s| s.evaporating_f),
    ("superheat", |s| s.superheat_f),
    ("condensing_temperature", |s| s.condensing_f),
    ("subcooling", |s| s.subcooling_f),
    ("discharge_temperature", |s| s.discharge_f),
    ("condenser_air_rise", |s| s.condenser_air_rise_f),
    ("evaporator_air_drop", |s| s.evaporator_air_drop_f),
];

/// A fault of a size that an instructor would plant. Chosen.
fn fault(name: &str) -> Option<Fault> {
    let share = Fraction::clamped;
    Some(match name {
        "refrigerant_leak" => Fault::Undercharge(share(0.2)),
        "compressor_valve_leakage" => {
            Fault::WeakCompressorValves(Area::from_square_millimetres(1.0))
        }
        "liquid_line_restriction" => Fault::CloggedDrier(share(0.93)),
        "condenser_fouling" => Fault::FouledCondenser(share(0.6)),
        "evaporator_fouling" => Fault::DirtyFilter(share(0.3)),
        _ => return None,
    })
}

fn figures() -> Vec<Figure> {
    let unit = Rated::orifice();
    let sound = unit.at_rating();
    let mut figures = Vec::new();
    for row in rows(include_str!("../data/fault_signs.csv")) {
        let name = row.text("fault");
        let stands = fault(name).map(|fault| unit.with_fault(fault));
        for (column, read) in SIGNS {
            let ours = stands.as_ref().map_or(f64::NAN, |s| read(s) - read(&sound));
            let asked = match row.text(column) {
                "+" => Asked::AtLeast(0.2),
                _ => Asked::AtMost(-0.2),
            };
            let what = format!("{name}: {column}").replace('_', " ");
            figures.push(Figure::asked(what, "°F", asked, ours));
        }
    }
    figures
}
