//! `coldbench settle SCENARIO|UNIT`: what the instruments will read, before class.

use super::table::Table;
use super::{Answer, find, rated};
use crate::job::{Overrides, Settled, settle};
use crate::plant::{Fault, FaultKind};
use crate::scenario::{RatingPoint, Scenario};
use crate::units::Temperature;
use anyhow::{Context, bail, ensure};
use serde_json::{Value, json};

/// Run a unit to a steady state and print what the instruments will read and what is true.
///
/// Takes a scenario, or a unit alone: healthy, with its nominal charge, at 95 °F outdoors and in
/// the room in which it is rated: 80 °F dry bulb, 67 °F wet bulb where its file does not say
/// otherwise. The last line says how it came out: at rest, cycling, tripped, frozen, not settled or
/// not a number. The answer is yes when it came to rest.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a switch of the command line"
)]
#[derive(Debug, clap::Args)]
pub struct Settle {
    /// A scenario or a unit, by the name of a shipped one or by its file.
    #[arg(
        value_name = "SCENARIO|UNIT",
        required_unless_present_any = ["list_faults", "every_unit"]
    )]
    what: Option<String>,
    /// The air of a rating point: A has 95 °F outdoors, B 82 °F, both the unit's rated room.
    #[arg(
        long,
        value_name = "A|B",
        value_parser = point,
        conflicts_with_all = ["outdoor_f", "indoor_f", "indoor_wb_f"]
    )]
    point: Option<RatingPoint>,
    /// Settle every shipped unit, healthy, at the rating points A and B.
    #[arg(long, conflicts_with_all = ["what", "point"])]
    every_unit: bool,
    /// Outdoor air, °F.
    #[arg(long, value_name = "FAHRENHEIT", allow_negative_numbers = true)]
    outdoor_f: Option<f64>,
    /// Return air, dry bulb, °F.
    #[arg(long, value_name = "FAHRENHEIT", allow_negative_numbers = true)]
    indoor_f: Option<f64>,
    /// Return air, wet bulb, °F.
    #[arg(long, value_name = "FAHRENHEIT", allow_negative_numbers = true)]
    indoor_wb_f: Option<f64>,
    /// Refrigerant, % of what belongs in the unit.
    #[arg(long, value_name = "PERCENT")]
    charge_percent: Option<f64>,
    /// Plant a fault of this size; can be given several times.
    #[arg(long, value_name = "KIND=SIZE", value_parser = fault)]
    fault: Vec<Fault>,
    /// Leave the scenario's own faults out.
    #[arg(long)]
    no_faults: bool,
    /// Print the kinds of fault, the units of their sizes and their ranges.
    #[arg(long)]
    list_faults: bool,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Air that the fluids know well, °F.
const AIR: std::ops::RangeInclusive<f64> = 0.0..=140.0;

impl Settle {
    /// Settles it.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        if self.list_faults {
            return self.list();
        }
        if self.every_unit {
            return rated::every_unit(self.json);
        }
        let what = self.what.as_deref().context("name a scenario or a unit")?;
        let scenario = find::scenario_or_unit(what)?;
        let overrides = self.overrides(&scenario)?;
        overrides.check(&scenario)?;
        let (settled, wall_ms) = timed(|| settle(&scenario, &overrides));
        if self.json {
            let mut value = serde_json::to_value(settled)?;
            value["wall_ms"] = json!(wall_ms);
            return Answer::json(settled.settled, &value);
        }
        Ok(Answer::new(settled.settled, text(&settled)))
    }

    fn overrides(&self, scenario: &Scenario) -> anyhow::Result<Overrides> {
        if let Some(percent) = self.charge_percent {
            let (_, too_much) = FaultKind::Overcharge.sheet().range;
            let most = 100.0 * (1.0 + too_much);
            ensure!(
                (0.0..=most).contains(&percent),
                "--charge-percent must lie in 0..={most}, found {percent}"
            );
        }
        let rated = rated::air(&scenario.unit, self.point);
        Ok(Overrides {
            outdoor: air(self.outdoor_f, "--outdoor-f")?.or(rated.outdoor),
            indoor: air(self.indoor_f, "--indoor-f")?.or(rated.indoor),
            indoor_wet_bulb: air(self.indoor_wb_f, "--indoor-wb-f")?.or(rated.indoor_wet_bulb),
            charge: self.charge_percent.map(|percent| percent / 100.0),
            no_faults: self.no_faults,
            faults: self.fault.clone(),
        })
    }

    fn list(&self) -> anyhow::Result<Answer> {
        if self.json {
            let sheets = FaultKind::ALL.map(|kind| {
                let sheet = kind.sheet();
                json!({
                    "kind": sheet.name,
                    "label": kind.label().to_string(),
                    "unit": sheet.unit,
                    "least": sheet.range.0,
                    "most": sheet.range.1,
                })
            });
            return Answer::json(true, &Value::from(sheets.to_vec()));
        }
        let mut table = Table::with_head(&["kind", "least", "most", "size"]);
        for sheet in FaultKind::ALL.map(FaultKind::sheet) {
            let (least, most) = sheet.range;
            table.row([
                sheet.name.to_owned(),
                least.to_string(),
                most.to_string(),
                sheet.unit.to_owned(),
            ]);
        }
        Ok(Answer::new(true, table.text()))
    }
}

