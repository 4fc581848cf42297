//! Checks against published values. Each names its source; `data/` holds the longer tables.

#[path = "../plant_common/mod.rs"]
mod bench;
mod figures;
mod nitrogen_gas;
mod refrigerant_tables;
mod system;
mod table;
mod vacuum;
mod water_solubility;
mod water_vapour;
