//! What stands on the cart: pump, micron gauge, nitrogen, refrigerant cylinder, detector.

use super::hoses::FINE;
use super::turning::quarter_turns;
use super::{act, offer, toggle};
use crate::gui::part::Part;
use crate::gui::system::System;
use crate::gui::turn::SCREW_MOST;
use crate::gui::view::View;
use crate::gui::widgets::{Setting, choice, setting};
use crate::kit::ThermometerPlace;
use crate::plant::Spot;
use crate::text::Message;
use crate::units::{Fraction, GaugePressure};
use crate::words::{Action, GaugePlace, Reading};
use eframe::egui::Ui;

/// The vacuum pump.
pub fn pump(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let look = view.pump();
    toggle(
        ui,
        view,
        look.running,
        ("hand-pump-start", "hand-pump-stop"),
        Action::Pump,
        actions,
    );
    let words = ("hand-inlet-open", "hand-inlet-shut");
    toggle(
        ui,
        view,
        look.inlet_open,
        words,
        Action::PumpIsolation,
        actions,
    );
    let words = ("hand-ballast-open", "hand-ballast-shut");
    toggle(
        ui,
        view,
        look.ballast_open,
        words,
        Action::GasBallast,
        actions,
    );
    ui.separator();
    ui.label(view.say(if look.oil_is_milky {
        "hand-oil-milky"
    } else {
        "hand-oil-clear"
    }));
    rating(ui, view, view.tools_rated().1);
    act(ui, view, "hand-change-oil", Action::ChangePumpOil, actions);
}

/// What the case of a tool says of refrigerants that burn.
fn rating(ui: &mut Ui, view: &View, is_rated: bool) {
    ui.label(view.say(if is_rated {
        "hand-tool-rated"
    } else {
        "hand-tool-not-rated"
    }));
}

/// The micron gauge.
pub fn micron_gauge(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (place, valve_open, ruined) = view.micron_gauge();
    if ruined {
        ui.label(view.say("hand-gauge-ruined"));
    }
    let name = |place: GaugePlace| view.tell(&place.label());
    if let Some(to) = choice(
        ui,
        &view.say("hand-gauge-at"),
        Some(place),
        GaugePlace::ALL,
        name,
    ) {
        actions.push(Action::MicronGauge(to));
    }
    let words = ("hand-gauge-open", "hand-gauge-shut");
    toggle(
        ui,
        view,
        valve_open,
        words,
        Action::MicronGaugeValve,
        actions,
    );
}

/// The nitrogen cylinder and its regulator.
pub fn nitrogen(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (open, ..) = view.nitrogen();
    let words = ("hand-nitrogen-open", "hand-nitrogen-shut");
    toggle(ui, view, open, words, Action::NitrogenValve, actions);
    regulator(ui, view, actions);
}

/// The regulator alone.
pub fn regulator(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (_, fitted, _) = view.nitrogen();
    let words = ("hand-regulator-fit", "hand-regulator-off");
    toggle(ui, view, fitted, words, Action::Regulator, actions);
    if fitted {
        let screw = |pascals| Action::SetRegulator(GaugePressure::from_pascals(pascals));
        act(ui, view, "hand-regulator-back-off", screw(0.0), actions);
        let (unit, name) = view.system().gauge_unit();
        let most = GaugePressure::from_psig(SCREW_MOST).pascals();
        let what = Setting {
            label: &view.say("hand-regulator"),
            value: view.regulator().pascals() / unit,
            range: 0.0..=(most / unit).round(),
            step: match view.system() {
                System::InchPound => 2.5,
                System::Metric => 5.0,
            },
            unit: &format!(" {}", view.tell(&name)),
        };
        if let Some(set) = setting(ui, what) {
            actions.push(screw(set * unit));
        }
        let outlet = view.shown(Reading::NitrogenOutlet);
        ui.label(view.tell(&Message::new("hand-outlet-shows").with("shown", outlet)));
        let cylinder = view.shown(Reading::NitrogenCylinder);
        ui.label(view.tell(&Message::new("hand-cylinder-shows").with("shown", cylinder)));
    }
}

/// The refrigerant cylinder on its scale.
pub fn cylinder(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (valve, inverted) = view.cylinder();
    let turn_to = |percent: f64| Action::CylinderValve(Fraction::clamped(percent / 100.0));
    ui.horizontal_wrapped(|ui| {
        act(ui, view, "hand-cylinder-shut", turn_to(0.0), actions);
        act(ui, view, "hand-cylinder-crack", turn_to(5.0), actions);
        act(ui, view, "hand-cylinder-open", turn_to(100.0), actions);
    });
    quarter_turns(ui, view, Part::Cylinder, actions);
    let what = Setting {
        label: &view.say("hand-cylinder-valve"),
        value: valve * 100.0,
        range: 0.0..=100.0,
        step: FINE,
        unit: " %",
    };
    if let Some(percent) = setting(ui, what) {
        actions.push(turn_to(percent));
    }
    let words = ("hand-cylinder-invert", "hand-cylinder-upright");
    toggle(ui, view, inverted, words, Action::CylinderInverted, actions);
    ui.separator();
    let scale = view.shown(Reading::Scale);
    ui.label(view.tell(&Message::new("hand-scale-shows").with("shown", scale)));
    act(ui, view, "hand-tare", Action::TareScale, actions);
}

/// The case of thermometers: where one goes that is still in it.
pub fn thermometers(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let free = ThermometerPlace::ALL
        .into_iter()
        .filter(|&place| !view.thermometer_at(place));
    if let Some(place) = choice(ui, &view.say("hand-put-one-at"), None, free, |place| {
        view.tell(&place.label())
    }) {
        actions.push(Action::Clamp(place));
    }
    for place in ThermometerPlace::ALL {
        if view.thermometer_at(place) {
            let text = Message::new("hand-take-back").with("place", place.label());
            offer(ui, view.tell(&text), Action::Unclamp(place), actions);
        }
    }
}

/// The leak detector.
pub fn detector(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let at = view.detector_at();
    if let Some(spot) = choice(ui, &view.say("hand-detector-at"), at, Spot::ALL, |spot| {
        view.tell(&spot.label())
    }) {
        actions.push(Action::Sniff(spot));
    }
    if at.is_some() {
        act(
            ui,
            view,
            "hand-detector-away",
            Action::StopSniffing,
            actions,
        );
    }
    ui.weak(view.say("hand-detector-hint"));
    rating(ui, view, view.tools_rated().0);
}
