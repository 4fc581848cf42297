//! Paints the pictures of the window without a display: `cargo run --example pictures [FOLDER]`.
//! With `readme` in place of the folder it paints those of the README, into `assets/pictures`.

#[path = "../tests/support/raster.rs"]
mod raster;

use coldbench::gui::{App, Attempts, Colours, Part, Settings, TextSize};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Door, Job, Refusal};
use coldbench::plant::{Joint, Line};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::words::Action;
use eframe::egui::accesskit;
use eframe::egui::{Context, Event, Pos2, RawInput, Rect, Vec2};
use raster::{Picture, Raster};
use std::fs::{self, File};
use std::io::{self, BufWriter};
use std::path::{Path, PathBuf};

fn main() -> io::Result<()> {
    let folder = std::env::args_os().nth(1);
    if folder.as_ref().is_some_and(|word| word == "readme") {
        return for_the_readme(Path::new("assets/pictures"));
    }
    let folder = folder.map_or_else(|| PathBuf::from("target/pictures"), PathBuf::from);
    fs::create_dir_all(&folder)?;
    let large = Vec2::new(1360.0, 860.0);
    let light = |app: &mut App| Frames::new(large).shot(app);
    save(&folder, "start", &light(&mut app()))?;

    let mut work = up_to("clogged_drier", |action| {
        matches!(action, Action::Diagnose(_))
    });
    work.choose(Part::Valve(Line::Liquid));
    save(&folder, "work", &light(&mut work))?;
    let thought = Frames::new(large).pressing("Ask for a thought");
    save(&folder, "coach", &thought.shot(&mut work))?;
    let usual = Settings::default();
    for (name, colours) in [("dark", Colours::Dark), ("projector", Colours::Projector)] {
        work.set(Settings { colours, ..usual });
        save(&folder, &format!("work_{name}"), &light(&mut work))?;
    }
    work.set(usual);
    let small = Vec2::new(1000.0, 640.0);
    save(&folder, "small", &Frames::new(small).shot(&mut work))?;
    at_sizes_of_text(&folder, &mut work)?;
    work.set(usual);

    let mut open = up_to("clogged_drier", |action| {
        matches!(action, Action::FitDrier(_))
    });
    open.choose(Part::Drier);
    save(&folder, "drier_out", &light(&mut open))?;

    let mut vacuum = up_to("clogged_drier", |action| {
        *action == Action::PumpIsolation(false)
    });
    vacuum.choose(Part::Pump);
    save(&folder, "evacuation", &light(&mut vacuum))?;

    let mut leak = up_to("leaking_flare", |action| {
        matches!(action, Action::StemCap { .. })
    });
    leak.choose(Part::Joint(Joint::IndoorSuction));
    save(&folder, "leak_found", &light(&mut leak))?;

    let mut sheet = up_to("clogged_drier", |action| {
        matches!(action, Action::StemCap { .. })
    });
    sheet.choose_sheet();
    save(&folder, "job_sheet", &light(&mut sheet))?;

    save(
        &folder,
        "end",
        &light(&mut up_to("clogged_drier", |_| false)),
    )
}

/// The room at each size of text and, at the largest, each of its sides.
fn at_sizes_of_text(folder: &Path, work: &mut App) -> io::Result<()> {
    let screen = Vec2::new(1280.0, 800.0);
    for text in TextSize::ALL {
        work.set(Settings {
            text,
            ..Settings::default()
        });
        let name = format!("text_{}", text.percent());
        save(folder, &name, &Frames::new(screen).shot(work))?;
    }
    for side in [
        "Site",
        "Job sheet",
        "Instruments",
        "Strip chart",
        "Coach",
        "Settings",
    ] {
        let name = format!("text_200_{}", side.to_lowercase().replace(' ', "_"));
        save(
            folder,
            &name,
            &Frames::new(screen).pressing(side).shot(work),
        )?;
    }
    Ok(())
}

