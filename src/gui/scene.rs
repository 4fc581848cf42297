//! What is known before the first look: what the customer says and what the nameplate says.

use super::system::System;
use crate::plant::{Target, Unit};
use crate::scenario::Scenario;
use crate::units::{GaugePressure, Mass, TemperatureDifference};
use crate::words::{Dimension, Quantity};

/// The fixed things about a job that anybody may know.
#[derive(Debug, Clone)]
pub struct Scene {
    /// The title of the scenario.
    pub title: String,
    /// Who called.
    pub customer: String,
    /// Where the unit stands.
    pub place: String,
    /// What they say.
    pub complaint: String,
    /// The refrigerant on the nameplate.
    pub refrigerant: &'static str,
    unit: Unit,
}

impl Scene {
    /// The scene of a scenario.
    pub fn of(scenario: &Scenario) -> Self {
        let customer = &scenario.file.customer;
        Self {
            title: scenario.file.title.clone(),
            customer: flowing(&customer.name),
            place: flowing(&customer.place),
            complaint: flowing(&customer.complaint),
            refrigerant: scenario.unit.refrigerant.get().name(),
            unit: scenario.unit.clone(),
        }
    }

    /// The lines of the nameplate: what, and what it says.
    pub fn nameplate(&self, system: System) -> Vec<(&'static str, String)> {
        let plate = &self.unit.nameplate;
        let mass = |mass: Mass| match system {
            System::InchPound => format!("{:.2} lb", mass.pounds()),
            System::Metric => format!("{:.2} kg", mass.kilograms()),
        };
        let pressure = |pressure: GaugePressure| {
            let (si, dimension) = (pressure.pascals(), Dimension::GaugePressure);
            system.level(Quantity { si, dimension }).to_string()
        };
        let length = |metres: f64| match system {
            System::InchPound => format!("{:.0} ft", metres / 0.3048),
            System::Metric => format!("{metres:.1} m"),
        };
        let charge = format!(
            "{} with {} of line set",
            mass(plate.charge),
            length(plate.covers.metres())
        );
        let rated = format!("{:.1} A", self.unit.electrics.rated.amps());
        let class = self.unit.refrigerant.get().safety_class();
        let degrees = |of: TemperatureDifference| {
            let (si, dimension) = (of.kelvins(), Dimension::TemperatureDifference);
            system.level(Quantity { si, dimension }).to_string()
        };
        let shows = match plate.target {
            Target::SuperheatByChart => "superheat by the charging chart".to_owned(),
            Target::Subcooling(of) => format!("subcooling {}", degrees(of)),
            Target::Superheat(of) => format!("by weight; superheat {}", degrees(of)),
        };
        vec![
            (
                "Refrigerant",
                format!("{}, class {class}", self.refrigerant),
            ),
            ("Factory charge", charge),
            ("Right charge", shows),
            ("Test pressure, low side", pressure(plate.low_side_test)),
            ("Test pressure, high side", pressure(plate.high_side_test)),
            ("Rated load", rated),
        ]
    }
}

/// A text that a file breaks into lines, as one that the window breaks where it must.
pub fn flowing(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
