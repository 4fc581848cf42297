//! The schema of a scenario file.

use super::Criterion;
use crate::fluid::moist_air;
use crate::kit::tools;
use crate::plant::{Air, Fault, Unit};
use crate::units::{
    Conductance, Fraction, HeatCapacity, Irradiance, Length, Mass, MassFlow, Power, Temperature,
    TemperatureDifference, Time, Volume,
};
use serde::{Deserialize, Serialize};

/// One exercise, as its file says it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ScenarioFile {
    /// The version of this format: 1.
    pub version: u32,
    /// The title in the list.
    pub title: String,
    /// What it trains, in a sentence.
    pub trains: String,
    /// How hard: 1 easy to 5 hard.
    pub level: u8,
    /// The name of the unit: a file in `assets/units` without its ending.
    pub unit: String,
    /// The seed of the instruments' noise.
    pub seed: u64,
    /// The weather and the indoor air.
    pub site: Site,
    /// Who called, and what they say.
    pub customer: Customer,
    /// What is wrong, in the order in which it is planted. Empty: nothing is wrong.
    pub faults: Vec<Fault>,
    /// What is on the cart.
    #[serde(default)]
    pub cart: Cart,
    /// What things cost where the job is, to tell a mistake's price.
    #[serde(default)]
    pub costs: Costs,
    /// Hints for practice, the gentlest first.
    #[serde(default)]
    pub hints: Vec<String>,
    /// The share of the points that passes, unless a critical criterion fails.
    pub pass: Fraction,
    /// The list of criteria.
    pub rubric: Vec<Criterion>,
}

/// The weather and the indoor air.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// Outdoor air.
    pub outdoor: Temperature,
    /// Relative humidity outdoors.
    pub outdoor_humidity: Fraction,
    /// Return air, dry bulb.
    pub indoor: Temperature,
    /// Return air, wet bulb.
    pub indoor_wet_bulb: Temperature,
    /// The length of the line set.
    pub line_set: Length,
    /// Where the outdoor unit stands; out of doors if the file does not say.
    #[serde(default = "out_of_doors")]
    pub outdoor_space: Space,
    /// Where the indoor unit hangs; a small room if the file does not say.
    #[serde(default = "small_room")]
    pub indoor_space: Space,
    /// Sun on the outdoor unit at the start.
    #[serde(default)]
    pub sun: Irradiance,
    /// The weather later on. It changes evenly between two points, and after the last it stays.
    #[serde(default)]
    pub course: Vec<WeatherPoint>,
    /// Whether the indoor air is held as it is or drifts with the room's load.
    #[serde(default)]
    pub indoor_air: IndoorAir,
    /// How the customer left the thermostat.
    #[serde(default)]
    pub thermostat: Setting,
}

/// The weather at a time of the job.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WeatherPoint {
    /// So long after the start.
    pub after: Time,
    /// Outdoor air.
    pub outdoor: Temperature,
    /// Relative humidity outdoors.
    pub humidity: Fraction,
    /// Sun on the outdoor unit.
    #[serde(default)]
    pub sun: Irradiance,
}

/// What the indoor air does as time goes on.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub enum IndoorAir {
    /// It is held as it is, whatever the unit takes from it, as in a test room.
    #[default]
    Held,
    /// The unit cools and dries it against the load of the room.
    Drifts(RoomLoad),
}

/// The load of a room: what warms and wets its air.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RoomLoad {
    /// Conductance of walls, windows and roof to the outdoor air.
    pub walls: Conductance,
    /// Heat of people, lamps and machines.
    pub gains: Power,
    /// Heat capacity of walls and furniture that follow the air within the hour.
    pub capacity: HeatCapacity,
    /// Water that people and work give off.
    pub moisture: MassFlow,
}

/// How a thermostat is set.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Setting {
    /// It calls for cooling above this. If the file does not say, it is turned all the way down
    /// and calls as long as it stands on cool.
    pub setpoint: Option<Temperature>,
    /// From where it stops calling to where it calls again.
    pub differential: TemperatureDifference,
}

