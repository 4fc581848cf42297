//! What covers a cold pipe, as anybody at the unit can see it.

use super::Job;
use crate::fluid::moist_air::dew_point;
use crate::kit::ThermometerPlace;
use crate::plant::Section;

/// The melting point of ice, K.
const ICE: f64 = 273.15;

/// Frost on a coil that can be seen, kg. Chosen: a film on the whole of its face.
const FROST_SEEN: f64 = 0.02;

/// The heat of the water that a coil takes out of the air while it drips, W. Chosen: a drop of
/// a tenth of a millilitre every three seconds.
const DRIPS: f64 = 80.0;

/// What covers the outside of a pipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PipeSurface {
    /// Nothing.
    Dry,
    /// Drops of water: it is colder than the dew point of the air.
    Sweat,
    /// Frost: it is colder than that and freezing.
    Frost,
}

impl Job {
    /// What covers the pipe where a thermometer can be clamped; air is always bare.
    pub fn coat(&self, place: ThermometerPlace) -> PipeSurface {
        let inside = match place {
            ThermometerPlace::SuctionLine => Section::SuctionLine,
            ThermometerPlace::LiquidLine => Section::LiquidLine,
            ThermometerPlace::AfterDrier => Section::AfterDrier,
            ThermometerPlace::DischargeLine => Section::Discharge,
            ThermometerPlace::OutdoorAir
            | ThermometerPlace::ReturnAir
            | ThermometerPlace::ReturnWetBulb
            | ThermometerPlace::SupplyAir => return PipeSurface::Dry,
        };
        let pipe = self.plant.temperature(inside);
        if pipe >= dew_point(self.climate.outdoor.w) {
            PipeSurface::Dry
        } else if pipe > ICE {
            PipeSurface::Sweat
        } else {
            PipeSurface::Frost
        }
    }

    /// What covers the fins of the indoor coil: what the air over it leaves there.
    pub fn indoor_coil_coat(&self) -> PipeSurface {
        let stands = self.plant.operating();
        if stands.frost > FROST_SEEN {
            PipeSurface::Frost
        } else if stands.latent > DRIPS {
            PipeSurface::Sweat
        } else {
            PipeSurface::Dry
        }
    }
}
