//! A unit alone: sound, with its nominal charge, in standard weather.

use super::{
    Cart, Costs, Customer, Diagnostic, IndoorAir, Scenario, ScenarioFile, Setting, Site, Space,
    load, units::read_unit,
};
use crate::plant::Unit;
use crate::units::{Fraction, Irradiance, Temperature};
use std::path::Path;

/// The outdoor air at which units are rated, by the letter of the test.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RatingPoint {
    /// 95 °F.
    A,
    /// 82 °F.
    B,
}

impl RatingPoint {
    /// Both.
    pub const ALL: [Self; 2] = [Self::A, Self::B];

    /// Its letter.
    pub const fn letter(self) -> &'static str {
        match self {
            Self::A => "A",
            Self::B => "B",
        }
    }

    /// The outdoor air. Source: AHRI 210/240; the A test of walk-in coolers in AHRI 1250 has the
    /// same air (from memory), their B test is colder.
    pub const fn outdoor(self) -> Temperature {
        Temperature::from_fahrenheit(match self {
            Self::A => 95.0,
            Self::B => 82.0,
        })
    }
}

impl Scenario {
    /// A sound unit at the rating point A in the room in which it is rated, on the line set that
    /// its nameplate covers, with nothing asked.
    pub fn of_unit(name: &str, unit: Unit) -> Self {
        let room = unit.nameplate.room;
        let site = Site {
            outdoor: RatingPoint::A.outdoor(),
            outdoor_humidity: Fraction::clamped(0.4),
            indoor: room.dry_bulb,
            indoor_wet_bulb: room.wet_bulb,
            line_set: unit.nameplate.covers,
            outdoor_space: Space::OpenAir,
            indoor_space: Space::OpenAir,
            sun: Irradiance::default(),
            course: Vec::new(),
            indoor_air: IndoorAir::Held,
            thermostat: Setting::default(),
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

    /// A unit alone from the bytes of its file; `path` is what the person calls the file.
    pub fn of_unit_bytes(path: &str, name: &str, bytes: &[u8]) -> Result<Self, Vec<Diagnostic>> {
        read_unit(path, bytes).map(|unit| Self::of_unit(name, unit))
    }

    /// The unit of a file alone, or everything that is wrong with the file.
    pub fn of_unit_file(path: &Path) -> Result<Self, Vec<Diagnostic>> {
        let bytes = load::read_file(path)?;
        let name = path.file_stem().unwrap_or_default().to_string_lossy();
        Self::of_unit_bytes(&path.display().to_string(), &name, &bytes)
    }
}
