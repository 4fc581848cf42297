//! The strip chart of what the instruments showed.

use crate::gui::instruments::lane::{LANE, marks_ui};
use crate::gui::moment::Moment;
use crate::gui::theme::{Palette, hose_colour};
use crate::gui::time::time_text;
use crate::gui::view::{Reads, View};
use crate::job::{Job, TICKS_PER_SECOND};
use crate::kit::Hose;
use crate::text::Message;
use crate::units::MICRON;
use crate::words::{Quantity, Reading};
use eframe::egui::{Id, Response, Sense, TextStyle, Ui, Vec2b};
use egui_plot::{GridMark, HoverPosition, Line, Plot, PlotPoints, PlotResponse, PlotUi};
use std::ops::RangeInclusive;

/// What is drawn at one moment: seconds, then what low gauge, high gauge (Pa gauge) and micron
/// gauge (Pa) showed.
type Sample = (f64, [Option<f64>; 3]);

/// The strip of paper.
#[derive(Debug, Default)]
pub struct StripChart {
    samples: Vec<Sample>,
    /// Seconds between samples; it doubles when the strip is full.
    every: u64,
    /// What of it is looked at.
    stretch: Stretch,
    /// The time under the pointer, s, as it was when the strips were last drawn.
    pointed: Option<f64>,
}

/// What of the strip is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
enum Stretch {
    /// From the start to now.
    #[default]
    All,
    /// The last ten minutes.
    Latest,
    /// What the person dragged and zoomed to.
    Own,
}

/// When there are more samples than this, every other one is dropped.
const LONGEST: usize = 4_000;

/// The latest that are shown, s.
const LATEST: f64 = 600.0;

const FACES: [Reading; 3] = [Reading::LowGauge, Reading::HighGauge, Reading::Microns];

