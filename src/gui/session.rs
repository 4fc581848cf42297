//! Where attempts are kept, and the door to one: a job with its journal.

use crate::attempt::{DIRECTORY, Mode, Opening, Recorder};
use crate::scenario::Scenario;
use std::path::PathBuf;

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
            who: who.to_owned(),
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
}

/// Closes a recording; gives where it is kept and its fingerprint, or what went wrong.
pub fn keep(recorder: Recorder) -> Result<Kept, String> {
    let closed = recorder.close().map_err(|error| error.to_string())?;
    Ok(Kept {
        place: closed.path.display().to_string(),
        fingerprint: closed.fingerprint,
    })
}
