//! The things on the site that one can point at, with their names and how they look in words.

use super::view::View;
use crate::job::{Glass, PipeSurface};
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Arrow, Joint, Line, Made, Spot, ThermostatCall};
use crate::text::Message;
use crate::words::Reading;

/// A thing on the site.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The person's own glasses and gloves.
    Protection,
    /// The thermostat on the wall.
    Thermostat,
    /// The disconnect beside the outdoor unit.
    Disconnect,
    /// The nameplate of the outdoor unit.
    Nameplate,
    /// The compressor with its contactor.
    Compressor,
    /// The outdoor coil.
    OutdoorCoil,
    /// The indoor coil.
    IndoorCoil,
    /// The indoor air filter.
    Filter,
    /// A service valve's stem with its cap.
    Valve(Line),
    /// A service valve's access port.
    Port(Line),
    /// A flare joint.
    Joint(Joint),
    /// The filter drier.
    Drier,
    /// The sight glass in the liquid line, after the drier.
    SightGlass,
    /// Where a thermometer can be placed.
    Place(ThermometerPlace),
    /// A hose of the manifold.
    Hose(Hose),
    /// A hand valve of the manifold.
    HandValve(Hose),
    /// The vacuum pump.
    Pump,
    /// The micron gauge.
    MicronGauge,
    /// The nitrogen cylinder.
    Nitrogen,
    /// The regulator on the nitrogen cylinder.
    Regulator,
    /// The refrigerant cylinder on its scale.
    Cylinder,
    /// The thermometers that are not in use, in their case.
    Thermometers,
    /// The electronic leak detector.
    Detector,
}

impl Part {
    /// Every part, in the order in which the keyboard walks them: along the circuit, then the
    /// cart.
    pub fn all() -> impl Iterator<Item = Self> {
        let valves = Line::ALL
            .into_iter()
            .flat_map(|line| [Self::Valve(line), Self::Port(line)]);
        let unit = [
            Self::Protection,
            Self::Thermostat,
            Self::Nameplate,
            Self::Disconnect,
            Self::Compressor,
            Self::OutdoorCoil,
        ];
        let cart = [
            Self::HandValve(Hose::Low),
            Self::HandValve(Hose::High),
            Self::Pump,
            Self::MicronGauge,
            Self::Nitrogen,
            Self::Regulator,
            Self::Cylinder,
            Self::Thermometers,
            Self::Detector,
        ];
        unit.into_iter()
            .chain(valves)
            .chain(Joint::ALL.map(Self::Joint))
            .chain([
                Self::Drier,
                Self::SightGlass,
                Self::IndoorCoil,
                Self::Filter,
            ])
            .chain(ThermometerPlace::ALL.map(Self::Place))
            .chain(Hose::ALL.map(Self::Hose))
            .chain(cart)
    }

    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::Protection => Message::new("name-protection"),
            Self::Thermostat => Message::new("name-thermostat"),
            Self::Disconnect => Message::new("name-disconnect"),
            Self::Nameplate => Message::new("name-nameplate"),
            Self::Compressor => Message::new("name-compressor"),
            Self::OutdoorCoil => Message::new("name-outdoor-coil"),
            Self::IndoorCoil => Message::new("name-indoor-coil"),
            Self::Filter => Message::new("name-air-filter"),
            Self::Valve(Line::Liquid) => Message::new("name-valve-liquid"),
            Self::Valve(Line::Suction) => Message::new("name-valve-suction"),
            Self::Port(line) => Spot::Port(line).label(),
            Self::Joint(joint) => joint.label(),
            Self::Drier => Message::new("name-drier"),
            Self::SightGlass => Message::new("part-sight-glass"),
            Self::Place(place) => place.label(),
            Self::Hose(Hose::Low) => Message::new("part-hose-low"),
            Self::Hose(Hose::High) => Message::new("part-hose-high"),
            Self::Hose(Hose::Centre) => Message::new("part-hose-centre"),
            Self::HandValve(hose) => hose.valve_label(),
            Self::Pump => Message::new("name-vacuum-pump"),
            Self::MicronGauge => Message::new("name-micron-gauge"),
            Self::Nitrogen => Message::new("name-nitrogen"),
            Self::Regulator => Message::new("part-regulator"),
            Self::Cylinder => Message::new("name-cylinder"),
            Self::Thermometers => Message::new("part-thermometers"),
            Self::Detector => Message::new("name-detector"),
        }
    }

    /// How it looks, in words: what the drawing shows, for those who do not see the drawing.
    pub fn state(self, view: &View) -> String {
        view.tell(&self.looks(view))
    }

    fn looks(self, view: &View) -> Message {
        match self {
            Self::Protection => Message::new(if view.is_protected() {
                "part-protection-on"
            } else {
                "part-protection-off"
            }),
            Self::Thermostat => call_label(view.call()),
            Self::Disconnect
            | Self::Compressor
            | Self::OutdoorCoil
            | Self::IndoorCoil
            | Self::Filter => electric_look(self, view),
            Self::Nameplate => {
                let name = view.scene.refrigerant.to_owned();
                Message::new("part-plate").with("name", name)
            }
            Self::Valve(line) => {
                let valve = view.valve(line);
                listed(vec![stem_label(valve.open), cap_label(valve.cap_on)])
            }
            Self::Port(line) => port_look(line, view),
            Self::Joint(joint) => {
                let bubbles = view.bubbles(Spot::Joint(joint)).map(bubbles_label);
                let made = made_label(view.made(joint));
                listed(std::iter::once(made).chain(bubbles).collect())
            }
            Self::Drier => Message::new(match view.drier() {
                Some(Arrow::TowardMetering) => "part-drier-toward-metering",
                Some(Arrow::TowardOutdoor) => "part-drier-toward-outdoor",
                None => "part-drier-out",
            }),
            Self::SightGlass => glass_label(view.sight_glass()),
            Self::Place(place) => place_look(place, view),
            Self::Hose(hose) => end_label(view.hose(hose).end),
            Self::HandValve(hose) => opening_label(view.hand_valve(hose).unwrap_or(0.0)),
            Self::Pump
            | Self::MicronGauge
            | Self::Nitrogen
            | Self::Regulator
            | Self::Cylinder
            | Self::Thermometers
            | Self::Detector => kit_look(self, view),
        }
    }
}

