//! What is true inside, for those who may see it.

/// What is true inside the circuit and of what left it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Truth {
    /// Refrigerant that went to the air since the start, kg.
    pub refrigerant_released: f64,
    /// Refrigerant in the unit, kg, with what the oil holds.
    pub charge: f64,
    /// What belongs in this unit with its line set, kg.
    pub nominal_charge: f64,
    /// Air and nitrogen in the unit, kg.
    pub permanent_gas: f64,
    /// Air alone in the unit, kg.
    pub air: f64,
    /// Water in the unit outside the drier's desiccant, kg.
    pub water: f64,
    /// Water that the drier's desiccant holds, kg.
    pub drier_water: f64,
    /// The highest pressure of the nodes between the service valves, Pa absolute.
    pub line_set_pressure: f64,
    /// Superheat at the suction valve, K; not a number when that is not vapour.
    pub superheat: f64,
    /// Target superheat at this weather by the charging chart, K; `None` where it has no cell.
    pub target_superheat: Option<f64>,
    /// Subcooling at the liquid valve, K.
    pub subcooling: f64,
    /// Temperature before the drier less that after it, K.
    pub drop_across_drier: f64,
    /// What leaks to the air now, kg/s of refrigerant.
    pub leak: f64,
    /// Whether the compressor runs, and for how long without a stop, s.
    pub running_for: f64,
}
