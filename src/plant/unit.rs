//! One model of split system, as a file under `assets/units` gives it.

use super::compressor::CompressorData;
use super::condenser::CondenserData;
use super::desiccant::DrierData;
use super::evaporator::EvaporatorData;
use super::lines::LineData;
use super::metering::MeteringData;
use super::receiver::ReceiverData;
use super::{ElectricsData, Nameplate, ServiceData};
use crate::fluid::refrigerant::Refrigerant;
use crate::units::{Area, Length};
use serde::{Deserialize, Serialize};

/// A refrigerant that the program knows, by its trade name.
#[derive(Debug, Clone, Copy, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct KnownRefrigerant(&'static Refrigerant);

impl KnownRefrigerant {
    /// The refrigerant.
    pub const fn get(self) -> &'static Refrigerant {
        self.0
    }
}

impl PartialEq for KnownRefrigerant {
    fn eq(&self, other: &Self) -> bool {
        self.0.name() == other.0.name()
    }
}

impl TryFrom<String> for KnownRefrigerant {
    type Error = String;
    fn try_from(name: String) -> Result<Self, String> {
        let known = Refrigerant::named(&name).map(Self);
        known.ok_or_else(|| {
            format!(
                "no such refrigerant: {name}; known are {}",
                Refrigerant::names().join(", ")
            )
        })
    }
}

impl From<KnownRefrigerant> for String {
    fn from(known: KnownRefrigerant) -> Self {
        known.0.name().to_owned()
    }
}

/// The version of the format of a unit's file: 1, and no other is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "u32", into = "u32")]
pub struct UnitFormat;

impl TryFrom<u32> for UnitFormat {
    type Error = String;
    fn try_from(version: u32) -> Result<Self, String> {
        match version {
            1 => Ok(Self),
            _ => Err(format!(
                "this program reads units of version 1, found {version}"
            )),
        }
    }
}

impl From<UnitFormat> for u32 {
    fn from(_: UnitFormat) -> Self {
        1
    }
}

/// One model of split system.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Unit {
    /// The version of this format.
    pub version: UnitFormat,
    /// What it is called.
    pub name: String,
    /// Its refrigerant.
    pub refrigerant: KnownRefrigerant,
    /// Its nameplate.
    pub nameplate: Nameplate,
    /// Its electric side.
    pub electrics: ElectricsData,
    /// Its service valves and flares.
    pub service: ServiceData,
    /// Compressor.
    pub compressor: CompressorData,
    /// Outdoor coil.
    pub condenser: CondenserData,
    /// Liquid receiver between the outdoor coil and the liquid valve, if there is one.
    #[serde(default)]
    pub receiver: Option<ReceiverData>,
    /// Liquid line; its volume lies half before and half after the drier.
    pub liquid_line: LineData,
    /// Filter drier.
    pub drier: DrierData,
    /// Metering device.
    pub metering: MeteringData,
    /// Indoor coil.
    pub evaporator: EvaporatorData,
    /// Area of the indoor coil's outlet.
    pub coil_outlet: Area,
    /// Suction line.
    pub suction_line: LineData,
}

impl Unit {
    /// Reads a unit's file.
    pub fn from_ron(text: &str) -> Result<Self, ron::error::SpannedError> {
        ron::from_str(text)
    }

    /// The unit with a line set of this length: what is longer than the nameplate covers adds
    /// tube, and with it volume and wall, to both lines.
    #[must_use]
    pub fn with_line_set(mut self, length: Length) -> Self {
        let further = (length.metres() - self.nameplate.covers.metres()).max(0.0);
        let ServiceData {
            liquid_flare,
            suction_flare,
            ..
        } = self.service;
        self.liquid_line = self.liquid_line.longer_by(further, liquid_flare.bore());
        self.suction_line = self.suction_line.longer_by(further, suction_flare.bore());
        self
    }
}
