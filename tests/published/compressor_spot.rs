//! The compressor beside a published map.
//!
//! Source: `EnergyPlus` data set `RefrigerationCompressorCurves`, ERF1-0311-TAC,
//! `data/compressor_spot.csv`.

use crate::held::holds;

/// The unit's efficiency falls off its best ratio by more than that machine's, which the weather's
/// response asks for: the power at 115 °F, NREL/TP-5500-56354.
#[test]
fn the_compressor_pumps_as_one_of_its_size() {
    holds(
        "compressor_spot",
        &[("-10/40 °C: power against 7.2/46.1 °C", 0.222)],
    );
}
