//! The things on the site that one can point at, with their names and how they look in words.

use super::view::View;
use crate::job::Coat;
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Arrow, Joint, Line, Made, Spot, ThermostatCall};
use crate::words::{GaugePlace, Reading};

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
    /// The nitrogen cylinder with its regulator.
    Nitrogen,
    /// The refrigerant cylinder on its scale.
    Cylinder,
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
            Self::Cylinder,
            Self::Detector,
        ];
        unit.into_iter()
            .chain(valves)
            .chain(Joint::ALL.map(Self::Joint))
            .chain([Self::Drier, Self::IndoorCoil, Self::Filter])
            .chain(ThermometerPlace::ALL.map(Self::Place))
            .chain(Hose::ALL.map(Self::Hose))
            .chain(cart)
    }

    /// What a technician calls it.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Protection => "glasses and gloves",
            Self::Thermostat => "thermostat",
            Self::Disconnect => "disconnect",
            Self::Nameplate => "nameplate",
            Self::Compressor => "compressor",
            Self::OutdoorCoil => "outdoor coil",
            Self::IndoorCoil => "indoor coil",
            Self::Filter => "air filter",
            Self::Valve(line) => valve_label(line),
            Self::Port(Line::Liquid) => "liquid access port",
            Self::Port(Line::Suction) => "suction access port",
            Self::Joint(joint) => joint.label(),
            Self::Drier => "filter drier",
            Self::Place(place) => place_label(place),
            Self::Hose(hose) => hose_label(hose),
            Self::HandValve(Hose::Low) => "low hand valve",
            Self::HandValve(Hose::High) => "high hand valve",
            Self::HandValve(Hose::Centre) => "centre of the manifold",
            Self::Pump => "vacuum pump",
            Self::MicronGauge => "micron gauge",
            Self::Nitrogen => "nitrogen cylinder",
            Self::Cylinder => "refrigerant cylinder",
            Self::Detector => "leak detector",
        }
    }

    /// How it looks, in words: what the drawing shows, for those who do not see the drawing.
    pub fn state(self, view: &View) -> String {
        let electrics = view.electrics();
        match self {
            Self::Protection => on_off(view.is_protected()).into(),
            Self::Thermostat => call_label(view.call()).into(),
            Self::Disconnect => match (electrics.disconnect_in, electrics.locked) {
                (_, true) => "pulled, locked and tagged",
                (true, false) => "in",
                (false, false) => "pulled",
            }
            .into(),
            Self::Nameplate => format!("refrigerant {}", view.scene.refrigerant),
            Self::Compressor => runs(electrics.compressor_runs).into(),
            Self::OutdoorCoil => format!("fan {}", runs(electrics.outdoor_fan_runs)),
            Self::IndoorCoil => format!("blower {}", runs(electrics.blower_runs)),
            Self::Filter => "in its slot".into(),
            Self::Valve(line) => {
                let valve = view.valve(line);
                format!("{}, cap {}", stem_label(valve.open), on_off(valve.cap_on))
            }
            Self::Port(line) => port_state(line, view),
            Self::Joint(joint) => with_bubbles(made_label(view.made(joint)), joint, view),
            Self::Drier => match view.drier() {
                Some(Arrow::TowardMetering) => "arrow toward the metering device",
                Some(Arrow::TowardOutdoor) => "arrow toward the outdoor unit",
                None => "taken out",
            }
            .into(),
            Self::Place(place) => place_state(place, view),
            Self::Hose(hose) => end_label(view.hose(hose).end).into(),
            Self::HandValve(hose) => opening_label(view.hand_valve(hose).unwrap_or(0.0)),
            Self::Pump => {
                let pump = view.pump();
                let valve = if pump.inlet_open { "open" } else { "shut" };
                format!("{}, inlet valve {valve}", runs(pump.running))
            }
            Self::MicronGauge => format!(
                "{}, {}",
                gauge_place_label(view.micron_gauge().0),
                view.text(Reading::Microns)
            ),
            Self::Nitrogen => {
                let (open, fitted, _) = view.nitrogen();
                let valve = if open { "open" } else { "shut" };
                let regulator = if fitted {
                    "regulator on"
                } else {
                    "no regulator"
                };
                format!("valve {valve}, {regulator}")
            }
            Self::Cylinder => {
                let (valve, inverted) = view.cylinder();
                let way = if inverted { "inverted" } else { "upright" };
                format!("{way}, valve {}", opening_label(valve))
            }
            Self::Detector => view
                .detector_at()
                .map_or("put away".into(), |spot| format!("at the {}", spot.label())),
        }
    }
}

/// A service valve's name.
pub const fn valve_label(line: Line) -> &'static str {
    match line {
        Line::Liquid => "liquid service valve",
        Line::Suction => "suction service valve",
    }
}

