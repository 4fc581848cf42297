//! Where everything is on the sheet: one table, in drawing units.

use crate::gui::tools;
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Joint, Line, Spot};
use crate::words::GaugePlace;
use eframe::egui::{Rect, pos2};

/// The outdoor unit's cabinet.
pub const OUTDOOR: Rect = Rect {
    min: pos2(40.0, 36.0),
    max: pos2(330.0, 392.0),
};

/// The indoor unit's cabinet.
pub const INDOOR: Rect = Rect {
    min: pos2(770.0, 36.0),
    max: pos2(960.0, 392.0),
};

/// The cart.
pub const CART: Rect = Rect {
    min: pos2(20.0, 428.0),
    max: pos2(1020.0, 630.0),
};

/// Where the wall of the house is.
pub const WALL: f32 = 500.0;

/// Where the service valves stand.
pub const VALVES: f32 = 372.0;

/// The height of a line of the line set.
pub const fn line_y(line: Line) -> f32 {
    match line {
        Line::Liquid => 180.0,
        Line::Suction => 318.0,
    }
}

/// Where a joint is.
pub const fn joint(joint: Joint) -> (f32, f32) {
    let (liquid, suction) = (line_y(Line::Liquid), line_y(Line::Suction));
    match joint {
        Joint::LiquidValve => (420.0, liquid),
        Joint::DrierInlet => (556.0, liquid),
        Joint::DrierOutlet => (664.0, liquid),
        Joint::IndoorLiquid => (748.0, liquid),
        Joint::IndoorSuction => (748.0, suction),
        Joint::SuctionValve => (420.0, suction),
    }
}

/// Where a thermometer is placed.
pub const fn place(place: ThermometerPlace) -> (f32, f32) {
    match place {
        ThermometerPlace::SuctionLine => (464.0, line_y(Line::Suction)),
        ThermometerPlace::LiquidLine => (464.0, line_y(Line::Liquid)),
        ThermometerPlace::AfterDrier => (717.0, line_y(Line::Liquid)),
        ThermometerPlace::DischargeLine => (110.0, 292.0),
        ThermometerPlace::OutdoorAir => (4.0, 232.0),
        ThermometerPlace::ReturnAir => (980.0, 334.0),
        ThermometerPlace::ReturnWetBulb => (980.0, 371.0),
        ThermometerPlace::SupplyAir => (980.0, 66.0),
    }
}

/// Where a spot is, to hold the detector at it.
pub const fn spot(spot: Spot) -> (f32, f32) {
    match spot {
        Spot::Joint(at) => joint(at),
        Spot::Port(line) => (VALVES, line_y(line) + 42.0),
        Spot::Stem(line) => (VALVES, line_y(line) - 34.0),
        Spot::IndoorCoil => (880.0, 200.0),
        Spot::OutdoorCoil => (180.0, 236.0),
    }
}

/// Where a hose leaves the manifold.
pub const fn hose_start(hose: Hose) -> (f32, f32) {
    match hose {
        Hose::Low => (318.0, 556.0),
        Hose::Centre => (376.0, 556.0),
        Hose::High => (434.0, 556.0),
    }
}

/// Where the end of a hose is.
pub const fn hose_end(hose: Hose, end: Option<HoseEnd>) -> (f32, f32) {
    match end {
        Some(HoseEnd::SuctionPort) => (VALVES, line_y(Line::Suction) + 54.0),
        Some(HoseEnd::LiquidPort) => (VALVES, line_y(Line::Liquid) + 54.0),
        Some(HoseEnd::Tool(tool)) => tools::socket(tool),
        Some(HoseEnd::OpenAir) => match hose {
            Hose::Low => (256.0, 604.0),
            Hose::Centre => (520.0, 604.0),
            Hose::High => (500.0, 580.0),
        },
        // Hung on the hooks under the manifold.
        None => match hose {
            Hose::Low => (300.0, 588.0),
            Hose::Centre => (394.0, 588.0),
            Hose::High => (452.0, 588.0),
        },
    }
}

/// Where the micron gauge is.
pub const fn micron_gauge(place: GaugePlace) -> (f32, f32) {
    match place {
        GaugePlace::Cart => (228.0, 580.0),
        GaugePlace::Pump => (206.0, 494.0),
        GaugePlace::Manifold => (376.0, 448.0),
        GaugePlace::SuctionPort => (VALVES - 98.0, line_y(Line::Suction) + 94.0),
        GaugePlace::LiquidPort => (VALVES + 72.0, line_y(Line::Liquid) + 50.0),
    }
}

/// Where a core tool sits: under its port.
pub const fn core_tool(line: Line) -> (f32, f32) {
    (VALVES, line_y(line) + 46.0)
}

/// Where the sight glass is in the liquid line.
pub const SIGHT_GLASS: (f32, f32) = (690.0, line_y(Line::Liquid));
