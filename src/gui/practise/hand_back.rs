//! The sheet before a job is handed back: what eyes can see on a walk round the unit. It tells of
//! no loose nut and of no leak.

use crate::gui::part::Part;
use crate::gui::theme::Palette;
use crate::gui::view::View;
use crate::gui::widgets::{Look, key_button, keys};
use crate::kit::{Hose, HoseEnd, ThermometerPlace};
use crate::plant::{Joint, Line, Made, ThermostatCall};
use crate::text::Message;
use crate::words::{GaugePlace, SheetField};
use eframe::egui::{Key, Rect, RichText, ScrollArea, Stroke, StrokeKind, Ui, pos2};

/// So long the button is held, s.
const HELD: f64 = 1.0;

/// The sheet while it is open.
#[derive(Debug, Default)]
pub struct HandBack {
    /// Since when the button or its key is held.
    since: Option<f64>,
    /// The button was pressed by somebody who does not hold it: a second one asks again.
    asks_again: bool,
    /// The key was let go since the sheet was opened.
    key_is_free: bool,
}

/// What comes of the sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Leads {
    /// Nothing yet.
    Nowhere,
    /// Back to the work.
    WorkOn,
    /// To a part that is listed.
    To(Part),
    /// The job is handed back.
    HandBack,
}

/// Three lists of parts: what is still on, what is still off, what is open or not set.
pub fn walk_round(view: &View) -> [Vec<Part>; 3] {
    let is_at_a_port =
        |end: Option<HoseEnd>| matches!(end, Some(HoseEnd::SuctionPort | HoseEnd::LiquidPort));
    let hoses = Hose::ALL.into_iter();
    let mut on: Vec<Part> = hoses
        .filter(|&hose| is_at_a_port(view.hose(hose).end))
        .map(Part::Hose)
        .collect();
    on.extend(
        Line::ALL
            .into_iter()
            .filter(|&line| view.valve(line).tool_on)
            .map(Part::Port),
    );
    on.extend(
        ThermometerPlace::ALL
            .into_iter()
            .filter(|&place| view.thermometer_at(place))
            .map(Part::Place),
    );
    let gauge = view.micron_gauge().0;
    if matches!(gauge, GaugePlace::SuctionPort | GaugePlace::LiquidPort) {
        on.push(Part::MicronGauge);
    }
    if view.clamp_meter_on() {
        on.push(Part::Compressor);
    }
    let mut off = Vec::new();
    let mut not_set = Vec::new();
    for line in Line::ALL {
        let valve = view.valve(line);
        if !valve.cap_on {
            off.push(Part::Valve(line));
        }
        if !valve.port_cap_on && !valve.tool_on {
            off.push(Part::Port(line));
        }
        if valve.open < 1.0 {
            not_set.push(Part::Valve(line));
        }
    }
    let joints = Joint::ALL.into_iter();
    off.extend(
        joints
            .filter(|&joint| matches!(view.made(joint), Made::Apart | Made::Plugged))
            .map(Part::Joint),
    );
    if view.drier().is_none() {
        off.push(Part::Drier);
    }
    let electrics = view.electrics();
    if !electrics.disconnect_in || electrics.locked {
        not_set.push(Part::Disconnect);
    }
    if view.call() != ThermostatCall::Cool {
        not_set.push(Part::Thermostat);
    }
    if view.pump().running {
        not_set.push(Part::Pump);
    }
    if view.nitrogen().0 {
        not_set.push(Part::Nitrogen);
    }
    if view.cylinder().0 > 0.0 {
        not_set.push(Part::Cylinder);
    }
    [on, off, not_set]
}

/// Shows the sheet.
pub fn hand_back_ui(ui: &mut Ui, view: &View, sheet: &mut HandBack) -> Leads {
    let mut leads = Leads::Nowhere;
    ui.heading(view.say("back-before"));
    ui.weak(view.say("back-what-eyes-see"));
    ui.separator();
    let foot = 3.0 * 36.0;
    ScrollArea::vertical()
        .id_salt("walk round")
        .max_height((ui.available_height() - foot).max(80.0))
        .show(ui, |ui| {
            ui.columns(3, |columns| {
                let keys = ["back-still-on", "back-still-off", "back-open-or-not-set"];
                for ((ui, key), parts) in columns.iter_mut().zip(keys).zip(walk_round(view)) {
                    ui.label(RichText::new(view.say(key)).strong());
                    if parts.is_empty() {
                        ui.weak(view.say("back-nothing"));
                    }
                    for part in parts {
                        let line = Message::new("back-line")
                            .with("part", part.label())
                            .with("state", part.state(view));
                        if ui.button(view.tell(&line)).clicked() {
                            leads = Leads::To(part);
                        }
                    }
                }
            });
            ui.separator();
            let all = SheetField::ALL.len();
            let fields = SheetField::ALL.into_iter();
            let empty = fields.filter(|&field| view.sheet().entry(field).is_none());
            let blanks = Message::new("back-blanks")
                .with("empty", empty.count())
                .with("all", all);
            ui.label(view.tell(&blanks));
            ui.label(view.say(if view.sheet().diagnosis().is_some() {
                "back-diagnosis-is-there"
            } else {
                "back-no-diagnosis"
            }));
        });
    ui.separator();
    ui.label(view.say("sheet-hand-back-warning"));
    ui.horizontal_wrapped(|ui| {
        let work_on = view.say("sheet-work-on");
        let escape = view.say("keys-escape");
        let button = key_button(ui, &work_on, Some((&escape, Key::Escape)), Look::Filled);
        if button.clicked() {
            leads = Leads::WorkOn;
        }
        if held(ui, view, sheet) {
            leads = Leads::HandBack;
        }
        if sheet.asks_again {
            let now = view.say("sheet-hand-back-now");
            if key_button(ui, &now, None, Look::Plain).clicked() {
                leads = Leads::HandBack;
            }
        }
    });
    leads
}

/// The button that is held, or its key; gives whether that lasted long enough. Who presses it
/// without holding is asked again.
fn held(ui: &mut Ui, view: &View, sheet: &mut HandBack) -> bool {
    let text = view.say("back-hold");
    let key = view.say("back-hold-key");
    let button = key_button(ui, &text, Some((&key, Key::H)), Look::Plain);
    let key_down = ui.input(|input| input.key_down(Key::H)) && !keys::is_typing(ui.ctx());
    sheet.key_is_free |= !key_down;
    let is_held = button.is_pointer_button_down_on() || (key_down && sheet.key_is_free);
    let now = ui.input(|input| input.time);
    sheet.since = is_held.then(|| sheet.since.unwrap_or(now));
    if button.clicked() {
        sheet.asks_again = true;
    }
    let Some(since) = sheet.since else {
        return false;
    };
    ui.request_repaint();
    let share = ((now - since) / HELD).clamp(0.0, 1.0);
    let palette = Palette::of(ui);
    let end = pos2(
        button.rect.left() + button.rect.width() * share as f32,
        button.rect.bottom(),
    );
    let filled = Rect::from_min_max(pos2(button.rect.left(), end.y - 5.0), end);
    let line = Stroke::new(1.0, palette.accent);
    let fill = palette.accent;
    ui.painter()
        .rect(filled, 2.0, fill, line, StrokeKind::Inside);
    now - since >= HELD
}
