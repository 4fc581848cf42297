//! How the kit joins the circuit: the nodes of hoses and cylinder, and what connects them.

use super::{GaugePlace, Hose, HoseEnd, Kit, vacuum_pump};
use crate::plant::network::{
    Boundary, BoundaryId, Direction, Draws, ElementId, End, Fill, Law, Network, NodeId, NodeSpec,
    Path, Restriction,
};
use crate::plant::{Fittings, Line, Plant, Spot};
use crate::text::Message;
use crate::units::{Length, Mass};
use std::f64::consts::FRAC_PI_4;

/// The bore of an access port without its core, and of a core tool, m. Chosen: 1/4 in flare.
const PORT_BORE: f64 = 4.8e-3;
/// The area of a hand valve of the manifold, m². Chosen: as wide as a 1/4 in hose.
const HAND_VALVE: f64 = 1.8e-5;
/// The area of a cracked hose end while it is purged, m². Chosen: a breath of one to three grams.
const PURGE: f64 = 2.0e-7;
/// The area of a hose end that spills until its fitting has shut, m². Chosen.
const SPILL: f64 = 4.0e-7;
/// The area of the seat of a nitrogen regulator, m². Chosen: 100 psig within half a minute.
const REGULATOR: f64 = 5.0e-6;
/// The area of the valve of a refrigerant cylinder, m². Chosen.
const CYLINDER_VALVE: f64 = 8.0e-6;
/// The inner volume of a 30 lb refrigerant cylinder, m³ (common practice, no source).
const CYLINDER_VOLUME: f64 = 13.4e-3;

/// The lines of the kit in the network.
#[derive(Debug, Clone)]
pub struct Piping {
    nitrogen: BoundaryId,
    sides: [Side; 2],
    centre: NodeId,
    tee: NodeId,
    cylinder: NodeId,
    bore: f64,
    length: f64,
    centre_hose: ElementId,
    centre_to_air: ElementId,
    tee_to_air: ElementId,
    pump: ElementId,
    from_nitrogen: ElementId,
    from_cylinder: ElementId,
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

/// What leaves the kit to the air in a tick, by place.
#[derive(Debug, Clone)]
pub struct Outlet {
    /// The element through which it goes.
    pub element: ElementId,
    /// What a technician calls the place.
    pub label: Message,
}

impl Piping {
    /// Lays the hoses out, full of the air of the place, and stands the cylinder on its scale.
    pub fn lay_out(
        plant: &mut Plant,
        fittings: &Fittings,
        air: BoundaryId,
        hose: Length,
        bore: Length,
        cylinder: Mass,
    ) -> Self {
        let (bore, length) = (bore.metres(), hose.metres());
        let hose_volume = FRAC_PI_4 * bore * bore * length;
        let ends = Line::ALL.map(|line| plant.node(fittings.place_of(Spot::Port(line))));
        let network = plant.network_mut();
        let air_temperature = network.boundary(air).temperature;
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
        let cylinder = network.add_node(NodeSpec {
            volume: CYLINDER_VOLUME,
            wall: 3000.0,
            to_ambient: 3.0,
            fill: Fill::Refrigerant {
                mass: cylinder.kilograms(),
                temperature: air_temperature,
            },
        });
        let nitrogen = network.add_boundary(Boundary {
            pressure: crate::units::ATMOSPHERE,
            temperature: air_temperature,
            moles: [1.0, 0.0, 0.0],
        });
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
            nitrogen,
            sides,
            centre,
            tee,
            cylinder,
            bore,
            length,
            centre_hose: shut(network, End::Node(centre), End::Node(tee)),
            centre_to_air: shut(network, End::Node(centre), air_end),
            tee_to_air: shut(network, End::Node(tee), air_end),
            pump: shut(network, End::Node(tee), air_end),
            from_nitrogen: shut(network, End::Boundary(nitrogen), End::Node(tee)),
            from_cylinder: shut(network, End::Node(cylinder), End::Node(tee)),
        }
    }

    /// Sets what is open and what is shut for the next tick.
    pub fn set(&self, kit: &Kit, fittings: &Fittings, air_temperature: f64, plant: &mut Plant) {
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
        self.set_service(kit, air_temperature, network);
    }

