//! The things on the site that one can point at, with their names and how they look in words.

use crate::gui::tools::{self, cylinder, detector, micron_gauge, nitrogen, pump, thermometers};
use crate::gui::view::View;
use crate::gui::view::looks::{
    bubbles_label, call_label, cap_label, coat_label, end_label, glass_label, made_label,
    opening_label, stem_label,
};
use crate::gui::view::turn::{Thread, Turn};
use crate::kit::tools::Name;
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Arrow, Joint, Line, Spot};
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
    /// A tool that not every cart has.
    Tool(Name),
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

    /// Every part on a site: those of every site, then the tools that were brought to this one.
    pub fn on_site(view: &View) -> impl Iterator<Item = Self> {
        Self::all().chain(tools::brought(view).map(|(name, _)| Self::Tool(name)))
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
            Self::Pump => Name::VacuumPump.label(),
            Self::MicronGauge => Message::new("name-micron-gauge"),
            Self::Nitrogen => Name::Nitrogen.label(),
            Self::Regulator => Message::new("part-regulator"),
            Self::Cylinder => Name::RefrigerantCylinder.label(),
            Self::Thermometers => Message::new("part-thermometers"),
            Self::Detector => Message::new("name-detector"),
            Self::Tool(name) => name.label(),
        }
    }

    /// How it looks, in words: what the drawing shows, for those who do not see the drawing.
    pub fn state(self, view: &View) -> String {
        view.tell(&self.looks(view))
    }

    /// What turns at it.
    pub const fn thread(self) -> Option<Thread> {
        match self {
            Self::Valve(line) => Some(Thread::Stem(line)),
            Self::HandValve(hose) => Some(Thread::HandValve(hose)),
            Self::Cylinder => Some(Thread::Cylinder),
            Self::Regulator => Some(Thread::Regulator),
            Self::Protection
            | Self::Thermostat
            | Self::Disconnect
            | Self::Nameplate
            | Self::Compressor
            | Self::OutdoorCoil
            | Self::IndoorCoil
            | Self::Filter
            | Self::Port(_)
            | Self::Joint(_)
            | Self::Drier
            | Self::SightGlass
            | Self::Place(_)
            | Self::Hose(_)
            | Self::Pump
            | Self::MicronGauge
            | Self::Nitrogen
            | Self::Thermometers
            | Self::Detector
            | Self::Tool(_) => None,
        }
    }

    /// How far what turns at it is turned, as things stand.
    pub fn turn(self, view: &View) -> Option<Turn> {
        Turn::of(self.thread()?, view)
    }

    fn looks(self, view: &View) -> Message {
        match self {
            Self::Protection => Message::new(if view.is_protected() {
                "part-protection-on"
            } else {
                "part-protection-off"
            }),
            Self::Thermostat => call_label(view.call()),
            Self::Disconnect => disconnect_look(view),
            Self::Compressor => Message::new(if view.electrics().compressor_runs {
                "part-compressor-runs"
            } else {
                "part-compressor-stands"
            }),
            Self::OutdoorCoil => Message::new(if view.electrics().outdoor_fan_runs {
                "part-fan-runs"
            } else {
                "part-fan-stands"
            }),
            Self::IndoorCoil => indoor_coil_look(view),
            Self::Filter => Message::new("part-filter-in"),
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
            Self::Pump => pump::looks(view),
            Self::MicronGauge => micron_gauge::looks(view),
            Self::Nitrogen => nitrogen::looks(view),
            Self::Regulator => nitrogen::regulator_looks(view),
            Self::Cylinder => cylinder::looks(view),
            Self::Thermometers => thermometers::looks(view),
            Self::Detector => detector::looks(view),
            Self::Tool(name) => match tools::own_place(name) {
                Some(place) => (place.looks)(view),
                None => name.label(),
            },
        }
    }
}

fn listed(looks: Vec<Message>) -> Message {
    Message::list(looks, ", ")
}

fn disconnect_look(view: &View) -> Message {
    let electrics = view.electrics();
    Message::new(match (electrics.disconnect_in, electrics.locked) {
        (_, true) => "part-disconnect-locked",
        (true, false) => "part-disconnect-in",
        (false, false) => "part-disconnect-out",
    })
}

fn indoor_coil_look(view: &View) -> Message {
    let blower = Message::new(if view.electrics().blower_runs {
        "part-blower-runs"
    } else {
        "part-blower-stands"
    });
    let coat = coat_label(view.indoor_coil_coat());
    listed(std::iter::once(blower).chain(coat).collect())
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
