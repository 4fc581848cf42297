//! The spots where the circuit meets the air: each joint, port, stem and coil is an opening whose
//! area the fittings decide.

use super::network::{BoundaryId, ElementId, End, Law, Path, Restriction};
use super::{Fittings, Joint, Line, Link, Plant, Spot};

/// The openings to the air, one for each spot.
#[derive(Debug, Clone)]
pub struct Outlets {
    elements: [ElementId; Spot::ALL.len()],
    /// What was last set, so that a tick on untouched fittings does not set it anew.
    last: Option<(Fittings, [bool; 2])>,
}

impl Outlets {
    /// One opening for each spot, all shut.
    pub fn lay_out(plant: &mut Plant, fittings: &Fittings, air: BoundaryId) -> Self {
        let elements = Spot::ALL.map(|spot| {
            let node = plant.node(fittings.place_of(spot));
            plant
                .network_mut()
                .add_element(End::Node(node), End::Boundary(air), Law::Shut)
        });
        Self {
            elements,
            last: None,
        }
    }

    /// The opening of a spot.
    pub fn element(&self, spot: Spot) -> ElementId {
        self.elements[spot.index()]
    }

    /// Sets openings and the line's own valves for the next tick. `covered` tells whether a hose
    /// or a core tool is on a port, so that its core cannot leak to the air.
    pub fn set(&mut self, fittings: &Fittings, covered: impl Fn(Line) -> bool, plant: &mut Plant) {
        let now = Line::ALL.map(&covered);
        if self
            .last
            .as_ref()
            .is_some_and(|(then, hoses)| then == fittings && *hoses == now)
        {
            return;
        }
        self.last = Some((fittings.clone(), now));
        for spot in Spot::ALL {
            let network = plant.network_mut();
            let law = match spot {
                Spot::Joint(joint) => joint_law(fittings, joint),
                Spot::Port(line) => port_law(fittings, line, covered(line)),
                Spot::Stem(line) => {
                    let valve = fittings.valve(line);
                    hole(if valve.cap_on || !valve.port_is_open() {
                        0.0
                    } else {
                        valve.packing_leak
                    })
                }
                Spot::IndoorCoil => hole(fittings.indoor_coil_leak),
                Spot::OutdoorCoil => hole(fittings.outdoor_coil_leak),
            };
            network.set_law(self.element(spot), law);
        }
        for (line, link) in [
            (Line::Liquid, Link::LiquidValve),
            (Line::Suction, Link::SuctionValve),
        ] {
            let full = plant.full_area(link);
            plant.set_opening(link, valve_opening(fittings, line, full));
        }
        let passes = |joints: [Joint; 2]| {
            joints
                .into_iter()
                .all(|j| fittings.joint(j).made != super::Made::Plugged)
        };
        let drier = if passes([Joint::DrierInlet, Joint::DrierOutlet]) {
            fittings.drier.opening()
        } else {
            0.0
        };
        plant.set_opening(Link::Drier, drier);
        let coil_in = if passes([Joint::IndoorLiquid; 2]) {
            1.0
        } else {
            0.0
        };
        plant.set_opening(Link::Metering, coil_in * (1.0 - fittings.metering_dirt));
        let coil_out = if passes([Joint::IndoorSuction; 2]) {
            1.0
        } else {
            0.0
        };
        plant.set_opening(Link::CoilOutlet, coil_out);
    }
}

/// The share of a service valve's area along the line that is open, with what its seat lets by.
fn valve_opening(fittings: &Fittings, line: Line, full: f64) -> f64 {
    let joint = match line {
        Line::Liquid => Joint::LiquidValve,
        Line::Suction => Joint::SuctionValve,
    };
    if fittings.joint(joint).made == super::Made::Plugged {
        return 0.0;
    }
    let valve = fittings.valve(line);
    valve.opening().max(valve.seat_leak / full)
}

fn joint_law(fittings: &Fittings, joint: Joint) -> Law {
    let state = fittings.joint(joint);
    if state.is_open() {
        Law::Path(Path::through(&[Restriction::tube(
            state.size.bore(),
            10e-3,
        )]))
    } else {
        hole(state.leak_area())
    }
}

fn port_law(fittings: &Fittings, line: Line, covered: bool) -> Law {
    let valve = fittings.valve(line);
    let port = &valve.port;
    if covered || port.cap_on {
        Law::Shut
    } else if port.core_in || !valve.port_is_open() {
        // What leaks past a core leaks past the back seat of a valve that has none.
        hole(port.core_leak)
    } else if port.tool_on && !port.tool_open {
        Law::Shut
    } else {
        Law::Path(Path::through(&[Restriction::tube(4.8e-3, 20e-3)]))
    }
}

/// A hole of this area, m²; shut when it has none.
fn hole(area: f64) -> Law {
    if area > 0.0 {
        Law::Path(Path::through(&[Restriction::opening(area)]))
    } else {
        Law::Shut
    }
}
