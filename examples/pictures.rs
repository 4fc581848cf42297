//! Paints the pictures of the window without a display: `cargo run --example pictures [FOLDER]`.
//! With `readme` in place of the folder it paints those of the README, into `assets/pictures`.

#[path = "../tests/support/raster.rs"]
mod raster;

use coldbench::gui::{App, Attempts, Colours, Part, Settings, TextSize};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Driver, Job, Refusal};
use coldbench::kit::vacuum_pump;
use coldbench::plant::{Joint, Line};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::text::{Language, Message};
use coldbench::words::Action;
use eframe::egui::accesskit;
use eframe::egui::{Context, Event, Modifiers, PointerButton, Pos2, RawInput, Rect, Vec2};
use raster::{Picture, Raster};
use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{self, BufWriter};
use std::path::{Path, PathBuf};

fn main() -> io::Result<()> {
    let home = std::env::current_dir()?;
    // Where the attempts of the pictures are kept is on the pictures, too: not a path of a machine.
    fs::create_dir_all(passing())?;
    std::env::set_current_dir(passing())?;
    let painted = paint(&home);
    std::env::set_current_dir(&home)?;
    let gone = fs::remove_dir_all(passing());
    painted.and(gone)
}

fn paint(home: &Path) -> io::Result<()> {
    let folder = std::env::args_os().nth(1);
    if folder.as_ref().is_some_and(|word| word == "readme") {
        return for_the_readme(&home.join("assets/pictures"));
    }
    let folder = home.join(folder.map_or_else(|| PathBuf::from("target/pictures"), PathBuf::from));
    fs::create_dir_all(&folder)?;
    let large = Vec2::new(1280.0, 800.0);
    let light = |app: &mut App| Frames::new(large).shot(app);
    save(&folder, "start", &light(&mut app()))?;

    let mut work = up_to("clogged_drier", |action| {
        matches!(action, Action::Diagnose(_))
    });
    work.choose(Part::Valve(Line::Liquid));
    save(&folder, "work", &light(&mut work))?;
    let thought = Frames::new(large).press(&mut work, "Ask for a thought");
    save(&folder, "coach", &thought)?;
    let usual = Settings::default();
    for (name, colours) in [("dark", Colours::Night), ("projector", Colours::Wall)] {
        work.set(Settings { colours, ..usual });
        save(&folder, &format!("work_{name}"), &light(&mut work))?;
    }
    work.set(usual);
    spanish(&folder, large, &mut work)?;
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
        *action == Action::of(vacuum_pump::Action::Inlet(false))
    });
    vacuum.choose(Part::Pump);
    save(&folder, "evacuation", &light(&mut vacuum))?;
    vacuum.choose_time();
    save(&folder, "time", &light(&mut vacuum))?;

    let mut leak = up_to("leaking_flare", |action| {
        matches!(action, Action::StemCap { .. })
    });
    leak.choose(Part::Joint(Joint::IndoorSuction));
    save(&folder, "leak_found", &light(&mut leak))?;

    hands(&folder, large)?;

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
        save(folder, &name, &Frames::new(screen).press(work, side))?;
    }
    Ok(())
}

/// The site at work, the job sheet and a hose's panel in Spanish, whose words are longer.
fn spanish(folder: &Path, size: Vec2, work: &mut App) -> io::Result<()> {
    work.set(Settings {
        language: Language::Spanish,
        ..Settings::default()
    });
    let shot = |app: &mut App| Frames::new(size).shot(app);
    save(folder, "spanish_work", &shot(work))?;
    work.choose(Part::Joint(Joint::IndoorSuction));
    save(folder, "spanish_joint", &shot(work))?;
    work.choose_sheet();
    save(folder, "spanish_sheet", &shot(work))?;
    work.choose(Part::Valve(Line::Liquid));
    work.set(Settings::default());
    Ok(())
}

/// Where the drawing's own origin is in a window of 1280 x 800, and a unit of it.
const SHEET: (Pos2, f32) = (Pos2::new(90.9, 82.0), 0.728);

