//! What a hand carries over the site: a hose by its end, a thermometer, the detector, the micron
//! gauge; where each can go, and what letting go of it does.

use crate::gui::part::Part;
use crate::gui::site::places;
use crate::gui::view::View;
use crate::gui::view::looks::end_label;
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::Spot;
use crate::text::Message;
use crate::words::{Action, GaugePlace};

/// A thing in the hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Carried {
    /// A hose by its far end.
    Hose(Hose),
    /// A thermometer: from where it is, or out of its case.
    Thermometer(Option<ThermometerPlace>),
    /// The detector by its tip.
    Detector,
    /// The micron gauge.
    MicronGauge,
}

/// A thing in the hand, and where the hand holds it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    /// What.
    pub what: Carried,
    /// Where, on the sheet.
    pub at: (f32, f32),
}

impl Held {
    /// Where the hand holds this thing, if it is the one.
    pub fn holds(held: Option<Self>, what: Carried) -> Option<(f32, f32)> {
        held.filter(|held| held.what == what).map(|held| held.at)
    }
}

/// A place where a carried thing can go.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// Where, on the sheet.
    pub at: (f32, f32),
    /// Its name.
    pub label: Message,
    /// What putting it there does, one after another; nothing where it already is.
    pub actions: Vec<Action>,
}

/// So near a target the thing snaps to it, drawing units.
const SNAP: f32 = 24.0;

impl Carried {
    /// What a hand takes up at a part, if it takes up anything.
    pub fn of(part: Part, view: &View) -> Option<Self> {
        match part {
            Part::Hose(hose) => Some(Self::Hose(hose)),
            Part::MicronGauge => Some(Self::MicronGauge),
            Part::Detector => Some(Self::Detector),
            Part::Thermometers => (view.thermometers_free() > 0).then_some(Self::Thermometer(None)),
            Part::Place(place) => view
                .thermometer_at(place)
                .then_some(Self::Thermometer(Some(place))),
            Part::Protection
            | Part::Thermostat
            | Part::Disconnect
            | Part::Nameplate
            | Part::Compressor
            | Part::OutdoorCoil
            | Part::IndoorCoil
            | Part::Filter
            | Part::Valve(_)
            | Part::Port(_)
            | Part::Joint(_)
            | Part::Drier
            | Part::SightGlass
            | Part::HandValve(_)
            | Part::Pump
            | Part::Nitrogen
            | Part::Regulator
            | Part::Cylinder
            | Part::Tool(_) => None,
        }
    }

    /// Every place where it can go, whether or not it may go there now.
    pub fn targets(self, view: &View) -> Vec<Target> {
        match self {
            Self::Hose(hose) => HoseEnd::all()
                .filter(|&to| view.has(to))
                .filter(|&to| to != HoseEnd::OpenAir)
                .map(|to| hose_target(hose, to, view))
                .collect(),
            Self::Thermometer(from) => ThermometerPlace::ALL
                .into_iter()
                .filter(|&to| Some(to) == from || !view.thermometer_at(to))
                .map(|to| Target {
                    at: places::place(to),
                    label: to.label(),
                    actions: moved(
                        Some(to) == from,
                        from.map(Action::Unclamp),
                        Action::Clamp(to),
                    ),
                })
                .collect(),
            Self::Detector => Spot::ALL
                .into_iter()
                .map(|to| Target {
                    at: places::spot(to),
                    label: to.label(),
                    actions: moved(view.detector_at() == Some(to), None, Action::Sniff(to)),
                })
                .collect(),
            Self::MicronGauge => {
                let (now, ..) = view.micron_gauge();
                let target = |to: GaugePlace| Target {
                    at: places::micron_gauge(to),
                    label: to.label(),
                    actions: moved(now == to, None, Action::MicronGauge(to)),
                };
                GaugePlace::ALL.into_iter().map(target).collect()
            }
        }
    }

    /// The target at hand: the nearest one within reach.
    pub fn target_at(self, view: &View, at: (f32, f32)) -> Option<Target> {
        let away = |target: &Target| (target.at.0 - at.0).hypot(target.at.1 - at.1);
        self.targets(view)
            .into_iter()
            .filter(|target| away(target) <= SNAP)
            .min_by(|a, b| away(a).total_cmp(&away(b)))
    }

    /// What letting go of it away from every target does: it goes back to where it is kept.
    pub fn let_go(self, view: &View) -> Option<Action> {
        match self {
            Self::Hose(hose) => view.hose(hose).end.map(|_| Action::TakeOff(hose)),
            Self::Thermometer(from) => from.map(Action::Unclamp),
            Self::Detector => view.detector_at().map(|_| Action::StopSniffing),
            Self::MicronGauge => {
                let away = view.micron_gauge().0 != GaugePlace::Cart;
                away.then_some(Action::MicronGauge(GaugePlace::Cart))
            }
        }
    }
}

fn hose_target(hose: Hose, to: HoseEnd, view: &View) -> Target {
    let now = view.hose(hose).end;
    let off = now.map(|_| Action::TakeOff(hose));
    Target {
        at: places::hose_end(hose, Some(to)),
        label: end_label(Some(to)),
        actions: moved(now == Some(to), off, Action::Connect { hose, to }),
    }
}

/// Off from where it is, then to where it goes; nothing where it is there already.
fn moved(is_there: bool, off: Option<Action>, on: Action) -> Vec<Action> {
    if is_there {
        return Vec::new();
    }
    off.into_iter().chain([on]).collect()
}
