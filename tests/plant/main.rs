//! The bare plant: service work, deep vacuum, faults, and the liquid receiver.

mod coil_air;
mod common;
mod evacuation;
mod faults;
mod receiver;
mod service;
mod weather;