    /// Sets pump, nitrogen and cylinder at the far end of the centre hose.
    fn set_service(&self, kit: &Kit, air_temperature: f64, network: &mut Network) {
        let end = kit.manifold.hose(Hose::Centre).end;
        let pump = if end == Some(HoseEnd::VacuumPump) && kit.pump.draws() {
            Law::Pump {
                displacement: vacuum_pump::DISPLACEMENT,
                ultimate: kit.pump.ultimate(),
            }
        } else {
            Law::Shut
        };
        network.set_law(self.pump, pump);
        let nitrogen = match kit.nitrogen.outlet_pressure(air_temperature) {
            Some(pressure) if end == Some(HoseEnd::Nitrogen) => {
                let moles = [1.0, 0.0, 0.0];
                let outlet = Boundary {
                    pressure,
                    temperature: air_temperature,
                    moles,
                };
                network.set_boundary(self.nitrogen, outlet);
                let seat = Path::through(&[Restriction::opening(REGULATOR)]);
                Law::Path(seat.only(Direction::Forward))
            }
            _ => Law::Shut,
        };
        network.set_law(self.from_nitrogen, nitrogen);
        let cylinder = end == Some(HoseEnd::RefrigerantCylinder);
        let area = if cylinder {
            CYLINDER_VALVE * kit.cylinder.valve.get()
        } else {
            0.0
        };
        network.set_law(self.from_cylinder, opening(area));
        let draws = if kit.cylinder.inverted {
            Draws::Liquid
        } else {
            Draws::Vapour
        };
        network.set_draws(self.cylinder, draws);
    }

    /// What the tick did to the tools: hoses stop spilling, the pump's oil takes water, the
    /// nitrogen cylinder empties, gauges and scale follow.
    pub fn follow(&self, kit: &mut Kit, plant: &Plant, air_temperature: f64, dt: f64) {
        let network = plant.network();
        for hose in Hose::ALL {
            let state = kit.manifold.hose_mut(hose);
            state.purging = (state.purging - dt).max(0.0);
            state.spilling = (state.spilling - dt).max(0.0);
        }
        let water = network.flux(self.pump).gas[2] * crate::fluid::gas::MOLAR_MASS[2];
        kit.pump.pass_water(water.max(0.0) * dt, dt);
        kit.nitrogen
            .give(network.flux(self.from_nitrogen).gas[0] * dt);
        let [low, high] = self.sides.map(|side| network.node(side.node).pressure);
        kit.manifold.low_gauge.follow(low, dt);
        kit.manifold.high_gauge.follow(high, dt);
        kit.cylinder
            .follow(network.node(self.cylinder).refrigerant, dt);
        let outlet = kit.nitrogen.outlet_pressure(air_temperature);
        kit.nitrogen.follow(
            outlet.unwrap_or(crate::units::ATMOSPHERE),
            air_temperature,
            dt,
        );
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
                let on = kit.manifold.hose(Hose::Centre).end == Some(HoseEnd::VacuumPump);
                match (on, kit.pump.running) {
                    (true, _) => network.node(self.tee).pressure,
                    (false, true) => kit.pump.ultimate(),
                    (false, false) => crate::units::ATMOSPHERE,
                }
            }
        }
    }

    /// Where the kit opens to the air, with the words for each place.
    pub fn outlets(&self) -> [Outlet; 4] {
        [
            Outlet {
                element: self.sides[0].to_air,
                label: Message::new("name-hose-low"),
            },
            Outlet {
                element: self.sides[1].to_air,
                label: Message::new("name-hose-high"),
            },
            Outlet {
                element: self.centre_to_air,
                label: Message::new("name-manifold-centre"),
            },
            Outlet {
                element: self.tee_to_air,
                label: Message::new("name-hose-centre"),
            },
        ]
    }

    /// The element through which the vacuum pump draws.
    pub const fn pump(&self) -> ElementId {
        self.pump
    }

    /// The element through which nitrogen comes.
    pub const fn from_nitrogen(&self) -> ElementId {
        self.from_nitrogen
    }

    /// The node at the far end of the centre hose.
    pub const fn tee(&self) -> NodeId {
        self.tee
    }

    /// The node of the refrigerant cylinder.
    pub const fn cylinder(&self) -> NodeId {
        self.cylinder
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

/// An opening of this area, m²; shut when it has none.
fn opening(area: f64) -> Law {
    if area > 0.0 {
        path(&[Restriction::opening(area)])
    } else {
        Law::Shut
    }
}