/// Hands at work: a stem that is turned, a hose and a thermometer on their way.
fn hands(folder: &Path, size: Vec2) -> io::Result<()> {
    let at = |x: f32, y: f32| SHEET.0 + Vec2::new(x, y) * SHEET.1;
    let line = Line::Suction;
    let ways: [(&str, &[(f32, f32)]); 3] = [
        (
            "hand_turns",
            &[(392.0, 275.0), (372.0, 297.0), (352.0, 275.0)],
        ),
        (
            "hand_hose",
            &[(300.0, 588.0), (340.0, 480.0), (368.0, 376.0)],
        ),
        (
            "hand_probe",
            &[(848.0, 492.0), (600.0, 420.0), (560.0, 250.0)],
        ),
    ];
    for (name, way) in ways {
        let mut app = up_to("clogged_drier", |action| {
            matches!(action, Action::Connect { .. })
        });
        app.act(Action::PortCap { line, on: false });
        app.act(Action::StemCap { line, on: false });
        let points: Vec<Pos2> = way.iter().map(|&(x, y)| at(x, y)).collect();
        let picture = Frames::new(size).drag(&mut app, &points);
        save(folder, name, &picture)?;
    }
    Ok(())
}

/// The site at work in the ways in which it can be shown, an evacuation, a leak that was found, and
/// the end of a job.
fn for_the_readme(folder: &Path) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    let size = Vec2::new(1280.0, 800.0);
    let shot = |app: &mut App| Frames::new(size).shot(app);
    let mut work = up_to("clogged_drier", |action| {
        matches!(action, Action::Diagnose(_))
    });
    work.choose(Part::Valve(Line::Liquid));
    save(folder, "site", &shot(&mut work))?;
    let usual = Settings::default();
    let ways = [
        (
            "spanish",
            Settings {
                language: Language::Spanish,
                ..usual
            },
        ),
        (
            "dark",
            Settings {
                colours: Colours::Night,
                ..usual
            },
        ),
        (
            "projector",
            Settings {
                colours: Colours::Wall,
                ..usual
            },
        ),
        (
            "large_text",
            Settings {
                text: TextSize::ALL[3],
                ..usual
            },
        ),
    ];
    for (name, settings) in ways {
        work.set(settings);
        save(folder, name, &shot(&mut work))?;
    }
    let mut vacuum = up_to("clogged_drier", |action| {
        *action == Action::of(vacuum_pump::Action::Inlet(false))
    });
    vacuum.choose(Part::Pump);
    save(folder, "evacuation", &shot(&mut vacuum))?;
    let mut leak = up_to("leaking_flare", |action| {
        matches!(action, Action::StemCap { .. })
    });
    leak.choose(Part::Joint(Joint::IndoorSuction));
    save(folder, "leak", &shot(&mut leak))?;
    save(folder, "end", &shot(&mut up_to("clogged_drier", |_| false)))
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

impl Driver for Hands {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        if (self.stop)(&action) {
            return Err(Refusal::because(Message::verbatim(
                "Here the picture is taken.",
            )));
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
    App::new(scenarios, Attempts::in_folder("attempts"))
}

/// The folder of the pictures' own attempts, which goes when they are painted.
fn passing() -> PathBuf {
    std::env::temp_dir().join(format!("coldbench-pictures-{}", std::process::id()))
}

/// A context that paints frames.
struct Frames {
    ctx: Context,
    size: Vec2,
    raster: Raster,
}

impl Frames {
    /// A screen of so many pixels.
    fn new(size: Vec2) -> Self {
        let ctx = Context::default();
        App::dress(&ctx);
        ctx.enable_accesskit();
        let raster = Raster::default();
        Self { ctx, size, raster }
    }

    /// Presses what has a label, as a screen reader does, and paints what comes of it.
    fn press(self, app: &mut App, label: &'static str) -> Picture {
        let mut frames = vec![Vec::new(); 8];
        frames[4] = vec![Press::Label(label)];
        self.paint(app, frames)
    }

    /// Lets the window settle and paints it.
    fn shot(self, app: &mut App) -> Picture {
        self.frames(app, &vec![Vec::new(); 4])
    }

    /// Presses at the first point, goes over the others and paints what is then in the hand.
    fn drag(self, app: &mut App, points: &[Pos2]) -> Picture {
        let press = Event::PointerButton {
            pos: points[0],
            button: PointerButton::Primary,
            pressed: true,
            modifiers: Modifiers::NONE,
        };
        let moves = points.iter().map(|&point| Event::PointerMoved(point));
        let mut frames = vec![Vec::new(); 4];
        frames.push(vec![Event::PointerMoved(points[0])]);
        frames.push(vec![press]);
        frames.extend(moves.map(|event| vec![event]));
        frames.extend(vec![Vec::new(); 2]);
        self.frames(app, &frames)
    }