fn listed(looks: Vec<Message>) -> Message {
    Message::list(looks, ", ")
}

/// What runs and what can be switched off.
fn electric_look(part: Part, view: &View) -> Message {
    let electrics = view.electrics();
    Message::new(match part {
        Part::Disconnect => match (electrics.disconnect_in, electrics.locked) {
            (_, true) => "part-disconnect-locked",
            (true, false) => "part-disconnect-in",
            (false, false) => "part-disconnect-out",
        },
        Part::Compressor if electrics.compressor_runs => "part-compressor-runs",
        Part::Compressor => "part-compressor-stands",
        Part::OutdoorCoil if electrics.outdoor_fan_runs => "part-fan-runs",
        Part::OutdoorCoil => "part-fan-stands",
        Part::IndoorCoil => {
            let blower = Message::new(if electrics.blower_runs {
                "part-blower-runs"
            } else {
                "part-blower-stands"
            });
            let coat = coat_label(view.indoor_coil_coat());
            return listed(std::iter::once(blower).chain(coat).collect());
        }
        _ => "part-filter-in",
    })
}

/// What stands on the cart.
fn kit_look(part: Part, view: &View) -> Message {
    match part {
        Part::Pump => {
            let pump = view.pump();
            let runs = Message::new(if pump.running {
                "part-pump-runs"
            } else {
                "part-pump-stands"
            });
            let inlet = Message::new(if pump.inlet_open {
                "part-inlet-open"
            } else {
                "part-inlet-shut"
            });
            listed(vec![runs, inlet])
        }
        Part::MicronGauge => listed(vec![
            view.micron_gauge().0.label(),
            view.shown(Reading::Microns),
        ]),
        Part::Nitrogen => {
            let (open, fitted, _) = view.nitrogen();
            let valve = Message::new(if open {
                "part-valve-open"
            } else {
                "part-valve-shut"
            });
            let regulator = Message::new(if fitted {
                "part-regulator-on"
            } else {
                "part-no-regulator"
            });
            listed(vec![valve, regulator])
        }
        Part::Regulator => match view.nitrogen() {
            (_, false, _) => Message::new("part-regulator-off"),
            (_, true, 0.0) => Message::new("part-regulator-backed-off"),
            (_, true, _) => Message::new("part-regulator-set")
                .with("pressure", view.system().gauge(view.regulator())),
        },
        Part::Cylinder => {
            let (valve, inverted) = view.cylinder();
            let way = Message::new(if inverted {
                "part-cylinder-inverted"
            } else {
                "part-cylinder-upright"
            });
            let valve = Message::new("part-valve-at").with("opening", opening_label(valve));
            listed(vec![way, valve])
        }
        Part::Thermometers => {
            Message::new("part-thermometers-left").with("count", view.thermometers_free())
        }
        _ => match view.detector_at() {
            None => Message::new("part-detector-away"),
            Some(spot) => Message::new("part-detector-at").with("spot", spot.label().the()),
        },
    }
}

