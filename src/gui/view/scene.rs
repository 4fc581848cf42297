//! What is known before the first look: what the customer says and what the nameplate says.

use crate::gui::view::System;
use crate::plant::{Target, Unit};
use crate::scenario::Scenario;
use crate::text::Message;
use crate::units::{GaugePressure, Mass, TemperatureDifference};
use crate::words::{Dimension, Quantity};

/// The fixed things about a job that anybody may know.
#[derive(Debug, Clone)]
pub struct Scene {
    /// The title of the scenario.
    pub title: Message,
    /// Who called.
    pub customer: String,
    /// Where the unit stands.
    pub place: Message,
    /// What they say.
    pub complaint: Message,
    /// The refrigerant on the nameplate.
    pub refrigerant: &'static str,
    unit: Unit,
}

impl Scene {
    /// The scene of a scenario.
    pub fn of(scenario: &Scenario) -> Self {
        let customer = &scenario.file.customer;
        Self {
            title: Message::of_scenario(scenario.file.title.clone()),
            customer: flowing(&customer.name),
            place: Message::of_scenario(flowing(&customer.place)),
            complaint: Message::of_scenario(flowing(&customer.complaint)),
            refrigerant: scenario.unit.refrigerant.get().name(),
            unit: scenario.unit.clone(),
        }
    }

    /// The lines of the nameplate: what, and what it says.
    pub fn nameplate(&self, system: System) -> Vec<(Message, Message)> {
        let plate = &self.unit.nameplate;
        let mass = |mass: Mass| match system {
            System::InchPound => format!("{:.2} lb", mass.pounds()),
            System::Metric => format!("{:.2} kg", mass.kilograms()),
        };
        let pressure = |pressure: GaugePressure| {
            let (si, dimension) = (pressure.pascals(), Dimension::GaugePressure);
            system.level(Quantity { si, dimension }).words()
        };
        let length = |metres: f64| match system {
            System::InchPound => format!("{:.0} ft", metres / 0.3048),
            System::Metric => format!("{metres:.1} m"),
        };
        let charge = Message::new("plate-charge")
            .with("mass", mass(plate.charge))
            .with("length", length(plate.covers.metres()));
        let rated = format!("{:.1} A", self.unit.electrics.rated.amps());
        let class = self.unit.refrigerant.get().safety_class().name();
        let degrees = |of: TemperatureDifference| {
            let (si, dimension) = (of.kelvins(), Dimension::TemperatureDifference);
            system.level(Quantity { si, dimension }).words()
        };
        let shows = match plate.target {
            Target::SuperheatByChart => Message::new("plate-superheat-by-chart"),
            Target::Subcooling(of) => Message::new("plate-subcooling").with("degrees", degrees(of)),
            Target::Superheat(of) => Message::new("plate-by-weight").with("degrees", degrees(of)),
        };
        vec![
            (
                Message::new("plate-refrigerant"),
                Message::new("plate-of-class")
                    .with("name", self.refrigerant.to_owned())
                    .with("class", class.to_string()),
            ),
            (Message::new("plate-factory-charge"), charge),
            (Message::new("plate-right-charge"), shows),
            (
                Message::new("plate-test-low"),
                pressure(plate.low_side_test),
            ),
            (
                Message::new("plate-test-high"),
                pressure(plate.high_side_test),
            ),
            (Message::new("plate-rated-load"), rated.into()),
        ]
    }
}

/// A text that a file breaks into lines, as one that the window breaks where it must.
pub fn flowing(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