    /// Runs a frame for each list of events and paints the last.
    fn frames(self, app: &mut App, events: &[Vec<Event>]) -> Picture {
        let events = events.iter().map(|events| {
            let events = events.iter().cloned();
            events.map(Press::Event).collect()
        });
        self.paint(app, events.collect())
    }

    fn paint(mut self, app: &mut App, frames: Vec<Vec<Press>>) -> Picture {
        let mut picture = None;
        let mut tree = None;
        for (frame, presses) in frames.into_iter().enumerate() {
            let events = presses.into_iter().filter_map(|press| match press {
                Press::Event(event) => Some(event),
                Press::Label(label) => tree.as_ref().and_then(|tree| pressing(tree, label)),
            });
            // What is large in text holds fewer points.
            let points = self.size / self.ctx.zoom_factor();
            let input = RawInput {
                screen_rect: Some(Rect::from_min_size(Pos2::ZERO, points)),
                time: Some(frame as f64 * 0.1),
                events: events.collect(),
                ..RawInput::default()
            };
            let mut output = self.ctx.run_ui(input, |ui| app.window_ui(ui));
            tree = output.platform_output.accesskit_update.take();
            self.raster.take(&mut output.textures_delta);
            picture = Some(self.raster.paint(&self.ctx, &output));
        }
        picture.expect("some frames were painted")
    }
}

/// Something done in a frame.
#[derive(Clone)]
enum Press {
    Event(Event),
    /// What has this label is pressed.
    Label(&'static str),
}

/// What presses the control of a label, as a screen reader does.
fn pressing(tree: &accesskit::TreeUpdate, label: &str) -> Option<Event> {
    let mut nodes = tree.nodes.iter();
    let (id, _) = nodes.find(|(_, node)| node.label() == Some(label))?;
    Some(Event::AccessKitActionRequest(accesskit::ActionRequest {
        action: accesskit::Action::Click,
        target_tree: tree.tree_id,
        target_node: *id,
        data: None,
    }))
}

/// Writes a picture in its 256 commonest colours, which makes it a third as large: a drawing has
/// few, and the rest are shades at the edges of letters.
fn save(folder: &Path, name: &str, picture: &Picture) -> io::Result<()> {
    let mut counts = BTreeMap::<[u8; 3], usize>::new();
    for &[r, g, b, _] in &picture.pixels {
        *counts.entry([r, g, b]).or_default() += 1;
    }
    let mut commonest: Vec<_> = counts
        .iter()
        .map(|(colour, count)| (count, colour))
        .collect();
    commonest.sort_by_key(|&(count, colour)| (std::cmp::Reverse(count), colour));
    let palette: Vec<[u8; 3]> = commonest
        .iter()
        .map(|&(_, colour)| *colour)
        .take(256)
        .collect();
    let nearest = |colour: &[u8; 3]| {
        let off = |one: &[u8; 3]| -> u32 {
            let apart = one
                .iter()
                .zip(colour)
                .map(|(a, b)| u32::from(a.abs_diff(*b)));
            apart.map(|by| by * by).sum()
        };
        let places = 0..palette.len();
        places
            .min_by_key(|&place| off(&palette[place]))
            .unwrap_or(0) as u8
    };
    let places: BTreeMap<_, _> = counts
        .keys()
        .map(|colour| (*colour, nearest(colour)))
        .collect();
    let file = File::create(folder.join(format!("{name}.png")))?;
    let (width, height) = (picture.width as u32, picture.height as u32);
    let mut encoder = png::Encoder::new(BufWriter::new(file), width, height);
    encoder.set_color(png::ColorType::Indexed);
    encoder.set_palette(palette.concat());
    encoder.set_filter(png::Filter::NoFilter);
    encoder.set_compression(png::Compression::High);
    let mut writer = encoder.write_header()?;
    let pixels: Vec<u8> = picture
        .pixels
        .iter()
        .map(|&[r, g, b, _]| places[&[r, g, b]])
        .collect();
    writer.write_image_data(&pixels)?;
    writer.finish()?;
    Ok(())
}
