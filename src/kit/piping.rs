//! How the manifold joins the circuit: the nodes of its hoses, and what connects them.

use super::tool::opening;
use super::tools::Name;
use super::{GaugePlace, Hose, HoseEnd, Kit};
use crate::plant::network::{
    BoundaryId, ElementId, End, Fill, Law, Network, NodeId, NodeSpec, Path, Restriction,
};
use crate::plant::{Fittings, Line, Plant, Spot};
use crate::units::Length;
use std::f64::consts::FRAC_PI_4;

/// The bore of an access port without its core, and of a core tool, m. Chosen: 1/4 in flare.
const PORT_BORE: f64 = 4.8e-3;
/// The area of a hand valve of the manifold, m². Chosen: as wide as a 1/4 in hose.
const HAND_VALVE: f64 = 1.8e-5;
/// The area of a cracked hose end while it is purged, m². Chosen: a breath of one to three grams.
const PURGE: f64 = 2.0e-7;
/// The area of a hose end that spills until its fitting has shut, m². Chosen.
const SPILL: f64 = 4.0e-7;

/// The lines of the kit in the network.
#[derive(Debug, Clone)]
pub struct Piping {
    sides: [Side; 2],
    centre: NodeId,
    tee: NodeId,
    bore: f64,
    length: f64,
    centre_hose: ElementId,
    centre_to_air: ElementId,
    tee_to_air: ElementId,
}

/// The low or the high side of the manifold with its hose.
#[derive(Debug, Clone, Copy)]
struct Side {
    node: NodeId,
    /// From the liquid port and from the suction port.
    ports: [ElementId; 2],
    hand_valve: ElementId,
    to_air: ElementId,
}

/// What leaves the hoses to the air in a tick, by place.
#[derive(Debug, Clone, Copy)]
pub struct Outlet {
    /// The element through which it goes.
    pub element: ElementId,
    /// The place.
    pub at: OutletPlace,
}

/// A place where a hose or the manifold opens to the air.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OutletPlace {
    /// A hose.
    Hose(Hose),
    /// The centre of the manifold.
    ManifoldCentre,
}

impl Piping {
    /// Lays the hoses out, full of the air of the place.
    pub fn lay_out(
        plant: &mut Plant,
        fittings: &Fittings,
        air: BoundaryId,
        hose: Length,
        bore: Length,
    ) -> Self {
        let (bore, length) = (bore.metres(), hose.metres());
        let hose_volume = FRAC_PI_4 * bore * bore * length;
        let ends = Line::ALL.map(|line| plant.node(fittings.place_of(Spot::Port(line))));
        let network = plant.network_mut();
        // Chosen: a manifold's chamber holds 30 mL and weighs some hundred grams of brass.
        let small = |volume: f64| NodeSpec {
            volume,
            wall: 40.0,
            to_ambient: 0.5,
            fill: Fill::MoistAir,
        };
        let sides = [0, 1].map(|_| network.add_node(small(hose_volume + 30e-6)));
        let centre = network.add_node(small(20e-6));
        let tee = network.add_node(small(hose_volume + 15e-6));
        let shut =
            |network: &mut Network, from: End, to: End| network.add_element(from, to, Law::Shut);
        let air_end = End::Boundary(air);
        let sides = sides.map(|node| Side {
            node,
            ports: ends.map(|end| shut(network, End::Node(end), End::Node(node))),
            hand_valve: shut(network, End::Node(node), End::Node(centre)),
            to_air: shut(network, End::Node(node), air_end),
        });
        Self {
            sides,
            centre,
            tee,
            bore,
            length,
            centre_hose: shut(network, End::Node(centre), End::Node(tee)),
            centre_to_air: shut(network, End::Node(centre), air_end),
            tee_to_air: shut(network, End::Node(tee), air_end),
        }
    }

    /// Sets what is open and what is shut for the next tick.
    pub fn set(&self, kit: &Kit, fittings: &Fittings, plant: &mut Plant) {
        let network = plant.network_mut();
        for (hose, side) in [Hose::Low, Hose::High].into_iter().zip(self.sides) {
            let state = kit.manifold.hose(hose);
            for line in Line::ALL {
                let on = state.end == Some(HoseEnd::of_port(line));
                let law = if on {
                    self.through_port(fittings, line)
                } else {
                    Law::Shut
                };
                network.set_law(side.ports[line as usize], law);
            }
            let valve = match hose {
                Hose::Low => kit.manifold.low_valve,
                Hose::High | Hose::Centre => kit.manifold.high_valve,
            };
            network.set_law(side.hand_valve, opening(HAND_VALVE * valve.get()));
            network.set_law(side.to_air, self.to_air(state));
        }
        let centre = kit.manifold.hose(Hose::Centre);
        network.set_law(self.centre_hose, path(&[self.hose()]));
        let purge = if centre.purging > 0.0 { PURGE } else { 0.0 };
        network.set_law(self.centre_to_air, opening(purge));
        network.set_law(self.tee_to_air, Self::tee_opening(centre));
    }

