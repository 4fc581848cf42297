//! Capacity and power by the indoor air.
//!
//! Source: NREL/TP-5500-56354, `data/airflow_response.csv`.

use crate::held::holds;

#[test]
fn capacity_and_power_follow_the_indoor_air() {
    holds("airflow_response", &[]);
}
