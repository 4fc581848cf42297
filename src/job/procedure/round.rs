//! How a person rounds what an instrument shows.

use crate::words::{Level, Quantity};

/// A value in the inch-pound unit of the trade, rounded as a person writes it down.
///
/// Chosen: whole psi and degrees, tens of microns, tenths of an amp, half ounces (common
/// practice, no source).
pub(super) fn as_written(quantity: Quantity) -> Level {
    match quantity.inch_pound() {
        Level::Psig(v) => Level::Psig(to(1.0, v)),
        Level::Microns(v) => Level::Microns(to(10.0, v)),
        Level::Psi(v) => Level::Psi(to(1.0, v)),
        Level::Fahrenheit(v) => Level::Fahrenheit(to(1.0, v)),
        Level::FahrenheitDegrees(v) => Level::FahrenheitDegrees(to(1.0, v)),
        Level::Amps(v) => Level::Amps(to(0.1, v)),
        Level::Ounces(v) => Level::Ounces(to(0.5, v)),
        other => other,
    }
}

fn to(step: f64, value: f64) -> f64 {
    (value / step).round() * step
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{GaugePressure, Mass};
    use crate::words::Dimension;

    #[test]
    fn a_gauge_is_written_in_whole_psi_and_a_scale_in_half_ounces() {
        let gauge = Quantity {
            si: GaugePressure::from_psig(68.4).pascals(),
            dimension: Dimension::GaugePressure,
        };
        assert_eq!(as_written(gauge), Level::Psig(68.0));
        let scale = Quantity {
            si: Mass::from_ounces(-4.3).kilograms(),
            dimension: Dimension::Mass,
        };
        assert_eq!(as_written(scale), Level::Ounces(-4.5));
    }
}
