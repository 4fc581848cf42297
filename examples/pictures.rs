//! Paints the pictures of the window without a display: `cargo run --example pictures [FOLDER]`.

#[path = "../tests/support/raster.rs"]
mod raster;

use coldbench::attempt::Recorder;
use coldbench::gui::{App, Opener, Part, Session};
use coldbench::kit::{Hose, HoseEnd, ThermometerPlace};
use coldbench::plant::{Joint, Line, Spot, ThermostatCall};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::units::{Fraction, Torque};
use coldbench::words::{Action, GaugePlace};
use eframe::egui::{Context, Pos2, RawInput, Rect, Theme, Vec2};
use raster::{Picture, Raster};
use std::fs::{self, File};
use std::io::{self, BufWriter};
use std::path::{Path, PathBuf};

fn main() -> io::Result<()> {
    let folder = std::env::args_os().nth(1);
    let folder = folder.map_or_else(|| PathBuf::from("target/pictures"), PathBuf::from);
    fs::create_dir_all(&folder)?;
    let size = Vec2::new(1360.0, 860.0);
    let mut start = app();
    save(
        &folder,
        "start",
        &Frames::new(size, Theme::Light).shot(&mut start),
    )?;
    let mut work = app();
    at_work(&mut work);
    save(
        &folder,
        "work",
        &Frames::new(size, Theme::Light).shot(&mut work),
    )?;
    save(
        &folder,
        "work_dark",
        &Frames::new(size, Theme::Dark).shot(&mut work),
    )?;
    let small = Vec2::new(1000.0, 640.0);
    save(
        &folder,
        "small",
        &Frames::new(small, Theme::Light).shot(&mut work),
    )?;
    searching(&mut work);
    save(
        &folder,
        "leak_search",
        &Frames::new(size, Theme::Light).shot(&mut work),
    )?;
    let mut vacuum = app();
    evacuating(&mut vacuum);
    save(
        &folder,
        "evacuation",
        &Frames::new(size, Theme::Light).shot(&mut vacuum),
    )?;
    vacuum.act(Action::HandBack);
    save(
        &folder,
        "end",
        &Frames::new(size, Theme::Light).shot(&mut vacuum),
    )
}

fn app() -> App {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    let opener: Opener = Box::new(|scenario, who| {
        // The pictures' own attempts are passing files.
        Recorder::create_in(&std::env::temp_dir(), scenario, "", who)
            .map(|recorder| Box::new(recorder) as Box<dyn Session>)
            .map_err(|error| error.to_string())
    });
    App::new(scenarios, opener)
}

/// Hooked up and running.
fn at_work(app: &mut App) {
    app.open(0);
    app.act(Action::Protect(true));
    hook_up(app);
    for place in [
        ThermometerPlace::SuctionLine,
        ThermometerPlace::LiquidLine,
        ThermometerPlace::AfterDrier,
        ThermometerPlace::OutdoorAir,
        ThermometerPlace::ReturnAir,
        ThermometerPlace::SupplyAir,
    ] {
        app.act(Action::Clamp(place));
    }
    app.act(Action::ClampMeter(true));
    app.act(Action::Thermostat(ThermostatCall::Cool));
    app.run(6_000);
    app.choose(Part::Valve(Line::Liquid));
}

fn hook_up(app: &mut App) {
    for line in Line::ALL {
        app.act(Action::StemCap { line, on: false });
        app.act(Action::PortCap { line, on: false });
    }
    for (hose, to) in [
        (Hose::Low, HoseEnd::SuctionPort),
        (Hose::High, HoseEnd::LiquidPort),
    ] {
        app.act(Action::Connect { hose, to });
        app.act(Action::Purge(hose));
        app.run(30);
    }
}

/// A flare made up too loosely, wetted.
fn searching(app: &mut App) {
    let joint = Joint::DrierInlet;
    app.act(Action::Thermostat(ThermostatCall::Off));
    app.act(Action::Loosen(joint));
    let torque = Torque::from_foot_pounds(15.0);
    app.act(Action::MakeUp { joint, torque });
    app.act(Action::Sniff(Spot::Joint(joint)));
    app.act(Action::Wet(Spot::Joint(joint)));
    app.run(300);
    app.choose(Part::Joint(joint));
}

/// The line set opened, plugged and on the pump.
fn evacuating(app: &mut App) {
    app.open(0);
    app.act(Action::Protect(true));
    for line in Line::ALL {
        app.act(Action::StemCap { line, on: false });
    }
    app.act(Action::Thermostat(ThermostatCall::Cool));
    app.run(600);
    for line in Line::ALL {
        let open = Fraction::ZERO;
        app.act(Action::Stem { line, open });
        app.run(400);
    }
    app.act(Action::Thermostat(ThermostatCall::Off));
    app.act(Action::Loosen(Joint::DrierInlet));
    app.run(600);
    for joint in [Joint::DrierInlet, Joint::DrierOutlet] {
        app.act(Action::Loosen(joint));
        app.act(Action::TakeApart(joint));
    }
    app.act(Action::TakeOutDrier);
    app.choose(Part::Drier);
    for joint in [Joint::DrierInlet, Joint::DrierOutlet] {
        app.act(Action::Plug(joint));
    }
    hook_up(app);
    let (hose, to) = (Hose::Centre, HoseEnd::VacuumPump);
    app.act(Action::Connect { hose, to });
    app.act(Action::MicronGauge(GaugePlace::Manifold));
    for hose in [Hose::Low, Hose::High] {
        let open = Fraction::ONE;
        app.act(Action::HandValve { hose, open });
    }
    app.act(Action::PumpIsolation(true));
    app.act(Action::Pump(true));
    app.run(3_000);
}

/// A context that paints frames.
struct Frames {
    ctx: Context,
    size: Vec2,
    raster: Raster,
}

impl Frames {
    fn new(size: Vec2, theme: Theme) -> Self {
        let ctx = Context::default();
        App::dress(&ctx);
        ctx.set_theme(theme);
        let raster = Raster::default();
        Self { ctx, size, raster }
    }

    /// Lets the window settle and paints it.
    fn shot(mut self, app: &mut App) -> Picture {
        let mut picture = None;
        for frame in 0..4 {
            let input = RawInput {
                screen_rect: Some(Rect::from_min_size(Pos2::ZERO, self.size)),
                time: Some(f64::from(frame) * 0.1),
                ..RawInput::default()
            };
            let mut output = self.ctx.run_ui(input, |ui| app.window_ui(ui));
            self.raster.take(&mut output.textures_delta);
            picture = Some(self.raster.paint(&self.ctx, &output));
        }
        picture.expect("some frames were painted")
    }
}

fn save(folder: &Path, name: &str, picture: &Picture) -> io::Result<()> {
    let file = File::create(folder.join(format!("{name}.png")))?;
    let (width, height) = (picture.width as u32, picture.height as u32);
    let mut encoder = png::Encoder::new(BufWriter::new(file), width, height);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_compression(png::Compression::High);
    let mut writer = encoder.write_header()?;
    writer.write_image_data(&picture.pixels.concat())?;
    writer.finish()?;
    Ok(())
}
