//! The air around the unit: where refrigerant that gets out goes, and how it is changed.

use crate::plant::Spot;
use crate::scenario::{Site, Space};
use crate::words::Part;

/// What a fan in an open door changes, m³/s. Chosen: 600 m³/h (common practice, no source).
const FAN: f64 = 600.0 / 3600.0;

/// Changes of air in an hour from which a room counts as ventilated.
/// Source: EN 378-3 for a machinery room in which somebody is, from memory.
const VENTILATED_FROM: f64 = 4.0;

/// Where a part of the unit stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    /// At the outdoor unit, with hoses, pump and cylinders.
    Outdoor,
    /// At the indoor unit.
    Indoor,
}

impl Side {
    pub(super) const ALL: [Self; 2] = [Self::Outdoor, Self::Indoor];

    /// The side on which a spot is.
    pub(super) const fn of(spot: Spot) -> Self {
        if spot.is_indoors() {
            Self::Indoor
        } else {
            Self::Outdoor
        }
    }

    /// The part of the unit that stands there.
    pub(super) const fn part(self) -> Part {
        match self {
            Self::Outdoor => Part::OutdoorUnit,
            Self::Indoor => Part::IndoorUnit,
        }
    }
}

/// The air on both sides of the unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Surroundings {
    spaces: [Space; 2],
    /// Refrigerant in the air of each, kg. In the open air it is carried off.
    clouds: [f64; 2],
    /// Doors are open and a fan runs.
    pub(super) fan_on: bool,
}

impl Surroundings {
    /// Clean air.
    pub(super) const fn of(site: &Site) -> Self {
        Self {
            spaces: [site.outdoor_space, site.indoor_space],
            clouds: [0.0; 2],
            fan_on: false,
        }
    }

    /// Takes up what got out, kg.
    pub(super) fn take_up(&mut self, side: Side, refrigerant: f64) {
        if matches!(self.spaces[side as usize], Space::Room { .. }) {
            self.clouds[side as usize] += refrigerant;
        }
    }

    /// Changes the air for `dt` seconds.
    pub(super) fn change_air(&mut self, dt: f64) {
        for (space, cloud) in self.spaces.iter().zip(&mut self.clouds) {
            if let Space::Room {
                volume,
                air_changes,
            } = space
            {
                let fan = if self.fan_on {
                    FAN / volume.cubic_metres()
                } else {
                    0.0
                };
                *cloud /= 1.0 + dt * (air_changes / 3600.0 + fan);
            }
        }
    }

    /// Refrigerant in the air of a side, kg.
    pub(super) const fn gathered(&self, side: Side) -> f64 {
        self.clouds[side as usize]
    }

    /// Refrigerant in the air of a side, kg/m³, were it mixed; heavier than air it is denser at
    /// the floor.
    pub(super) fn density(&self, side: Side) -> f64 {
        match self.spaces[side as usize] {
            Space::OpenAir => 0.0,
            Space::Room { volume, .. } => self.clouds[side as usize] / volume.cubic_metres(),
        }
    }

    /// Whether a side is ventilated: open air, a fan, or a room whose air is changed often enough.
    pub(super) const fn is_ventilated(&self, side: Side) -> bool {
        match self.spaces[side as usize] {
            Space::OpenAir => true,
            Space::Room { air_changes, .. } => self.fan_on || air_changes >= VENTILATED_FROM,
        }
    }

    /// Every number of the state, for digests; clean, still air has none.
    pub(super) fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        if self.fan_on {
            visit(1.0);
        }
        for cloud in self.clouds {
            if cloud > 0.0 {
                visit(cloud);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Volume;

    fn room(volume: f64, air_changes: f64) -> Surroundings {
        let volume = Volume::from_cubic_metres(volume);
        let room = Space::Room {
            volume,
            air_changes,
        };
        Surroundings {
            spaces: [Space::OpenAir, room],
            clouds: [0.0; 2],
            fan_on: false,
        }
    }

    /// Source: the decay of a mixed room, exp(-n t) after n changes of its air (any textbook of
    /// ventilation): 36.8 % after one.
    #[test]
    fn a_change_of_air_leaves_a_share_of_one_by_e() {
        let mut air = room(30.0, 0.5);
        air.take_up(Side::Indoor, 3.0);
        assert!((air.density(Side::Indoor) - 0.1).abs() < 1e-12);
        for _ in 0..72_000 {
            air.change_air(0.1);
        }
        let left = air.density(Side::Indoor) / 0.1;
        assert!((left - libm::exp(-1.0)).abs() < 1e-3, "{left}");
    }

    #[test]
    fn a_fan_ventilates_a_room_and_the_open_air_keeps_nothing() {
        let mut air = room(30.0, 0.5);
        assert!(air.is_ventilated(Side::Outdoor) && !air.is_ventilated(Side::Indoor));
        assert!(room(30.0, 4.0).is_ventilated(Side::Indoor));
        air.fan_on = true;
        assert!(air.is_ventilated(Side::Indoor));
        air.take_up(Side::Outdoor, 1.0);
        assert!(air.density(Side::Outdoor) == 0.0);
    }
}
