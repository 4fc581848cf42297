//! How long a frame of the window takes: building and tessellating the room with a job at work,
//! and painting it on the processor, where there is no graphics card.
//!
//! `cargo bench --bench frame`.

#[path = "../tests/support/raster.rs"]
mod raster;

use coldbench::gui::{App, Attempts, Part};
use coldbench::kit::refrigerant_cylinder;
use coldbench::kit::tools::Name;
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::units::Fraction;
use coldbench::words::{
    Action, GaugePlace, Hose, HoseEnd, Joint, Line, Spot, ThermometerPlace, ThermostatCall,
};
use divan::{Bencher, black_box};
use eframe::egui::{Context, FullOutput, Pos2, RawInput, Rect, Theme, Vec2};
use raster::Raster;

fn main() {
    divan::main();
}

/// The room of the default scenario: hooked up, running for 15 min, everything in use.
fn at_work() -> App {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    // The bench's own attempts are passing files.
    let mut app = App::new(scenarios, Attempts::in_folder(std::env::temp_dir()));
    app.open(0);
    let caps = Line::ALL.map(|line| Action::PortCap { line, on: false });
    let hoses = [
        (Hose::Low, HoseEnd::SuctionPort),
        (Hose::High, HoseEnd::LiquidPort),
        (Hose::Centre, HoseEnd::Tool(Name::RefrigerantCylinder)),
    ]
    .map(|(hose, to)| Action::Connect { hose, to });
    let rest = [
        Action::Protect(true),
        Action::of(refrigerant_cylinder::Action::Valve(Fraction::ONE)),
        Action::MicronGauge(GaugePlace::Manifold),
        Action::ClampMeter(true),
        Action::Sniff(Spot::Joint(Joint::DrierInlet)),
        Action::Wet(Spot::Joint(Joint::DrierOutlet)),
        Action::Clamp(ThermometerPlace::SuctionLine),
        Action::Clamp(ThermometerPlace::LiquidLine),
        Action::Thermostat(ThermostatCall::Cool),
    ];
    for action in caps.into_iter().chain(hoses).chain(rest) {
        app.act(action);
    }
    app.run(9_000);
    app.choose(Part::Valve(Line::Liquid));
    app
}

/// A window of 1280 x 800 that runs frames.
struct Frames {
    ctx: Context,
    app: App,
    raster: Raster,
    time: f64,
}

impl Frames {
    fn new() -> Self {
        let ctx = Context::default();
        App::dress(&ctx);
        ctx.set_theme(Theme::Light);
        let mut frames = Self {
            ctx,
            app: at_work(),
            raster: Raster::default(),
            time: 0.0,
        };
        for _ in 0..4 {
            frames.build();
        }
        frames
    }

    /// A tick of the job and the frame that shows it.
    fn build(&mut self) -> FullOutput {
        self.time += 0.1;
        self.app.run(1);
        let input = RawInput {
            screen_rect: Some(Rect::from_min_size(Pos2::ZERO, Vec2::new(1280.0, 800.0))),
            time: Some(self.time),
            ..RawInput::default()
        };
        let mut output = self.ctx.run_ui(input, |ui| self.app.window_ui(ui));
        self.raster.take(&mut output.textures_delta);
        output
    }
}

/// Without a graphics card's part: under 2 ms is wanted.
#[divan::bench]
fn build_and_tessellate(bencher: Bencher) {
    let mut frames = Frames::new();
    bencher.bench_local(|| {
        let output = frames.build();
        let density = frames.ctx.pixels_per_point();
        black_box(frames.ctx.tessellate(output.shapes, density).len())
    });
}

/// With painting on the processor: under 10 ms is wanted.
#[divan::bench]
fn build_and_paint_on_the_processor(bencher: Bencher) {
    let mut frames = Frames::new();
    bencher.bench_local(|| {
        let output = frames.build();
        black_box(frames.raster.paint(&frames.ctx, &output).pixels.len())
    });
}
