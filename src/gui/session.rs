//! Where attempts are kept, and the driver to one: a job with its journal.

use crate::attempt::{CatchUp, DIRECTORY, Head, Mode, Opening, Recorder, Unfinished, unfinished};
use crate::gui::time::tick_text;
use crate::scenario::Scenario;
use crate::text::Message;
use crate::words::PersonName;
use std::path::{Path, PathBuf};

/// A finished recording.
#[derive(Debug, Clone)]
pub struct Kept {
    /// Where it is kept.
    pub place: String,
    /// Its fingerprint.
    pub fingerprint: String,
}

/// The folders of attempts: each is written in the first of them that can be written.
#[derive(Debug, Clone)]
pub struct Attempts {
    folders: Vec<PathBuf>,
}

impl Attempts {
    /// Beside where the program runs; where that cannot be written, among passing files.
    pub fn beside() -> Self {
        let passing = std::env::temp_dir().join("coldbench").join(DIRECTORY);
        Self {
            folders: vec![PathBuf::from(DIRECTORY), passing],
        }
    }

    /// In this folder and nowhere else.
    pub fn in_folder(folder: impl Into<PathBuf>) -> Self {
        Self {
            folders: vec![folder.into()],
        }
    }

    /// Begins an attempt, or says what is in the way.
    pub fn begin(&self, scenario: &Scenario, who: &str, mode: Mode) -> Result<Recorder, String> {
        let opening = Opening {
            source: format!("scenarios/{}.ron", scenario.name),
            who: PersonName::of(who),
            mode,
            branch: None,
        };
        let mut trouble = "there is no folder for attempts".to_owned();
        for folder in &self.folders {
            match Recorder::create_in(folder, scenario, opening.clone()) {
                Ok(recorder) => return Ok(recorder),
                Err(error) => trouble = error.to_string(),
            }
        }
        Err(trouble)
    }

    /// The attempts that were never ended, the latest of each folder first.
    pub fn offers(&self, scenarios: &[Scenario]) -> Vec<Offer> {
        let lookup = |head: &Head| find(scenarios, head);
        self.folders
            .iter()
            .flat_map(|folder| unfinished(folder, &lookup))
            .map(|unfinished| Offer::of(unfinished, scenarios))
            .collect()
    }

    /// Begins to go on with an attempt that was cut.
    pub fn go_on(path: &Path, scenarios: &[Scenario]) -> Result<CatchUp, String> {
        let lookup = |head: &Head| find(scenarios, head);
        CatchUp::with_cut(path, &lookup).map_err(|error| error.to_string())
    }

    /// Begins to go back to just before an action of an attempt.
    pub fn go_back(path: &Path, scenarios: &[Scenario], action: usize) -> Result<CatchUp, String> {
        let lookup = |head: &Head| find(scenarios, head);
        CatchUp::with_moment(path, &lookup, action).map_err(|error| error.to_string())
    }
}

/// An attempt that was never ended, as the start offers it.
#[derive(Debug)]
pub struct Offer {
    /// Its file.
    pub path: PathBuf,
    /// What it is: the scenario, whose, and the time on its clock.
    pub text: Message,
    /// Why it cannot be gone on with, if so.
    pub obstacle: Option<String>,
}

impl Offer {
    fn of(unfinished: Unfinished, scenarios: &[Scenario]) -> Self {
        let text = match &unfinished.head {
            Some(head) => {
                let named = scenarios.iter().find(|s| s.name == head.scenario);
                let title = named.map_or(&head.scenario, |scenario| &scenario.file.title);
                let who = match head.who.as_str() {
                    "" => Message::new("attempt-no-name"),
                    who => Message::verbatim(who),
                };
                let title = Message::of_scenario(title.as_str());
                let time = tick_text(unfinished.tick);
                match head.mode {
                    Mode::Practice => Message::new("attempt-offer")
                        .with("title", title)
                        .with("who", who)
                        .with("time", time),
                    Mode::Assessed => Message::new("attempt-offer-assessed")
                        .with("title", title)
                        .with("who", who)
                        .with("time", time),
                }
            }
            None => Message::verbatim(file_name(&unfinished.path)),
        };
        Self {
            text,
            obstacle: unfinished.obstacle.map(|error| error.to_string()),
            path: unfinished.path,
        }
    }
}

fn file_name(path: &Path) -> String {
    let name = path.file_name().unwrap_or_default();
    name.to_string_lossy().into_owned()
}

/// The scenario that a head names, of those that the window has.
fn find(scenarios: &[Scenario], head: &Head) -> Result<Scenario, String> {
    let found = scenarios.iter().find(|s| s.name == head.scenario);
    let missing = || "it is not in the list of this program".to_owned();
    found.cloned().ok_or_else(missing)
}

/// Closes a recording; gives where it is kept and its fingerprint, or what went wrong.
pub fn keep(recorder: Recorder) -> Result<Kept, String> {
    let closed = recorder.close().map_err(|error| error.to_string())?;
    Ok(Kept {
        place: closed.path.display().to_string(),
        fingerprint: closed.fingerprint,
    })
}
