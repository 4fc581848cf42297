//! The one vocabulary that files, journal, window and marking share: what a person can do
//! (actions), what an instrument can show (readings), what the watch can note (findings) and what
//! goes on the job sheet.

mod action;
mod finding;
mod level;
mod milestone;
mod name;
mod plain;
mod plant_names;
mod reading;
mod sheet_field;

pub use crate::kit::{GaugePlace, Hose, HoseEnd, ThermometerPlace};
pub use crate::plant::{Arrow, Joint, Line, Spot, ThermostatCall};
pub use action::{Action, DisconnectMove};
pub use finding::{Finding, FindingKind};
pub use level::{Bound, Dimension, Level, Quantity};
pub use milestone::{Condition, Milestone, Status};
pub use plain::{PersonName, plain};
pub use reading::{Reading, Shown};
pub use sheet_field::{Diagnosis, SheetField};
