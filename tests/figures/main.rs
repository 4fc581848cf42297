//! Checks against values from outside the project: one file per source in `sources/`, its values in
//! `data/` with their source in the head.
//!
//! `cargo run --example figures` prints the same figures.

mod held;
mod page;
mod pressure_cards;
mod property_tables;
mod sources;
mod table;
mod water;
mod water_solubility;

/// A test for each source of figures.
macro_rules! sources_hold {
    ($($source:ident)*) => {
        mod holds {
            $(#[test]
            fn $source() {
                crate::held::holds(stringify!($source));
            })*
        }

        /// A source that is not on this list would not be held.
        #[test]
        fn every_source_is_held() {
            let held = [$(stringify!($source)),*];
            let all = crate::sources::Source::ALL.map(|source| source.name);
            assert_eq!(held.as_slice(), all.as_slice());
        }
    };
}

sources_hold! {
    property_tables liquid_line r454b_chart water water_solubility nitrogen leak_units flare_torque
    charging_chart vacuum standing step_length compressor_spot compressor_maps compressor_bands
    design_point indoor_coil outdoor_response airflow_response charge_response
    expansion_valve_pressures outdoor_pressures_410a air_split single_values fault_signs
    fault_response target_superheat overcharge_and_air pump_down frost freeze_up compressor_harm
}
