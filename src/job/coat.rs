//! What covers a cold pipe, as anybody at the unit can see it.

use super::Job;
use crate::fluid::moist_air::dew_point;
use crate::kit::ThermometerPlace;
use crate::plant::Place;

/// The melting point of ice, K.
const ICE: f64 = 273.15;

/// Frost on a coil that can be seen, kg. Chosen: a film on the whole of its face.
const FROST_SEEN: f64 = 0.02;

/// The heat of the water that a coil takes out of the air while it drips, W. Chosen: a drop of
/// a tenth of a millilitre every three seconds.
const DRIPS: f64 = 80.0;

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

    /// What covers the fins of the indoor coil: what the air over it leaves there.
    pub fn indoor_coil_coat(&self) -> Coat {
        let stands = self.plant.operating();
        if stands.frost > FROST_SEEN {
            Coat::Frost
        } else if stands.latent > DRIPS {
            Coat::Sweat
        } else {
            Coat::Dry
        }
    }
}
