//! The compressor beside a published map.
//!
//! Source: EnergyPlus data set `RefrigerationCompressorCurves`, ERF1-0311-TAC, `data/compressor_spot.csv`.

use crate::held::holds;

#[test]
fn the_compressor_pumps_as_one_of_its_size() {
    holds("compressor_spot", &[]);
}
