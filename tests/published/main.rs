//! Checks against published values: one file per source, with the source in its head.
//!
//! Most of them hold the figures of `coldbench figures`; `data/` has the published tables.

mod airflow_response;
mod charge_response;
mod charging_chart;
mod compressor_harm;
mod compressor_spot;
mod design_point;
mod expansion_valve_pressures;
mod fault_signs;
mod flare_torque;
mod freeze_up;
mod frost;
mod held;
mod indoor_coil;
mod leak_units;
mod liquid_line;
mod nitrogen;
mod outdoor_response;
mod overcharge_and_air;
mod page;
mod pressure_cards;
mod property_tables;
mod pump_down;
mod standing;
mod step_length;
mod table;
mod target_superheat;
mod vacuum;
mod water;
mod water_solubility;
