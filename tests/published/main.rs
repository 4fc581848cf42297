//! Checks against published values. Each names its source; `data/` holds the longer tables.

mod nitrogen_gas;
mod refrigerant_tables;
mod table;
mod water_solubility;
mod water_vapour;
