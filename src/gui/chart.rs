//! The strip chart of what the instruments showed.

use super::clock::time_text;
use super::site::hose_colour;
use super::system::System;
use super::theme::Palette;
use super::view::View;
use crate::job::TICKS_PER_SECOND;
use crate::kit::Hose;
use crate::units::{MICRON, PSI};
use crate::words::Reading;
use eframe::egui::{Id, Sense, TextStyle, Ui, Vec2b};
use egui_plot::{GridMark, Line, Plot, PlotPoints};

/// What is drawn at one moment: seconds, then what low gauge, high gauge (Pa gauge) and micron
/// gauge (Pa) showed.
type Sample = (f64, [Option<f64>; 3]);

/// The strip of paper.
#[derive(Debug, Default)]
pub struct StripChart {
    samples: Vec<Sample>,
    /// Seconds between samples; it doubles when the strip is full.
    every: u64,
}

/// When there are more samples than this, every other one is dropped.
const LONGEST: usize = 4_000;

const FACES: [Reading; 3] = [Reading::LowGauge, Reading::HighGauge, Reading::Microns];

impl StripChart {
    /// Notes what the instruments show, if it is time to.
    pub fn note(&mut self, view: &View) {
        let every = self.every.max(1) * TICKS_PER_SECOND;
        if !view.now().is_multiple_of(every) {
            return;
        }
        let faces = FACES.map(|face| view.reading(face).quantity().map(|q| q.si));
        self.samples.push((view.seconds(), faces));
        if self.samples.len() > LONGEST {
            let mut keep = false;
            self.samples.retain(|_| {
                keep = !keep;
                keep
            });
            self.every = self.every.max(1) * 2;
        }
    }

    fn points(&self, face: usize, scale: impl Fn(f64) -> f64) -> PlotPoints<'static> {
        self.samples
            .iter()
            .filter_map(|(at, faces)| faces[face].map(|si| [*at, scale(si)]))
            .collect()
    }
}

/// Shows the strip: pressures, and microns as their logarithm on a strip of their own.
pub fn chart_ui(ui: &mut Ui, view: &View, chart: &StripChart) {
    let palette = Palette::of(ui);
    let (unit, name) = match view.system() {
        System::InchPound => (PSI, "psig"),
        System::Metric => (1e3, "kPa gauge"),
    };
    ui.spacing_mut().item_spacing.y = 2.0;
    let caption = ui.text_style_height(&TextStyle::Small) + 4.0;
    let height = 0.5 * ui.available_height() - caption;
    let line = |face, scale: &dyn Fn(f64) -> f64, colour, width| {
        Line::new(format!("{face}"), chart.points(face, scale))
            .color(colour)
            .width(width)
    };
    let pressure = |si: f64| si / unit;
    let low = line(0, &pressure, hose_colour(palette, Hose::Low), 1.5);
    let high = line(1, &pressure, hose_colour(palette, Hose::High), 3.5);
    ui.small(format!("{name}: low thin, high thick"));
    strip("pressures", view, height)
        .show_axes([false, true])
        .include_y(0.0)
        .show(ui, |plot| {
            plot.line(low);
            plot.line(high);
        });
    let log = |si: f64| libm::log10((si / MICRON).max(1.0));
    let microns = line(2, &log, palette.ink, 2.0);
    ui.small("microns");
    strip("microns", view, height)
        .include_y(1.0)
        .include_y(4.4)
        .y_grid_spacer(|input| decades(input.bounds))
        .y_axis_formatter(|mark, _| match mark.value.round() {
            power if (0.0..=6.0).contains(&power) => format!("{:.0}", libm::pow(10.0, power)),
            _ => String::new(),
        })
        .show(ui, |plot| plot.line(microns));
}

/// One strip, from the start to now, its time tied to that of the other.
fn strip<'a>(name: &'static str, view: &View, height: f32) -> Plot<'a> {
    Plot::new(name)
        .height(height)
        .allow_scroll(false)
        // Its values stand beside it as instruments: the Tab key passes it by.
        .sense(Sense::CLICK | Sense::DRAG)
        .allow_zoom(Vec2b::new(true, false))
        .allow_drag(Vec2b::new(true, false))
        .include_x(0.0)
        .include_x(view.seconds().max(60.0))
        .x_grid_spacer(|input| minutes(input.bounds))
        .x_axis_formatter(|mark, _| time_text(mark.value.max(0.0)))
        .link_axis(Id::unique("strip"), Vec2b::new(true, false))
        .y_axis_min_width(44.0)
}

/// Marks at whole minutes, with so many between that a strip has about five.
fn minutes((from, to): (f64, f64)) -> Vec<GridMark> {
    let step = [60.0, 120.0, 300.0, 600.0, 1_200.0, 1_800.0, 3_600.0]
        .into_iter()
        .find(|step| (to - from) / step <= 5.0)
        .unwrap_or(7_200.0);
    let first = (from / step).ceil() as i64;
    // A mark at the very end would have its time cut off.
    let last = ((to - 0.05 * (to - from)) / step).floor() as i64;
    (first..=last)
        .take(12)
        .map(|i| GridMark {
            value: i as f64 * step,
            step_size: step,
        })
        .collect()
}

/// A mark at each factor of ten.
fn decades((from, to): (f64, f64)) -> Vec<GridMark> {
    (0..=6)
        .filter(|&power| (from..=to).contains(&f64::from(power)))
        .map(|power| GridMark {
            value: f64::from(power),
            step_size: 1.0,
        })
        .collect()
}
