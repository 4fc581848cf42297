//! The unit's service valves, ports and joints, as they stand.

use super::service_valve::ValveKind;
use super::{FlareSize, Joint, JointState, Line, ServiceValve};

/// Valves, ports and joints of one unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Fittings {
    valves: [ServiceValve; 2],
    joints: [JointState; 6],
}

impl Fittings {
    /// From the state of each valve and joint, in the order of [`Line::ALL`] and [`Joint::ALL`].
    pub const fn new(valves: [ServiceValve; 2], joints: [JointState; 6]) -> Self {
        Self { valves, joints }
    }

    /// A sound unit with 3/8 in liquid and 3/4 in suction line.
    pub fn of_a_sound_unit() -> Self {
        let valve = ServiceValve::in_service(ValveKind::TwoPosition);
        let (small, large) = (FlareSize::ThreeEighths, FlareSize::ThreeQuarters);
        let sizes = [small, small, small, small, large, large];
        Self::new([valve; 2], sizes.map(JointState::sound))
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
}
