//! How tight a flare nut is made up.
//!
//! Source: the band common to EN 378-2 / ISO 5149-2 and JIS B 8607, from memory;
//! `data/flare_torque.csv`.

use crate::held::holds;

#[test]
fn flares_seal_in_the_published_band() {
    holds("flare_torque", &[]);
}