impl Default for Setting {
    /// Chosen: 1 °F, as a room thermostat has (common practice, no source).
    fn default() -> Self {
        Self {
            setpoint: None,
            differential: TemperatureDifference::from_fahrenheit(1.0),
        }
    }
}

/// What is around a part of the unit, into which refrigerant goes that gets out.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Space {
    /// The open air: nothing gathers.
    OpenAir,
    /// A room.
    Room {
        /// Its volume.
        volume: Volume,
        /// How often in an hour its air is changed, without the technician's fan.
        air_changes: f64,
    },
}

const fn out_of_doors() -> Space {
    Space::OpenAir
}

/// Chosen: 30 m³ that changes half its air in an hour, as a living room with its windows shut
/// (common practice, no source).
const fn small_room() -> Space {
    Space::Room {
        volume: Volume::from_cubic_metres(30.0),
        air_changes: 0.5,
    }
}

/// Who called, and what they say.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Customer {
    /// Their name, of our invention.
    pub name: String,
    /// Where the unit stands, of our invention.
    pub place: String,
    /// What they say.
    pub complaint: String,
}

impl Site {
    /// Outdoor and indoor air as they go over the coils.
    pub fn air(&self) -> (Air, Air) {
        let (outdoor, indoor) = (self.outdoor.kelvin(), self.indoor.kelvin());
        let wet_bulb = self.indoor_wet_bulb.kelvin();
        let humidity = self.outdoor_humidity.get();
        (
            Air {
                t: outdoor,
                w: moist_air::humidity_ratio_from_relative(outdoor, humidity),
            },
            Air {
                t: indoor,
                w: moist_air::humidity_ratio_from_wet_bulb(indoor, wet_bulb),
            },
        )
    }
}

/// What is on the cart, where it is not the usual.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Cart {
    /// Refrigerant in the cylinder.
    pub refrigerant: Mass,
    /// Length of each hose.
    pub hose: Length,
    /// Inner diameter of each hose.
    pub hose_bore: Length,
    /// Thermometers that can be placed at once.
    pub thermometers: u8,
    /// The leak detector is rated for refrigerants that burn.
    pub detector_rated: bool,
    /// The vacuum pump is rated for refrigerants that burn.
    pub pump_rated: bool,
    /// Tools that not every cart has: `tools: [Recovery]`.
    pub tools: Vec<tools::Name>,
    /// The recovery machine is rated for refrigerants that burn.
    pub recovery_rated: bool,
}

impl Default for Cart {
    /// Chosen: a 30 lb cylinder two thirds full, three 5 ft hoses of 1/4 in (common practice).
    fn default() -> Self {
        Self {
            refrigerant: Mass::from_kilograms(9.0),
            hose: Length::from_metres(1.5),
            hose_bore: Length::from_millimetres(4.8),
            thermometers: 6,
            detector_rated: true,
            pump_rated: true,
            tools: Vec::new(),
            recovery_rated: true,
        }
    }
}

/// What things cost where the job is, in the scenario's money.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Costs {
    /// The sign of the money, as it stands before an amount.
    pub money: String,
    /// Refrigerant, for a kilogram.
    pub refrigerant: f64,
    /// A compressor, fitted.
    pub compressor: f64,
    /// A micron gauge.
    pub micron_gauge: f64,
    /// A filter drier.
    pub drier: f64,
    /// A fill of oil for the vacuum pump.
    pub pump_oil: f64,
    /// An hour of work.
    pub hour: f64,
}

impl Default for Costs {
    /// Invented, of the size that is usual; no price list.
    fn default() -> Self {
        Self {
            money: "$".to_owned(),
            refrigerant: 60.0,
            compressor: 1800.0,
            micron_gauge: 220.0,
            drier: 35.0,
            pump_oil: 12.0,
            hour: 95.0,
        }
    }
}

/// A scenario with its unit, checked and ready to become a job.
#[derive(Debug, Clone)]
pub struct Scenario {
    /// The unit.
    pub unit: Unit,
    /// Its short name: the file name without its ending.
    pub name: String,
    /// What the file says.
    pub file: ScenarioFile,
    /// SHA-256 of the scenario file, hexadecimal.
    pub digest: String,
    /// SHA-256 of the unit file, hexadecimal.
    pub unit_digest: String,
}
