//! What covers a cold pipe, as anybody at the unit can see it.

use super::Job;
use crate::fluid::moist_air::dew_point;
use crate::kit::ThermometerPlace;
use crate::plant::Place;

/// The melting point of ice, K.
const ICE: f64 = 273.15;

/// What covers the outside of a pipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Coat {
    /// Nothing.
    Dry,
    /// Drops of water: it is colder than the dew point of the air.
    Sweat,
    /// Frost: it is colder than that and freezing.
    Frost,
}

impl Job {
    /// What covers the pipe where a thermometer can be clamped; air is always bare.
    pub fn coat(&self, place: ThermometerPlace) -> Coat {
        let inside = match place {
            ThermometerPlace::SuctionLine => Place::SuctionLine,
            ThermometerPlace::LiquidLine => Place::LiquidLine,
            ThermometerPlace::AfterDrier => Place::AfterDrier,
            ThermometerPlace::DischargeLine => Place::Discharge,
            _ => return Coat::Dry,
        };
        let pipe = self.plant.temperature(inside);
        if pipe >= dew_point(self.outdoor.w) {
            Coat::Dry
        } else if pipe > ICE {
            Coat::Sweat
        } else {
            Coat::Frost
        }
    }
}
