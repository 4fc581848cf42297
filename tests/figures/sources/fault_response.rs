//! What one fault at a time costs in capacity and power.

use super::data::{Row, rows};
use super::rated::Rated;
use super::{Class, Figure, Source};
use coldbench::job::{Overrides, Settled, TICKS_PER_SECOND};
use coldbench::plant::{Fault, Section, ThermostatCall};
use coldbench::units::{Fraction, Mass, PSI, Temperature};
use coldbench::words::Action;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "fault_response",
    origin: "Fits of capacity and power (compressor and condenser fan) by Purdue, coefficients in \
        the fault models of NREL OpenStudio, at rated COP 3.74 and 19.4 °C indoor wet bulb, beside \
        the R-410A unit with an expansion valve; a restriction by its own loss against the sound \
        unit's pressure difference. Tolerance 0.03 of capacity, 0.04 of power.",
    class: Class::Curve,
    why_not: "The fits are of other units than this one, which has an expansion valve \
        with reserve and a receiver-less coil: capacity above 1 with less condenser air or with \
        gas inside is within their scatter, and a restriction costs nothing until the valve \
        stands open.",
    missed: &[
        ("condenser airflow lost 0.2 at 27.8 °C: capacity", 0.0073),
        ("condenser airflow lost 0.3 at 27.8 °C: capacity", 0.0247),
        ("condenser airflow lost 0.4 at 27.8 °C: capacity", 0.0351),
        ("condenser airflow lost 0.5 at 27.8 °C: capacity", 0.036),
        ("condenser airflow lost 0.5 at 27.8 °C: power", 0.023),
        ("condenser airflow lost 0.3 at 35 °C: capacity", 0.0013),
        ("condenser airflow lost 0.4 at 35 °C: capacity", 0.0045),
        ("condenser airflow lost 0.4 at 35 °C: power", 0.0068),
        ("condenser airflow lost 0.5 at 35 °C: power", 0.0468),
        ("liquid line restriction 0.1 at 27.8 °C: capacity", 0.0148),
        ("liquid line restriction 0.15 at 27.8 °C: capacity", 0.0518),
        ("liquid line restriction 0.2 at 27.8 °C: capacity", 0.0933),
        ("liquid line restriction 0.25 at 27.8 °C: capacity", 0.137),
        ("liquid line restriction 0.1 at 35 °C: capacity", 0.0059),
        ("liquid line restriction 0.15 at 35 °C: capacity", 0.0369),
        ("liquid line restriction 0.2 at 35 °C: capacity", 0.0784),
        ("liquid line restriction 0.25 at 35 °C: capacity", 0.119),
        ("charge lost 0.2 at 27.8 °C: power", 0.0049),
        ("charge lost 0.3 at 27.8 °C: power", 0.0156),
        ("charge lost 0.2 at 35 °C: power", 0.0086),
        ("charge lost 0.3 at 35 °C: power", 0.015),
        ("non condensable 0.2 at 27.8 °C: capacity", 0.0048),
        ("non condensable 0.4 at 27.8 °C: capacity", 0.0347),
        ("non condensable 0.6 at 27.8 °C: capacity", 0.0607),
        ("non condensable 0.6 at 27.8 °C: power", 0.0103),
        ("non condensable 0.8 at 27.8 °C: capacity", 0.0806),
        ("non condensable 0.8 at 27.8 °C: power", 0.0286),
        ("non condensable 0.4 at 35 °C: capacity", 0.019),
        ("non condensable 0.6 at 35 °C: capacity", 0.0355),
        ("non condensable 0.6 at 35 °C: power", 1.66e-4),
        ("non condensable 0.8 at 35 °C: capacity", 0.0471),
        ("non condensable 0.8 at 35 °C: power", 0.0168),
    ],
    rows: figures,
};

/// Density of air at 20 °C and one atmosphere, kg/m³.
const AIR: f64 = 1.204;

fn figures() -> Vec<Figure> {
    let unit = Rated::valve();
    let table = include_str!("../data/fault_response.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let outdoor = row.number("outdoor_c");
        let sound = with(&unit, outdoor, &[], None);
        let stands = with_fault(&unit, &sound, &row);
        let (fault, level) = (row.text("fault").replace('_', " "), row.number("level"));
        let place = format!("{fault} {level} at {outdoor} °C");
        let mut ask = |what, tolerance, of: &dyn Fn(&Settled) -> f64| {
            let published = row.number(what);
            let (what, ours) = (format!("{place}: {what}"), of(&stands) / of(&sound));
            figures.push(Figure::near(what, "ratio", published, tolerance, ours));
        };
        ask("capacity", 0.03, &|s| s.capacity_btu_h);
        let blower = unit.unit().evaporator.blower.watts();
        ask("power", 0.04, &|s| s.power_w - blower);
    }
    figures
}

fn with(unit: &Rated, outdoor: f64, faults: &[Fault], charge: Option<f64>) -> Settled {
    unit.settle(&Overrides {
        outdoor: Some(Temperature::from_celsius(outdoor)),
        faults: faults.to_vec(),
        charge,
        ..Overrides::default()
    })
}

/// How the unit stands with the fault of a row.
fn with_fault(unit: &Rated, sound: &Settled, row: &Row) -> Settled {
    let (outdoor, level) = (row.number("outdoor_c"), row.number("level"));
    let fault = match row.text("fault") {
        "charge_lost" => return with(unit, outdoor, &[], Some(1.0 - level)),
        "liquid_line_restriction" => return restricted(unit, sound, outdoor, level),
        "condenser_airflow_lost" => Fault::FouledCondenser(Fraction::clamped(level)),
        "non_condensable" => {
            let fills = AIR * volume(unit);
            Fault::AirInside(Mass::from_kilograms(level * fills))
        }
        other => panic!("no fault is made of {other}"),
    };
    with(unit, outdoor, &[fault], None)
}

/// The clogged drier that loses this share of the sound unit's pressure difference from liquid to
/// suction.
fn restricted(unit: &Rated, sound: &Settled, outdoor: f64, level: f64) -> Settled {
    let asked = level * (sound.liquid_psig - sound.suction_psig);
    let mut open = 0.05;
    for _ in 0..4 {
        let share = Fraction::clamped(1.0 - open);
        open *= (lost(unit, outdoor, Fault::CloggedDrier(share)) / asked).sqrt();
    }
    let share = Fraction::clamped(1.0 - open);
    with(unit, outdoor, &[Fault::CloggedDrier(share)], None)
}

/// The pressure that a running unit loses over its drier, psi.
fn lost(unit: &Rated, outdoor: f64, fault: Fault) -> f64 {
    let overrides = Overrides {
        outdoor: Some(Temperature::from_celsius(outdoor)),
        faults: vec![fault],
        ..Overrides::default()
    };
    let mut job = unit.job_with(&overrides);
    let cool = Action::Thermostat(ThermostatCall::Cool);
    job.apply(cool).expect("anybody can reach the thermostat");
    for _ in 0..15 * 60 * TICKS_PER_SECOND {
        job.tick();
    }
    let pressure = |place| job.plant().pressure(place) / PSI;
    pressure(Section::LiquidLine) - pressure(Section::AfterDrier)
}

/// Volume of the whole circuit, m³.
fn volume(unit: &Rated) -> f64 {
    let unit = unit.unit();
    [
        unit.compressor.shell,
        unit.compressor.discharge,
        unit.condenser.volume,
        unit.liquid_line.volume,
        unit.evaporator.volume,
        unit.suction_line.volume,
    ]
    .iter()
    .map(|volume| volume.cubic_metres())
    .sum()
}