/// A rating point as the command line writes it.
fn point(letter: &str) -> anyhow::Result<RatingPoint> {
    let mut points = RatingPoint::ALL.into_iter();
    points
        .find(|point| point.letter().eq_ignore_ascii_case(letter))
        .with_context(|| format!("`{letter}` is no rating point: write A or B"))
}

fn air(fahrenheit: Option<f64>, option: &str) -> anyhow::Result<Option<Temperature>> {
    let Some(f) = fahrenheit else {
        return Ok(None);
    };
    let (low, high) = (AIR.start(), AIR.end());
    ensure!(
        AIR.contains(&f),
        "{option} must lie in {low}..={high} °F, found {f}"
    );
    Ok(Some(Temperature::from_fahrenheit(f)))
}

/// A fault as the command line writes it: `clogged-drier=0.9`.
fn fault(written: &str) -> anyhow::Result<Fault> {
    let (name, size) = written
        .split_once('=')
        .context("write KIND=SIZE; --list-faults prints the kinds")?;
    let Some(kind) = FaultKind::named(name) else {
        bail!("`{name}` is no kind of fault; --list-faults prints them");
    };
    let size: f64 = size
        .parse()
        .with_context(|| format!("`{size}` is no number"))?;
    let sheet = kind.sheet();
    let (least, most) = sheet.range;
    ensure!(
        (least..=most).contains(&size),
        "{name} must lie in {least}..={most} ({}), found {size}",
        sheet.unit
    );
    Ok((sheet.of_size)(size))
}

/// Runs it and gives the milliseconds that it took on the clock of the wall.
#[expect(
    clippy::disallowed_methods,
    reason = "the speed of the program is asked for"
)]
fn timed<T>(run: impl FnOnce() -> T) -> (T, f64) {
    let start = std::time::Instant::now();
    let result = run();
    (result, start.elapsed().as_secs_f64() * 1e3)
}

fn text(s: &Settled) -> String {
    let rows = [
        ("suction pressure", s.suction_psig, "psig", 1),
        ("liquid pressure", s.liquid_psig, "psig", 1),
        ("discharge pressure", s.discharge_psig, "psig", 1),
        ("evaporating", s.evaporating_f, "°F", 1),
        ("condensing", s.condensing_f, "°F", 1),
        ("superheat at the suction valve", s.superheat_f, "°F", 1),
        ("superheat at the coil", s.coil_superheat_f, "°F", 1),
        ("subcooling", s.subcooling_f, "°F", 1),
        ("discharge line", s.discharge_f, "°F", 1),
        ("air rise outdoors", s.condenser_air_rise_f, "°F", 1),
        ("air drop indoors", s.evaporator_air_drop_f, "°F", 1),
        ("capacity", s.capacity_btu_h, "Btu/h", 0),
        ("power", s.power_w, "W", 0),
        ("of it the compressor", s.compressor_w, "W", 0),
        ("compressor current", s.compressor_amps, "A", 1),
        ("refrigerant flow", s.flow_kg_h, "kg/h", 1),
        ("charge", s.charge_kg, "kg", 3),
    ];
    let head = if s.settled { "at rest" } else { "at last" };
    let mut table = Table::with_head(&[head, "", ""]);
    for (name, value, unit, digits) in rows {
        table.row([
            name.to_owned(),
            if value.is_finite() {
                format!("{value:.digits$}")
            } else {
                "none".to_owned()
            },
            unit.to_owned(),
        ]);
    }
    let came = s.outcome.sentence(s.simulated_s);
    format!("{}{came}\n", table.text())
}
