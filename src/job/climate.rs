//! The air on both sides of the unit as time goes on: the weather's course, the sun on the
//! outdoor unit, and a room that the unit cools and dries.
//!
//! The air moves in steps of [`STEP`] seconds and stands still between them, so that the circuit
//! can be led in strides. A site that says nothing of a course and a load holds its air as it is.

use crate::fluid::moist_air;
use crate::plant::Air;
use crate::scenario::{IndoorAir, RoomLoad, Site, Space, WeatherPoint};

/// How often the air moves, s. Chosen: in that time the weather changes by hundredths of a kelvin.
const STEP: f64 = 10.0;

/// The same in ticks.
pub(super) const TICKS_PER_STEP: u64 = 100;

/// By how much the metal of the outdoor unit is warmer than the air, for each W/m² of sun, K.
///
/// The sol-air temperature of a light surface is 0.026 K a W/m² above the air (ASHRAE Handbook -
/// Fundamentals, cooling load chapter, from memory). Chosen: a quarter of the surface sees the sun.
const SUN_WARMS: f64 = 0.25 * 0.026;

/// Specific heat of air, J/(kg K), from memory.
const AIR_HEAT: f64 = 1_006.0;

/// Density of room air, kg/m³, from memory.
const AIR_DENSITY: f64 = 1.2;

/// What walls and furniture take up of water, in multiples of what the air does. Chosen: 10, the
/// size that building simulation uses for a furnished room (from memory).
const MOISTURE_HELD: f64 = 10.0;

/// The air around both parts of the unit.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Climate {
    course: Vec<WeatherPoint>,
    start: WeatherPoint,
    indoors: IndoorAir,
    /// Air changed with the outside, kg/s.
    infiltration: f64,
    /// Air in the room, kg.
    room_air: f64,
    /// Outdoor air.
    pub outdoor: Air,
    /// Indoor air as it goes into the unit.
    pub indoor: Air,
    /// Its wet bulb, K.
    pub indoor_wet_bulb: f64,
    /// How much warmer than the air the sun keeps the metal of the outdoor unit, K.
    pub sun: f64,
    /// Sensible heat, J, and water, kg, that the unit took from the room since the last step.
    taken: [f64; 2],
}

impl Climate {
    /// The air at the start of a job.
    pub fn of(site: &Site) -> Self {
        let (outdoor, indoor) = site.air();
        let start = WeatherPoint {
            after: crate::units::Time::from_seconds(0.0),
            outdoor: site.outdoor,
            humidity: site.outdoor_humidity,
            sun: site.sun,
        };
        let (volume, air_changes) = match site.indoor_space {
            Space::OpenAir => (0.0, 0.0),
            Space::Room {
                volume,
                air_changes,
            } => (volume.cubic_metres(), air_changes),
        };
        let room_air = AIR_DENSITY * volume;
        Self {
            course: site.course.clone(),
            start,
            indoors: site.indoor_air,
            infiltration: room_air * air_changes / 3600.0,
            room_air,
            outdoor,
            indoor,
            indoor_wet_bulb: site.indoor_wet_bulb.kelvin(),
            sun: SUN_WARMS * site.sun.watts_per_square_metre(),
            taken: [0.0; 2],
        }
    }

    /// Whether nothing of it ever moves.
    pub const fn stands_still(&self) -> bool {
        self.course.is_empty() && matches!(self.indoors, IndoorAir::Held)
    }

    /// Takes note of the sensible heat, W, and the water, kg/s, that the unit takes from the room
    /// for `dt` seconds.
    pub fn give(&mut self, sensible: f64, water: f64, dt: f64) {
        self.taken[0] += sensible * dt;
        self.taken[1] += water * dt;
    }

    /// Moves the air on by a step, to `now` seconds after the start.
    pub fn step(&mut self, now: f64) {
        if !self.course.is_empty() {
            self.follow_course(now);
        }
        if let IndoorAir::Drifts(load) = self.indoors {
            self.drift(&load);
        }
        self.taken = [0.0; 2];
    }

    /// The weather between the two points of its course around `now`.
    fn follow_course(&mut self, now: f64) {
        let mut before = &self.start;
        let mut share = 0.0;
        let mut after = before;
        for point in &self.course {
            after = point;
            let (from, to) = (before.after.seconds(), point.after.seconds());
            if now < to {
                share = (now - from) / (to - from);
                break;
            }
            before = point;
        }
        let between = |a: f64, b: f64| a + share * (b - a);
        let t = between(before.outdoor.kelvin(), after.outdoor.kelvin());
        let humidity = between(before.humidity.get(), after.humidity.get());
        self.outdoor = Air {
            t,
            w: moist_air::humidity_ratio_from_relative(t, humidity),
        };
        self.sun = SUN_WARMS
            * between(
                before.sun.watts_per_square_metre(),
                after.sun.watts_per_square_metre(),
            );
    }

