//! The model beside values from outside the project: one file per source, and all of them in one
//! table.
//!
//! A source is one file with its [`Source`]: a name, where its values come from, their class, and a
//! function that runs the model and sets each value beside ours. The values are in
//! `tests/figures/data`, each file with its source. `tests/figures/main.rs` holds the model to
//! them, `examples/figures.rs` prints them.

mod air_split;
mod airflow_response;
mod bare;
mod charge_response;
mod charging_chart;
mod compressor_bands;
mod compressor_harm;
mod compressor_maps;
mod compressor_spot;
mod data;
mod design_point;
mod expansion_valve_pressures;
mod fault_response;
mod fault_signs;
mod figure;
mod flare_torque;
mod freeze_up;
mod frost;
mod indoor_coil;
mod leak_units;
mod liquid_line;
mod nitrogen;
mod outdoor_pressures_410a;
mod outdoor_response;
mod overcharge_and_air;
mod page;
mod property_tables;
mod pump_down;
mod r454b_chart;
mod rated;
mod single_values;
mod standing;
mod step_length;
mod target_superheat;
mod vacuum;
mod water;
mod water_solubility;

pub use figure::{Asked, Class, Figure};
pub use page::{count, page};

/// One source of values.
#[derive(Debug, Clone, Copy)]
pub struct Source {
    /// Its short name: that of its file.
    pub name: &'static str,
    /// Where the values come from.
    pub origin: &'static str,
    /// The class of its figures, but for those that name another.
    pub class: Class,
    /// Why a figure of it is not met; empty when all are.
    pub why_not: &'static str,
    /// The figures that are not met, each with its miss as measured.
    pub missed: &'static [(&'static str, f64)],
    rows: fn() -> Vec<Figure>,
}

impl Source {
    /// Every source: properties first, then tools, then the running unit.
    pub const ALL: [Self; 32] = [
        property_tables::SOURCE,
        liquid_line::SOURCE,
        r454b_chart::SOURCE,
        water::SOURCE,
        water_solubility::SOURCE,
        nitrogen::SOURCE,
        leak_units::SOURCE,
        flare_torque::SOURCE,
        charging_chart::SOURCE,
        vacuum::SOURCE,
        standing::SOURCE,
        step_length::SOURCE,
        compressor_spot::SOURCE,
        compressor_maps::SOURCE,
        compressor_bands::SOURCE,
        design_point::SOURCE,
        indoor_coil::SOURCE,
        outdoor_response::SOURCE,
        airflow_response::SOURCE,
        charge_response::SOURCE,
        expansion_valve_pressures::SOURCE,
        outdoor_pressures_410a::SOURCE,
        air_split::SOURCE,
        single_values::SOURCE,
        fault_signs::SOURCE,
        fault_response::SOURCE,
        target_superheat::SOURCE,
        overcharge_and_air::SOURCE,
        pump_down::SOURCE,
        frost::SOURCE,
        freeze_up::SOURCE,
        compressor_harm::SOURCE,
    ];

    /// The source of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|source| source.name == name)
    }

    /// Runs the model and sets it beside every value of the source.
    pub fn figures(&self) -> Vec<Figure> {
        let mut figures = (self.rows)();
        for figure in &mut figures {
            figure.class.get_or_insert(self.class);
        }
        figures
    }
}
