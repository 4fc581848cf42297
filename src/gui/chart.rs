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
use egui_plot::{Legend, Line, LineStyle, Plot, PlotPoints};

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
            .x_axis_formatter(|mark, _| time_text(mark.value.max(0.0)))
            .link_axis(Id::unique("strip"), Vec2b::new(true, false))
            .y_axis_min_width(44.0)
    };
    let low = Line::new(format!("low, {name}"), chart.points(0, |si| si / unit))
        .color(hose_colour(palette, Hose::Low))
        .width(2.0);
    let high = Line::new(format!("high, {name}"), chart.points(1, |si| si / unit))
        .color(hose_colour(palette, Hose::High))
        .style(LineStyle::dashed_dense())
        .width(2.0);
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
        .include_y(1.0)
        .include_y(4.4)
        .y_grid_spacer(egui_plot::uniform_grid_spacer(|_| [1.0, 1.0, 1.0]))
        .y_axis_formatter(|mark, _| match mark.value.round() {
            power if (0.0..=6.0).contains(&power) => format!("{:.0}", libm::pow(10.0, power)),
            _ => String::new(),
        })
        .show(ui, |plot| plot.line(microns));
}