    /// Heat and water of the room over a step, implicit in both.
    ///
    /// ```text
    /// C dT/dt = (UA + m cp) (T_out - T) + gains - sensible
    /// M dw/dt = m (w_out - w) + moisture - water
    /// ```
    fn drift(&mut self, load: &RoomLoad) {
        let [sensible, water] = self.taken.map(|amount| amount / STEP);
        let loss = load.walls.watts_per_kelvin() + self.infiltration * AIR_HEAT;
        let capacity = load.capacity.joules_per_kelvin() + self.room_air * AIR_HEAT;
        let surplus = loss * (self.outdoor.t - self.indoor.t) + load.gains.watts() - sensible;
        self.indoor.t += STEP * surplus / (capacity + STEP * loss);
        let held = self.room_air * MOISTURE_HELD;
        let wetting = self.infiltration * (self.outdoor.w - self.indoor.w)
            + load.moisture.kilograms_per_second()
            - water;
        let most = moist_air::saturated_humidity_ratio(self.indoor.t);
        let w = self.indoor.w + STEP * wetting / (held + STEP * self.infiltration);
        self.indoor.w = w.clamp(0.0, most);
        self.indoor_wet_bulb = moist_air::wet_bulb(self.indoor.t, self.indoor.w);
    }

    /// Every number of the state that moves, for digests; air that stands still has none.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        if self.stands_still() {
            return;
        }
        let Air { t, w } = self.outdoor;
        for value in [t, w, self.sun, self.indoor.t, self.indoor.w] {
            visit(value);
        }
        for amount in self.taken {
            visit(amount);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::Scenario;
    use crate::units::{
        Conductance, Fraction, HeatCapacity, Irradiance, MassFlow, Power, Temperature, Time, Volume,
    };

    fn site() -> Site {
        let scenario = Scenario::of_shipped_unit("r22_3ton_orifice").expect("a shipped unit");
        scenario.file.site
    }

    fn point(minutes: f64, fahrenheit: f64, sun: f64) -> WeatherPoint {
        WeatherPoint {
            after: Time::from_minutes(minutes),
            outdoor: Temperature::from_fahrenheit(fahrenheit),
            humidity: Fraction::clamped(0.4),
            sun: Irradiance::from_watts_per_square_metre(sun),
        }
    }

    #[test]
    fn the_weather_goes_evenly_from_point_to_point_and_stays_after_the_last() {
        let mut site = site();
        site.course = vec![point(60.0, 101.0, 600.0), point(120.0, 89.0, 0.0)];
        let mut climate = Climate::of(&site);
        for (minutes, fahrenheit, sun) in [
            (30.0, 98.0, 300.0),
            (60.0, 101.0, 600.0),
            (90.0, 95.0, 300.0),
            (500.0, 89.0, 0.0),
        ] {
            climate.step(minutes * 60.0);
            let found = Temperature::from_kelvin(climate.outdoor.t).fahrenheit();
            assert!((found - fahrenheit).abs() < 1e-9, "{minutes}: {found}");
            assert!((climate.sun - SUN_WARMS * sun).abs() < 1e-9, "{minutes}");
        }
    }

    /// A room of 30 m³ whose walls let 150 W/K through.
    fn drifting() -> Climate {
        let mut site = site();
        site.indoor_space = Space::Room {
            volume: Volume::from_cubic_metres(30.0),
            air_changes: 0.5,
        };
        site.indoor_air = IndoorAir::Drifts(RoomLoad {
            walls: Conductance::from_watts_per_kelvin(150.0),
            gains: Power::from_watts(900.0),
            capacity: HeatCapacity::from_kilojoules_per_kelvin(500.0),
            moisture: MassFlow::from_grams_per_hour(200.0),
        });
        Climate::of(&site)
    }

    /// Source: the first-order response of a heated body (any textbook of heat transfer): the
    /// rest at `T_out + (gains - cooling) / UA`, 63.2 % of the way there after `C / UA`.
    #[test]
    fn a_room_drifts_to_its_balance_with_its_time_constant() {
        let mut climate = drifting();
        let loss = 150.0 + 36.0 * 0.5 / 3600.0 * AIR_HEAT;
        let capacity = 500e3 + 36.0 * AIR_HEAT;
        let (start, cooling) = (climate.indoor.t, 2_500.0);
        let rest = climate.outdoor.t + (900.0 - cooling) / loss;
        let pass = |climate: &mut Climate, seconds: f64| {
            let steps = libm::round(seconds / STEP) as usize;
            for _ in 0..steps {
                climate.give(cooling, 0.0, STEP);
                climate.step(0.0);
            }
        };
        pass(&mut climate, capacity / loss);
        let share = (climate.indoor.t - start) / (rest - start);
        assert!((share - (1.0 - libm::exp(-1.0))).abs() < 0.003, "{share}");
        pass(&mut climate, 20.0 * capacity / loss);
        assert!((climate.indoor.t - rest).abs() < 1e-6);
    }

    /// Conservation of water: what people give off and the unit does not take stays in the room
    /// or goes out with its air. At rest `m (w - w_out) = moisture - water`.
    #[test]
    fn a_unit_dries_a_room_to_its_balance() {
        let mut climate = drifting();
        let water = 4e-5;
        for _ in 0..400_000 {
            climate.give(900.0, water, STEP);
            climate.step(0.0);
        }
        let infiltration = 36.0 * 0.5 / 3600.0;
        let given = 0.2 / 3600.0 - water;
        let rest = climate.outdoor.w + given / infiltration;
        assert!(
            (climate.indoor.w - rest).abs() < 1e-6,
            "{}",
            climate.indoor.w
        );
        assert!(climate.indoor_wet_bulb < climate.indoor.t);
    }

    #[test]
    fn air_that_nobody_moves_stands_still_to_the_bit() {
        let mut climate = Climate::of(&site());
        let before = climate.clone();
        assert!(climate.stands_still());
        climate.step(3_600.0);
        assert_eq!(climate, before);
    }
}
