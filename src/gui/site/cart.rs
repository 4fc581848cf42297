//! The cart with what stands on it.

use crate::gui::canvas::Canvas;
use crate::gui::site::carry::{Carried, Held};
use crate::gui::site::places::{self, CART};
use crate::gui::tools::{
    self, cylinder, detector, micron_gauge, nitrogen, protection, pump, thermometers,
};
use crate::gui::view::View;
use crate::plant::Line;
use crate::words::GaugePlace;

/// Draws the cart's board and what stands on it.
pub fn draw(canvas: &Canvas, view: &View) {
    let palette = canvas.palette;
    canvas.rect(CART, 8.0, palette.panel, canvas.stroke(1.5, palette.faint));
    pump::draw(canvas, view);
    nitrogen::draw(canvas, view);
    cylinder::draw(canvas, view);
    canvas.caption(924.0, 538.0, "caption-detector");
    thermometers::draw(canvas, view);
    protection::draw(canvas, view);
    for (_, place) in tools::brought(view) {
        (place.draw)(canvas, view);
    }
}

/// Draws the micron gauge where it is.
pub fn draw_micron_gauge(canvas: &Canvas, view: &View, held: Option<Held>) {
    let (place, ..) = view.micron_gauge();
    let at = places::micron_gauge(place);
    let Some(hand) = Held::holds(held, Carried::MicronGauge) else {
        // The tube by which it is on something.
        let on = match place {
            GaugePlace::Cart => None,
            GaugePlace::Pump => Some(pump::SOCKET),
            GaugePlace::Manifold => Some((at.0, 522.0)),
            GaugePlace::SuctionPort => Some(places::core_tool(Line::Suction)),
            GaugePlace::LiquidPort => Some(places::core_tool(Line::Liquid)),
        };
        return micron_gauge::draw(canvas, view, at, on);
    };
    micron_gauge::draw(canvas, view, hand, None);
}

/// Draws the detector where it is.
pub fn draw_detector(canvas: &Canvas, view: &View, held: Option<Held>) {
    let tip = Held::holds(held, Carried::Detector).or(view.detector_at().map(places::spot));
    detector::draw(canvas, view, tip);
}
