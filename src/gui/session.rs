//! What stands behind the window's door: a job with its journal.

use crate::attempt::Recorder;
use crate::job::Door;
use crate::scenario::Scenario;

/// A door that can be closed for good.
pub trait Session: Door {
    /// Closes the recording; gives where it is kept and its fingerprint, or what went wrong.
    fn finish(self: Box<Self>) -> Result<Kept, String>;
}

/// A finished recording.
#[derive(Debug, Clone)]
pub struct Kept {
    /// Where it is kept.
    pub place: String,
    /// Its fingerprint.
    pub fingerprint: String,
}

/// Opens the door to a scenario for a person: scenario and name in, session out, or what is in
/// the way.
pub type Opener = Box<dyn FnMut(&Scenario, &str) -> Result<Box<dyn Session>, String>>;

impl Session for Recorder {
    fn finish(self: Box<Self>) -> Result<Kept, String> {
        let closed = self.close().map_err(|error| error.to_string())?;
        Ok(Kept {
            place: closed.path.display().to_string(),
            fingerprint: closed.fingerprint,
        })
    }
}

/// Records beside where the program runs; where that cannot be written, among passing files.
pub fn record_attempts() -> Opener {
    Box::new(|scenario, who| {
        let source = format!("scenarios/{}.ron", scenario.name);
        let recorder = Recorder::create_beside(scenario, &source, who)
            .or_else(|_| Recorder::create_in(&std::env::temp_dir(), scenario, &source, who));
        match recorder {
            Ok(recorder) => Ok(Box::new(recorder) as Box<dyn Session>),
            Err(error) => Err(error.to_string()),
        }
    })
}
