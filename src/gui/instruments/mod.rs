//! The instruments: what they show, large enough to be read from afar.

mod chart;
mod lane;

pub use chart::{StripChart, chart_ui};

use crate::gui::theme::{Palette, hose_colour, hose_letter};
use crate::gui::view::{Needle, System, View};
use crate::gui::widgets::{Dial, bar, dial, display};
use crate::kit::{Hose, ThermometerPlace, nitrogen, refrigerant_cylinder};
use crate::text::Message;
use crate::units::{ATMOSPHERE, GaugePressure, PSI, Temperature};
use crate::words::{Dimension, Reading, Shown};
use eframe::egui::{Ui, vec2};

/// Shows the two gauges, the micron display and the small displays beside them.
pub fn instruments_ui(ui: &mut Ui, view: &View) {
    let height = ui.available_height();
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing = vec2(6.0, 4.0);
        gauge(ui, view, Hose::Low, height);
        gauge(ui, view, Hose::High, height);
        ui.vertical(|ui| electronic(ui, view, 168.0, height));
        ui.vertical(|ui| thermometers(ui, view, 128.0, height));
    });
}

fn gauge(ui: &mut Ui, view: &View, hose: Hose, diameter: f32) {
    let palette = Palette::of(ui);
    let (needle, face) = match hose {
        Hose::High => (Needle::High, Reading::HighGauge),
        Hose::Low | Hose::Centre => (Needle::Low, Reading::LowGauge),
    };
    let (needle, least, most) = view.needle(needle);
    let unit = match (view.system(), hose) {
        (System::InchPound, Hose::High) => "psig".to_owned(),
        (System::InchPound, _) => view.say("face-vacuum-below"),
        (System::Metric, _) => view.say("face-gauge-kilopascals"),
    };
    let saturation = view.reads.scale.map_or(String::new(), |refrigerant| {
        let degrees = view.system().unit(Dimension::Temperature);
        let says = Message::new("face-saturation")
            .with("degrees", degrees)
            .with("refrigerant", refrigerant.name().to_owned());
        view.tell(&says)
    });
    let shown = view.reading(face);
    let dial_face = Dial {
        name: &view.tell(&face.label()),
        letter: hose_letter(hose),
        rim: hose_colour(palette, hose),
        needle,
        text: view.tell(&pressure_text(view.system(), shown)),
        number: shown
            .quantity()
            .map(|q| pressure_number(view.system(), q.si)),
        scale: pressure_scale(view.system(), least, most),
        saturation: saturation_scale(view, face, least, most),
        units: (&unit, saturation),
    };
    dial(ui, &dial_face, diameter);
}

/// The figure in the middle of a gauge: below the atmosphere in inches of mercury.
fn pressure_text(system: System, shown: Shown) -> Message {
    match (shown, system) {
        (Shown::OverRange, _) => Message::new("face-over"),
        (Shown::Nothing, _) => shown.words(|_| Message::verbatim("")),
        (Shown::Value(q), System::InchPound) if q.si < -0.25 * PSI => {
            let inches = GaugePressure::from_pascals(q.si).inches_vacuum();
            Message::new("face-inches").with("value", format!("{inches:.0}"))
        }
        (Shown::Value(q), _) => {
            Message::verbatim(format!("{:.1}", pressure_number(system, q.si) + 0.0))
        }
    }
}

fn pressure_number(system: System, pascals: f64) -> f64 {
    match system {
        System::InchPound => pascals / PSI,
        System::Metric => pascals / 1e3,
    }
}

/// The marks of a pressure scale from `least` to `most`, Pa gauge. A mark in ten has no figure.
fn pressure_scale(system: System, least: f64, most: f64) -> Vec<(f64, Option<String>)> {
    let share = |pascals: f64| (pascals - least) / (most - least);
    let unit = match system {
        System::InchPound => PSI,
        System::Metric => 1e3,
    };
    let span = most / unit;
    let major = [25.0, 50.0, 100.0, 250.0, 500.0, 1000.0]
        .into_iter()
        .find(|step| span / step <= 8.0)
        .unwrap_or(2000.0);
    let mut marks = Vec::new();
    let count = (span / major * 5.0).floor() as u32;
    for i in 0..=count {
        let value = major / 5.0 * f64::from(i);
        let figure = (i % 5 == 0).then(|| format!("{value:.0}"));
        marks.push((share(value * unit), figure));
    }
    if least < 0.0 {
        // The vacuum part: inches of mercury, or the atmosphere's own zero.
        let (step, figure) = match system {
            System::InchPound => (10.0 * 3_386.389, "30"),
            System::Metric => (25e3, "-100"),
        };
        let mut below = step;
        while below < ATMOSPHERE - 0.2 * step {
            marks.push((share(-below), None));
            below += step;
        }
        // On the high gauge there is no room for its figure.
        let named = most < 300.0 * PSI;
        marks.push((0.0, named.then(|| figure.into())));
    }
    marks
}

