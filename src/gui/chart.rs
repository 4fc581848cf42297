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
use eframe::egui::{Id, Ui, Vec2b};
use egui_plot::{GridInput, GridMark, Legend, Line, Plot, PlotPoints};

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
    let height = 0.5 * (ui.available_height() - 6.0);
    let strip = |id: &'static str| {
        Plot::new(id)
            .height(height)
            .allow_scroll(false)
            .allow_zoom(Vec2b::new(true, false))
            .allow_drag(Vec2b::new(true, false))
            .legend(Legend::default().background_alpha(0.6))
            .include_x(0.0)
            .include_x(view.seconds().max(60.0))
            .x_grid_spacer(minutes)
            .x_axis_formatter(|mark, _| time_text(mark.value.max(0.0)))
            .link_axis(Id::unique("strip"), Vec2b::new(true, false))
            .y_axis_min_width(44.0)
    };
    let low = Line::new(format!("low, {name}"), chart.points(0, |si| si / unit))
        .color(hose_colour(palette, Hose::Low))
        .width(2.0);
    let high = Line::new(format!("high, {name}"), chart.points(1, |si| si / unit))
        .color(hose_colour(palette, Hose::High))
        .width(3.5);
    strip("pressures")
        .show_axes([false, true])
        .include_y(0.0)
        .show(ui, |plot| {
            plot.line(low);
            plot.line(high);
        });
    let log = |si: f64| libm::log10((si / MICRON).max(1.0));
    let microns = Line::new("microns", chart.points(2, log))
        .color(palette.ink)
        .width(2.0);
    strip("microns")
        .show_axes([true, true])
        .include_y(1.0)
        .include_y(4.4)
        .y_grid_spacer(decades)
        .y_axis_formatter(|mark, _| match mark.value.round() {
            power if (0.0..=6.0).contains(&power) => format!("{:.0}", libm::pow(10.0, power)),
            _ => String::new(),
        })
        .show(ui, |plot| plot.line(microns));
}

/// Marks at whole minutes, with so many between that a strip has about five.
fn minutes(input: GridInput) -> Vec<GridMark> {
    let (from, to) = input.bounds;
    let step = [60.0, 120.0, 300.0, 600.0, 1_200.0, 1_800.0, 3_600.0]
        .into_iter()
        .find(|step| (to - from) / step <= 5.0)
        .unwrap_or(7_200.0);
    let first = (from / step).ceil() as i64;
    let last = (to / step).floor() as i64;
    (first..=last)
        .take(12)
        .map(|i| GridMark {
            value: i as f64 * step,
            step_size: step,
        })
        .collect()
}

/// A mark at each factor of ten.
fn decades(input: GridInput) -> Vec<GridMark> {
    let (from, to) = input.bounds;
    (0..=6)
        .filter(|&power| (from..=to).contains(&f64::from(power)))
        .map(|power| GridMark {
            value: f64::from(power),
            step_size: 1.0,
        })
        .collect()
}