/// The site at work, an evacuation, and a leak that was found.
fn for_the_readme(folder: &Path) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    let size = Vec2::new(1280.0, 800.0);
    let shot = |app: &mut App| Frames::new(size).shot(app);
    let mut work = up_to("clogged_drier", |action| {
        matches!(action, Action::Diagnose(_))
    });
    work.choose(Part::Valve(Line::Liquid));
    save(folder, "site", &shot(&mut work))?;
    let mut vacuum = up_to("clogged_drier", |action| {
        *action == Action::PumpIsolation(false)
    });
    vacuum.choose(Part::Pump);
    save(folder, "evacuation", &shot(&mut vacuum))?;
    let mut leak = up_to("leaking_flare", |action| {
        matches!(action, Action::StemCap { .. })
    });
    leak.choose(Part::Joint(Joint::IndoorSuction));
    save(folder, "leak", &shot(&mut leak))
}

/// A window in which the right procedure of a scenario has been done up to an action.
fn up_to(scenario: &str, stop: fn(&Action) -> bool) -> App {
    let mut app = app();
    let index = shipped_names().position(|name| name == scenario);
    app.open(index.expect("it is shipped"));
    let procedure = Procedure::shipped(&format!("{scenario}_right")).expect("it is shipped");
    let job = app.job().expect("it was opened").clone();
    let mut hands = Hands { app, job, stop };
    // It stops where it is told to; what it did until then is in the window.
    let _stopped = Performance::new(&mut hands, &mut |_| {}).run(&procedure);
    hands.app
}

/// Works in a window for a procedure, until an action at which it stops.
struct Hands {
    app: App,
    /// The job as it was last seen: the window lets go of it when it is handed back.
    job: Job,
    stop: fn(&Action) -> bool,
}

impl Door for Hands {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        if (self.stop)(&action) {
            return Err(Refusal::because("Here the picture is taken."));
        }
        if let Some(job) = self.app.job() {
            self.job = job.clone();
        }
        self.app.act(action);
        Ok(())
    }

    fn tick(&mut self) {
        self.app.run(1);
    }

    fn job(&self) -> &Job {
        self.app.job().unwrap_or(&self.job)
    }
}

fn app() -> App {
    let scenarios = shipped_names().filter_map(Scenario::shipped).collect();
    // The pictures' own attempts are passing files.
    let folder = std::env::temp_dir().join("coldbench-pictures");
    App::new(scenarios, Attempts::in_folder(folder))
}

/// A context that paints frames.
struct Frames {
    ctx: Context,
    /// The size of the screen in pixels.
    size: Vec2,
    raster: Raster,
    /// The label of what is pressed before the picture is taken.
    press: Option<&'static str>,
}

impl Frames {
    fn new(size: Vec2) -> Self {
        let ctx = Context::default();
        App::dress(&ctx);
        ctx.enable_accesskit();
        Self {
            ctx,
            size,
            raster: Raster::default(),
            press: None,
        }
    }

    fn pressing(self, label: &'static str) -> Self {
        let press = Some(label);
        Self { press, ..self }
    }

    /// Lets the window settle and paints it.
    fn shot(mut self, app: &mut App) -> Picture {
        let mut picture = None;
        let mut events = Vec::new();
        for frame in 0..8 {
            // What is large in text holds fewer points.
            let points = self.size / self.ctx.zoom_factor();
            let input = RawInput {
                screen_rect: Some(Rect::from_min_size(Pos2::ZERO, points)),
                time: Some(f64::from(frame) * 0.1),
                events: std::mem::take(&mut events),
                ..RawInput::default()
            };
            let mut output = self.ctx.run_ui(input, |ui| app.window_ui(ui));
            self.raster.take(&mut output.textures_delta);
            if frame == 3
                && let Some(label) = self.press
                && let Some(update) = &output.platform_output.accesskit_update
            {
                events = press(update, label);
            }
            picture = Some(self.raster.paint(&self.ctx, &output));
        }
        picture.expect("some frames were painted")
    }
}

/// What presses the button of a label, as a screen reader does.
fn press(update: &accesskit::TreeUpdate, label: &str) -> Vec<Event> {
    let found = update
        .nodes
        .iter()
        .find(|(_, node)| node.label() == Some(label));
    found
        .map(|(id, _)| {
            Event::AccessKitActionRequest(accesskit::ActionRequest {
                action: accesskit::Action::Click,
                target_tree: update.tree_id,
                target_node: *id,
                data: None,
            })
        })
        .into_iter()
        .collect()
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