/// The marks of the saturation scale, thinned where they would crowd. The low gauge is read at the
/// dew point, the high one at the bubble point.
fn saturation_scale(
    view: &View,
    face: Reading,
    least: f64,
    most: f64,
) -> Vec<(f64, Option<String>)> {
    let Some(refrigerant) = view.reads.scale else {
        return Vec::new();
    };
    let degrees = match view.system() {
        System::InchPound => (-40_i32..=160).step_by(10),
        System::Metric => (-40..=70).step_by(5),
    };
    let mut marks = Vec::new();
    let mut last = -1.0;
    for figure in degrees {
        let temperature = match view.system() {
            System::InchPound => Temperature::from_fahrenheit(f64::from(figure)),
            System::Metric => Temperature::from_celsius(f64::from(figure)),
        };
        let (bubble, dew) = refrigerant.pressure(temperature);
        let pressure = if face == Reading::LowGauge {
            dew
        } else {
            bubble
        };
        let share = (pressure.pascals() - least) / (most - least);
        if !(0.0..=1.0).contains(&share) {
            continue;
        }
        let room = if figure.abs() >= 100 { 0.075 } else { 0.055 };
        let named = share - last > room;
        if named {
            last = share;
        }
        marks.push((share, named.then(|| figure.to_string())));
    }
    marks
}

/// Micron gauge, clamp meter, scale, nitrogen, detector.
fn electronic(ui: &mut Ui, view: &View, width: f32, height: f32) {
    let microns = view.reading(Reading::Microns);
    let number = microns.quantity().map(|q| q.si / crate::units::MICRON);
    let text =
        view.tell(&microns.words(|quantity| {
            Message::verbatim(format!("{:.0}", quantity.si / crate::units::MICRON))
        }));
    // What the small ones leave, so that a low window loses size and not a display.
    let size = (height - 2.0 * 38.0 - 36.0 - 22.0 - 4.0 * 4.0).clamp(18.0, 48.0);
    display(ui, &view.say("face-microns"), &text, number, size, width);
    let half = 0.5 * (width - 6.0);
    for pair in [
        [
            ("face-compressor", Reading::CompressorAmps),
            (
                "face-scale",
                Reading::of(refrigerant_cylinder::Reading::Scale),
            ),
        ],
        [
            (
                "face-nitrogen-outlet",
                Reading::of(nitrogen::Reading::Outlet),
            ),
            (
                "face-nitrogen-cylinder",
                Reading::of(nitrogen::Reading::Cylinder),
            ),
        ],
    ] {
        ui.horizontal(|ui| {
            for (key, face) in pair {
                small(ui, view, key, face, half);
            }
        });
    }
    let signal = view.reading(Reading::Detector).quantity().map(|q| q.si);
    let (name, away) = (view.say("face-detector"), view.say("face-detector-away"));
    bar(ui, &name, &away, signal, width);
}

fn small(ui: &mut Ui, view: &View, key: &str, face: Reading, width: f32) {
    let shown = view.reading(face);
    let number = shown.quantity().map(|q| q.si);
    let text = match shown {
        Shown::Nothing => view.say("face-off"),
        Shown::Value(_) | Shown::OverRange => view.text(face),
    };
    display(ui, &view.say(key), &text, number, 16.0, width);
}

/// Two columns of thermometers, each with where it is.
fn thermometers(ui: &mut Ui, view: &View, width: f32, height: f32) {
    let size = ((height - 3.0 * 4.0) / 4.0 - 22.0).clamp(16.0, 34.0);
    for row in ThermometerPlace::ALL.chunks(2) {
        ui.horizontal(|ui| {
            for &place in row {
                let face = Reading::Thermometer(place);
                let shown = view.reading(face);
                let text = match shown {
                    Shown::Nothing => view.say("face-none"),
                    Shown::Value(_) | Shown::OverRange => view.text(face),
                };
                let number = shown.quantity().map(|q| q.si);
                display(ui, &view.tell(&place.label()), &text, number, size, width);
            }
        });
    }
}