/// What a hose's end is on, in words.
pub const fn end_label(end: Option<HoseEnd>) -> Message {
    Message::new(match end {
        None => "part-end-hung-up",
        Some(HoseEnd::SuctionPort) => "part-end-suction-port",
        Some(HoseEnd::LiquidPort) => "part-end-liquid-port",
        Some(HoseEnd::VacuumPump) => "part-end-vacuum-pump",
        Some(HoseEnd::Nitrogen) => "part-end-nitrogen",
        Some(HoseEnd::RefrigerantCylinder) => "part-end-cylinder",
        Some(HoseEnd::OpenAir) => "part-end-open-air",
    })
}

/// A thermostat's call, in words.
pub const fn call_label(call: ThermostatCall) -> Message {
    Message::new(match call {
        ThermostatCall::Off => "part-call-off",
        ThermostatCall::Fan => "part-call-fan",
        ThermostatCall::Cool => "part-call-cool",
    })
}

/// A stem's position, in words.
fn stem_label(open: f64) -> Message {
    Message::new(if open <= 0.0 {
        "part-stem-front"
    } else if open >= 1.0 {
        "part-stem-back"
    } else if open <= 0.2 {
        "part-stem-cracked"
    } else {
        "part-stem-mid"
    })
}

const fn cap_label(on: bool) -> Message {
    Message::new(if on { "part-cap-on" } else { "part-cap-off" })
}

/// How far a joint is made, in words.
const fn made_label(made: Made) -> Message {
    Message::new(match made {
        Made::Up(_) => "part-made-up",
        Made::Cracked => "part-made-loose",
        Made::Apart => "part-made-apart",
        Made::Plugged => "part-made-plugged",
    })
}

/// How far a valve is open, in words.
pub fn opening_label(open: f64) -> Message {
    if open <= 0.0 {
        Message::new("part-shut")
    } else if open >= 1.0 {
        Message::new("part-open")
    } else {
        Message::new("part-partly-open").with("percent", format!("{:.0}", open * 100.0))
    }
}

fn port_look(line: Line, view: &View) -> Message {
    let valve = view.valve(line);
    let mut looks = vec![cap_label(valve.port_cap_on)];
    if valve.has_core && !valve.core_in {
        looks.push(Message::new("part-core-out"));
    }
    if valve.tool_on {
        looks.push(Message::new(if valve.tool_open {
            "part-tool-open"
        } else {
            "part-tool-shut"
        }));
    }
    if let Some(hose) = Hose::ALL
        .into_iter()
        .find(|&hose| view.hose(hose).end == Some(HoseEnd::of_port(line)))
    {
        looks.push(Message::new("part-hose-on-it").with("hose", Part::Hose(hose).label()));
    }
    listed(looks)
}

fn place_look(place: ThermometerPlace, view: &View) -> Message {
    let shows = if view.thermometer_at(place) {
        view.shown(Reading::Thermometer(place))
    } else {
        Message::new("part-no-thermometer")
    };
    let coat = coat_label(view.coat(place));
    listed(std::iter::once(shows).chain(coat).collect())
}

/// What shows in the sight glass, in words.
fn glass_label(glass: Glass) -> Message {
    match glass {
        Glass::Clear => Message::new("part-glass-clear"),
        Glass::Flashes(vapour) if vapour < 0.2 => Message::new("part-glass-bubbles"),
        Glass::Flashes(_) => Message::new("part-glass-foam"),
        Glass::Level(filled) => {
            Message::new("part-glass-level").with("percent", format!("{:.0}", filled * 100.0))
        }
    }
}

const fn coat_label(coat: PipeSurface) -> Option<Message> {
    match coat {
        PipeSurface::Dry => None,
        PipeSurface::Sweat => Some(Message::new("part-sweats")),
        PipeSurface::Frost => Some(Message::new("part-frosted")),
    }
}

/// How it bubbles at a wet spot, in words.
pub fn bubbles_label(size: f64) -> Message {
    Message::new(if size < 0.05 {
        "part-wet-still"
    } else if size < 0.4 {
        "part-wet-grows"
    } else {
        "part-wet-foams"
    })
}
