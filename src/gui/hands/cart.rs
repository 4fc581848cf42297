//! What stands on the cart: pump, micron gauge, nitrogen, refrigerant cylinder, detector.

use super::{act, toggle};
use crate::gui::part::gauge_place_label;
use crate::gui::view::View;
use crate::gui::widgets::{Setting, choice, setting};
use crate::plant::Spot;
use crate::units::{Fraction, GaugePressure};
use crate::words::{Action, GaugePlace, Reading};
use eframe::egui::Ui;

/// The vacuum pump.
pub fn pump(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let look = view.pump();
    toggle(
        ui,
        look.running,
        ("Start the pump", "Stop the pump"),
        Action::Pump,
        actions,
    );
    let words = ("Open the pump's inlet valve", "Shut the pump's inlet valve");
    toggle(ui, look.inlet_open, words, Action::PumpIsolation, actions);
    let words = ("Open the gas ballast", "Shut the gas ballast");
    toggle(ui, look.ballast_open, words, Action::GasBallast, actions);
    ui.separator();
    ui.label(if look.oil_is_milky {
        "The oil in the sight glass looks milky."
    } else {
        "The oil in the sight glass is clear."
    });
    rating(ui, view.tools_rated().1);
    act(ui, "Change the pump's oil", Action::ChangePumpOil, actions);
}

/// What the case of a tool says of refrigerants that burn.
fn rating(ui: &mut Ui, is_rated: bool) {
    ui.label(if is_rated {
        "Its case says: rated for refrigerants that burn."
    } else {
        "Nothing on its case rates it for refrigerants that burn."
    });
}

/// The micron gauge.
pub fn micron_gauge(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (place, valve_open, ruined) = view.micron_gauge();
    if ruined {
        ui.label("Its sensor met pressure: it shows nothing any more.");
    }
    let name = |place| gauge_place_label(place);
    if let Some(to) = choice(ui, "screw it on", Some(place), GaugePlace::ALL, name) {
        actions.push(Action::MicronGauge(to));
    }
    let words = (
        "Open the micron gauge's valve",
        "Shut the micron gauge's valve",
    );
    toggle(ui, valve_open, words, Action::MicronGaugeValve, actions);
}

/// The nitrogen cylinder and its regulator.
pub fn nitrogen(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (open, fitted, set) = view.nitrogen();
    let words = ("Open the nitrogen cylinder", "Shut the nitrogen cylinder");
    toggle(ui, open, words, Action::NitrogenValve, actions);
    let words = ("Fit the regulator", "Take the regulator off");
    toggle(ui, fitted, words, Action::Regulator, actions);
    if fitted {
        let screw = |psig| Action::SetRegulator(GaugePressure::from_psig(psig));
        act(ui, "Back the regulator off", screw(0.0), actions);
        let what = Setting {
            label: "regulator",
            value: set,
            range: 0.0..=600.0,
            step: 5.0,
            unit: " psig",
        };
        if let Some(psig) = setting(ui, what) {
            actions.push(screw(psig));
        }
        ui.label(format!("Outlet {}", view.text(Reading::NitrogenOutlet)));
        ui.label(format!("Cylinder {}", view.text(Reading::NitrogenCylinder)));
    }
}

/// The refrigerant cylinder on its scale.
pub fn cylinder(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let (valve, inverted) = view.cylinder();
    let turn_to = |percent: f64| Action::CylinderValve(Fraction::clamped(percent / 100.0));
    ui.horizontal_wrapped(|ui| {
        act(ui, "Shut the cylinder", turn_to(0.0), actions);
        act(ui, "Crack the cylinder", turn_to(5.0), actions);
        act(ui, "Open the cylinder", turn_to(100.0), actions);
    });
    let what = Setting {
        label: "cylinder valve open",
        value: valve * 100.0,
        range: 0.0..=100.0,
        step: 5.0,
        unit: " %",
    };
    if let Some(percent) = setting(ui, what) {
        actions.push(turn_to(percent));
    }
    let words = ("Invert the cylinder (liquid)", "Stand it upright (vapour)");
    toggle(ui, inverted, words, Action::CylinderInverted, actions);
    ui.separator();
    ui.label(format!("Scale {}", view.text(Reading::Scale)));
    act(ui, "Tare the scale", Action::TareScale, actions);
}

/// The leak detector.
pub fn detector(ui: &mut Ui, view: &View, actions: &mut Vec<Action>) {
    let at = view.detector_at();
    if let Some(spot) = choice(ui, "hold its tip at", at, Spot::ALL, Spot::label) {
        actions.push(Action::Sniff(spot));
    }
    if at.is_some() {
        act(ui, "Put the detector away", Action::StopSniffing, actions);
    }
    ui.weak("It smells refrigerant and nothing else. Go slowly, below the joint.");
    rating(ui, view.tools_rated().0);
}
