//! Where everything is on the sheet: one table, in drawing units.

use super::canvas::around;
use crate::gui::part::Part;
use crate::gui::view::View;
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Joint, Line, Spot};
use crate::words::GaugePlace;
use eframe::egui::{Rect, pos2};

/// The sheet.
pub const SHEET: Rect = Rect {
    min: pos2(-34.0, 0.0),
    max: pos2(1074.0, 640.0),
};

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
        Some(HoseEnd::VacuumPump) => (176.0, 506.0),
        Some(HoseEnd::Nitrogen) => (640.0, 500.0),
        Some(HoseEnd::RefrigerantCylinder) => (772.0, 478.0),
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

/// Where the detector is put away.
pub const DETECTOR: (f32, f32) = (924.0, 486.0);

/// Where the middle of the detector's body is when its tip is held somewhere.
pub const fn detector_body((x, y): (f32, f32)) -> (f32, f32) {
    (x + 36.0, y + 66.0)
}

/// The case of thermometers.
pub const CASE: Rect = Rect {
    min: pos2(828.0, 462.0),
    max: pos2(868.0, 522.0),
};

/// Where the sight glass is in the liquid line.
pub const SIGHT_GLASS: (f32, f32) = (690.0, line_y(Line::Liquid));

/// The wheel of the refrigerant cylinder's valve: below when it stands on its head.
pub const fn cylinder_wheel(inverted: bool) -> (f32, f32) {
    if inverted {
        (746.0, 582.0)
    } else {
        (800.0, 486.0)
    }
}

/// The middle round which a part turns.
pub const fn pivot(part: Part, view: &View) -> (f32, f32) {
    match part {
        Part::Valve(line) => (VALVES, line_y(line) - 43.0),
        Part::HandValve(Hose::High) => (476.0, 538.0),
        Part::HandValve(_) => (276.0, 538.0),
        Part::Cylinder => cylinder_wheel(view.cylinder().1),
        // The regulator: nothing else turns.
        _ => (622.0, 472.0),
    }
}

/// So near its middle a part can be taken hold of to turn it.
pub const fn reach(part: Part) -> f32 {
    match part {
        Part::Valve(_) => 36.0,
        _ => 26.0,
    }
}

/// Where it stands how far a part is turned.
pub const fn turn_plate(part: Part, view: &View) -> (f32, f32) {
    let (x, y) = pivot(part, view);
    match part {
        Part::Valve(_) => (x + 96.0, y - 12.0),
        Part::HandValve(Hose::High) => (x + 66.0, y - 2.0),
        Part::HandValve(_) => (x - 68.0, y - 2.0),
        Part::Cylinder => (x, y - 50.0),
        _ => (x + 66.0, y + 4.0),
    }
}

/// The coupling at the free end of a hose.
pub fn coupling(hose: Hose, view: &View) -> Rect {
    let (x, y) = hose_end(hose, view.hose(hose).end);
    around(x, y, 18.0, 18.0)
}

/// The area of a part that can be pointed at, the hoses and movable kit by where they are now.
pub fn area(part: Part, view: &View) -> Rect {
    let small = |(x, y): (f32, f32)| around(x, y, 30.0, 30.0);
    match part {
        Part::Protection => around(984.0, 486.0, 52.0, 84.0),
        Part::Thermostat => around(636.0, 78.0, 62.0, 48.0),
        Part::Disconnect => around(454.0, 66.0, 46.0, 64.0),
        Part::Nameplate => around(292.0, 356.0, 56.0, 40.0),
        Part::Compressor => around(110.0, 348.0, 84.0, 76.0),
        Part::OutdoorCoil => around(186.0, 234.0, 264.0, 84.0),
        Part::IndoorCoil => around(880.0, 190.0, 150.0, 130.0),
        Part::Filter => around(866.0, 376.0, 164.0, 20.0),
        Part::Valve(line) => around(VALVES, line_y(line) - 43.0, 68.0, 92.0),
        Part::Port(line) => around(VALVES, line_y(line) + 36.0, 40.0, 46.0),
        Part::Joint(at) => small(joint(at)),
        Part::Drier => around(610.0, line_y(Line::Liquid), 72.0, 44.0),
        Part::Place(at) => small(place(at)),
        Part::Hose(hose) => {
            let (x, y) = super::manifold::hose_middle(hose, view.hose(hose).end);
            small((x, y))
        }
        Part::HandValve(Hose::High) => around(476.0, 538.0, 40.0, 40.0),
        Part::HandValve(_) => around(276.0, 538.0, 40.0, 40.0),
        Part::Pump => around(112.0, 554.0, 124.0, 96.0),
        Part::MicronGauge => {
            let (x, y) = micron_gauge(view.micron_gauge().0);
            around(x, y, 62.0, 40.0)
        }
        Part::SightGlass => around(SIGHT_GLASS.0, SIGHT_GLASS.1, 26.0, 30.0),
        Part::Nitrogen => around(588.0, 528.0, 60.0, 180.0),
        Part::Regulator => around(635.0, 460.0, 64.0, 58.0),
        Part::Thermometers => CASE.expand(4.0),
        Part::Cylinder => around(772.0, 544.0, 104.0, 130.0),
        Part::Detector => {
            let (x, y) = match view.detector_at() {
                None => DETECTOR,
                Some(at) => detector_body(spot(at)),
            };
            around(x, y, 36.0, 64.0)
        }
    }
}
