//! The one vocabulary that files, journal, window and marking share: what a person can do
//! (actions), what an instrument can show (readings), what the watch can note (findings) and what
//! goes on the job sheet.

mod action;
mod action_text;
mod finding;
mod finding_text;
mod level;
mod milestone;
mod name;
mod place;
mod plain;
mod plant_names;
mod reading;
mod sheet_field;

pub use crate::kit::{GaugePlace, Hose, HoseEnd, ThermometerPlace};
pub use crate::plant::{Arrow, Joint, Line, Spot, ThermostatCall};
pub use crate::units::quantity::{Dimension, Quantity, Shown};
pub use action::{Action, DisconnectMove};
pub use finding::{Finding, FindingKind};
pub use level::{Bound, Level};
pub use milestone::{Condition, Milestone, Status};
pub use place::{Part, Where};
pub use plain::{PersonName, plain};
pub use reading::Reading;
pub use sheet_field::{Diagnosis, SheetField};
