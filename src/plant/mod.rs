//! The split system: one file per part, and the network that ties them.

mod drier;
mod electrics;
pub mod faults;
mod fittings;
mod joint;
mod service_valve;
mod spot;

pub use drier::Arrow;
pub use electrics::{Electrics, ElectricsData, PressureSwitch, ThermostatCall};
pub use faults::{Fault, FaultKind};
pub use fittings::Fittings;
pub use joint::{FlareSize, Joint, JointState, Made};
pub use service_valve::{Line, PortState, ServiceValve};
pub use spot::Spot;
