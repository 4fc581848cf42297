//! Metering devices: a fixed orifice or an expansion valve, with dirt and ice at the throat.

use super::network::{Draw, Path, Restriction, Throttled};
use crate::fluid::refrigerant::{Curves, Refrigerant};
use crate::units::{Area, Length, TemperatureDifference, Time};
use serde::{Deserialize, Serialize};
use std::f64::consts::{FRAC_PI_4, LN_10};

/// A metering device as a unit's file gives it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum MeteringData {
    /// A short tube.
    FixedOrifice {
        /// Its bore.
        bore: Length,
        /// Its length.
        length: Length,
    },
    /// A thermostatic expansion valve.
    ExpansionValve {
        /// Area of the throat when it is wide open at the end of its range.
        area: Area,
        /// Superheat at which it begins to open.
        static_superheat: TemperatureDifference,
        /// Superheat over that at which it is at its rated area.
        range: TemperatureDifference,
        /// Lag of the bulb.
        lag: Time,
        /// Share of the area that stays open: a bleed.
        bleed: f64,
    },
}

/// Ice that shuts the throat, kg. Chosen: about what fills the bore of an orifice.
const ICE_FULL: f64 = 5e-5;
/// Share of what freezes in the cold that sticks at the throat. Chosen: a wet circuit freezes
/// within minutes of running below 0 °C.
const ICE_STICKS: f64 = 0.012;
/// Share of what dry refrigerant could dissolve that it takes of the ice in its way. Chosen.
const ICE_DISSOLVES: f64 = 0.5;
/// Time in which the throat's body takes the temperature of the coil around it, s. Chosen: some
/// minutes, as hand-warm brass.
const BODY_WARMS: f64 = 180.0;
/// Flow that cools the body as strongly as the coil around warms it, kg/s. Chosen: a twentieth of
/// that of a 3-ton unit, which so cools it within seconds.
const COOLS: f64 = 3e-3;
/// Time after which a plug in a body above 0 °C lets go, s: its skin melts, and the pressure before
/// it blows it through. Chosen.
const LETS_GO: f64 = 60.0;
/// Share of its area that a shut expansion valve lets through: it is no positive shut-off (makers'
/// bulletins, from memory). As class II of IEC 60534-4 allows, from memory.
const SEAT_LEAKS: f64 = 0.005;
/// Subcooling, as a share of the critical temperature, to which the formula of a short tube goes.
const SUBCOOLED_MAX: f64 = 0.035;
/// The furthest that an expansion valve opens beyond its rated area. Chosen.
const OPENING_MAX: f64 = 1.3;

/// A metering device at work.
#[derive(Debug, Clone, Copy)]
pub(super) struct Metering {
    refrigerant: &'static Refrigerant,
    kind: Kind,
    /// Share of the area that dirt has taken.
    pub blockage: f64,
    /// Share of the area that is open at all: for a device that is taken out.
    pub opening: f64,
    /// Ice at the throat, kg.
    pub ice: f64,
    /// Temperature of the throat's body, K, and how long it has been above 0 °C, s.
    body: f64,
    thaws: f64,
}

#[derive(Debug, Clone, Copy)]
enum Kind {
    Orifice {
        area: f64,
        diameter: f64,
        length: f64,
        log_ratio: f64,
    },
    Valve {
        area: f64,
        spring: f64,
        range: f64,
        lag: f64,
        bleed: f64,
        bulb: f64,
        lift: f64,
    },
}

impl Metering {
    pub fn new(data: &MeteringData, refrigerant: &'static Refrigerant, t: f64) -> Self {
        let kind = match *data {
            MeteringData::FixedOrifice { bore, length } => {
                let (diameter, length) = (bore.metres(), length.metres());
                Kind::Orifice {
                    area: FRAC_PI_4 * diameter * diameter,
                    diameter,
                    length,
                    log_ratio: libm::log(length / diameter),
                }
            }
            MeteringData::ExpansionValve {
                area,
                static_superheat,
                range,
                lag,
                bleed,
            } => Kind::Valve {
                area: area.square_metres(),
                spring: static_superheat.kelvins(),
                range: range.kelvins(),
                lag: lag.seconds(),
                bleed,
                bulb: t,
                lift: 0.0,
            },
        };
        Self {
            refrigerant,
            kind,
            blockage: 0.0,
            opening: 1.0,
            ice: 0.0,
            body: t,
            thaws: 0.0,
        }
    }

    /// The share of the throat that ice shuts.
    pub fn iced(&self) -> f64 {
        (self.ice / ICE_FULL).clamp(0.0, 1.0)
    }

    /// How far an expansion valve is open; 1 for an orifice.
    pub fn lift(&self) -> f64 {
        match self.kind {
            Kind::Orifice { .. } => 1.0,
            Kind::Valve { lift, bleed, .. } => lift.max(bleed + SEAT_LEAKS),
        }
    }

    /// Whether water that passes can freeze at the throat, or ice there dissolve.
    pub fn freezes(&self, coil: &CoilEnd) -> bool {
        (coil.water > 0.0 || self.ice > 0.0) && self.body < 273.15
    }

