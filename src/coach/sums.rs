//! The arithmetic of the job sheet: a sum that does not follow from the values written beside it.

use crate::fluid::refrigerant::Refrigerant;
use crate::job::charging_chart::target_superheat;
use crate::job::{Entry, JobSheet};
use crate::marking::evidence::{as_written, level};
use crate::text::Message;
use crate::units::{GaugePressure, Temperature};
use crate::words::{Dimension, Quantity, SheetField};

/// How far a sum may be off its own figures, K. Chosen: 2 °F, for gauges are read to a psi, pipes
/// and charts to a degree.
const SLACK: f64 = 2.0 / 1.8;

/// A sum that is off.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// Which blank.
    pub field: SheetField,
    /// What the written figures give, K.
    pub gives: f64,
    /// The sum, with its figures, in the units in which they were written.
    pub text: Message,
}

/// The sums on a sheet that do not follow from its figures. One that is older than a figure it
/// takes was made from other figures: nothing can be said of it.
pub fn slips(sheet: &JobSheet, refrigerant: &Refrigerant) -> Vec<Slip> {
    [
        superheat(sheet, refrigerant),
        subcooling(sheet, refrigerant),
        target(sheet),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn superheat(sheet: &JobSheet, refrigerant: &Refrigerant) -> Option<Slip> {
    let (sum, [pressure, pipe]) = figures(
        sheet,
        SheetField::Superheat,
        [SheetField::SuctionPressure, SheetField::SuctionLine],
    )?;
    let (_, dew) = refrigerant.saturation(GaugePressure::from_pascals(si(pressure)));
    let gives = off_by(sum, si(pipe) - dew.kelvin())?;
    let text = Message::new("coach-slip-superheat")
        .with("pipe", level(pipe.value))
        .with(
            "saturation",
            as_written(temperature(dew.kelvin()), pipe.value),
        )
        .with("pressure", level(pressure.value))
        .with("gives", as_written(gives, sum.value))
        .with("wrote", level(sum.value));
    Some(Slip::new(SheetField::Superheat, gives, text))
}

fn subcooling(sheet: &JobSheet, refrigerant: &Refrigerant) -> Option<Slip> {
    let (sum, [pressure, pipe]) = figures(
        sheet,
        SheetField::Subcooling,
        [SheetField::LiquidPressure, SheetField::LiquidLine],
    )?;
    let (bubble, _) = refrigerant.saturation(GaugePressure::from_pascals(si(pressure)));
    let gives = off_by(sum, bubble.kelvin() - si(pipe))?;
    let text = Message::new("coach-slip-subcooling")
        .with(
            "saturation",
            as_written(temperature(bubble.kelvin()), pipe.value),
        )
        .with("pressure", level(pressure.value))
        .with("pipe", level(pipe.value))
        .with("gives", as_written(gives, sum.value))
        .with("wrote", level(sum.value));
    Some(Slip::new(SheetField::Subcooling, gives, text))
}

fn target(sheet: &JobSheet) -> Option<Slip> {
    let (sum, [outdoor, wet_bulb]) = figures(
        sheet,
        SheetField::TargetSuperheat,
        [SheetField::OutdoorAir, SheetField::ReturnWetBulb],
    )?;
    let [o, w] = [outdoor, wet_bulb].map(|entry| Temperature::from_kelvin(si(entry)));
    let gives = off_by(sum, target_superheat(o, w)?.kelvins())?;
    let text = Message::new("coach-slip-target")
        .with("outdoor", level(outdoor.value))
        .with("bulb", level(wet_bulb.value))
        .with("gives", as_written(gives, sum.value))
        .with("wrote", level(sum.value));
    Some(Slip::new(SheetField::TargetSuperheat, gives, text))
}

/// A sum and the figures it takes, where all are written and the sum is the newest.
fn figures(
    sheet: &JobSheet,
    sum: SheetField,
    takes: [SheetField; 2],
) -> Option<(Entry, [Entry; 2])> {
    let sum = *sheet.entry(sum)?;
    let [a, b] = takes.map(|field| sheet.entry(field).copied());
    let (a, b) = (a?, b?);
    (sum.tick >= a.tick.max(b.tick)).then_some((sum, [a, b]))
}

/// What the figures give, where the sum is off from that.
fn off_by(sum: Entry, gives: f64) -> Option<Quantity> {
    let is_off = (si(sum) - gives).abs() > SLACK;
    is_off.then_some(Quantity {
        si: gives,
        dimension: Dimension::TemperatureDifference,
    })
}

impl Slip {
    const fn new(field: SheetField, gives: Quantity, text: Message) -> Self {
        let gives = gives.si;
        Self { field, gives, text }
    }
}

fn si(entry: Entry) -> f64 {
    entry.value.quantity().si
}

fn temperature(kelvin: f64) -> Quantity {
    Quantity {
        si: kelvin,
        dimension: Dimension::Temperature,
    }
}
