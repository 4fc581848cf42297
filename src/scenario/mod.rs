//! Scenarios: what was asked. Schema, loading, checking, diagnostics.

mod check;
mod diagnostic;
mod document;
mod load;
mod rubric;
mod schema;
mod standard;
mod units;

pub(crate) use check::{check_bound, check_text, check_values, check_version};
pub use diagnostic::Diagnostic;
pub(crate) use document::{Document, ERRORS_MAX, Located};
pub use load::shipped_names;
pub(crate) use load::{in_order, read_file};
pub use rubric::{Criterion, EndState, Rule};
pub use schema::{
    Cart, Costs, Customer, IndoorAir, RoomLoad, Scenario, ScenarioFile, Setting, Site, Space,
    WeatherPoint,
};
pub use standard::RatingPoint;
pub use units::unit_names;
