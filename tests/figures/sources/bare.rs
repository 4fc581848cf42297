//! A bare circuit in its weather: for what is tried without anybody's hands or instruments.

use coldbench::fluid::moist_air;
use coldbench::plant::network::{End, Law, NodeId, NodeSpec, Path, Restriction};
use coldbench::plant::{Air, Conditions, Plant, Section, TICK, Unit};
use coldbench::units::{ATMOSPHERE, Mass, PSI, Temperature};

/// A unit at rest, with what it works in.
#[derive(Debug)]
pub(super) struct Bare {
    pub plant: Plant,
    pub conditions: Conditions,
    /// The length of its steps, s.
    pub step: f64,
}

impl Bare {
    /// A unit with its nameplate charge, at rest in air of one temperature, °F.
    pub fn at_rest(unit: &Unit, outdoor: f64, indoor: (f64, f64)) -> Self {
        Self::with_charge(unit, unit.nameplate.charge, outdoor, indoor)
    }

    /// The same with another charge.
    pub fn with_charge(
        unit: &Unit,
        charge: Mass,
        outdoor: f64,
        (indoor, wet_bulb): (f64, f64),
    ) -> Self {
        let kelvin = |f| Temperature::from_fahrenheit(f).kelvin();
        let (dry, wet) = (kelvin(indoor), kelvin(wet_bulb));
        let outdoor = kelvin(outdoor);
        let conditions = Conditions {
            compressor_powered: false,
            condenser_fan: 0.0,
            blower: 0.0,
            sun: 0.0,
            outdoor: Air {
                t: outdoor,
                w: moist_air::humidity_ratio_from_relative(outdoor, 0.4),
            },
            indoor: Air {
                t: dry,
                w: moist_air::humidity_ratio_from_wet_bulb(dry, wet),
            },
        };
        Self {
            plant: Plant::new(unit, &conditions, charge),
            conditions,
            step: TICK,
        }
    }

    /// Cooling on or off: compressor and both fans.
    pub fn cool(&mut self, on: bool) {
        let share = f64::from(u8::from(on));
        self.conditions.compressor_powered = on;
        self.conditions.condenser_fan = share;
        self.conditions.blower = share;
    }

    /// Lets time pass, s.
    pub fn run(&mut self, seconds: f64) {
        for _ in 0..(seconds / self.step).round() as u64 {
            self.plant.advance(&self.conditions, self.step);
        }
    }

    /// Gauge pressure at a place, psig.
    pub fn psig(&self, place: Section) -> f64 {
        (self.plant.pressure(place) - ATMOSPHERE) / PSI
    }

    /// Gauge pressure in a further vessel, psig.
    pub fn psig_in(&self, vessel: NodeId) -> f64 {
        (self.plant.network().node(vessel).pressure - ATMOSPHERE) / PSI
    }

    /// A further vessel beside the circuit.
    pub fn add_vessel(&mut self, spec: NodeSpec) -> NodeId {
        self.plant.network_mut().add_node(spec)
    }

    /// Lets a path stand open from a vessel to a further one.
    pub fn join(&mut self, from: NodeId, to: NodeId, path: Restriction) {
        let law = Law::Path(Path::through(&[path]));
        let (from, to) = (End::Node(from), End::Node(to));
        self.plant.network_mut().add_element(from, to, law);
    }
}