impl StripChart {
    /// Notes what the instruments show, if it is time to.
    pub fn note(&mut self, job: &Job) {
        let every = self.every.max(1) * TICKS_PER_SECOND;
        if !job.now().is_multiple_of(every) {
            return;
        }
        let faces = FACES.map(|face| job.reading(face).quantity().map(|q| q.si));
        let seconds = job.now() as f64 / TICKS_PER_SECOND as f64;
        self.samples.push((seconds, faces));
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

    /// What all instruments showed at a time, s, in words.
    fn readout(&self, at: f64, reads: Reads) -> Option<String> {
        let behind = self.samples.partition_point(|(time, _)| *time < at);
        let near = self.samples.get(behind.saturating_sub(1)..)?;
        let distance = |sample: &&Sample| (sample.0 - at).abs();
        let nearest = near.iter().take(2);
        let (time, faces) = nearest.min_by(|a, b| distance(a).total_cmp(&distance(b)))?;
        let mut lines = vec![time_text(*time)];
        for (face, &si) in FACES.into_iter().zip(faces) {
            let dimension = face.dimension();
            let value = match si {
                Some(si) => reads.system.level(Quantity { si, dimension }).words(),
                None => Message::new("time-no-reading"),
            };
            let says = [face.label(), value].map(|text| text.in_language(reads.language));
            lines.push(says.join(" "));
        }
        Some(lines.join("\n"))
    }

    /// The seconds that are looked at; `None`: as the person left them.
    fn bounds(&self, now: f64) -> Option<RangeInclusive<f64>> {
        match self.stretch {
            Stretch::All => Some(0.0..=now.max(60.0)),
            Stretch::Latest => Some((now - LATEST).max(0.0)..=now.max(60.0)),
            Stretch::Own => None,
        }
    }

    /// Lets go of the stretch that was chosen when the person drags or zooms.
    fn follow_hand(&mut self, response: &Response) {
        let zooms = response.ctx.input(|input| {
            input.zoom_delta() != 1.0 || input.smooth_scroll_delta() != eframe::egui::Vec2::ZERO
        });
        if response.double_clicked() {
            self.stretch = Stretch::All;
        } else if response.dragged() || (response.hovered() && zooms) {
            self.stretch = Stretch::Own;
        }
    }
}

/// Shows the strip: pressures, the marks of what was done, and microns as their logarithm on a
/// strip of their own. Gives the place in the list of a mark that was pressed.
pub fn chart_ui(
    ui: &mut Ui,
    view: &View,
    chart: &mut StripChart,
    moments: &[Moment],
) -> Option<usize> {
    ui.spacing_mut().item_spacing.y = 2.0;
    head_ui(ui, view, chart);
    let height = 0.5 * (ui.available_height() - LANE - 8.0);
    let bounds = chart.bounds(view.seconds());
    let above = pressures(ui, view, chart, bounds.clone(), height);
    let pressed = marks_ui(ui, view, &above.transform, moments);
    let below = microns(ui, view, chart, bounds, height);
    chart.follow_hand(&above.response);
    chart.follow_hand(&below.response);
    chart.pointed = above.inner.or(below.inner);
    pressed
}

/// What is looked at, and what there was under the pointer.
fn head_ui(ui: &mut Ui, view: &View, chart: &mut StripChart) {
    ui.horizontal(|ui| {
        ui.style_mut().override_text_style = Some(TextStyle::Small);
        let (all, latest) = (view.say("time-all"), view.say("time-latest"));
        ui.selectable_value(&mut chart.stretch, Stretch::All, all);
        ui.selectable_value(&mut chart.stretch, Stretch::Latest, latest);
        let readout = chart.pointed.and_then(|at| chart.readout(at, view.reads));
        let text = if let Some(lines) = readout {
            lines.replace('\n', ", ")
        } else {
            let (_, unit) = view.system().gauge_unit();
            view.tell(&Message::new("time-traces").with("unit", unit))
        };
        ui.add(eframe::egui::Label::new(text).truncate());
    });
}

fn pressures(
    ui: &mut Ui,
    view: &View,
    chart: &StripChart,
    bounds: Option<RangeInclusive<f64>>,
    height: f32,
) -> PlotResponse<Option<f64>> {
    let palette = Palette::of(ui);
    let (unit, _) = view.system().gauge_unit();
    let trace = |face: usize, hose, width| {
        let points = chart.points(face, |si| si / unit);
        Line::new(view.tell(&FACES[face].label()), points)
            .color(hose_colour(palette, hose))
            .width(width)
    };
    let (low, high) = (trace(0, Hose::Low, 1.5), trace(1, Hose::High, 3.5));
    strip("pressures", view, chart, height)
        .show_axes([false, true])
        .include_y(0.0)
        .show(ui, |plot| {
            plot.line(low);
            plot.line(high);
            look(plot, bounds)
        })
}

/// A strip of microns as high as this has room for the figure of every decade, points.
const ROOM_FOR_DECADES: f32 = 140.0;

fn microns(
    ui: &mut Ui,
    view: &View,
    chart: &StripChart,
    bounds: Option<RangeInclusive<f64>>,
    height: f32,
) -> PlotResponse<Option<f64>> {
    let log = |si: f64| libm::log10((si / MICRON).max(1.0));
    let every = if height < ROOM_FOR_DECADES { 2 } else { 1 };
    let line = Line::new(view.tell(&FACES[2].label()), chart.points(2, log))
        .color(Palette::of(ui).ink)
        .width(2.0);
    strip("microns", view, chart, height)
        .include_y(1.0)
        .include_y(4.4)
        .y_grid_spacer(move |input| decades(input.bounds, every))
        .y_axis_formatter(|mark, _| match mark.value.round() {
            power if (0.0..=6.0).contains(&power) => format!("{:.0}", libm::pow(10.0, power)),
            _ => String::new(),
        })
        .show(ui, |plot| {
            plot.line(line);
            look(plot, bounds)
        })
}

/// Looks at some seconds of a strip; gives the time under the pointer.
fn look(plot: &mut PlotUi<'_>, bounds: Option<RangeInclusive<f64>>) -> Option<f64> {
    if let Some(bounds) = bounds {
        plot.set_plot_bounds_x(bounds);
    }
    let is_under = plot.response().hovered();
    plot.pointer_coordinate()
        .filter(|_| is_under)
        .map(|point| point.x)
}

/// One strip, its time tied to that of the other.
fn strip<'a>(name: &'static str, view: &View, chart: &'a StripChart, height: f32) -> Plot<'a> {
    let reads = view.reads;
    Plot::new(name)
        .height(height)
        .allow_scroll(Vec2b::new(true, false))
        // Its values stand beside it as instruments: the Tab key passes it by.
        .sense(Sense::CLICK | Sense::DRAG)
        .allow_zoom(Vec2b::new(true, false))
        .allow_drag(Vec2b::new(true, false))
        .allow_axis_zoom_drag(false)
        .allow_double_click_reset(false)
        .x_grid_spacer(|input| minutes(input.bounds))
        .x_axis_formatter(|mark, _| time_text(mark.value.max(0.0)))
        .link_axis(Id::unique("strip"), Vec2b::new(true, false))
        .link_cursor(Id::unique("strip"), Vec2b::new(true, false))
        .label_formatter(move |at| chart.readout(time_at(at), reads))
        .y_axis_min_width(44.0)
}

/// The seconds at which a pointer hovers.
const fn time_at(at: &HoverPosition<'_>) -> f64 {
    match at {
        HoverPosition::NearDataPoint { position, .. } | HoverPosition::Elsewhere { position } => {
            position.x
        }
    }
}

/// Marks at whole minutes, with so many between that a strip has about five.
fn minutes((from, to): (f64, f64)) -> Vec<GridMark> {
    let step = [
        10.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1_200.0, 1_800.0, 3_600.0,
    ]
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
fn decades((from, to): (f64, f64), every: u8) -> Vec<GridMark> {
    (0..=6)
        .step_by(usize::from(every))
        .filter(|&power| (from..=to).contains(&f64::from(power)))
        .map(|power| GridMark {
            value: f64::from(power),
            step_size: f64::from(every),
        })
        .collect()
}
