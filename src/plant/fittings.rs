//! The unit's service valves, ports and joints, as they stand.

use super::{Drier, FlareSize, Joint, JointState, Line, Section, ServiceValve, Spot, ValveKind};
use serde::{Deserialize, Serialize};

/// Which valves and flares a unit has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ServiceData {
    /// The liquid service valve.
    pub liquid_valve: ValveKind,
    /// The suction service valve.
    pub suction_valve: ValveKind,
    /// The tube of the liquid line.
    pub liquid_flare: FlareSize,
    /// The tube of the suction line.
    pub suction_flare: FlareSize,
}

/// Valves, ports and joints of one unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Fittings {
    valves: [ServiceValve; 2],
    joints: [JointState; 6],
    /// The filter drier.
    pub drier: Drier,
    /// The share of the metering device's area that dirt takes.
    pub metering_dirt: f64,
    /// A hole in the indoor coil, m².
    pub indoor_coil_leak: f64,
    /// A hole in the outdoor coil, m².
    pub outdoor_coil_leak: f64,
}

impl Fittings {
    /// From the state of each valve and joint, in the order of [`Line::ALL`] and [`Joint::ALL`].
    pub const fn new(valves: [ServiceValve; 2], joints: [JointState; 6]) -> Self {
        Self {
            valves,
            joints,
            drier: Drier::sound(),
            metering_dirt: 0.0,
            indoor_coil_leak: 0.0,
            outdoor_coil_leak: 0.0,
        }
    }

    /// All of a unit as the maker ships it: back-seated, capped, tight.
    pub fn sound(data: &ServiceData) -> Self {
        let valves = [data.liquid_valve, data.suction_valve].map(ServiceValve::in_service);
        let (small, large) = (data.liquid_flare, data.suction_flare);
        let sizes = [small, small, small, small, large, large];
        Self::new(valves, sizes.map(JointState::sound))
    }

    /// A service valve.
    pub const fn valve(&self, line: Line) -> &ServiceValve {
        &self.valves[line as usize]
    }

    /// A service valve, to work on.
    pub const fn valve_mut(&mut self, line: Line) -> &mut ServiceValve {
        &mut self.valves[line as usize]
    }

    /// A joint.
    pub const fn joint(&self, joint: Joint) -> &JointState {
        &self.joints[joint as usize]
    }

    /// A joint, to work on.
    pub const fn joint_mut(&mut self, joint: Joint) -> &mut JointState {
        &mut self.joints[joint as usize]
    }

    /// The place of the circuit that a spot opens to.
    ///
    /// Port and packing of a three-position valve lie beyond its front seat: those of the suction
    /// valve on the compressor, those of the liquid valve on its line. A two-position valve has
    /// both on the line set's side.
    pub fn place_of(&self, spot: Spot) -> Section {
        match spot {
            Spot::OutdoorCoil => Section::Condenser,
            Spot::IndoorCoil => Section::Evaporator,
            Spot::Stem(Line::Liquid)
            | Spot::Port(Line::Liquid)
            | Spot::Joint(Joint::LiquidValve | Joint::DrierInlet) => Section::LiquidLine,
            Spot::Joint(Joint::DrierOutlet | Joint::IndoorLiquid) => Section::AfterDrier,
            Spot::Stem(Line::Suction) | Spot::Port(Line::Suction)
                if !self.valve(Line::Suction).has_core() =>
            {
                Section::Shell
            }
            Spot::Stem(Line::Suction)
            | Spot::Port(Line::Suction)
            | Spot::Joint(Joint::IndoorSuction | Joint::SuctionValve) => Section::SuctionLine,
        }
    }

    /// Every number of the state, for digests.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        let flag = |so: bool| f64::from(u8::from(so));
        for valve in &self.valves {
            let port = &valve.port;
            for so in [
                valve.cap_on,
                port.cap_on,
                port.core_in,
                port.tool_on,
                port.tool_open,
            ] {
                visit(flag(so));
            }
            for number in [
                valve.open.get(),
                valve.seat_leak,
                valve.packing_leak,
                port.core_leak,
            ] {
                visit(number);
            }
        }
        for joint in &self.joints {
            visit(joint.leak_area());
            visit(joint.shortfall());
            visit(flag(joint.split));
        }
        visit(
            self.drier
                .fitted
                .map_or(-1.0, |arrow| f64::from(arrow as u8)),
        );
        let rest = [
            self.drier.clogging,
            self.metering_dirt,
            self.indoor_coil_leak,
            self.outdoor_coil_leak,
        ];
        for number in rest {
            visit(number);
        }
    }
}
