//! `coldbench chart REFRIGERANT`: the pressure-temperature chart.

use super::Answer;
use super::table::Table;
use crate::fluid::refrigerant::Refrigerant;
use crate::units::Temperature;
use anyhow::{Context, ensure};
use serde_json::json;

/// Print the pressure-temperature chart of a refrigerant.
#[derive(Debug, clap::Args)]
pub struct Chart {
    /// The refrigerant, such as R-22.
    refrigerant: String,
    /// Only the row of this temperature, °F.
    #[arg(long, value_name = "FAHRENHEIT", allow_negative_numbers = true)]
    at_f: Option<f64>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

impl Chart {
    /// Prints the chart.
    pub(super) fn run(&self) -> anyhow::Result<Answer> {
        let refrigerant = named(&self.refrigerant)?;
        let rows = self.rows(refrigerant)?;
        if self.json {
            let rows: Vec<_> = rows.iter().map(|row| row.json(refrigerant)).collect();
            return match (self.at_f, rows.as_slice()) {
                (Some(_), [row]) => Answer::json(true, row),
                _ => Answer::json(true, &rows),
            };
        }
        let mut table = Table::with_head(&["°F", "bubble psig", "dew psig"]);
        for row in rows {
            table.row([
                format!("{:.1}", row.fahrenheit),
                format!("{:.1}", row.bubble),
                format!("{:.1}", row.dew),
            ]);
        }
        let name = refrigerant.name();
        Ok(Answer::new(true, format!("{name}\n{}", table.text())))
    }

    /// The row asked for, or every 5 °F from -40 °F as far as the refrigerant has both states.
    fn rows(&self, refrigerant: &'static Refrigerant) -> anyhow::Result<Vec<Row>> {
        let (coldest, hottest) = (refrigerant.coldest(), refrigerant.hottest());
        let is_on_it = |f: f64| {
            let t = Temperature::from_fahrenheit(f).kelvin();
            (coldest..=hottest).contains(&t)
        };
        if let Some(f) = self.at_f {
            let (low, high) = (in_fahrenheit(coldest), in_fahrenheit(hottest));
            ensure!(
                is_on_it(f),
                "{} has no such pressure at {f} °F: its chart goes from {low:.0} to {high:.0} °F",
                refrigerant.name()
            );
            return Ok(vec![Row::at(refrigerant, f)]);
        }
        let steps = (-8..=40).map(|step| 5.0 * f64::from(step));
        let steps = steps.filter(|&f| is_on_it(f));
        Ok(steps.map(|f| Row::at(refrigerant, f)).collect())
    }
}

/// One row, in °F and psig.
#[derive(Debug)]
struct Row {
    fahrenheit: f64,
    bubble: f64,
    dew: f64,
}

impl Row {
    fn at(refrigerant: &Refrigerant, fahrenheit: f64) -> Self {
        let (bubble, dew) = refrigerant.pressure(Temperature::from_fahrenheit(fahrenheit));
        Self {
            fahrenheit,
            bubble: bubble.psig(),
            dew: dew.psig(),
        }
    }

    fn json(&self, refrigerant: &Refrigerant) -> serde_json::Value {
        json!({
            "refrigerant": refrigerant.name(),
            "fahrenheit": self.fahrenheit,
            "bubble_psig": self.bubble,
            "dew_psig": self.dew,
        })
    }
}

/// The refrigerant of a name, written with or without its hyphen, in capitals or not.
fn named(name: &str) -> anyhow::Result<&'static Refrigerant> {
    let bare = |name: &str| name.replace('-', "").to_uppercase();
    Refrigerant::all()
        .iter()
        .find(|known| bare(known.name()) == bare(name))
        .with_context(|| {
            let known = Refrigerant::names().join(", ");
            format!("`{name}` is no refrigerant known here; known are {known}")
        })
}

fn in_fahrenheit(kelvin: f64) -> f64 {
    Temperature::from_kelvin(kelvin).fahrenheit()
}