    /// Lets bulb and ice move on by `dt`, s.
    ///
    /// What passes the cold throat with more water than is `held` there, dissolved and as vapour,
    /// leaves ice. The ice still counts among the water of the coil: it is some milligrams.
    pub fn live(&mut self, coil: &CoilEnd, held: f64, dt: f64) {
        let boiling = self.refrigerant.dew_temperature(coil.pressure);
        let (step, cools) = (dt / BODY_WARMS, coil.flow / COOLS);
        self.body =
            (self.body + step * (cools * boiling + coil.inside)) / (1.0 + step * (cools + 1.0));
        if self.body < 273.15 {
            self.thaws = 0.0;
            let excess = coil.flow * (coil.water - held);
            let share = if excess > 0.0 {
                ICE_STICKS
            } else {
                ICE_DISSOLVES
            };
            self.ice = (self.ice + dt * share * excess).clamp(0.0, ICE_FULL);
        } else {
            self.thaws += dt;
            if self.thaws > LETS_GO {
                self.ice = 0.0;
            }
        }
        let refrigerant = self.refrigerant;
        if let Kind::Valve {
            spring,
            range,
            lag,
            bulb,
            lift,
            ..
        } = &mut self.kind
        {
            *bulb += dt / (*lag + dt) * (coil.outlet - *bulb);
            let charge = |t: f64| refrigerant.dew_pressure(t.min(refrigerant.hottest()));
            // The spring holds against what the static superheat gives at this evaporation.
            let opens = charge(boiling + *spring);
            let full = charge(boiling + *spring + *range);
            *lift = ((charge(*bulb) - opens) / (full - opens).max(1.0)).clamp(0.0, OPENING_MAX);
        }
    }

    /// Share of the throat's area that is free.
    fn free(&self) -> f64 {
        self.opening * (1.0 - self.blockage) * (1.0 - self.iced())
    }

    /// Area, m², and ln(L/D) of the throat.
    fn throat(&self) -> (f64, f64) {
        match self.kind {
            Kind::Orifice {
                area, log_ratio, ..
            } => (area * self.free(), log_ratio),
            Kind::Valve { area, .. } => (area * self.lift() * self.free(), LN_10),
        }
    }

    /// The throat as a path for gas. Chosen: three quarters of the area count.
    pub fn bore(&self) -> Path {
        let (area, _) = self.throat();
        let opening = Restriction::opening(0.75 * area);
        match self.kind {
            Kind::Orifice {
                diameter, length, ..
            } => Path::through(&[opening, Restriction::tube(diameter, length)]),
            Kind::Valve { .. } => Path::through(&[opening]),
        }
    }

    /// Flow of liquid or a mixture from `up` to `down`, Pa.
    ///
    /// Source of the form: Payne and O'Neal 2004, a short tube in dimensionless groups. Its
    /// denominator vanishes at strong subcooling: beyond [`SUBCOOLED_MAX`] the flow grows as that
    /// of a plain orifice. A wet inlet scales with the square root of the mixture's density.
    pub fn throttle(&self, donor: &Draw, up: f64, down: f64) -> Throttled {
        let (area, log_ratio) = self.throat();
        if up <= down || area <= 0.0 {
            return Throttled::default();
        }
        let fluid = self.refrigerant;
        let t = donor.t.min(fluid.hottest());
        let s = fluid.at(t);
        let critical = fluid.critical_pressure();
        let wet = if donor.x > 0.0 {
            (1.0 / ((1.0 - donor.x) + donor.x * s.rho_l / s.rho_g)).sqrt()
        } else {
            1.0
        };
        let scale = area * wet * (s.rho_l * critical).sqrt();
        let group = |s: &Curves, up: f64, subcooled: f64| {
            let over = (up - s.p).max(0.0) / critical;
            let group = (0.38811 + 11.427 * over - 14.194 * subcooled + 1.0703 * s.rho_g / s.rho_l
                - 0.091_928 * log_ratio)
                / (1.0 + 21.425 * over - 581.95 * subcooled * subcooled);
            group.max(0.05)
        };
        let choked = |up: f64| {
            let boils = fluid.bubble_temperature(up.min(0.9 * critical));
            let subcooled = (boils - t).max(0.0) / fluid.critical_temperature();
            if subcooled <= SUBCOOLED_MAX {
                return group(&s, up, subcooled);
            }
            let end = fluid.at(boils - SUBCOOLED_MAX * fluid.critical_temperature());
            let drop = |s: &Curves| (up - 0.9 * s.p).max(1.0);
            group(&end, up, SUBCOOLED_MAX) * (drop(&s) / drop(&end)).sqrt()
        };
        let unchoke = |up: f64, down: f64| {
            let edge = 0.75 * s.p.min(up);
            let mut factor = 1.0;
            if down > edge {
                let r = (down - edge) / (up - edge);
                factor = (1.0 - r * r).max(0.0).sqrt();
            }
            if up - down < 5000.0 {
                factor *= ((up - down).max(0.0) / 5000.0).sqrt();
            }
            factor
        };
        let step = (1e-4 * up).max(0.05);
        let (here, above) = (scale * choked(up), scale * choked(up + step));
        let flow = here * unchoke(up, down);
        Throttled {
            flow,
            per_upstream: (above * unchoke(up + step, down) - flow) / step,
            per_downstream: (here * unchoke(up, down + step) - flow) / step,
        }
    }

    pub fn visit(&self, visitor: &mut dyn FnMut(f64)) {
        visitor(self.ice);
        visitor(self.body);
        visitor(self.thaws);
        visitor(self.blockage);
        visitor(self.opening);
        if let Kind::Valve { bulb, lift, .. } = self.kind {
            visitor(bulb);
            visitor(lift);
        }
    }
}

/// What the metering device feels of the coil behind it.
#[derive(Debug, Clone, Copy)]
pub(super) struct CoilEnd {
    /// Temperature at the coil's outlet, where a bulb sits, K.
    pub outlet: f64,
    /// Temperature in the coil, K.
    pub inside: f64,
    /// Pressure in the coil, Pa.
    pub pressure: f64,
    /// Flow into it, kg/s.
    pub flow: f64,
    /// Water in what comes in, kg per kg.
    pub water: f64,
}
