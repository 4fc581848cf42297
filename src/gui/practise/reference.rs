//! What a technician has in the van to look up: the card of pressures and temperatures, the torques
//! of flares, the nameplate.

use crate::fluid::refrigerant::Refrigerant;
use crate::gui::theme::{Palette, size};
use crate::gui::view::looks::size_label;
use crate::gui::view::{System, View};
use crate::gui::widgets::{Look, key_button};
use crate::plant::FlareSize;
use crate::text::Message;
use crate::units::{Temperature, Torque};
use crate::words::Dimension;
use eframe::egui::{
    Align2, FontId, Grid, Pos2, RichText, ScrollArea, Sense, Slider, Stroke, StrokeKind, Ui, pos2,
    vec2,
};
use strum::VariantArray;

/// A page of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, VariantArray)]
enum Page {
    #[default]
    Card,
    Torque,
    Plate,
}

/// What is looked up.
#[derive(Debug)]
pub struct Reference {
    page: Page,
    /// Where the two hair lines stand, K: on the card of the low side and on that of the high one.
    hairs: [f64; 2],
}

impl Default for Reference {
    fn default() -> Self {
        Self {
            page: Page::default(),
            hairs: [40.0, 110.0].map(|f| Temperature::from_fahrenheit(f).kelvin()),
        }
    }
}

/// The ends of the two rules, °F: where the low and the high side of a cooling circuit are.
const RULES: [(f64, f64); 2] = [(-40.0, 70.0), (50.0, 150.0)];

/// Shows the page that is chosen.
pub fn reference_ui(ui: &mut Ui, view: &View, reference: &mut Reference) {
    ui.horizontal_wrapped(|ui| {
        for &page in Page::VARIANTS {
            let name = view.say(match page {
                Page::Card => "reference-card",
                Page::Torque => "reference-torque",
                Page::Plate => "reference-plate",
            });
            let look = if reference.page == page {
                Look::Chosen
            } else {
                Look::Plain
            };
            if key_button(ui, &name, None, look).clicked() {
                reference.page = page;
            }
        }
    });
    ui.separator();
    ScrollArea::vertical()
        .id_salt("reference")
        .show(ui, |ui| match reference.page {
            Page::Card => card_ui(ui, view, reference),
            Page::Torque => torque_ui(ui, view),
            Page::Plate => plate_ui(ui, view),
        });
}

/// Two rules with pressures above and saturation temperatures below, and a hair line on each that
/// is moved by hand. It reads nothing itself.
fn card_ui(ui: &mut Ui, view: &View, reference: &mut Reference) {
    let Some(refrigerant) = Refrigerant::named(view.scene.refrigerant) else {
        return;
    };
    let degrees = view.system().unit(Dimension::Temperature);
    let title = Message::new("reference-card-of")
        .with("refrigerant", refrigerant.name().to_owned())
        .with("pressure", view.system().gauge_unit().1)
        .with("degrees", degrees);
    ui.label(RichText::new(view.tell(&title)).strong());
    for ((from, to), hair) in RULES.into_iter().zip(&mut reference.hairs) {
        let coldest = Temperature::from_kelvin(refrigerant.coldest() + 1.0).fahrenheit();
        let hottest = Temperature::from_kelvin(refrigerant.hottest() - 1.0).fahrenheit();
        let ends = (from.max(coldest), to.min(hottest));
        rule_ui(ui, view, refrigerant, ends, *hair);
        let (least, most) = (kelvin(ends.0), kelvin(ends.1));
        *hair = hair.clamp(least, most);
        let system = view.system();
        let number = |kelvin: f64| match system {
            System::InchPound => Temperature::from_kelvin(kelvin).fahrenheit(),
            System::Metric => Temperature::from_kelvin(kelvin).celsius(),
        };
        let back = |number: f64| match system {
            System::InchPound => Temperature::from_fahrenheit(number).kelvin(),
            System::Metric => Temperature::from_celsius(number).kelvin(),
        };
        let mut shown = (number(*hair) * 2.0).round() / 2.0;
        let unit = format!(" {}", view.tell(&system.unit(Dimension::Temperature)));
        let slider = Slider::new(&mut shown, number(least)..=number(most))
            .step_by(0.5)
            .suffix(unit)
            .text(view.say("reference-hair"));
        if ui.add(slider).changed() {
            *hair = back(shown);
        }
        let (bubble, dew) = refrigerant.pressure(Temperature::from_kelvin(*hair));
        let is_blend = (bubble.pascals() - dew.pascals()).abs() > 500.0;
        let under = if is_blend {
            Message::new("reference-at-blend")
                .with("bubble", system.gauge(bubble))
                .with("dew", system.gauge(dew))
        } else {
            Message::new("reference-at").with("pressure", system.gauge(dew))
        };
        ui.label(view.tell(&under));
        ui.add_space(8.0);
    }
    ui.weak(view.say("reference-reads-nothing"));
}

