//! Scenarios: what was asked. Schema, loading, checking, diagnostics.

mod rubric;
mod schema;

pub use rubric::{Criterion, EndState, Rule};
pub use schema::{Cart, Customer, Scenario, ScenarioFile, Site};
