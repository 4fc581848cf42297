//! A unit alone: sound, with its nominal charge, in standard weather.

use super::{Cart, Costs, Customer, Diagnostic, Document, Scenario, ScenarioFile, Site, load};
use crate::plant::Unit;
use crate::units::{Fraction, Temperature};
use std::path::Path;

impl Scenario {
    /// A sound unit at the rating point A, 95 °F outdoors and 80/67 °F indoors, on the line set
    /// that its nameplate covers, with nothing asked. Source: AHRI 210/240.
    pub fn of_unit(name: &str, unit: Unit) -> Self {
        let site = Site {
            outdoor: Temperature::from_fahrenheit(95.0),
            outdoor_humidity: Fraction::clamped(0.4),
            indoor: Temperature::from_fahrenheit(80.0),
            indoor_wet_bulb: Temperature::from_fahrenheit(67.0),
            line_set: unit.nameplate.covers,
        };
        let customer = Customer {
            name: String::new(),
            place: String::new(),
            complaint: String::new(),
        };
        let file = ScenarioFile {
            version: 1,
            title: unit.name.clone(),
            trains: String::new(),
            level: 1,
            unit: name.to_owned(),
            seed: 0,
            site,
            customer,
            faults: Vec::new(),
            cart: Cart::default(),
            costs: Costs::default(),
            hints: Vec::new(),
            pass: Fraction::ONE,
            rubric: Vec::new(),
        };
        Self {
            unit,
            name: name.to_owned(),
            file,
            digest: String::new(),
            unit_digest: String::new(),
        }
    }

    /// The unit of a shipped name alone.
    pub fn of_shipped_unit(name: &str) -> Option<Self> {
        super::units::unit_named(name).map(|unit| Self::of_unit(name, unit))
    }

    /// The unit of a file alone, or everything that is wrong with the file.
    pub fn of_unit_file(path: &Path) -> Result<Self, Vec<Diagnostic>> {
        let bytes = load::read_file(path)?;
        let shown = path.display().to_string();
        let document = Document::split(&shown, &bytes).map_err(|wrong| vec![wrong])?;
        let unit = document.read::<Unit>()?;
        let name = path
            .file_stem()
            .map(|stem| stem.to_string_lossy().into_owned());
        Ok(Self::of_unit(&name.unwrap_or_default(), unit))
    }
}
