//! The curve of each hose: from the manifold to where its end is.

use crate::gui::canvas::on_curve;
use crate::gui::site::places::{hose_end, hose_start};
use crate::kit::{Hose, HoseEnd};

/// Where a hose to the liquid port passes between the suction line's flare and its thermometer, so
/// that it covers neither these nor the scale of the suction valve's stem.
const PASS: (f32, f32) = (442.0, 336.0);

/// The curve of a hose, in one piece or two of four points each.
pub fn curves(hose: Hose, end: Option<HoseEnd>) -> Vec<[(f32, f32); 4]> {
    if end != Some(HoseEnd::LiquidPort) {
        return vec![curve(hose, end)];
    }
    let start = hose_start(hose);
    let tip = hose_end(hose, end);
    let out = (690.0, 660.0);
    vec![
        [start, out, (PASS.0, PASS.1 + 92.0), PASS],
        [PASS, (PASS.0, PASS.1 - 58.0), (412.0, tip.1 + 17.0), tip],
    ]
}

/// The four points of a hose's curve in one piece.
fn curve(hose: Hose, end: Option<HoseEnd>) -> [(f32, f32); 4] {
    let start = hose_start(hose);
    let tip = hose_end(hose, end);
    let (leave, arrive) = match end {
        None => ((start.0, start.1 + 14.0), (tip.0, tip.1 - 8.0)),
        Some(HoseEnd::SuctionPort | HoseEnd::LiquidPort) => {
            // Out to its own side of the manifold, then up to the port from below.
            let side = match hose {
                Hose::Low => -1.0,
                Hose::Centre => 1.3,
                Hose::High => 1.0,
            };
            (
                (start.0 + 190.0 * side, start.1 + 96.0),
                (tip.0 + 90.0 * side, tip.1 + 190.0),
            )
        }
        Some(_) => {
            let drop = 74.0;
            ((start.0, start.1 + drop), (tip.0, tip.1 + 60.0))
        }
    };
    [start, leave, arrive, tip]
}

/// The middle of a hose, where its letter stands and where it can be pointed at.
pub fn hose_middle(hose: Hose, end: Option<HoseEnd>) -> (f32, f32) {
    let at = match (end, hose) {
        (None, _) => 0.9,
        (Some(HoseEnd::LiquidPort), _) => 0.84,
        (Some(HoseEnd::SuctionPort), Hose::Low) => 0.93,
        (Some(HoseEnd::SuctionPort), _) => 0.7,
        // Beside the manifold: further on it may pass behind a cylinder.
        (Some(_), _) => 0.25,
    };
    on_curve(curves(hose, end)[0], at)
}

/// The curve of a hose to where the hand holds its end.
pub fn in_hand(hose: Hose, tip: (f32, f32)) -> [(f32, f32); 4] {
    let start = hose_start(hose);
    let sag = 60.0 + 0.15 * (tip.0 - start.0).abs();
    let (leave, arrive) = ((start.0, start.1 + sag), (tip.0, tip.1 + sag));
    [start, leave, arrive, tip]
}
