//! The charging chart of a fixed orifice: target superheat at the suction valve.
//!
//! Source: the widely published field charging chart for fixed-orifice units; makers' installation
//! sheets agree within 1 °F, and California Title 24, RA3.2, table RA3.2-2 rounds to the same.

use crate::units::{Temperature, TemperatureDifference};

/// Outdoor dry bulbs of the rows, °F.
const OUTDOOR: [f64; 7] = [55.0, 65.0, 75.0, 85.0, 95.0, 105.0, 115.0];

/// The indoor wet bulb of the first column, °F, and the step between columns.
const WET_BULB: (f64, f64) = (50.0, 2.0);

/// Target superheat, °F; an empty cell (no valid test) is not a number.
const TARGET: [[f64; 14]; 7] = {
    const X: f64 = f64::NAN;
    [
        [
            9., 12., 14., 17., 20., 23., 27., 30., 33., 36., 38., 40., 42., 44.,
        ],
        [
            X, 6., 10., 13., 16., 19., 21., 24., 27., 30., 33., 36., 38., 41.,
        ],
        [X, X, X, 6., 9., 12., 15., 18., 21., 24., 28., 31., 34., 37.],
        [X, X, X, X, X, X, 8., 11., 15., 19., 22., 26., 30., 33.],
        [X, X, X, X, X, X, X, 6., 10., 14., 18., 22., 25., 29.],
        [X, X, X, X, X, X, X, X, 5., 9., 13., 17., 22., 26.],
        [X, X, X, X, X, X, X, X, X, X, 8., 14., 18., 24.],
    ]
};

/// The target superheat for outdoor dry bulb and indoor wet bulb, between the cells of the chart;
/// `None` beyond it.
pub fn target_superheat(
    outdoor: Temperature,
    indoor_wet_bulb: Temperature,
) -> Option<TemperatureDifference> {
    // A temperature that is on a line of the chart is on it: the way through kelvin leaves it a
    // hair beside, where the cell beyond may be empty.
    let on_line = |x: f64| {
        let line = x.round();
        if (x - line).abs() < 1e-9 { line } else { x }
    };
    let row = on_line((outdoor.fahrenheit() - OUTDOOR[0]) / 10.0);
    let column = on_line((indoor_wet_bulb.fahrenheit() - WET_BULB.0) / WET_BULB.1);
    let inside = (0.0..=6.0).contains(&row) && (0.0..=13.0).contains(&column);
    if !inside {
        return None;
    }
    let (i, j) = ((row as usize).min(5), (column as usize).min(12));
    let (f, g) = (row - i as f64, column - j as f64);
    // A cell beside that has no weight must not spoil the rest with its emptiness.
    let weighed = |value: f64, weight: f64| if weight == 0.0 { 0.0 } else { value * weight };
    let target = weighed(TARGET[i][j], (1.0 - f) * (1.0 - g))
        + weighed(TARGET[i][j + 1], (1.0 - f) * g)
        + weighed(TARGET[i + 1][j], f * (1.0 - g))
        + weighed(TARGET[i + 1][j + 1], f * g);
    (!target.is_nan()).then(|| TemperatureDifference::from_fahrenheit(target))
}
