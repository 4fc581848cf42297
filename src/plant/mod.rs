//! The split system: one file per part, and the network that ties them.

mod circuit;
mod compressor;
mod condenser;
mod desiccant;
mod drier;
mod electrics;
mod evaporator;
pub mod faults;
mod fittings;
mod joint;
mod lines;
mod metering;
pub mod network;
mod oil;
mod operating;
mod service_valve;
mod spot;
mod unit;
mod zones;

pub use circuit::{Air, Conditions, Link, Place, Plant, TICK};
pub use compressor::CompressorData;
pub use condenser::CondenserData;
pub use desiccant::DrierData;
pub use drier::Arrow;
pub use electrics::{Electrics, ElectricsData, PressureSwitch, ThermostatCall};
pub use evaporator::EvaporatorData;
pub use faults::{Fault, FaultKind};
pub use fittings::Fittings;
pub use joint::{FlareSize, Joint, JointState, Made};
pub use lines::LineData;
pub use metering::MeteringData;
pub use operating::Operating;
pub use service_valve::{Line, PortState, ServiceValve};
pub use spot::Spot;
pub use unit::{KnownRefrigerant, Unit};
