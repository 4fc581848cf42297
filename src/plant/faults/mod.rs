//! Faults: changes to the plant's physics at a place, one file each; never a picture.
//!
//! A kind is one file with its sheet (name, unit, range) and what it does, one variant of
//! [`Fault`] and one line in [`FaultKind::sheet`].

mod air_inside;
mod blocked_metering;
mod clogged_drier;
mod dirty_filter;
mod fouled_condenser;
mod leak;
mod leaking_seat;
mod moisture;
mod overcharge;
mod undercharge;
mod weak_compressor_valves;

use super::{AirSide, Fittings, Line, Plant, Spot};
use crate::units::{Area, Fraction, Length, Mass};
use serde::{Deserialize, Serialize};

/// A fault as a scenario plants it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Fault {
    /// Dirt in the filter drier: the share of its flow area that is lost.
    CloggedDrier(Fraction),
    /// A hole to the air.
    Leak {
        /// Where.
        at: Spot,
        /// The diameter of a round hole that leaks as much.
        hole: Length,
    },
    /// Water in the circuit.
    Moisture(Mass),
    /// The share of the nameplate charge that is missing.
    Undercharge(Fraction),
    /// Too much, as a share of the nameplate charge.
    Overcharge(Fraction),
    /// Air in the circuit.
    AirInside(Mass),
    /// Dirt at the metering device: the share of its flow area that is lost.
    BlockedMetering(Fraction),
    /// Dirt on the outdoor coil: the share of its air that is lost.
    FouledCondenser(Fraction),
    /// A dirty indoor filter: the share of the air that is lost.
    DirtyFilter(Fraction),
    /// Compressor valves that leak back: the area of the leak.
    WeakCompressorValves(Area),
    /// A service valve that does not seat.
    LeakingSeat {
        /// Which.
        at: Line,
        /// The diameter of a round hole that leaks as much past the closed seat.
        hole: Length,
    },
}

/// A kind of fault, without its size.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum FaultKind {
    /// See [`Fault::CloggedDrier`].
    CloggedDrier,
    /// See [`Fault::Leak`].
    Leak,
    /// See [`Fault::Moisture`].
    Moisture,
    /// See [`Fault::Undercharge`].
    Undercharge,
    /// See [`Fault::Overcharge`].
    Overcharge,
    /// See [`Fault::AirInside`].
    AirInside,
    /// See [`Fault::BlockedMetering`].
    BlockedMetering,
    /// See [`Fault::FouledCondenser`].
    FouledCondenser,
    /// See [`Fault::DirtyFilter`].
    DirtyFilter,
    /// See [`Fault::WeakCompressorValves`].
    WeakCompressorValves,
    /// See [`Fault::LeakingSeat`].
    LeakingSeat,
}

/// What there is to know about a kind: its name on the command line, its unit and its range.
#[derive(Debug)]
pub struct FaultSheet {
    /// The name on the command line.
    pub name: &'static str,
    /// The key of its name.
    pub key: &'static str,
    /// The unit of the size on the command line.
    pub unit: &'static str,
    /// The least and the most that make sense.
    pub range: (f64, f64),
    /// Makes the fault of a size in that unit; a fault with a place takes its usual one.
    pub of_size: fn(f64) -> Fault,
}

/// What a fault is planted in: circuit, fittings and air.
#[derive(Debug)]
pub struct FaultTarget<'a> {
    /// The circuit.
    pub plant: &'a mut Plant,
    /// Valves, ports, joints, drier.
    pub fittings: &'a mut Fittings,
    /// What hinders the air.
    pub air: &'a mut AirSide,
}

impl FaultKind {
    /// Every kind.
    pub const ALL: [Self; 11] = [
        Self::CloggedDrier,
        Self::Leak,
        Self::Moisture,
        Self::Undercharge,
        Self::Overcharge,
        Self::AirInside,
        Self::BlockedMetering,
        Self::FouledCondenser,
        Self::DirtyFilter,
        Self::WeakCompressorValves,
        Self::LeakingSeat,
    ];

