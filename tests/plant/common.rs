//! What the tests of the plant share: a bare unit in given weather, and the trade's units.
#![allow(dead_code, reason = "each test file uses its part of this")]

use coldbench::fluid::moist_air;
use coldbench::plant::network::{Amounts, Node};
use coldbench::plant::{Air, Conditions, Plant, Section, TICK, Unit};
use coldbench::units::{ATMOSPHERE, Mass, PSI};

pub const R22: &str = include_str!("../../assets/units/r22_3ton_orifice.ron");

pub const R410A: &str = include_str!("../../assets/units/r410a_3ton_txv.ron");

pub const RECEIVER: &str = include_str!("../../assets/units/r134a_receiver_txv.ron");

pub fn psig(pascals: f64) -> f64 {
    (pascals - ATMOSPHERE) / PSI
}

pub fn kelvin(fahrenheit: f64) -> f64 {
    (fahrenheit + 459.67) / 1.8
}

pub fn fahrenheit(kelvin: f64) -> f64 {
    kelvin * 1.8 - 459.67
}

/// Humidity ratio from dry and wet bulb, °F.
pub fn humidity(dry: f64, wet: f64) -> f64 {
    moist_air::humidity_ratio_from_wet_bulb(kelvin(dry), kelvin(wet))
}

/// A bare unit.
#[derive(Clone)]
pub struct Bench {
    pub plant: Plant,
    pub conditions: Conditions,
    pub dt: f64,
}

impl Bench {
    pub fn r22() -> Self {
        let unit = Unit::from_ron(R22).expect("the shipped unit reads");
        let charge = unit.nameplate.charge;
        Self::of(&unit, charge, 95.0)
    }

    pub fn of(unit: &Unit, charge: Mass, outdoor: f64) -> Self {
        let conditions = Conditions {
            compressor_powered: false,
            condenser_fan: 0.0,
            blower: 0.0,
            sun: 0.0,
            outdoor: Air {
                t: kelvin(outdoor),
                w: 0.012,
            },
            indoor: Air {
                t: kelvin(80.0),
                w: humidity(80.0, 67.0),
            },
        };
        Self {
            plant: Plant::new(unit, &conditions, charge),
            conditions,
            dt: TICK,
        }
    }

    /// The cold-room unit with a receiver, with a share of its charge, at its rating point A.
    pub fn cold_room(share: f64) -> Self {
        let unit = Unit::from_ron(RECEIVER).expect("the shipped unit reads");
        let charge = Mass::from_kilograms(share * unit.nameplate.charge.kilograms());
        let mut bench = Self::of(&unit, charge, 95.0);
        let room = unit.nameplate.room;
        let (dry, wet) = (room.dry_bulb.kelvin(), room.wet_bulb.kelvin());
        bench.conditions.indoor = Air {
            t: dry,
            w: moist_air::humidity_ratio_from_wet_bulb(dry, wet),
        };
        bench
    }

    pub fn cool_on(&mut self) {
        self.conditions.compressor_powered = true;
        self.conditions.condenser_fan = 1.0;
        self.conditions.blower = 1.0;
    }

    pub fn off(&mut self) {
        self.conditions.compressor_powered = false;
        self.conditions.condenser_fan = 0.0;
        self.conditions.blower = 0.0;
    }

    pub fn run(&mut self, seconds: f64) {
        for _ in 0..(seconds / self.dt).round() as u64 {
            self.plant.advance(&self.conditions, self.dt);
        }
    }

    pub fn node(&self, place: Section) -> &Node {
        self.plant.network().node(self.plant.node(place))
    }

    pub fn pressure(&self, place: Section) -> f64 {
        psig(self.node(place).pressure)
    }

    /// At the suction service valve, °F.
    pub fn superheat(&self) -> f64 {
        let fluid = self.plant.network().refrigerant();
        let node = self.node(Section::SuctionLine);
        1.8 * (node.temperature - fluid.dew_temperature(node.pressure))
    }

    /// At the liquid service valve, °F: by the pressure in the liquid line.
    pub fn subcooling(&self) -> f64 {
        let fluid = self.plant.network().refrigerant();
        let liquid = self.plant.operating().liquid_temperature;
        1.8 * (fluid.bubble_temperature(self.node(Section::LiquidLine).pressure) - liquid)
    }

    /// What is out of balance: refrigerant, gases and energy, as shares of what there is.
    pub fn imbalance(&self) -> [f64; 5] {
        let network = self.plant.network();
        let (now, then) = (network.contents(), network.initial());
        let (net, scale) = (&network.ledger().net, &network.ledger().scale);
        let share = |now: f64, then: f64, net: f64, scale: f64| {
            (now - then - net).abs() / (then.abs() + scale).max(1e-12)
        };
        let of = |a: &Amounts, k: usize| a.gas[k];
        [
            share(
                now.refrigerant,
                then.refrigerant,
                net.refrigerant,
                scale.refrigerant,
            ),
            share(of(&now, 0), of(then, 0), of(net, 0), of(scale, 0)),
            share(of(&now, 1), of(then, 1), of(net, 1), of(scale, 1)),
            share(of(&now, 2), of(then, 2), of(net, 2), of(scale, 2)),
            share(now.energy, then.energy, net.energy, scale.energy),
        ]
    }

    pub fn line(&self) -> String {
        let o = self.plant.operating();
        format!(
            "ps {:.1} pd {:.1} pl {:.1} psig SH {:.1} SHe {:.1} SC {:.1} °F \
             Q {:.2} kBtu/h P {:.2} kW m {:.4} \
             wetted {:.2} liquid zone {:.2} oil {:.3} kg",
            self.pressure(Section::SuctionLine),
            self.pressure(Section::Condenser),
            self.pressure(Section::LiquidLine),
            self.superheat(),
            o.coil_superheat * 1.8,
            self.subcooling(),
            o.net_capacity * 3.412_142e-3,
            o.power / 1e3,
            o.metering_flow,
            o.wetted,
            o.liquid_zone,
            o.dissolved_in_oil
        )
    }
}