/// A hose's name, with its letter.
pub const fn hose_label(hose: Hose) -> &'static str {
    match hose {
        Hose::Low => "low hose (blue, L)",
        Hose::High => "high hose (red, H)",
        Hose::Centre => "centre hose (yellow, C)",
    }
}

/// What a hose's end is on, in words.
pub const fn end_label(end: Option<HoseEnd>) -> &'static str {
    match end {
        None => "hung up",
        Some(HoseEnd::SuctionPort) => "on the suction port",
        Some(HoseEnd::LiquidPort) => "on the liquid port",
        Some(HoseEnd::VacuumPump) => "on the vacuum pump",
        Some(HoseEnd::Nitrogen) => "on the nitrogen",
        Some(HoseEnd::RefrigerantCylinder) => "on the refrigerant cylinder",
        Some(HoseEnd::OpenAir) => "held open to the air",
    }
}

/// Where the micron gauge is, in words.
pub const fn gauge_place_label(place: GaugePlace) -> &'static str {
    match place {
        GaugePlace::Cart => "on the cart",
        GaugePlace::Pump => "at the pump",
        GaugePlace::Manifold => "at the manifold",
        GaugePlace::SuctionPort => "at the suction port",
        GaugePlace::LiquidPort => "at the liquid port",
    }
}

/// A place for a thermometer, in words.
pub const fn place_label(place: ThermometerPlace) -> &'static str {
    match place {
        ThermometerPlace::SuctionLine => "suction line",
        ThermometerPlace::LiquidLine => "liquid line",
        ThermometerPlace::AfterDrier => "after the drier",
        ThermometerPlace::DischargeLine => "discharge line",
        ThermometerPlace::OutdoorAir => "outdoor air",
        ThermometerPlace::ReturnAir => "return air",
        ThermometerPlace::ReturnWetBulb => "return wet bulb",
        ThermometerPlace::SupplyAir => "supply air",
    }
}

/// A thermostat's call, in words.
pub const fn call_label(call: ThermostatCall) -> &'static str {
    match call {
        ThermostatCall::Off => "off",
        ThermostatCall::Fan => "fan",
        ThermostatCall::Cool => "cool",
    }
}

/// A stem's position, in words.
pub fn stem_label(open: f64) -> &'static str {
    if open <= 0.0 {
        "front-seated"
    } else if open >= 1.0 {
        "back-seated"
    } else if open <= 0.2 {
        "cracked"
    } else {
        "mid-position"
    }
}

/// How far a joint is made, in words.
pub const fn made_label(made: Made) -> &'static str {
    match made {
        Made::Up(_) => "made up",
        Made::Cracked => "nut loose",
        Made::Apart => "apart, open",
        Made::Plugged => "apart, plugged",
    }
}

/// How far a valve is open, in words.
pub fn opening_label(open: f64) -> String {
    if open <= 0.0 {
        "shut".into()
    } else if open >= 1.0 {
        "open".into()
    } else {
        format!("{:.0} % open", open * 100.0)
    }
}

fn port_state(line: Line, view: &View) -> String {
    let valve = view.valve(line);
    let mut words = vec![format!("cap {}", on_off(valve.port_cap_on))];
    if valve.has_core && !valve.core_in {
        words.push("core out".into());
    }
    if valve.tool_on {
        let valve = if valve.tool_open { "open" } else { "shut" };
        words.push(format!("core tool on, its valve {valve}"));
    }
    if let Some(hose) = Hose::ALL
        .into_iter()
        .find(|&hose| view.hose(hose).end == Some(HoseEnd::of_port(line)))
    {
        words.push(format!("{} on it", hose_label(hose)));
    }
    words.join(", ")
}

fn place_state(place: ThermometerPlace, view: &View) -> String {
    let coat = match view.coat(place) {
        Coat::Dry => "",
        Coat::Sweat => ", sweating",
        Coat::Frost => ", frosted",
    };
    if view.thermometer_at(place) {
        format!("{}{coat}", view.text(Reading::Thermometer(place)))
    } else {
        format!("no thermometer{coat}")
    }
}

fn with_bubbles(made: &str, joint: Joint, view: &View) -> String {
    match view.bubbles(Spot::Joint(joint)) {
        None => made.into(),
        Some(size) => format!("{made}, {}", bubbles_label(size)),
    }
}

/// How it bubbles at a wet spot, in words.
pub fn bubbles_label(size: f64) -> &'static str {
    if size < 0.05 {
        "wet, no bubbles"
    } else if size < 0.4 {
        "wet, small bubbles grow"
    } else {
        "wet, it foams"
    }
}

const fn on_off(on: bool) -> &'static str {
    if on { "on" } else { "off" }
}

const fn runs(running: bool) -> &'static str {
    if running { "running" } else { "stopped" }
}
