//! What a technician calls the things of kit and unit.

use super::{
    Diagnosis, GaugePlace, Hose, HoseEnd, Part, Reading, SheetField, ThermometerPlace, Where,
};
use crate::kit::tools::Name;
use crate::plant::{FaultKind, Line};
use crate::text::Message;
use std::fmt;

impl Reading {
    /// What a technician calls the face.
    pub fn label(self) -> Message {
        match self {
            Self::LowGauge => Message::new("name-gauge-low"),
            Self::HighGauge => Message::new("name-gauge-high"),
            Self::Microns => Message::new("name-micron-gauge"),
            Self::CompressorAmps => Message::new("name-compressor"),
            Self::Thermometer(place) => place.label(),
            Self::Detector => Message::new("reading-detector"),
            Self::Bubbles(spot) => Message::new("reading-bubbles").with("spot", spot.label().the()),
            Self::Tool(reading) => Message::new(reading.key()),
        }
    }
}

impl fmt::Display for Reading {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.label().fmt(f)
    }
}

impl SheetField {
    /// What the blank is called.
    pub const fn label(self) -> Message {
        match self {
            Self::StandingPressure => Message::new("field-standing-pressure"),
            Self::SuctionPressure => Message::new("field-suction-pressure"),
            Self::LiquidPressure => Message::new("field-liquid-pressure"),
            Self::SuctionLine => ThermometerPlace::SuctionLine.label(),
            Self::LiquidLine => ThermometerPlace::LiquidLine.label(),
            Self::AfterDrier => ThermometerPlace::AfterDrier.label(),
            Self::OutdoorAir => ThermometerPlace::OutdoorAir.label(),
            Self::ReturnAir => ThermometerPlace::ReturnAir.label(),
            Self::ReturnWetBulb => ThermometerPlace::ReturnWetBulb.label(),
            Self::SupplyAir => ThermometerPlace::SupplyAir.label(),
            Self::Amps => Message::new("field-amps"),
            Self::Superheat => Message::new("field-superheat"),
            Self::Subcooling => Message::new("field-subcooling"),
            Self::TargetSuperheat => Message::new("field-target-superheat"),
            Self::Vacuum => Message::new("field-vacuum"),
            Self::RefrigerantIn => Message::new("field-refrigerant-in"),
            Self::RefrigerantOut => Message::new("field-refrigerant-out"),
        }
    }
}

impl Diagnosis {
    /// The diagnosis as it is written down.
    pub fn words(self) -> Message {
        let fault = self
            .fault
            .map_or(Message::new("fault-none"), FaultKind::label);
        match self.at {
            None => fault,
            Some(spot) => Message::new("fault-at")
                .with("fault", fault)
                .with("spot", spot.label()),
        }
    }
}

impl fmt::Display for Diagnosis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.words().fmt(f)
    }
}

impl Hose {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::Low => Message::new("name-hose-low"),
            Self::High => Message::new("name-hose-high"),
            Self::Centre => Message::new("name-hose-centre"),
        }
    }

    /// What a technician calls the hand valve of its side; the centre has none.
    pub const fn valve_label(self) -> Message {
        match self {
            Self::Low => Message::new("name-hand-valve-low"),
            Self::High => Message::new("name-hand-valve-high"),
            Self::Centre => Message::new("name-manifold-centre"),
        }
    }
}

impl HoseEnd {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::SuctionPort => Line::Suction.port_label(),
            Self::LiquidPort => Line::Liquid.port_label(),
            Self::OpenAir => Message::new("name-open-air"),
            Self::Tool(name) => name.label(),
        }
    }
}

impl Name {
    /// What a technician calls the tool.
    pub const fn label(self) -> Message {
        Message::new(self.key())
    }
}

impl GaugePlace {
    /// The place, as one says where the gauge is.
    pub const fn label(self) -> Message {
        Message::new(match self {
            Self::Cart => "reading-gauge-on-cart",
            Self::Pump => "reading-gauge-at-pump",
            Self::Manifold => "reading-gauge-at-manifold",
            Self::SuctionPort => "reading-gauge-at-suction-port",
            Self::LiquidPort => "reading-gauge-at-liquid-port",
        })
    }
}

impl ThermometerPlace {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        match self {
            Self::SuctionLine => Message::new("name-suction-line"),
            Self::LiquidLine => Message::new("name-liquid-line"),
            Self::AfterDrier => Message::new("name-after-drier"),
            Self::DischargeLine => Message::new("name-discharge-line"),
            Self::OutdoorAir => Message::new("name-outdoor-air"),
            Self::ReturnAir => Message::new("name-return-air"),
            Self::ReturnWetBulb => Message::new("name-return-wet-bulb"),
            Self::SupplyAir => Message::new("name-supply-air"),
        }
    }
}

impl Where {
    /// What a technician calls the place.
    pub const fn label(self) -> Message {
        match self {
            Self::Spot(spot) => spot.label(),
            Self::Valve(Line::Liquid) => Message::new("name-valve-liquid"),
            Self::Valve(Line::Suction) => Message::new("name-valve-suction"),
            Self::CoreTool(Line::Liquid) => Message::new("name-core-tool-liquid"),
            Self::CoreTool(Line::Suction) => Message::new("name-core-tool-suction"),
            Self::Hose(hose) => hose.label(),
            Self::ManifoldCentre => Message::new("name-manifold-centre"),
            Self::Part(part) => part.label(),
            Self::Tool(name) => name.label(),
            Self::Switch(name) => Message::new(name.switch_key()),
            Self::MicronGauge => Message::new("name-micron-gauge"),
            Self::Detector => Message::new("name-detector"),
        }
    }
}

impl Part {
    /// What a technician calls it.
    pub const fn label(self) -> Message {
        Message::new(match self {
            Self::Compressor => "name-compressor",
            Self::LiveContactor => "name-live-contactor",
            Self::Drier => "name-drier",
            Self::Receiver => "name-receiver",
            Self::LowSide => "name-low-side",
            Self::LiquidLine => "name-liquid-line",
            Self::OutdoorUnit => "name-outdoor-unit",
            Self::IndoorUnit => "name-indoor-unit",
        })
    }
}