fn kelvin(fahrenheit: f64) -> f64 {
    Temperature::from_fahrenheit(fahrenheit).kelvin()
}

/// A rule: temperature runs evenly; the pressures above stand where they saturate.
fn rule_ui(ui: &mut Ui, view: &View, of: &Refrigerant, (from, to): (f64, f64), hair: f64) {
    let palette = Palette::of(ui);
    let wide = ui.available_width();
    let (rect, _) = ui.allocate_exact_size(vec2(wide, 56.0), Sense::hover());
    let line = Stroke::new(palette.line, palette.ink);
    ui.painter()
        .rect(rect, 3.0, palette.raised, line, StrokeKind::Inside);
    let (least, most) = (kelvin(from), kelvin(to));
    let x = |kelvin: f64| {
        let share = ((kelvin - least) / (most - least)) as f32;
        rect.left() + 8.0 + share * (rect.width() - 16.0)
    };
    let middle = rect.center().y;
    let font = FontId::proportional(size::CAPTION);
    let write = |at: Pos2, align: Align2, text: String, colour| {
        ui.painter().text(at, align, text, font.clone(), colour);
    };
    let (scale, first, step): (fn(f64) -> f64, i32, usize) = match view.system() {
        System::InchPound => (kelvin, -40, 20),
        System::Metric => (|c| Temperature::from_celsius(c).kelvin(), -40, 10),
    };
    for mark in (first..=160).step_by(step) {
        let at = scale(f64::from(mark));
        if (least..=most).contains(&at) {
            let top = pos2(x(at), middle);
            ui.painter().line_segment([top, top + vec2(0.0, 6.0)], line);
            let text = format!("{mark}");
            write(
                top + vec2(0.0, 7.0),
                Align2::CENTER_TOP,
                text,
                palette.accent,
            );
        }
    }
    let (unit, _) = view.system().gauge_unit();
    let mut last = f32::MIN;
    for power in 0..4 {
        for digit in [1, 2, 3, 4, 5, 6, 8] {
            let value = f64::from(digit) * libm::pow(10.0, f64::from(power));
            let pressure = crate::units::GaugePressure::from_pascals(value * unit);
            let (_, dew) = of.saturation(pressure);
            let at = x(dew.kelvin());
            if !(least..=most).contains(&dew.kelvin()) || at - last < 32.0 {
                continue;
            }
            last = at;
            let foot = pos2(at, middle);
            ui.painter()
                .line_segment([foot, foot - vec2(0.0, 6.0)], line);
            let text = format!("{value:.0}");
            write(
                foot - vec2(0.0, 7.0),
                Align2::CENTER_BOTTOM,
                text,
                palette.ink,
            );
        }
    }
    let at = x(hair.clamp(least, most));
    let ends = [pos2(at, rect.top()), pos2(at, rect.bottom())];
    ui.painter()
        .line_segment(ends, Stroke::new(2.0 * palette.line, palette.miss));
}

/// The torques of flares by the size of the tube.
fn torque_ui(ui: &mut Ui, view: &View) {
    ui.label(RichText::new(view.say("reference-torque-title")).strong());
    Grid::new("torques")
        .num_columns(3)
        .striped(true)
        .show(ui, |ui| {
            for &flare in FlareSize::VARIANTS {
                let (least, most) = flare.torque_band();
                let range = |unit: f64| {
                    let of = |torque: Torque| torque.newton_metres() / unit;
                    format!("{:.0}–{:.0}", of(least), of(most))
                };
                ui.label(size_label(flare));
                for system in [System::InchPound, System::Metric] {
                    let (unit, name) = system.torque_unit();
                    ui.label(format!("{} {name}", range(unit)));
                }
                ui.end_row();
            }
        });
    ui.weak(view.say("reference-torque-note"));
}

/// The nameplate.
fn plate_ui(ui: &mut Ui, view: &View) {
    for (what, says) in view.scene.nameplate(view.system()) {
        let line = Message::new("plate-line")
            .with("what", what)
            .with("says", says);
        ui.label(view.tell(&line));
    }
}
