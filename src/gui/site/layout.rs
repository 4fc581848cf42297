//! The area of each part that can be pointed at, and the middle round which it turns.

use crate::gui::canvas::around;
use crate::gui::part::Part;
use crate::gui::site::hose_curves::hose_middle;
use crate::gui::site::places::{
    SIGHT_GLASS, VALVES, hose_end, joint, line_y, micron_gauge, place, spot,
};
use crate::gui::tools::{self, cylinder, detector, nitrogen, thermometers};
use crate::gui::view::View;
use crate::gui::view::turn::Thread;
use crate::kit::Hose;
use crate::plant::Line;
use eframe::egui::Rect;

/// The middle round which a thing turns.
pub const fn pivot(thread: Thread, view: &View) -> (f32, f32) {
    match thread {
        Thread::Stem(line) => (VALVES, line_y(line) - 43.0),
        Thread::HandValve(Hose::High) => (476.0, 538.0),
        Thread::HandValve(Hose::Low | Hose::Centre) => (276.0, 538.0),
        Thread::Cylinder => cylinder::wheel(view.cylinder().1),
        Thread::Regulator => nitrogen::SCREW,
    }
}

/// So near its middle a thing can be taken hold of to turn it.
pub const fn reach(thread: Thread) -> f32 {
    match thread {
        Thread::Stem(_) => 36.0,
        Thread::HandValve(_) | Thread::Cylinder | Thread::Regulator => 26.0,
    }
}

/// Where it stands how far a thing is turned.
pub const fn turn_plate(thread: Thread, view: &View) -> (f32, f32) {
    let (x, y) = pivot(thread, view);
    match thread {
        Thread::Stem(_) => (x + 96.0, y - 12.0),
        Thread::HandValve(Hose::High) => (x + 66.0, y - 2.0),
        Thread::HandValve(Hose::Low | Hose::Centre) => (x - 68.0, y - 2.0),
        Thread::Cylinder => (x, y - 50.0),
        Thread::Regulator => (x + 66.0, y + 4.0),
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
            let (x, y) = hose_middle(hose, view.hose(hose).end);
            small((x, y))
        }
        Part::HandValve(Hose::High) => around(476.0, 538.0, 40.0, 40.0),
        Part::HandValve(Hose::Low | Hose::Centre) => around(276.0, 538.0, 40.0, 40.0),
        Part::Pump => around(112.0, 554.0, 124.0, 96.0),
        Part::MicronGauge => {
            let (x, y) = micron_gauge(view.micron_gauge().0);
            around(x, y, 62.0, 40.0)
        }
        Part::SightGlass => around(SIGHT_GLASS.0, SIGHT_GLASS.1, 26.0, 30.0),
        Part::Nitrogen => around(588.0, 528.0, 60.0, 180.0),
        Part::Regulator => around(635.0, 460.0, 64.0, 58.0),
        Part::Thermometers => thermometers::CASE.expand(4.0),
        Part::Cylinder => around(772.0, 544.0, 104.0, 130.0),
        Part::Tool(name) => tools::own_place(name).map_or(Rect::NOTHING, |place| place.area),
        Part::Detector => {
            let (x, y) = match view.detector_at() {
                None => detector::PUT_AWAY,
                Some(at) => detector::body(spot(at)),
            };
            around(x, y, 36.0, 64.0)
        }
    }
}