    /// Its sheet.
    pub const fn sheet(self) -> &'static FaultSheet {
        match self {
            Self::CloggedDrier => &clogged_drier::SHEET,
            Self::Leak => &leak::SHEET,
            Self::Moisture => &moisture::SHEET,
            Self::Undercharge => &undercharge::SHEET,
            Self::Overcharge => &overcharge::SHEET,
            Self::AirInside => &air_inside::SHEET,
            Self::BlockedMetering => &blocked_metering::SHEET,
            Self::FouledCondenser => &fouled_condenser::SHEET,
            Self::DirtyFilter => &dirty_filter::SHEET,
            Self::WeakCompressorValves => &weak_compressor_valves::SHEET,
            Self::LeakingSeat => &leaking_seat::SHEET,
        }
    }

    /// The kind with this name on the command line.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.sheet().name == name)
    }
}

impl Fault {
    /// Its kind.
    pub const fn kind(self) -> FaultKind {
        match self {
            Self::CloggedDrier(_) => FaultKind::CloggedDrier,
            Self::Leak { .. } => FaultKind::Leak,
            Self::Moisture(_) => FaultKind::Moisture,
            Self::Undercharge(_) => FaultKind::Undercharge,
            Self::Overcharge(_) => FaultKind::Overcharge,
            Self::AirInside(_) => FaultKind::AirInside,
            Self::BlockedMetering(_) => FaultKind::BlockedMetering,
            Self::FouledCondenser(_) => FaultKind::FouledCondenser,
            Self::DirtyFilter(_) => FaultKind::DirtyFilter,
            Self::WeakCompressorValves(_) => FaultKind::WeakCompressorValves,
            Self::LeakingSeat { .. } => FaultKind::LeakingSeat,
        }
    }

    /// Its size in the unit of its sheet.
    pub fn size(self) -> f64 {
        match self {
            Self::CloggedDrier(share)
            | Self::Undercharge(share)
            | Self::Overcharge(share)
            | Self::BlockedMetering(share)
            | Self::FouledCondenser(share)
            | Self::DirtyFilter(share) => share.get(),
            Self::Leak { hole, .. } | Self::LeakingSeat { hole, .. } => hole.millimetres(),
            Self::Moisture(mass) | Self::AirInside(mass) => mass.grams(),
            Self::WeakCompressorValves(area) => area.square_millimetres(),
        }
    }

    /// Whether its size lies in the range of its sheet.
    pub fn is_in_range(self) -> bool {
        let (least, most) = self.kind().sheet().range;
        (least..=most).contains(&self.size())
    }

    /// Where it is, for a fault that can be in several places.
    pub const fn spot(self) -> Option<Spot> {
        match self {
            Self::Leak { at, .. } => Some(at),
            _ => None,
        }
    }

    /// Whether it is of the same kind as another, at the same place.
    pub fn is_at_the_place_of(self, other: Self) -> bool {
        match (self, other) {
            (Self::LeakingSeat { at: here, .. }, Self::LeakingSeat { at: there, .. }) => {
                here == there
            }
            (this, other) => this.kind() == other.kind() && this.spot() == other.spot(),
        }
    }

    /// What it adds to the charge before the unit is filled, as a share of the nominal charge.
    pub const fn charge_share(self) -> f64 {
        match self {
            Self::Undercharge(share) => -share.get(),
            Self::Overcharge(share) => share.get(),
            _ => 0.0,
        }
    }

    /// Plants it. What concerns the charge is done when the unit is filled, by
    /// [`Fault::charge_share`].
    pub fn plant(self, patient: &mut FaultTarget<'_>) {
        match self {
            Self::Undercharge(_) | Self::Overcharge(_) => {}
            Self::CloggedDrier(share) => clogged_drier::plant(share, patient),
            Self::Leak { at, hole } => leak::plant(at, hole, patient),
            Self::Moisture(water) => moisture::plant(water, patient),
            Self::AirInside(air) => air_inside::plant(air, patient),
            Self::BlockedMetering(share) => blocked_metering::plant(share, patient),
            Self::FouledCondenser(share) => fouled_condenser::plant(share, patient),
            Self::DirtyFilter(share) => dirty_filter::plant(share, patient),
            Self::WeakCompressorValves(area) => weak_compressor_valves::plant(area, patient),
            Self::LeakingSeat { at, hole } => leaking_seat::plant(at, hole, patient),
        }
    }
}
