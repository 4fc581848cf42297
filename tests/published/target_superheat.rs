//! Superheat of a fixed orifice at one fixed charge.
//!
//! Source: the published field chart, `data/target_superheat.csv`; tolerance of Title 24, RA3.2.

use crate::held::holds;

#[test]
fn superheat_follows_the_charging_chart() {
    holds(
        "target_superheat",
        &[
            ("55 °F outdoors, 50 °F wet bulb", 9.312),
            ("55 °F outdoors, 52 °F wet bulb", 6.312),
            ("55 °F outdoors, 54 °F wet bulb", 4.312),
            ("55 °F outdoors, 56 °F wet bulb", 1.312),
            ("65 °F outdoors, 52 °F wet bulb", 3.678),
            ("root mean square of all cells", 1.083),
        ],
    );
}
