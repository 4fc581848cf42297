//! What is known before the first look: what the customer says and what the nameplate says.

use crate::scenario::Scenario;

/// The fixed things about a job that anybody may know.
#[derive(Debug, Clone, Default)]
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
    pub refrigerant: String,
}

impl Scene {
    /// The scene of a scenario.
    pub fn of(scenario: &Scenario) -> Self {
        let file = &scenario.file;
        Self {
            title: file.title.clone(),
            customer: file.customer.name.clone(),
            place: file.customer.place.clone(),
            complaint: flowing(&file.customer.complaint),
            refrigerant: String::new(),
        }
    }
}

/// A text that a file breaks into lines, as one that the window breaks where it must.
pub fn flowing(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