    /// Lets a tick pass: hoses stop spilling, the gauges of the manifold follow.
    pub fn follow(&self, kit: &mut Kit, plant: &Plant, dt: f64) {
        let network = plant.network();
        for hose in Hose::ALL {
            let state = kit.manifold.hose_mut(hose);
            state.purging = (state.purging - dt).max(0.0);
            state.spilling = (state.spilling - dt).max(0.0);
        }
        let [low, high] = self.sides.map(|side| network.node(side.node).pressure);
        kit.manifold.low_gauge.follow(low, dt);
        kit.manifold.high_gauge.follow(high, dt);
    }

    /// The pressure that the micron gauge meets, Pa absolute.
    pub fn at_micron_gauge(&self, kit: &Kit, fittings: &Fittings, plant: &Plant) -> f64 {
        let network = plant.network();
        let at_port = |line: Line| {
            let valve = fittings.valve(line);
            let hose = kit.manifold.hose_on(HoseEnd::of_port(line));
            if !valve.port.core_in && valve.port_is_open() {
                let place = fittings.place_of(Spot::Port(line));
                network.node(plant.node(place)).pressure
            } else if let Some(hose) = hose {
                network.node(self.sides[hose as usize].node).pressure
            } else {
                crate::units::ATMOSPHERE
            }
        };
        match kit.micron_gauge.place {
            GaugePlace::Cart => crate::units::ATMOSPHERE,
            GaugePlace::Manifold => network.node(self.centre).pressure,
            GaugePlace::SuctionPort => at_port(Line::Suction),
            GaugePlace::LiquidPort => at_port(Line::Liquid),
            GaugePlace::Pump => {
                let on = kit.tool_in_use() == Some(Name::VacuumPump);
                let pump = &kit.tools.vacuum_pump;
                match (on, pump.running) {
                    (true, _) => network.node(self.tee).pressure,
                    (false, true) => pump.ultimate(),
                    (false, false) => crate::units::ATMOSPHERE,
                }
            }
        }
    }

    /// Where the hoses open to the air.
    pub fn outlets(&self) -> [Outlet; 4] {
        let outlet = |element, at| Outlet { element, at };
        [
            outlet(self.sides[0].to_air, OutletPlace::Hose(Hose::Low)),
            outlet(self.sides[1].to_air, OutletPlace::Hose(Hose::High)),
            outlet(self.centre_to_air, OutletPlace::ManifoldCentre),
            outlet(self.tee_to_air, OutletPlace::Hose(Hose::Centre)),
        ]
    }

    /// The node at the far end of the centre hose.
    pub const fn tee(&self) -> NodeId {
        self.tee
    }

    /// The nodes of low side, high side, centre and far end of the centre hose.
    pub const fn hose_nodes(&self) -> [NodeId; 4] {
        [
            self.sides[0].node,
            self.sides[1].node,
            self.centre,
            self.tee,
        ]
    }

    fn hose(&self) -> Restriction {
        Restriction::tube(self.bore, self.length)
    }

    /// From a port through core or bore, core tool and hose to the manifold.
    fn through_port(&self, fittings: &Fittings, line: Line) -> Law {
        let valve = fittings.valve(line);
        let port = &valve.port;
        if !valve.port_is_open() || (port.tool_on && !port.tool_open) {
            return Law::Shut;
        }
        let gate = if port.core_in {
            Restriction::core()
        } else {
            port_bore()
        };
        path(&[gate, self.hose()])
    }

    /// A low or high hose to the air: purging at the manifold, spilling, or held open.
    fn to_air(&self, state: &super::HoseState) -> Law {
        if state.end == Some(HoseEnd::OpenAir) {
            path(&[self.hose()])
        } else if state.purging > 0.0 {
            opening(PURGE)
        } else if state.spilling > 0.0 {
            opening(SPILL)
        } else {
            Law::Shut
        }
    }

    /// The far end of the centre hose to the air.
    fn tee_opening(state: &super::HoseState) -> Law {
        if state.end == Some(HoseEnd::OpenAir) {
            path(&[port_bore()])
        } else if state.spilling > 0.0 {
            opening(SPILL)
        } else {
            Law::Shut
        }
    }
}

fn port_bore() -> Restriction {
    Restriction::tube(PORT_BORE, 20e-3)
}

fn path(restrictions: &[Restriction]) -> Law {
    Law::Path(Path::through(restrictions))
}
